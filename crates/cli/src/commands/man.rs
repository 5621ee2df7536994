//! `airtide man`

use clap::{Command, CommandFactory};
use clap_mangen::Man;

use crate::args::Cli;
use crate::outcome::{Failure, Outcome};
use crate::terminal::Terminal;

pub(super) fn run(terminal: Terminal) -> Result<Outcome, Failure> {
    let mut command = Cli::command();
    command.build();
    let mut page = Vec::new();
    Man::new(command.clone()).render(&mut page)?;
    for one in command.get_subcommands() {
        describe(one, &mut page)?;
    }
    terminal.data(&String::from_utf8_lossy(&page))?;
    Ok(Outcome::Done)
}

/// Adds the sections of a command, and of those under it, after the main page.
fn describe(command: &Command, page: &mut Vec<u8>) -> std::io::Result<()> {
    let name = command.get_bin_name().unwrap_or(command.get_name()).to_uppercase();
    page.extend_from_slice(format!(".SH \"{name}\"\n").as_bytes());
    let man = Man::new(command.clone());
    man.render_description_section(page)?;
    man.render_options_section(page)?;
    man.render_extra_section(page)?;
    for one in command.get_subcommands() {
        describe(one, page)?;
    }
    Ok(())
}
