//! Licenses and origins of dependencies, against the lists in `deny.toml`.
//!
//! The file is the one `cargo deny` reads, so that both agree; this check needs no
//! download and a second, where installing that tool takes minutes of each build.

use std::path::Path;
use std::process::Command;

use serde_json::Value;
use spdx::{Expression, LicenseReq};
use toml_edit::DocumentMut;

use crate::Outcome;

const CRATES_IO: &str = "registry+https://github.com/rust-lang/crates.io-index";

/// Fails for a license that is not allowed, a banned crate, or an origin other than crates.io.
pub fn check(root: &Path) -> Outcome {
    let rules = std::fs::read_to_string(root.join("deny.toml"))
        .map_err(|error| vec![format!("deny.toml: {error}")])?
        .parse::<DocumentMut>()
        .map_err(|error| vec![format!("deny.toml: {error}")])?;
    let allowed = strings(&rules, "licenses", "allow");
    let banned = strings(&rules, "bans", "deny");
    let mut problems = Vec::new();
    for package in packages(root)? {
        let text = |key: &str| package[key].as_str().unwrap_or_default();
        let name = format!("{} {}", text("name"), text("version"));
        let Some(origin) = package["source"].as_str() else { continue };
        if origin != CRATES_IO {
            problems.push(format!("{name}: comes from {origin}, not from crates.io"));
        }
        if banned.iter().any(|crate_name| crate_name == text("name")) {
            problems.push(format!("{name}: banned by deny.toml"));
        }
        if let Err(why) = license_allowed(text("license"), &allowed) {
            problems.push(format!("{name}: {why}"));
        }
    }
    if problems.is_empty() { Ok(()) } else { Err(problems) }
}

fn license_allowed(license: &str, allowed: &[String]) -> Result<(), String> {
    // Old manifests write a slash where the standard wants OR.
    let license = license.replace('/', " OR ");
    let expression =
        Expression::parse(&license).map_err(|_| format!("license '{license}' is not SPDX"))?;
    let is_allowed = |req: &LicenseReq| allowed.contains(&req.to_string());
    if expression.evaluate(is_allowed) {
        Ok(())
    } else {
        Err(format!("license '{license}' is not allowed by deny.toml"))
    }
}

fn packages(root: &Path) -> Result<Vec<Value>, Vec<String>> {
    let output = Command::new("cargo")
        .args(["metadata", "--format-version", "1", "--all-features", "--locked"])
        .current_dir(root)
        .output()
        .map_err(|error| vec![format!("cargo does not start: {error}")])?;
    if !output.status.success() {
        return Err(vec![String::from_utf8_lossy(&output.stderr).into_owned()]);
    }
    let metadata: Value = serde_json::from_slice(&output.stdout)
        .map_err(|error| vec![format!("cargo metadata: {error}")])?;
    metadata["packages"]
        .as_array()
        .cloned()
        .ok_or_else(|| vec!["cargo metadata: no packages".to_owned()])
}

fn strings(rules: &DocumentMut, table: &str, key: &str) -> Vec<String> {
    let list = rules.get(table).and_then(|t| t.get(key)).and_then(|l| l.as_array());
    let name = |item: &toml_edit::Value| {
        let table = item.as_inline_table().and_then(|t| t.get("crate"));
        table.unwrap_or(item).as_str().map(str::to_owned)
    };
    list.map(|list| list.iter().filter_map(name).collect()).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::license_allowed;

    #[test]
    fn expressions_are_evaluated() {
        let allowed = ["MIT".to_owned(), "Apache-2.0".to_owned()];
        assert!(license_allowed("MIT OR GPL-3.0-only", &allowed).is_ok());
        assert!(license_allowed("MIT/Apache-2.0", &allowed).is_ok());
        assert!(license_allowed("MIT AND GPL-3.0-only", &allowed).is_err());
        assert!(license_allowed("", &allowed).is_err());
    }
}
