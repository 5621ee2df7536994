//! Every source that code rests on is checked against something published, or says why not.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use super::rust_files;
use super::sources::{case_sources, named_keys, register};

/// A key named in a domain crate has a case file, or a `no_case_reason` in the register.
pub fn check(root: &Path) -> Vec<String> {
    let Ok(register) = register(root) else { return Vec::new() };
    let mut checked = case_sources(root);
    checked.extend(checked_for(root));
    let mut named = BTreeSet::new();
    for folder in ["crates/model/src", "crates/haul/src", "crates/plan/src"] {
        for path in rust_files(&root.join(folder)) {
            let source = fs::read_to_string(&path).unwrap_or_default();
            named.extend(named_keys(&source).into_iter().map(|(_, key)| key.to_owned()));
        }
    }
    let has_reason =
        |key: &str| register.get(key).is_some_and(|entry| entry.get("no_case_reason").is_some());
    named
        .iter()
        .filter(|key| !checked.contains(*key) && !has_reason(key))
        .map(|key| format!("'{key}' has no file in validation/cases; add one, or a no_case_reason"))
        .collect()
}

/// Sources whose equation is checked by a case of another source, as the case says.
fn checked_for(root: &Path) -> BTreeSet<String> {
    let entries = fs::read_dir(root.join("validation/cases")).into_iter().flatten().flatten();
    entries
        .filter_map(|entry| {
            fs::read_to_string(entry.path()).ok()?.parse::<toml_edit::DocumentMut>().ok()
        })
        .flat_map(|case| {
            let list = case.get("checks").and_then(|item| item.as_array()).cloned();
            list.into_iter()
                .flatten()
                .filter_map(|key| key.as_str().map(str::to_owned))
                .collect::<Vec<_>>()
        })
        .collect()
}
