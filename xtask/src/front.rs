//! The front end of the page: packages from the registry by their lock file, types checked, built;
//! and its journeys in a real browser.

use std::path::{Path, PathBuf};
use std::process::Command;

use crate::Outcome;
use crate::check::{WHOLE, cargo};

fn folder(root: &Path) -> PathBuf {
    root.join("crates/page/front")
}

/// Builds it; the program compiles it in.
pub fn build(root: &Path) -> Outcome {
    let folder = folder(root);
    npm(&folder, &["ci", "--no-audit", "--no-fund"])?;
    npm(&folder, &["run", "--silent", "check"])?;
    npm(&folder, &["run", "--silent", "build"])
}

/// Drives the page as people would, on the program as it ships.
pub fn journeys(root: &Path) -> Outcome {
    // The tests' own build, so that nothing is compiled twice; the program is part of it.
    let program = ["test", "--workspace", "--no-run", WHOLE, "--profile", "ci"];
    cargo(root, &program, &[])?;
    npm(&folder(root), &["run", "--silent", "e2e"])
}

fn npm(folder: &Path, args: &[&str]) -> Outcome {
    let status = Command::new("npm").args(args).current_dir(folder).status().map_err(|error| {
        vec![format!("npm does not start: {error}; install node 20 or later with npm")]
    })?;
    if status.success() { Ok(()) } else { Err(vec![format!("failed: npm {}", args.join(" "))]) }
}
