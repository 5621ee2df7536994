//! Every sentence about a problem with a survey, in English.

mod approval;
mod date;
mod ground;
mod hint;
mod ladder;
mod message;
mod number;
mod permit;
mod state;
mod unit;

pub(super) use hint::hint;
pub(super) use message::message;

use super::Reference;

fn type_word(name: &str) -> &str {
    match name {
        "string" => "text",
        "boolean" => "true or false",
        "integer" => "whole number",
        "array" => "list",
        "object" => "table",
        "null" => "nothing",
        other => other,
    }
}

fn name_of(reference: Reference) -> &'static str {
    match reference {
        Reference::Tire => "file in tires/",
        Reference::Vehicle => "file in vehicles/",
        Reference::Member => "file in vehicles/ or unit",
        Reference::Combination => "file in combinations/",
        Reference::Route => "file in routes/",
        Reference::Channel => "air channel",
        Reference::LoadState => "load state in the combination",
        Reference::Rung => "rung in the combination",
        Reference::ChainState => "chain state in the combination",
        Reference::Group => "axle group in the combination",
        Reference::File => "file in the survey",
    }
}

/// `file, line 12`, as far as the line is known.
fn place(file: &str, line: Option<usize>) -> String {
    match line {
        Some(line) => format!("{file}, line {line}"),
        None => file.to_owned(),
    }
}
