//! `airtide approvals`

use std::path::Path;

use plan::Detail;
use study::{ApprovalRequest, approval_requests};
use view::RequestsDocument;

use super::opened::{open, refuse_to_overwrite, tell_problems};
use super::plan::{Ladder, planned};
use crate::args::{ApprovalsArgs, GlobalArgs};
use crate::outcome::{Failure, Outcome};
use crate::page::{csv_of_requests, letters};
use crate::terminal::Terminal;
use crate::words::Words;

pub(super) fn run(
    args: &ApprovalsArgs,
    global: &GlobalArgs,
    terminal: Terminal,
) -> Result<Outcome, Failure> {
    if let Some(file) = &args.csv {
        refuse_to_overwrite(file, args.force)?;
    }
    let opened = open(&args.survey)?;
    let words = Words::of_survey(global, opened.survey.as_ref(), terminal)?;
    tell_problems(&opened, &words, terminal)?;
    let detail = Detail::default();
    let planned = planned(
        opened.survey.as_ref(),
        args.haul.as_deref(),
        Ladder::Surveyed,
        &detail,
        &words,
        terminal,
    )?;
    let Some(survey) = opened.survey.as_ref().filter(|_| !planned.is_empty()) else {
        return Ok(Outcome::Problems);
    };
    let requests = approval_requests(survey, &planned);
    let requests = only(requests, args.tire.as_deref(), &words)?;
    let document = RequestsDocument::new(survey, &requests);
    if global.json {
        terminal.document(&document)?;
    } else {
        terminal.data(&letters(&document, &words))?;
    }
    if let Some(file) = &args.csv {
        write_csv(file, &document, &words, terminal)?;
    }
    Ok(if opened.errors().next().is_none() { Outcome::Done } else { Outcome::Problems })
}

fn only(
    mut requests: Vec<ApprovalRequest>,
    tire: Option<&str>,
    words: &Words,
) -> Result<Vec<ApprovalRequest>, Failure> {
    let Some(tire) = tire else { return Ok(requests) };
    if !requests.iter().any(|request| request.tire.name == tire) {
        let tires: Vec<&str> = requests.iter().map(|request| request.tire.name.as_str()).collect();
        let tires = if tires.is_empty() { words.text("unit-none") } else { tires.join(", ") };
        let told = words.fill("request-no-tire", &[("tire", &tire), ("tires", &tires)]);
        return Err(Failure::call(anyhow::anyhow!(told)));
    }
    requests.retain(|request| request.tire.name == tire);
    Ok(requests)
}

fn write_csv(
    file: &Path,
    document: &RequestsDocument,
    words: &Words,
    terminal: Terminal,
) -> Result<(), Failure> {
    let text = csv_of_requests(document, words).map_err(Failure::input)?;
    survey::replace(file, text.as_bytes()).map_err(Failure::input)?;
    let told = words.fill("request-csv-written", &[("file", &file.display())]);
    terminal.talk(&format!("{told}\n"))?;
    Ok(())
}
