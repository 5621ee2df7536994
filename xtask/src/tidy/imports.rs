//! Modules of `model` import one way.

use std::fs;
use std::path::Path;

use super::{code_lines, rust_files, shown};

/// Each module with those it may name.
const MAY_NAME: [(&str, &[&str]); 11] = [
    ("source", &[]),
    ("date", &[]),
    ("money", &[]),
    ("tire", &["source", "date"]),
    ("air", &["source"]),
    ("ground", &["source", "tire"]),
    ("road", &["source", "tire", "ground"]),
    ("motion", &["source", "tire", "route"]),
    ("route", &["source", "date", "tire", "air", "ground", "road"]),
    ("vehicle", &["source", "tire", "air", "route", "motion"]),
    ("haul_cycle", &["source", "money", "tire", "air", "ground", "route", "vehicle", "motion"]),
];

/// Every `crate::module` named in a module of `model` is one it may name.
pub fn check(root: &Path) -> Vec<String> {
    let src = root.join("crates/model/src");
    let mut problems = Vec::new();
    for path in rust_files(&src) {
        let inside = path.strip_prefix(&src).expect("it was found under this folder");
        let module = inside.iter().next().and_then(|part| Path::new(part).file_stem()?.to_str());
        let Some(module) = module.filter(|module| *module != "lib") else { continue };
        let place = shown(root, &path);
        let Some((_, allowed)) = MAY_NAME.iter().find(|(name, _)| *name == module) else {
            problems.push(format!("{place}: module {module} has no place in the import order"));
            continue;
        };
        let source = fs::read_to_string(&path).unwrap_or_default();
        for (line, code) in code_lines(&source) {
            for other in named_modules(code) {
                if other != module && !allowed.contains(&other) {
                    problems.push(format!("{place}:{line}: {module} must not know {other}"));
                }
            }
        }
    }
    problems
}

fn named_modules(code: &str) -> impl Iterator<Item = &str> {
    code.split("crate::").skip(1).filter_map(|rest| {
        let end = rest.find(|c: char| !(c.is_alphanumeric() || c == '_')).unwrap_or(rest.len());
        let name = &rest[..end];
        MAY_NAME.iter().any(|(module, _)| *module == name).then_some(name)
    })
}

#[cfg(test)]
mod tests {
    use super::named_modules;

    #[test]
    fn modules_are_read_from_code() {
        let code = "use crate::route::Route; let x = crate::air::flow(crate::helper());";
        assert_eq!(named_modules(code).collect::<Vec<_>>(), ["route", "air"]);
    }
}
