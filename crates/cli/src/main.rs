//! The program `airtide`: arguments, exit codes, printing.

mod args;
mod calc;
mod commands;
mod outcome;
mod page;
mod progress;
mod register;
mod terminal;
mod words;

use std::process::ExitCode;

use clap::Parser;

use args::Cli;
use outcome::{Failure, exit_code};
use terminal::Terminal;

fn main() -> ExitCode {
    let cli = Cli::parse();
    let terminal = Terminal::new(cli.global.color);
    let result = commands::run(cli.command, &cli.global, terminal);
    if let Err(Failure::Call(error) | Failure::Input(error)) = &result {
        // Where even standard error is gone, the exit code is all that is left to say.
        terminal.error(error).unwrap_or(());
    }
    exit_code(&result)
}
