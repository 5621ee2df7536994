//! `airtide schema`

use schemars::schema_for;
use serde_json::{Map, Value};
use view::{CheckDocument, PlanDocument, RunView};

use crate::args::SchemaArgs;
use crate::calc::CalcDocument;
use crate::outcome::{Failure, Outcome};
use crate::terminal::Terminal;

/// Names of the schemas: survey files, then documents.
pub const NAMES: [&str; 10] =
    ["survey", "tire", "vehicle", "combination", "route", "haul", "check", "plan", "run", "calc"];

pub(super) fn run(args: &SchemaArgs, terminal: Terminal) -> Result<Outcome, Failure> {
    let mut all = all();
    match &args.name {
        Some(name) => {
            let schema = all.remove(name).ok_or_else(|| {
                Failure::call(anyhow::anyhow!(
                    "there is no schema '{name}'; see 'airtide schema -h'"
                ))
            })?;
            terminal.document(&schema)?;
        }
        None => terminal.document(&all)?,
    }
    Ok(Outcome::Done)
}

fn all() -> Map<String, Value> {
    let files = survey::schema::all().into_iter().map(|(name, schema)| (name.to_owned(), schema));
    let documents = [
        ("check", schema_for!(CheckDocument)),
        ("plan", schema_for!(PlanDocument)),
        ("run", schema_for!(RunView)),
        ("calc", schema_for!(CalcDocument)),
    ];
    let documents =
        documents.into_iter().map(|(name, schema)| (name.to_owned(), schema.to_value()));
    files.chain(documents).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_name_has_its_schema() {
        let names: Vec<String> = all().into_iter().map(|(name, _)| name).collect();
        assert_eq!(names, NAMES);
    }
}
