//! Development tasks, run as `cargo xtask TASK`.
//!
//! - `check`: everything that a change must pass, in the order that fails fastest;
//! - `front`: builds the front end of the page, which the crate `page` compiles in;
//! - `journeys`: drives the page in a real browser;
//! - `tidy`: only the rules about the tree that no compiler knows;
//! - `generate`: writes the files that are made from code anew;
//! - `licenses`: licenses and origins of every dependency.
#![allow(
    clippy::print_stdout,
    clippy::print_stderr,
    reason = "a development tool talks to its user"
)]

mod check;
mod front;
mod generate;
mod licenses;
mod tidy;

use std::path::{Path, PathBuf};
use std::process::ExitCode;

/// What went wrong in a task; the text says where and what to do.
type Outcome = Result<(), Vec<String>>;

fn main() -> ExitCode {
    let task = std::env::args().nth(1).unwrap_or_default();
    let root = root();
    let outcome = match task.as_str() {
        "check" => check::run(&root),
        "front" => front::build(&root),
        "journeys" => front::journeys(&root),
        "tidy" => tidy::run(&root),
        "generate" => generate::write(&root),
        "licenses" => licenses::check(&root),
        _ => {
            eprintln!("usage: cargo xtask check | front | journeys | tidy | generate | licenses");
            return ExitCode::from(2);
        }
    };
    match outcome {
        Ok(()) => ExitCode::SUCCESS,
        Err(problems) => {
            for problem in &problems {
                eprintln!("{problem}");
            }
            eprintln!("{task}: {} to mend", problems.len());
            ExitCode::FAILURE
        }
    }
}

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR"))
        .parent()
        .expect("this package lies one folder under the root")
        .to_path_buf()
}
