//! A survey to start from: a commented one of invented names, or one of the demos.

use std::path::{Path, PathBuf};

use include_dir::{Dir, include_dir};

use crate::schema;
use crate::write::{WriteError, create};

static STARTER: Dir<'_> = include_dir!("$CARGO_MANIFEST_DIR/starter");
static DEMOS: Dir<'_> = include_dir!("$CARGO_MANIFEST_DIR/../../demo");

/// Names of the demos.
pub fn demos() -> Vec<&'static str> {
    DEMOS.dirs().filter_map(|demo| demo.path().to_str()).collect()
}

/// Writes a small complete survey with comments, and the schemas for editors beside it.
///
/// # Errors
/// [`WriteError::Exists`] before anything is written if a file of the same name is there;
/// [`WriteError::Refused`] if the system does not let it.
pub fn write_starter(folder: &Path) -> Result<Vec<PathBuf>, WriteError> {
    write(&STARTER, folder)
}

/// Writes a copy of a demo, and the schemas for editors beside it.
///
/// # Errors
/// [`WriteError::NoDemo`] for an unknown name; otherwise as [`write_starter`].
pub fn write_demo(name: &str, folder: &Path) -> Result<Vec<PathBuf>, WriteError> {
    let demo = DEMOS.dirs().find(|demo| demo.path() == Path::new(name));
    match demo {
        Some(demo) => write(demo, folder),
        None => Err(WriteError::NoDemo {
            name: name.to_owned(),
            known: demos().into_iter().map(str::to_owned).collect(),
        }),
    }
}

fn write(from: &Dir<'_>, folder: &Path) -> Result<Vec<PathBuf>, WriteError> {
    let mut files: Vec<(PathBuf, Vec<u8>)> = Vec::new();
    collect(from, from.path(), &mut files);
    for (name, text) in schema::files() {
        files.push((Path::new(SCHEMAS).join(name), text.into_bytes()));
    }
    for (path, _) in &mut files {
        *path = folder.join(&*path);
    }
    if let Some((path, _)) = files.iter().find(|(path, _)| path.symlink_metadata().is_ok()) {
        return Err(WriteError::Exists(path.clone()));
    }
    for (path, bytes) in &files {
        create(path, bytes)?;
    }
    Ok(files.into_iter().map(|(path, _)| path).collect())
}

/// Where the schemas stand in a new survey.
const SCHEMAS: &str = "schemas";

fn collect(dir: &Dir<'_>, root: &Path, files: &mut Vec<(PathBuf, Vec<u8>)>) {
    for file in dir.files() {
        let path = file.path().strip_prefix(root).unwrap_or(file.path());
        files.push((path.to_owned(), with_own_schema(path, file.contents())));
    }
    for dir in dir.dirs() {
        collect(dir, root, files);
    }
}

/// Points the `#:schema` line of a file at the schemas of the survey it is written into.
fn with_own_schema(path: &Path, contents: &[u8]) -> Vec<u8> {
    let line_end = contents.iter().position(|byte| *byte == b'\n').unwrap_or(contents.len());
    let Ok(line) = std::str::from_utf8(&contents[..line_end]) else { return contents.to_vec() };
    let Some(schema) = line.strip_prefix("#:schema ").and_then(|link| link.rsplit('/').next())
    else {
        return contents.to_vec();
    };
    let up = "../".repeat(path.components().count() - 1);
    let mut own = format!("#:schema {up}{SCHEMAS}/{}", schema.trim_end()).into_bytes();
    own.extend_from_slice(&contents[line_end..]);
    own
}
