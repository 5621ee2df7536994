//! The one command: what the build server runs, in the same order.

use std::path::Path;
use std::process::Command;
use std::time::Instant;

use crate::{Outcome, front, generate, licenses, tidy};

/// The program with its optional parts, so that these are checked too.
pub const WHOLE: &str = "--features=cli/paper,cli/logs,cli/page";

/// Runs every step; stops at the first that fails, for a later step would only repeat it.
pub fn run(root: &Path) -> Outcome {
    let start = Instant::now();
    step("format", || cargo(root, &["fmt", "--all", "--check"], &[]))?;
    step("tidy", || tidy::run(root))?;
    step("licenses", || licenses::check(root))?;
    step("front end", || front::build(root))?;
    step("lints", || {
        let lints = [
            "clippy",
            "--workspace",
            "--all-targets",
            WHOLE,
            "--profile",
            "ci",
            "--",
            "-Dwarnings",
        ];
        cargo(root, &lints, &[])
    })?;
    step("documentation", || {
        let docs = ["doc", "--workspace", "--no-deps", WHOLE, "--profile", "ci"];
        cargo(root, &docs, &[("RUSTDOCFLAGS", "-Dwarnings")])
    })?;
    tests(root)?;
    step("journeys through the page", || front::journeys(root))?;
    step("generated files", || generate::compare(root))?;
    println!("all good after {:.0} s", start.elapsed().as_secs_f64());
    Ok(())
}

fn tests(root: &Path) -> Outcome {
    let nextest = Command::new("cargo").args(["nextest", "--version"]).output();
    if nextest.is_ok_and(|output| output.status.success()) {
        let unit =
            ["nextest", "run", "--workspace", WHOLE, "--cargo-profile", "ci", "--no-tests", "pass"];
        step("tests", || cargo(root, &unit, &[]))?;
        let doc = ["test", "--workspace", "--doc", WHOLE, "--profile", "ci"];
        step("examples in the documentation", || cargo(root, &doc, &[]))
    } else {
        step("tests and examples", || {
            cargo(root, &["test", "--workspace", WHOLE, "--profile", "ci"], &[])
        })
    }
}

fn step(name: &str, work: impl FnOnce() -> Outcome) -> Outcome {
    println!("== {name}");
    let start = Instant::now();
    work()?;
    println!("== {name}: good, {:.1} s", start.elapsed().as_secs_f64());
    Ok(())
}

/// Runs cargo and lets it talk.
pub fn cargo(root: &Path, args: &[&str], variables: &[(&str, &str)]) -> Outcome {
    let status = Command::new("cargo")
        .args(args)
        .envs(variables.iter().copied())
        .current_dir(root)
        .status()
        .map_err(|error| vec![format!("cargo does not start: {error}")])?;
    if status.success() { Ok(()) } else { Err(vec![format!("failed: cargo {}", args.join(" "))]) }
}
