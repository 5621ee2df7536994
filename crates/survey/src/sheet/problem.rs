//! What is told about cells and rows of a sheet, and why a sheet cannot be read.

use quantity::{ColdPressure, Length, Mass, Speed};

use super::cell::letters;
use super::mapping::MappingError;
use super::unit::PressureUnit;

/// Address of a cell, as spreadsheets show it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct CellPlace {
    /// Row counted from zero.
    pub(super) row: usize,
    /// Column counted from zero.
    pub(super) column: usize,
}

impl CellPlace {
    /// Row number, from 1.
    pub fn row(self) -> usize {
        self.row + 1
    }

    /// Letters of the column.
    pub fn column(self) -> String {
        letters(self.column)
    }
}

impl std::fmt::Display for CellPlace {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{}{}", self.column(), self.row())
    }
}

/// Something to know about a cell or row of a sheet.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("sheet '{sheet}', cell {place} '{value}': {fault}")]
pub struct SheetProblem {
    /// Name of the sheet.
    pub sheet: String,
    /// The cell.
    pub place: CellPlace,
    /// What stands in it, or the text of the row.
    pub value: String,
    /// What about it.
    pub fault: Fault,
}

/// What a table's value is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Wanted {
    /// A load.
    Load,
    /// A cold pressure.
    Pressure,
    /// A speed.
    Speed,
    /// Single or dual.
    Fitment,
    /// A hold distance.
    HoldDistance,
}

impl std::fmt::Display for Wanted {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(match self {
            Self::Load => "a load",
            Self::Pressure => "a pressure",
            Self::Speed => "a highest speed",
            Self::Fitment => "single or dual",
            Self::HoldDistance => "a hold distance",
        })
    }
}

/// What is the matter with a cell or row.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum Fault {
    /// It does not read as what should stand there; the row is left out.
    #[error("is not {wanted}; row left out")]
    Unreadable {
        /// What should stand there.
        wanted: Wanted,
    },
    /// Nothing stands where a value is needed; the row is left out.
    #[error("{wanted} is missing; row left out")]
    Missing {
        /// What should stand there.
        wanted: Wanted,
    },
    /// No truck tire carries such a load; the row is left out.
    #[error("a load of {:.0} kg on one tire is not credible; check the unit; row left out", .load.as_kg())]
    ImplausibleLoad {
        /// The load read.
        load: Mass,
    },
    /// No truck tire runs at such a pressure; the row is left out.
    #[error("a cold pressure of {:.0} kPa is not credible{}; row left out", .pressure.as_kpa(), perhaps(*.likely))]
    ImplausiblePressure {
        /// The pressure read.
        pressure: ColdPressure,
        /// The unit in which the number would be credible.
        likely: Option<PressureUnit>,
    },
    /// No truck tire is rated for such a speed; the row is left out.
    #[error("a speed of {:.0} km/h is not credible; check the unit; row left out", .speed.as_kmh())]
    ImplausibleSpeed {
        /// The speed read.
        speed: Speed,
    },
    /// A hold distance of nothing or less; the row is left out.
    #[error("a hold distance of {:.2} km is no distance; row left out", .distance.as_km())]
    ImplausibleHold {
        /// The distance read.
        distance: Length,
    },
    /// A footnote hangs on the value; the row is used, but the footnote may limit it.
    #[error("carries a footnote mark: read the footnote, it may limit the row")]
    FootnoteMark,
    /// A row of text under the headings: a footnote or a title.
    #[error("a line of text, not a row; read it, it may limit the rows")]
    Remark,
    /// Cells of the table that hold nothing: no row for them.
    #[error("{count} cells of the table are empty, the first here; no row for them")]
    EmptyCells {
        /// How many.
        count: usize,
    },
    /// The same row stands in the sheet before; this one is left out.
    #[error("repeats {earlier}; row left out")]
    Repeats {
        /// The earlier cell.
        earlier: CellPlace,
    },
    /// Another row says otherwise for the same case; both are left out.
    #[error("contradicts {other} for the same fitment, speed and {same}; both left out")]
    Contradicts {
        /// The other cell.
        other: CellPlace,
        /// What else they share.
        same: Wanted,
    },
    /// A higher pressure carries less; kept.
    #[error("carries less than {lower} at a lower pressure; check both")]
    LoadFallsWithPressure {
        /// The cell with the lower pressure.
        lower: CellPlace,
    },
    /// A higher speed carries more; kept.
    #[error("carries more than {slower} at a lower speed and the same pressure; check both")]
    LoadRisesWithSpeed {
        /// The cell with the lower speed.
        slower: CellPlace,
    },
}

fn perhaps(likely: Option<PressureUnit>) -> String {
    likely.map_or_else(
        || "; check the unit".to_owned(),
        |unit| format!("; as {unit} the number would be"),
    )
}

impl Fault {
    /// Whether a value of the sheet did not become a row because of it.
    pub fn leaves_out(&self) -> bool {
        !matches!(
            self,
            Self::FootnoteMark
                | Self::Remark
                | Self::EmptyCells { .. }
                | Self::LoadFallsWithPressure { .. }
                | Self::LoadRisesWithSpeed { .. }
        )
    }
}

/// Why a sheet gives no rows.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum SheetError {
    /// Nothing in it.
    #[error("{file}: the file is empty")]
    Empty {
        /// The file.
        file: String,
    },
    /// Neither a workbook nor a table of text.
    #[error("{file}: cannot be read: {detail}; give XLSX, XLS, ODS or CSV")]
    Unreadable {
        /// The file.
        file: String,
        /// What the reader found.
        detail: String,
    },
    /// The sheet named is not there.
    #[error("{file}: no sheet '{name}'; there are: {}", .known.join(", "))]
    NoSheet {
        /// The file.
        file: String,
        /// The name asked for.
        name: String,
        /// The names there are.
        known: Vec<String>,
    },
    /// Several sheets, none named.
    #[error("{file}: name one of its sheets in `sheet`: {}", .known.join(", "))]
    SeveralSheets {
        /// The file.
        file: String,
        /// The names there are.
        known: Vec<String>,
    },
    /// The mapping does not fit itself or the sheet.
    #[error("{file}: {cause}")]
    Mapping {
        /// The file.
        file: String,
        /// What does not fit.
        cause: MappingError,
    },
}
