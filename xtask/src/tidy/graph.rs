//! The default build stays small.

use std::path::Path;
use std::process::Command;

/// Crates that only optional parts may bring.
const HEAVY: [&str; 5] = ["arrow", "parquet", "typst", "axum", "tokio"];

/// The program without features depends on none of the heavy crates.
pub fn check(root: &Path) -> Vec<String> {
    let tree = ["tree", "-p", "cli", "-e", "normal", "--prefix", "none", "-f", "{p}", "--locked"];
    let output = match Command::new("cargo").args(tree).current_dir(root).output() {
        Ok(output) if output.status.success() => output,
        Ok(output) => return vec![String::from_utf8_lossy(&output.stderr).into_owned()],
        Err(error) => return vec![format!("cargo does not start: {error}")],
    };
    let text = String::from_utf8_lossy(&output.stdout);
    let heavy = |name: &str| HEAVY.iter().any(|h| name == *h || name.starts_with(&format!("{h}-")));
    let mut found: Vec<&str> =
        text.lines().filter_map(|line| line.split(' ').next()).filter(|name| heavy(name)).collect();
    found.sort_unstable();
    found.dedup();
    found.into_iter().map(|name| format!("the default build of cli holds {name}")).collect()
}
