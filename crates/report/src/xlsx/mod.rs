//! A document as a workbook: real numbers with their formats and units, and a sheet of sources.

mod sheet;

#[cfg(test)]
mod tests;

use rust_xlsxwriter::{Format, Workbook, XlsxError};

use crate::document::Document;

/// Writes the workbook: the document on the first sheet, its sources on the second.
///
/// # Errors
/// [`XlsxError`] where a sheet would pass what the format can hold.
pub fn xlsx(document: &Document) -> Result<Vec<u8>, XlsxError> {
    let mut book = Workbook::new();
    // The same plan gives the same bytes: no time of day in the file.
    let epoch = rust_xlsxwriter::ExcelDateTime::from_ymd(2000, 1, 1)?;
    let properties = rust_xlsxwriter::DocProperties::new()
        .set_title(&document.title)
        .set_author(&document.stamp.responsible)
        .set_comment(&document.stamp.plan)
        .set_creation_datetime(&epoch);
    book.set_properties(&properties);
    sheet::document(book.add_worksheet(), document)?;
    let sources = book.add_worksheet();
    sources.set_name(sheet::name(&document.words.sources))?;
    let head = Format::new().set_bold().set_text_wrap();
    for (column, text) in (0..).zip(&document.words.source_columns) {
        sources.write_string_with_format(0, column, text, &head)?;
        sources.set_column_width(column, 40)?;
    }
    let wrap = Format::new().set_text_wrap();
    for (row, source) in (1..).zip(&document.sources) {
        for (column, text) in (0..).zip([&source.what, &source.source, &source.standing]) {
            sources.write_string_with_format(row, column, text, &wrap)?;
        }
    }
    book.save_to_buffer()
}
