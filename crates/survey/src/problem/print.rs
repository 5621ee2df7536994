//! Problems as text: one line each, or with the lines of the file around them.

use std::fmt;

use ariadne::{Config, IndexType, Label, Report, ReportKind, Source};

use super::{Problem, Severity};
use crate::Folder;

/// `file:line:column: what — hint`, with `warning:` before what does not stop the haul.
impl fmt::Display for Problem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.file)?;
        if let Some(line) = self.line {
            write!(f, ":{line}")?;
        }
        if let Some(column) = self.column {
            write!(f, ":{column}")?;
        }
        f.write_str(": ")?;
        if self.severity == Severity::Warning {
            f.write_str("warning: ")?;
        }
        f.write_str(&self.message())?;
        match self.hint() {
            Some(hint) => write!(f, " — {hint}"),
            None => Ok(()),
        }
    }
}

/// All problems with the lines they stand on, for a terminal.
pub fn report(problems: &[Problem], folder: &Folder, color: bool) -> String {
    let mut text = Vec::new();
    for problem in problems {
        if !excerpt(problem, folder, color, &mut text) {
            text.extend_from_slice(problem.to_string().as_bytes());
            text.push(b'\n');
        }
    }
    String::from_utf8_lossy(&text).into_owned()
}

fn excerpt(problem: &Problem, folder: &Folder, color: bool, into: &mut Vec<u8>) -> bool {
    let Some(span) = problem.span.clone() else { return false };
    let Some(source) = folder.text(&problem.file) else { return false };
    let kind = match problem.severity {
        Severity::Error => ReportKind::Error,
        Severity::Warning => ReportKind::Warning,
    };
    let label = problem.key.clone().unwrap_or_else(|| "here".to_owned());
    let mut report = Report::build(kind, (problem.file.as_str(), span.clone()))
        .with_config(Config::default().with_color(color).with_index_type(IndexType::Byte))
        .with_message(problem.message())
        .with_label(Label::new((problem.file.as_str(), span)).with_message(label));
    if let Some(hint) = problem.hint() {
        report = report.with_help(hint);
    }
    report.finish().write((problem.file.as_str(), Source::from(source)), into).is_ok()
}
