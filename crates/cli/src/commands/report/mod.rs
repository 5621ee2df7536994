//! `airtide report`

mod material;
mod write;

use report::document::Sheet;
use report::paper::Material;
use view::ReportDocument;

use super::opened::{open, refuse_to_overwrite, tell_problems};
use crate::args::{GlobalArgs, PaperFormat, ReportArgs};
use crate::outcome::{Failure, Outcome};
use crate::terminal::Terminal;
use crate::words::Words;

pub(super) fn run(
    args: &ReportArgs,
    global: &GlobalArgs,
    terminal: Terminal,
) -> Result<Outcome, Failure> {
    let format = format(args)?;
    if let Some(file) = &args.output {
        refuse_to_overwrite(file, args.force)?;
    }
    write::check_call(format, args.output.as_deref(), global.json)?;
    let opened = open(&args.survey)?;
    let words = Words::of_survey(global, opened.survey.as_ref(), terminal)?;
    tell_problems(&opened, &words, terminal)?;
    let Some(gathered) = material::gather(args, &opened, &words, terminal)? else {
        return Ok(Outcome::Problems);
    };
    let us_units = words.format.profile() == language::UnitProfile::Us;
    let usual = Sheet::usual(words.language(), us_units, args.kind.is_card());
    let sheet = args.paper.unwrap_or(usual);
    let document =
        report::paper::document(args.kind, &Material::of(&gathered), sheet, words.of_paper())
            .map_err(Failure::input)?;
    let (bytes, pages) = write::bytes(&document, format)?;
    if let (Some(most), Some(pages)) = (document.pages, pages)
        && pages > most
    {
        terminal.note(&words.fill(
            "paper-more-pages",
            &[
                ("pages", &pages),
                ("most", &most),
                ("channels", &gathered.plan.channels.len()),
                ("changes", &gathered.plan.change_points.len()),
                ("paper", &sheet.name()),
            ],
        ))?;
    }
    match &args.output {
        Some(file) => {
            survey::replace(file, &bytes).map_err(Failure::input)?;
            let told = words
                .fill("paper-written", &[("kind", &document.title), ("file", &file.display())]);
            terminal.talk(&format!("{told}\n"))?;
            if global.json {
                terminal.document(&ReportDocument {
                    schema: "airtide.report/1".to_owned(),
                    kind: args.kind.name().to_owned(),
                    haul: gathered.plan.haul.clone(),
                    plan: gathered.issue.as_ref().map(|issue| issue.id.clone()),
                    breaks_a_limit: gathered.plan.breaks_a_limit,
                    file: file.display().to_string(),
                    pages,
                })?;
            }
        }
        None => Terminal::bytes(&bytes)?,
    }
    let sound = !gathered.plan.breaks_a_limit && opened.errors().next().is_none();
    Ok(if sound { Outcome::Done } else { Outcome::Problems })
}

/// The form asked for, else that of the file's ending.
fn format(args: &ReportArgs) -> Result<PaperFormat, Failure> {
    if let Some(format) = args.format {
        return Ok(format);
    }
    let Some(file) = &args.output else { return Ok(PaperFormat::Pdf) };
    let ending = file.extension().map(std::ffi::OsStr::to_ascii_lowercase);
    match ending.as_ref().and_then(|ending| ending.to_str()) {
        Some("pdf") => Ok(PaperFormat::Pdf),
        Some("html" | "htm") => Ok(PaperFormat::Html),
        Some("xlsx") => Ok(PaperFormat::Xlsx),
        _ => Err(Failure::call(anyhow::anyhow!(
            "'{}' ends in none of .pdf, .html, .xlsx; say the form with --format",
            file.display()
        ))),
    }
}
