//! `airtide logs import`

use std::path::Path;

use logs::read::{Log, Options};
use logs::store::{Choice, Import, Imported};
use logs::{Definitions, SourceAddress};
use study::{HaulRoute, Opened};
use survey::Survey;
use view::ImportDocument;

use super::show::{definitions, timing};
use crate::args::{GlobalArgs, ImportArgs};
use crate::commands::opened::open;
use crate::outcome::{Failure, Outcome};
use crate::page;
use crate::progress;
use crate::terminal::Terminal;
use crate::words::Words;

pub(super) fn run(
    args: &ImportArgs,
    global: &GlobalArgs,
    words: &Words,
    terminal: Terminal,
) -> Result<Outcome, Failure> {
    let definitions = definitions(&args.dbc, words, terminal)?;
    let opened = args.survey.as_deref().map(sound).transpose()?;
    let choice = Choice { sources: sources(args, opened.as_ref())? };
    let route = match (&opened, &args.haul) {
        (Some((opened, survey)), Some(haul)) => {
            Some(HaulRoute::of(opened, survey, Some(haul)).map_err(Failure::call)?)
        }
        _ => None,
    };
    let imported = import(args, words, &definitions, choice, route.as_ref())?;
    let name = route.as_ref().map(|route| route.name.as_str());
    let document = ImportDocument::new(&args.unit, name, &imported);
    if global.json {
        terminal.document(&document)?;
    } else {
        terminal.data(&page::imported(&document, words))?;
    }
    Ok(if document.bad_records == 0 { Outcome::Done } else { Outcome::Problems })
}

fn import(
    args: &ImportArgs,
    words: &Words,
    definitions: &Definitions,
    choice: Choice,
    route: Option<&HaulRoute>,
) -> Result<Imported, Failure> {
    let options = Options { timing: timing(args.timing), columns: args.columns.clone() };
    let mut import =
        Import::start(&args.out, &args.unit, definitions, choice).map_err(Failure::input)?;
    if let Some(route) = route {
        import = import.on_route(Box::new(|fixes| route.places(fixes)));
    }
    for path in &args.logs {
        let name = path.display().to_string();
        let reading = words.fill("logs-reading", &[("file", &name)]);
        let read = progress::of_log(&reading, |watch| {
            let log = Log::open(path, &options)?;
            watch(log.length(), log.progress());
            import.log(log)
        });
        read.map_err(Failure::input)?;
    }
    import.finish().map_err(Failure::input)
}

/// A survey that can be read.
fn sound(folder: &Path) -> Result<(Opened, Survey), Failure> {
    let opened = open(folder)?;
    let Some(survey) = opened.survey.clone() else {
        let folder = folder.display();
        return Err(Failure::input(anyhow::anyhow!(
            "{folder} has problems; airtide check {folder} shows them"
        )));
    };
    Ok((opened, survey))
}

/// Who is believed: named in the call, or by the register of the survey.
fn sources(
    args: &ImportArgs,
    opened: Option<&(Opened, Survey)>,
) -> Result<Vec<SourceAddress>, Failure> {
    let Some((opened, survey)) = opened else {
        return Ok(args.source.iter().copied().map(SourceAddress).collect());
    };
    let unit = survey.fleet.iter().find(|unit| unit.number == args.unit).ok_or_else(|| {
        let folder = opened.path.display();
        Failure::call(anyhow::anyhow!("the register of {folder} has no unit '{}'", args.unit))
    })?;
    Ok(unit.source_addresses.iter().copied().map(SourceAddress).collect())
}
