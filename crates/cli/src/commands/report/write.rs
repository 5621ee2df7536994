//! The bytes of a document in the form asked for; what this build cannot write is said.

use std::io::IsTerminal;
use std::path::Path;

use report::document::Document;

use crate::args::PaperFormat;
use crate::outcome::Failure;

/// What of the call can be judged before any work is done.
pub(super) fn check_call(
    format: PaperFormat,
    output: Option<&Path>,
    json: bool,
) -> Result<(), Failure> {
    if cfg!(not(feature = "paper")) && format != PaperFormat::Html {
        return Err(Failure::call(anyhow::anyhow!(
            "this build writes no {}; build airtide with --features paper, or ask for --format html",
            if format == PaperFormat::Pdf { "PDF" } else { "XLSX" }
        )));
    }
    if json && output.is_none() {
        return Err(Failure::call(anyhow::anyhow!(
            "--json tells about the file written; name it with --output"
        )));
    }
    if output.is_none() && format != PaperFormat::Html && std::io::stdout().is_terminal() {
        return Err(Failure::call(anyhow::anyhow!(
            "a terminal shows no PDF or workbook; name a file with --output"
        )));
    }
    Ok(())
}

/// The bytes, and the pages where the form has any.
#[cfg(feature = "paper")]
pub(super) fn bytes(
    document: &Document,
    format: PaperFormat,
) -> Result<(Vec<u8>, Option<usize>), Failure> {
    match format {
        PaperFormat::Html => Ok((report::html::html(document).into_bytes(), None)),
        PaperFormat::Xlsx => Ok((report::xlsx::xlsx(document).map_err(Failure::input)?, None)),
        PaperFormat::Pdf => {
            let pressed = press::pdf(document).map_err(Failure::input)?;
            Ok((pressed.pdf, Some(pressed.pages)))
        }
    }
}

/// The bytes; other forms were refused before.
#[cfg(not(feature = "paper"))]
pub(super) fn bytes(
    document: &Document,
    format: PaperFormat,
) -> Result<(Vec<u8>, Option<usize>), Failure> {
    check_call(format, None, false)?;
    Ok((report::html::html(document).into_bytes(), None))
}
