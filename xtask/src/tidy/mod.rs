//! Rules about the tree that no compiler knows.

mod cases;
mod files;
mod graph;
mod imports;
mod purity;
mod sources;

use std::fs;
use std::path::{Path, PathBuf};

use crate::Outcome;

/// A rule reads the tree and says what breaks it.
type Rule = fn(&Path) -> Vec<String>;

const RULES: [(&str, Rule); 6] = [
    ("files", files::check),
    ("purity", purity::check),
    ("imports", imports::check),
    ("sources", sources::check),
    ("cases", cases::check),
    ("graph", graph::check),
];

/// Applies every rule; all problems at once.
pub fn run(root: &Path) -> Outcome {
    let problems: Vec<String> = RULES
        .iter()
        .flat_map(|(name, rule)| rule(root).into_iter().map(move |what| format!("{name}: {what}")))
        .collect();
    if problems.is_empty() { Ok(()) } else { Err(problems) }
}

/// Every Rust file under a folder, in order.
fn rust_files(folder: &Path) -> Vec<PathBuf> {
    let mut files = Vec::new();
    for entry in fs::read_dir(folder).into_iter().flatten().flatten() {
        let path = entry.path();
        if path.is_dir() {
            files.extend(rust_files(&path));
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            files.push(path);
        }
    }
    files.sort();
    files
}

/// A path as people read it, from the root.
fn shown(root: &Path, path: &Path) -> String {
    path.strip_prefix(root).unwrap_or(path).display().to_string()
}

/// The numbered lines before the tests of a file, without comments.
fn code_lines(source: &str) -> impl Iterator<Item = (usize, &str)> {
    source
        .lines()
        .enumerate()
        .take_while(|(_, line)| line.trim() != "#[cfg(test)]")
        .filter(|(_, line)| !line.trim_start().starts_with("//"))
        .map(|(index, line)| (index + 1, line))
}
