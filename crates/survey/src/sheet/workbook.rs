//! Sheets out of the bytes of a workbook or a text table.

use std::io::Cursor;

use calamine::{Data, Dimensions, Reader, Sheets, open_workbook_auto_from_rs};

use super::cell::{Cell, Sheet};
use super::delimited;
use super::problem::SheetError;

/// Reads every sheet of an XLSX, XLSB, XLS or ODS workbook, or a table of text as one sheet.
///
/// Cells merged with others (XLSX and XLS) all show what the merged cell shows.
///
/// # Errors
/// [`SheetError`] if the file is empty or no workbook or table.
pub fn read_sheets(bytes: &[u8], file_name: &str) -> Result<Vec<Sheet>, SheetError> {
    let file = || file_name.to_owned();
    let packed = bytes.starts_with(b"PK");
    if packed || bytes.starts_with(&[0xD0, 0xCF, 0x11, 0xE0]) {
        return workbook(bytes).map_err(|detail| SheetError::Unreadable { file: file(), detail });
    }
    let text = super::decode(bytes);
    if text.trim().is_empty() {
        return Err(SheetError::Empty { file: file() });
    }
    if text.contains('\0') {
        let detail = "neither a workbook nor a table of text".to_owned();
        return Err(SheetError::Unreadable { file: file(), detail });
    }
    Ok(vec![table(&text, file_name)?])
}

fn table(text: &str, file_name: &str) -> Result<Sheet, SheetError> {
    let mut sheet = Sheet { name: file_name.to_owned(), in_workbook: false, rows: Vec::new() };
    for record in delimited::records(text, delimited::separator(text)) {
        let (line, record) = record.map_err(|cause| SheetError::Unreadable {
            file: file_name.to_owned(),
            detail: cause.to_string(),
        })?;
        sheet.rows.resize(line.saturating_sub(1).max(sheet.rows.len()), Vec::new());
        let cell = |text: &str| match text.trim() {
            "" => Cell::Blank,
            text => Cell::Text(text.to_owned()),
        };
        sheet.rows.push(record.iter().map(cell).collect());
    }
    Ok(sheet)
}

fn workbook(bytes: &[u8]) -> Result<Vec<Sheet>, String> {
    let mut book = open_workbook_auto_from_rs(Cursor::new(bytes)).map_err(|e| e.to_string())?;
    let mut sheets = Vec::new();
    for name in book.sheet_names() {
        let range = book.worksheet_range(&name).map_err(|e| format!("sheet '{name}': {e}"))?;
        let merged = merged(&mut book, &name)?;
        let (top, left) = range.start().map_or((0, 0), |(row, column)| (index(row), index(column)));
        let mut rows = vec![Vec::new(); top];
        for cells in range.rows() {
            let mut row = vec![Cell::Blank; left];
            row.extend(cells.iter().map(cell));
            rows.push(row);
        }
        for region in &merged {
            spread(&mut rows, region);
        }
        sheets.push(Sheet { name, in_workbook: true, rows });
    }
    Ok(sheets)
}

fn index(number: u32) -> usize {
    usize::try_from(number).unwrap_or(usize::MAX)
}

fn cell(data: &Data) -> Cell {
    match data {
        Data::Empty => Cell::Blank,
        Data::Int(value) => Cell::Number(*value as f64),
        Data::Float(value) => Cell::Number(*value),
        Data::String(text) if text.trim().is_empty() => Cell::Blank,
        Data::DateTime(day) if day.is_datetime() => {
            let (year, month, day, ..) = day.to_ymd_hms_milli();
            Cell::Day(format!("{year:04}-{month:02}-{day:02}"))
        }
        Data::DateTime(_) => Cell::Text("a time".to_owned()),
        Data::DateTimeIso(text) => Cell::Day(text.chars().take(10).collect()),
        other => Cell::Text(other.to_string()),
    }
}

fn merged(book: &mut Sheets<Cursor<&[u8]>>, name: &str) -> Result<Vec<Dimensions>, String> {
    match book {
        Sheets::Xlsx(xlsx) => xlsx.merge_cells_by_sheet_name(name).map_err(|e| e.to_string()),
        Sheets::Xls(xls) => xls.merge_cells_by_sheet_name(name).map_err(|e| e.to_string()),
        Sheets::Xlsb(_) | Sheets::Ods(_) => Ok(Vec::new()),
    }
}

fn spread(rows: &mut [Vec<Cell>], region: &Dimensions) {
    let ((top, left), (bottom, right)) = (region.start, region.end);
    let shown = rows.get(index(top)).and_then(|row| row.get(index(left))).cloned();
    let Some(shown) = shown.filter(|cell| !cell.is_blank()) else { return };
    for row in rows.iter_mut().take(index(bottom) + 1).skip(index(top)) {
        let width = row.len();
        for cell in &mut row[index(left).min(width)..(index(right) + 1).min(width)] {
            *cell = shown.clone();
        }
    }
}
