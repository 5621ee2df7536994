//! Files made from code: written by `generate`, compared by `check`.

use std::fs;
use std::path::{Path, PathBuf};

use crate::Outcome;
use crate::check::cargo;

/// A program of the workspace that writes files into the folder it is given.
struct Generator {
    package: &'static str,
    /// `--bin` or `--example`.
    form: &'static str,
    name: &'static str,
    /// Where the files live, from the root.
    folder: &'static str,
}

const GENERATORS: &[Generator] = &[
    Generator { package: "validation", form: "--bin", name: "errors", folder: "docs" },
    Generator { package: "survey", form: "--example", name: "schemas", folder: "schemas" },
];

/// Writes every generated file in place.
pub fn write(root: &Path) -> Outcome {
    GENERATORS.iter().try_for_each(|generator| generator.run(root, &root.join(generator.folder)))
}

/// Compares every generated file with what the code would write now.
pub fn compare(root: &Path) -> Outcome {
    let mut problems = Vec::new();
    for generator in GENERATORS {
        let fresh = fresh_folder(root, generator)?;
        generator.run(root, &fresh)?;
        let stored = root.join(generator.folder);
        for file in files_under(&fresh) {
            let name = file.strip_prefix(&fresh).expect("it was found under this folder");
            let same = fs::read(&file).ok() == fs::read(stored.join(name)).ok();
            if !same {
                problems.push(format!(
                    "{}/{}: differs from what the code makes; run `cargo xtask generate`",
                    generator.folder,
                    name.display()
                ));
            }
        }
    }
    if problems.is_empty() { Ok(()) } else { Err(problems) }
}

impl Generator {
    fn run(&self, root: &Path, folder: &Path) -> Outcome {
        let folder = folder.to_string_lossy();
        let args = ["run", "--quiet", "--profile", "ci", "--package", self.package];
        cargo(root, &[&args[..], &[self.form, self.name, "--", &folder]].concat(), &[])
    }
}

fn fresh_folder(root: &Path, generator: &Generator) -> Result<PathBuf, Vec<String>> {
    let target =
        std::env::var_os("CARGO_TARGET_DIR").map_or_else(|| root.join("target"), Into::into);
    let folder = target.join("generated").join(generator.package).join(generator.name);
    let failed = |error| vec![format!("{}: {error}", folder.display())];
    if folder.exists() {
        fs::remove_dir_all(&folder).map_err(failed)?;
    }
    fs::create_dir_all(&folder).map_err(failed)?;
    Ok(folder)
}

fn files_under(folder: &Path) -> Vec<PathBuf> {
    let mut files = Vec::new();
    for entry in fs::read_dir(folder).into_iter().flatten().flatten() {
        let path = entry.path();
        if path.is_dir() {
            files.extend(files_under(&path));
        } else {
            files.push(path);
        }
    }
    files.sort();
    files
}
