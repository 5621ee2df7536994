//! Domain crates do no I/O, and nothing lower knows anything higher.

use std::fs;
use std::path::Path;

use toml_edit::DocumentMut;

use super::{code_lines, rust_files, shown};

/// Crates that only compute.
const DOMAIN: [&str; 7] = ["quantity", "model", "haul", "plan", "diagnose", "series", "audit"];

/// What a domain crate may use from outside: nothing that reads, prints, stores or serialises.
const PURE: [&str; 4] = ["thiserror", "differential-equations", "roots", "libm"];

/// Lowest first; a crate may know only crates before it.
const LAYERS: [&str; 16] = [
    "quantity", "model", "haul", "plan", "diagnose", "survey", "series", "logs", "audit", "study",
    "language", "view", "report", "press", "page", "cli",
];

/// Names that have no place where only computing is done.
const IMPURE: [&str; 18] = [
    "println!",
    "eprintln!",
    "print!(",
    "dbg!",
    "todo!",
    "unimplemented!",
    "std::fs",
    "std::env",
    "std::net",
    "std::io",
    "std::process",
    "std::thread",
    "SystemTime",
    "Instant::now",
    "HashMap",
    "HashSet",
    "rand::",
    "serde",
];

/// Manifests and sources of the domain crates, and the direction of every dependency.
pub fn check(root: &Path) -> Vec<String> {
    let mut problems = Vec::new();
    for (layer, name) in LAYERS.iter().enumerate() {
        let folder = root.join("crates").join(name);
        let manifest = folder.join("Cargo.toml");
        let Ok(text) = fs::read_to_string(&manifest) else { continue };
        let place = shown(root, &manifest);
        match text.parse::<DocumentMut>() {
            Ok(document) => {
                let depends = dependencies(&document);
                problems.extend(wrong_dependencies(name, layer, &depends, &place));
            }
            Err(error) => problems.push(format!("{place}: {error}")),
        }
        if DOMAIN.contains(name) {
            problems.extend(impure_sources(root, &folder.join("src")));
        }
    }
    problems
}

fn dependencies(manifest: &DocumentMut) -> Vec<String> {
    let table = manifest.get("dependencies").and_then(|item| item.as_table_like());
    table.map(|t| t.iter().map(|(name, _)| name.to_owned()).collect()).unwrap_or_default()
}

fn wrong_dependencies(name: &str, layer: usize, depends: &[String], place: &str) -> Vec<String> {
    let wrong = |other: &String| match LAYERS.iter().position(|known| known == other) {
        Some(at) if at >= layer => Some(format!("{place}: {name} must not know {other}")),
        None if DOMAIN.contains(&name) && !PURE.contains(&other.as_str()) => Some(format!(
            "{place}: {other} is not on the list of pure crates of {}",
            "xtask/src/tidy/purity.rs"
        )),
        _ => None,
    };
    depends.iter().filter_map(wrong).collect()
}

fn impure_sources(root: &Path, folder: &Path) -> Vec<String> {
    let mut problems = Vec::new();
    // A file of tests may print; it is not part of the crate.
    let files = rust_files(folder).into_iter().filter(|path| !path.ends_with("tests.rs"));
    for path in files {
        let source = fs::read_to_string(&path).unwrap_or_default();
        for (line, code) in code_lines(&source) {
            for word in IMPURE.iter().filter(|word| code.contains(**word)) {
                let place = format!("{}:{line}", shown(root, &path));
                problems
                    .push(format!("{place}: '{word}' does not belong in a crate that computes"));
            }
        }
    }
    problems
}

#[cfg(test)]
mod tests {
    use super::wrong_dependencies;

    #[test]
    fn direction_and_purity_are_enforced() {
        let one =
            |name, layer, other: &str| wrong_dependencies(name, layer, &[other.to_owned()], "");
        assert!(one("model", 1, "quantity").is_empty());
        assert_eq!(one("model", 1, "haul").len(), 1);
        assert_eq!(one("model", 1, "serde").len(), 1);
        assert!(one("survey", 5, "serde").is_empty());
    }
}
