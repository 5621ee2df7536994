//! Keys of the source register: named in code, and explained in `docs/sources.toml`.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use toml_edit::{DocumentMut, Table};

use super::{rust_files, shown};

/// How our numbers may stand to a source.
const STANDINGS: [&str; 4] = ["read", "from memory", "common practice", "library"];

/// Every key named in code is in the register; every key of the register is named, or says why not.
pub fn check(root: &Path) -> Vec<String> {
    let register = match register(root) {
        Ok(register) => register,
        Err(problem) => return vec![problem],
    };
    let mut problems = Vec::new();
    let mut used = case_sources(root);
    for path in ["crates", "validation"].iter().flat_map(|folder| rust_files(&root.join(folder))) {
        let source = fs::read_to_string(&path).unwrap_or_default();
        for (line, key) in named_keys(&source) {
            if register.contains_key(key) {
                used.insert(key.to_owned());
            } else {
                let place = format!("{}:{line}", shown(root, &path));
                problems.push(format!("{place}: source '{key}' is not in docs/sources.toml"));
            }
        }
    }
    for (key, entry) in &register {
        let reason = entry.get("unused_reason").is_some();
        if !used.contains(key) && !reason {
            problems.push(format!("docs/sources.toml: '{key}' is used nowhere; add unused_reason"));
        }
        if used.contains(key) && reason {
            problems.push(format!("docs/sources.toml: '{key}' is used; drop its unused_reason"));
        }
        if entry.get("title").is_none() {
            problems.push(format!("docs/sources.toml: '{key}' has no title"));
        }
        let standing = entry.get("standing").and_then(|item| item.as_str()).unwrap_or_default();
        if !STANDINGS.contains(&standing) {
            let known = STANDINGS.join(", ");
            problems.push(format!("docs/sources.toml: standing of '{key}' is none of: {known}"));
        }
    }
    problems
}

/// The register: a table for each key.
pub fn register(root: &Path) -> Result<Table, String> {
    let path = root.join("docs/sources.toml");
    let text = fs::read_to_string(&path).map_err(|error| format!("docs/sources.toml: {error}"))?;
    let document: DocumentMut =
        text.parse().map_err(|error| format!("docs/sources.toml: {error}"))?;
    let sources = document.get("source").and_then(|item| item.as_table());
    sources.cloned().ok_or_else(|| "docs/sources.toml: it has no [source.KEY] table".to_owned())
}

/// The sources that published cases are taken from.
pub fn case_sources(root: &Path) -> BTreeSet<String> {
    let folder = root.join("validation/cases");
    let entries = fs::read_dir(folder).into_iter().flatten().flatten();
    entries
        .filter_map(|entry| fs::read_to_string(entry.path()).ok()?.parse::<DocumentMut>().ok())
        .filter_map(|case| Some(case.get("source")?.as_str()?.to_owned()))
        .collect()
}

/// Keys in `Key("…")`, and those in backquotes on the lines after a `# Source` heading.
pub fn named_keys(source: &str) -> Vec<(usize, &str)> {
    let mut keys = Vec::new();
    let mut under_heading = false;
    for (index, line) in source.lines().enumerate() {
        let trimmed = line.trim_start();
        let doc = trimmed.strip_prefix("///").or_else(|| trimmed.strip_prefix("//!"));
        if let Some(doc) = doc {
            if doc.trim_start().starts_with("# ") {
                under_heading = doc.trim() == "# Source";
            } else if under_heading {
                keys.extend(quoted(doc).map(|key| (index + 1, key)));
            }
            continue;
        }
        under_heading = false;
        let starts = line.split("Key(\"").skip(1);
        keys.extend(starts.filter_map(|rest| Some((index + 1, rest.split('"').next()?))));
    }
    keys
}

fn quoted(doc: &str) -> impl Iterator<Item = &str> {
    let is_key = |text: &&str| {
        text.contains('-')
            && text.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-')
    };
    doc.split('`').skip(1).step_by(2).filter(is_key)
}

#[cfg(test)]
mod tests {
    use super::named_keys;

    #[test]
    fn keys_are_read_from_code_and_from_source_headings() {
        let source = "
            /// # Validity
            /// Not `this-one`.
            /// # Source
            /// `iso-6358-1`, table 2.
            const FLOW: Key = Key(\"iso-8778\");
        ";
        let keys: Vec<_> = named_keys(source).into_iter().map(|(_, key)| key).collect();
        assert_eq!(keys, ["iso-6358-1", "iso-8778"]);
    }
}
