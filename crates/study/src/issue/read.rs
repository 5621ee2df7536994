//! The issued plans of a survey, as they lie in its folder.

use serde_json::Value;
use survey::Folder;

use super::document::plan_hash;
use super::{FOLDER, IssuedFault, IssuedPlan, IssuedProblem, SCHEMA};

/// What was issued.
#[derive(Debug, Clone, Default)]
pub struct Issued {
    /// Plans that are as they were issued, by haul and number.
    pub plans: Vec<IssuedPlan>,
    /// Files that are not; no plan of theirs counts.
    pub problems: Vec<IssuedProblem>,
}

/// Reads every file of `plans/`; one that was edited since is a problem and no plan.
pub fn issued(folder: &Folder) -> Issued {
    let mut found = Issued::default();
    for (path, bytes) in folder.files() {
        let Some(id) = path
            .strip_prefix(FOLDER)
            .and_then(|path| path.strip_prefix('/')?.strip_suffix(".json"))
            .filter(|id| !id.contains('/'))
        else {
            continue;
        };
        match read(id, bytes) {
            Ok(plan) => found.plans.push(plan),
            Err(fault) => found.problems.push(IssuedProblem { file: path.to_owned(), fault }),
        }
    }
    found.plans.sort_by(|one, other| (&one.haul, one.number).cmp(&(&other.haul, other.number)));
    found
}

fn read(id: &str, bytes: &[u8]) -> Result<IssuedPlan, IssuedFault> {
    let not_readable = |error: serde_json::Error| IssuedFault::NotReadable {
        line: (error.line() > 0).then_some(error.line()),
        message: error.to_string(),
    };
    let document: Value = serde_json::from_slice(bytes).map_err(not_readable)?;
    let schema = document.get("schema").and_then(Value::as_str).unwrap_or_default();
    if schema != SCHEMA {
        return Err(IssuedFault::OtherSchema { schema: schema.to_owned() });
    }
    let hash = plan_hash(&document);
    let plan: IssuedPlan = serde_json::from_value(document).map_err(not_readable)?;
    if plan.plan_hash != hash {
        return Err(IssuedFault::Edited { stored: plan.plan_hash, found: hash });
    }
    if plan.id != id {
        return Err(IssuedFault::Renamed { id: plan.id });
    }
    Ok(plan)
}
