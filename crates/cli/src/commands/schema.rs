//! `airtide schema`

use schemars::schema_for;
use serde_json::{Map, Value};
use view::{
    AskDocument, CheckDocument, FrozenPlan, NowDocument, NowTableDocument, PlanDocument,
    PlansDocument, PracticeDocument, RequestsDocument, RunView, VerdictDocument,
};

use crate::args::SchemaArgs;
use crate::calc::CalcDocument;
use crate::outcome::{Failure, Outcome};
use crate::terminal::Terminal;

pub(super) fn run(args: &SchemaArgs, terminal: Terminal) -> Result<Outcome, Failure> {
    let all = all();
    match &args.name {
        Some(name) => {
            let schema = all.get(name).ok_or_else(|| {
                let names: Vec<&str> = all.keys().map(String::as_str).collect();
                Failure::call(anyhow::anyhow!(
                    "there is no schema '{name}'; there are: {}",
                    names.join(", ")
                ))
            })?;
            terminal.document(schema)?;
        }
        None => terminal.document(&all)?,
    }
    Ok(Outcome::Done)
}

/// The schemas of the survey files, then those of the documents.
fn all() -> Map<String, Value> {
    let files = survey::schema::all().into_iter().map(|(name, schema)| (name.to_owned(), schema));
    let documents = [
        ("check", schema_for!(CheckDocument)),
        ("plan", schema_for!(PlanDocument)),
        ("issued", schema_for!(FrozenPlan)),
        ("plans", schema_for!(PlansDocument)),
        ("requests", schema_for!(RequestsDocument)),
        ("now", schema_for!(NowDocument)),
        ("now-table", schema_for!(NowTableDocument)),
        ("ask", schema_for!(AskDocument)),
        ("run", schema_for!(RunView)),
        ("practice", schema_for!(PracticeDocument)),
        ("verdict", schema_for!(VerdictDocument)),
        ("calc", schema_for!(CalcDocument)),
    ];
    #[cfg(feature = "logs")]
    let of_logs = vec![
        ("made-logs", schema_for!(view::MadeLogsDocument)),
        ("truth", schema_for!(view::TruthDocument)),
        ("logs", schema_for!(view::LogsDocument)),
        ("import", schema_for!(view::ImportDocument)),
    ];
    #[cfg(not(feature = "logs"))]
    let of_logs = Vec::new();
    let documents = documents.into_iter().chain(of_logs);
    let documents = documents.map(|(name, schema)| (name.to_owned(), schema.to_value()));
    files.chain(documents).collect()
}
