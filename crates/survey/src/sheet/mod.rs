//! Rows of a maker's load-inflation document, from workbooks and tables of text.
//!
//! Makers print such tables in many ways. A [`Mapping`] says how one sheet is to be read; the user
//! writes it in the tire file or takes one that [`propose`] offers, sees it in words by
//! [`Mapping::describe`], and [`import`] follows it to the letter. Cells that cannot be read or
//! cannot be true are told as a [`SheetProblem`] with their address.

mod cell;
mod delimited;
mod encoding;
mod mapping;
mod number;
mod problem;
mod propose;
mod rows;
mod sanity;
mod unit;
mod word;
mod workbook;

#[cfg(test)]
mod layouts;

use model::tire::MakerRow;

pub use cell::{Cell, Sheet};
pub(crate) use delimited::records;
pub(crate) use encoding::decode;
pub use mapping::{FixedFitment, Layout, Mapping, MappingError};
pub use number::Decimal;
pub use problem::{CellPlace, Fault, SheetError, SheetProblem, Wanted};
pub use propose::{Confidence, Proposal, propose};
pub use unit::{DistanceUnit, LoadUnit, PressureUnit, SpeedUnit};
pub use workbook::read_sheets;

/// Reads a maker's rows out of a workbook or a table of text as the mapping says.
///
/// Rows come in the order of the sheet. A cell that gives no row is among the problems, as is
/// every line of text under the headings.
///
/// # Errors
/// [`SheetError`] if the file cannot be read, the sheet is not named or not there, or the mapping
/// does not fit.
///
/// ```
/// use survey::sheet::{import, propose, read_sheets};
/// let text = "Load (kg);Pressure (kPa);Max. speed (km/h);Fitment\n2500;480;25;dual\n2500;620;80;dual\n";
/// let sheets = read_sheets(text.as_bytes(), "rows.csv")?;
/// let proposal = propose(&sheets[0]).into_iter().next().ok_or("nothing recognized")?;
/// let (rows, problems) = import(text.as_bytes(), "rows.csv", &proposal.mapping)?;
/// assert_eq!((rows.len(), problems.len()), (2, 0));
/// assert!((rows[0].pressure.as_kpa() - 480.0).abs() < 1e-9);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn import(
    bytes: &[u8],
    file_name: &str,
    mapping: &Mapping,
) -> Result<(Vec<MakerRow>, Vec<SheetProblem>), SheetError> {
    let sheets = read_sheets(bytes, file_name)?;
    let file = || file_name.to_owned();
    let known = || sheets.iter().map(|sheet| sheet.name.clone()).collect();
    let sheet = match &mapping.sheet {
        Some(name) => sheets.iter().find(|sheet| sheet.name == *name).ok_or_else(|| {
            SheetError::NoSheet { file: file(), name: name.clone(), known: known() }
        })?,
        None if sheets.len() > 1 => {
            return Err(SheetError::SeveralSheets { file: file(), known: known() });
        }
        None => sheets.first().ok_or_else(|| SheetError::Empty { file: file() })?,
    };
    import_sheet(sheet, mapping).map_err(|cause| SheetError::Mapping { file: file(), cause })
}

fn import_sheet(
    sheet: &Sheet,
    mapping: &Mapping,
) -> Result<(Vec<MakerRow>, Vec<SheetProblem>), MappingError> {
    let columns = mapping.find(sheet)?;
    let reading = rows::read_rows(sheet, mapping, columns);
    let mut problems = reading.problems;
    let (kept, faults) = sanity::judge(reading.candidates, mapping);
    problems.extend(faults.into_iter().map(|(place, fault)| {
        let value = sheet.cell(place.row, place.column).text();
        SheetProblem { sheet: sheet.name.clone(), place, value, fault }
    }));
    problems.sort_by_key(|problem| problem.place);
    Ok((kept.into_iter().map(|candidate| candidate.row).collect(), problems))
}
