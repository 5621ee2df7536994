//! Running the program as a user does.

#![allow(dead_code, reason = "each test file uses its part")]

pub mod calc;

use std::path::{Path, PathBuf};
use std::process::Command;

use serde_json::Value;
use tempfile::TempDir;

/// What a call gave.
pub struct Ran {
    pub code: i32,
    pub out: String,
    pub err: String,
}

impl Ran {
    /// The document on standard output.
    pub fn json(&self) -> Value {
        serde_json::from_str(&self.out).unwrap_or_else(|error| panic!("{error}: {}", self.out))
    }
}

/// Runs the program in a folder.
pub fn airtide_in(folder: &Path, args: &[&str]) -> Ran {
    let output = Command::new(env!("CARGO_BIN_EXE_airtide"))
        .args(args)
        .current_dir(folder)
        .env_remove("CLICOLOR_FORCE")
        .output()
        .unwrap();
    Ran {
        code: output.status.code().unwrap(),
        out: String::from_utf8(output.stdout).unwrap(),
        err: String::from_utf8(output.stderr).unwrap(),
    }
}

/// Runs the program.
pub fn airtide(args: &[&str]) -> Ran {
    airtide_in(Path::new("."), args)
}

/// A folder with the starter survey in `fleet`.
pub fn with_starter() -> TempDir {
    let folder = tempfile::tempdir().unwrap();
    let ran = airtide_in(folder.path(), &["new", "fleet"]);
    assert_eq!(ran.code, 0, "{}", ran.err);
    folder
}

/// Changes a file of the survey `fleet`.
pub fn edit(folder: &TempDir, file: &str, from: &str, to: &str) {
    let path = folder.path().join("fleet").join(file);
    let text = std::fs::read_to_string(&path).unwrap();
    assert!(text.contains(from), "{file} has no '{from}'");
    std::fs::write(path, text.replace(from, to)).unwrap();
}

/// The surveys of the project: quarry and the demos.
pub fn surveys() -> Vec<PathBuf> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    let demos = std::fs::read_dir(root.join("demo")).unwrap();
    let mut found: Vec<PathBuf> =
        demos.map(|entry| entry.unwrap().path()).filter(|path| path.is_dir()).collect();
    found.push(root.join("crates/survey/tests/surveys/quarry"));
    found.sort();
    found
}
