//! `airtide check`

use study::{IssuedProblem, issued, issued_problems};
use survey::Severity;
use view::CheckDocument;

use super::opened::{counts, one_line, open};
use crate::args::{CheckArgs, GlobalArgs};
use crate::outcome::{Failure, Outcome};
use crate::terminal::Terminal;
use crate::words::Words;

pub(super) fn run(
    args: &CheckArgs,
    global: &GlobalArgs,
    terminal: Terminal,
) -> Result<Outcome, Failure> {
    let opened = open(&args.survey)?;
    let words = Words::of_survey(global, opened.survey.as_ref(), terminal)?;
    let of_plans = issued_problems(&opened, &issued(&opened.folder));
    if global.json {
        terminal.document(&CheckDocument::new(&opened.problems, &of_plans))?;
    } else {
        let color = terminal.colors_output();
        let mut told: String = opened
            .problems
            .iter()
            .map(|problem| {
                // Without a file there are no lines to show.
                if args.brief || problem.file.is_empty() {
                    one_line(problem, &opened)
                } else {
                    survey::report(std::slice::from_ref(problem), &opened.folder, color)
                }
            })
            .collect();
        told.extend(of_plans.iter().map(|problem| format!("{problem}\n")));
        terminal.data(&told)?;
    }
    let errors = opened.errors().count() + errors(&of_plans);
    let warnings = opened.problems.len() + of_plans.len() - errors;
    terminal.talk(&format!("{}\n", counts(errors, warnings, &words)))?;
    terminal.talk(&summary(&opened, &words))?;
    Ok(if errors > 0 { Outcome::Problems } else { Outcome::Done })
}

fn errors(of_plans: &[IssuedProblem]) -> usize {
    of_plans.iter().filter(|problem| problem.severity() == Severity::Error).count()
}

/// How tables were read, and which hauls can be planned.
fn summary(opened: &study::Opened, words: &Words) -> String {
    let mut text = String::new();
    if let Some(survey) = &opened.survey {
        for import in &survey.imports {
            let args: [(&str, &dyn std::fmt::Display); 2] =
                [("tire", &import.tire), ("table", &import.table)];
            text.push_str(&words.fill("check-import", &args));
            text.push('\n');
            for sentence in &import.read_so {
                text.extend(["  - ", sentence, "\n"]);
            }
        }
        let sound: Vec<&str> = survey.hauls.iter().map(|haul| haul.name.as_str()).collect();
        let left_out: Vec<&str> = survey
            .haul_names
            .iter()
            .map(String::as_str)
            .filter(|name| !sound.contains(name))
            .collect();
        for (key, hauls) in [("check-sound", sound), ("check-left-out", left_out)] {
            if !hauls.is_empty() {
                text.push_str(&words.fill(key, &[("hauls", &hauls.join(", "))]));
                text.push('\n');
            }
        }
    }
    text
}
