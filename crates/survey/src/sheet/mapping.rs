//! How the cells of a maker's sheet are to be read: written by the user or proposed.

use model::tire::Fitment;
use quantity::Speed;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::cell::{Sheet, column_of, letters};
use super::number::{Decimal, read};
use super::unit::{DistanceUnit, LoadUnit, PressureUnit, SpeedUnit};
use super::word::speed_in;

/// How the table lies in the sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub enum Layout {
    /// One row for each load, speed and pressure.
    #[serde(rename = "list")]
    List,
    /// Pressures across in the heading row, loads in the cells.
    #[serde(rename = "pressure columns")]
    PressureColumns,
    /// Speeds across in the heading row; loads down and pressures in the cells, or the other way.
    #[serde(rename = "speed columns")]
    SpeedColumns,
}

impl std::fmt::Display for Layout {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(match self {
            Self::List => "list",
            Self::PressureColumns => "pressure columns",
            Self::SpeedColumns => "speed columns",
        })
    }
}

/// Single or dual, where the whole table is for one of them.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "lowercase")]
pub enum FixedFitment {
    /// One tire at each end of the axle.
    Single,
    /// Two tires side by side.
    Dual,
}

impl From<FixedFitment> for Fitment {
    fn from(fixed: FixedFitment) -> Self {
        match fixed {
            FixedFitment::Single => Self::Single,
            FixedFitment::Dual => Self::Dual,
        }
    }
}

impl From<Fitment> for FixedFitment {
    fn from(fitment: Fitment) -> Self {
        match fitment {
            Fitment::Single => Self::Single,
            Fitment::Dual => Self::Dual,
        }
    }
}

/// How to read a maker's sheet, as `[maker_rows_mapping]` of a tire file says it.
///
/// Columns are named by their heading or by their letters; a heading wins. A unit written in a
/// cell itself wins over the unit named here.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Mapping {
    /// How the table lies.
    pub layout: Layout,
    /// Name of the sheet, where the workbook has several.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub sheet: Option<String>,
    /// Number of the row with the headings, from 1 as the spreadsheet shows it.
    pub header_row: usize,
    /// Number of the last row of the table, if text or other tables follow.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub last_row: Option<usize>,
    /// The decimal sign in cells that hold text.
    #[serde(default)]
    pub decimal: Decimal,
    /// Unit of the loads.
    pub load_unit: LoadUnit,
    /// Column of the loads, where they stand in one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub load_column: Option<String>,
    /// Unit of the pressures.
    pub pressure_unit: PressureUnit,
    /// Column of the pressures, where they stand in one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pressure_column: Option<String>,
    /// Unit of the speeds in the sheet.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub speed_unit: Option<SpeedUnit>,
    /// Column of the speeds, where they stand in one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub speed_column: Option<String>,
    /// The speed of every row, such as `65 mph`, where the table does not hold it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub speed: Option<String>,
    /// Column that says single or dual.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fitment_column: Option<String>,
    /// Single or dual for every row, where the table does not say it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fitment: Option<FixedFitment>,
    /// Column of the longest distance a row may be run at a time.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hold_distance_column: Option<String>,
    /// Unit of the hold distances.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hold_distance_unit: Option<DistanceUnit>,
    /// First of the columns across, by letters or heading; without it every heading that is a number.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub first_value_column: Option<String>,
    /// Last of the columns across.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub last_value_column: Option<String>,
    /// Whether lines of text between the rows give the speed or single and dual of those under them.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub block_titles: bool,
    /// Whether a blank cell in a column of loads, pressures, speeds or fitment repeats the one above.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub repeat_blanks: bool,
}

/// Why a mapping fits neither itself nor the sheet.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum MappingError {
    /// A column that the layout needs is not named.
    #[error("layout '{layout}' needs `{key}` in the mapping")]
    Needs {
        /// The layout.
        layout: Layout,
        /// The key, or keys of which one is needed.
        key: &'static str,
    },
    /// Two keys say the same thing twice, or one has no place in the layout.
    #[error("layout '{layout}' cannot have `{key}` {why}")]
    NoPlaceFor {
        /// The layout.
        layout: Layout,
        /// The key.
        key: &'static str,
        /// Beside what, or why not.
        why: &'static str,
    },
    /// No such column.
    #[error("`{key}`: no column '{name}' in row {row}; there are: {}", .headings.join(", "))]
    NoColumn {
        /// The key.
        key: &'static str,
        /// The name written.
        name: String,
        /// The heading row.
        row: usize,
        /// Letters and headings there are.
        headings: Vec<String>,
    },
    /// The heading row lies outside the sheet.
    #[error("`header_row` {row} is not in the sheet, which has {rows} rows")]
    NoHeaderRow {
        /// The row written.
        row: usize,
        /// Rows of the sheet.
        rows: usize,
    },
    /// No heading across is a number.
    #[error("no heading in row {row} is a number; check `header_row` and `decimal`")]
    NoNumbersAcross {
        /// The heading row.
        row: usize,
    },
    /// The fixed speed has no unit or no number.
    #[error("`speed` '{text}' is not a speed; write it like '65 mph' or '80 km/h'")]
    BadSpeed {
        /// What is written.
        text: String,
    },
}

/// A mapping with its columns found in a sheet.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Columns {
    pub load: Option<usize>,
    pub pressure: Option<usize>,
    pub speed: Option<usize>,
    pub fitment: Option<usize>,
    pub hold_distance: Option<usize>,
    pub across: Vec<usize>,
    pub fixed_speed: Option<Speed>,
}

impl Mapping {
    /// Rows of the table, counted from zero.
    pub(super) fn body(&self, sheet: &Sheet) -> std::ops::Range<usize> {
        self.header_row..self.last_row.unwrap_or(usize::MAX).min(sheet.rows.len())
    }

    /// Finds the columns.
    ///
    /// # Errors
    /// [`MappingError`] if the mapping fits neither itself nor the sheet.
    pub(super) fn find(&self, sheet: &Sheet) -> Result<Columns, MappingError> {
        self.check()?;
        if !(1..=sheet.rows.len()).contains(&self.header_row) {
            let (row, rows) = (self.header_row, sheet.rows.len());
            return Err(MappingError::NoHeaderRow { row, rows });
        }
        let column = |key, name: &Option<String>| {
            name.as_ref().map(|name| self.column(sheet, key, name)).transpose()
        };
        let mut columns = Columns {
            load: column("load_column", &self.load_column)?,
            pressure: column("pressure_column", &self.pressure_column)?,
            speed: column("speed_column", &self.speed_column)?,
            fitment: column("fitment_column", &self.fitment_column)?,
            hold_distance: column("hold_distance_column", &self.hold_distance_column)?,
            across: Vec::new(),
            fixed_speed: self.fixed_speed()?,
        };
        if self.layout != Layout::List {
            let first = column("first_value_column", &self.first_value_column)?.unwrap_or(0);
            let last = column("last_value_column", &self.last_value_column)?;
            let last = last.unwrap_or(sheet.width().saturating_sub(1));
            let named = [columns.load, columns.pressure, columns.speed, columns.fitment];
            columns.across = (first..=last)
                .filter(|column| !named.contains(&Some(*column)))
                .filter(|column| self.heading_is_number(sheet, *column))
                .collect();
            if columns.across.is_empty() {
                return Err(MappingError::NoNumbersAcross { row: self.header_row });
            }
        }
        Ok(columns)
    }

    fn heading_is_number(&self, sheet: &Sheet, column: usize) -> bool {
        let heading = sheet.cell(self.header_row - 1, column);
        let speed = || speed_in(&heading.text(), self.speed_unit).is_some();
        read(heading, self.decimal).is_some() || (self.layout == Layout::SpeedColumns && speed())
    }

    fn fixed_speed(&self) -> Result<Option<Speed>, MappingError> {
        let parse = |text: &String| {
            let bad = || MappingError::BadSpeed { text: text.clone() };
            text.parse().or_else(|_| speed_in(text, None).ok_or_else(bad))
        };
        self.speed.as_ref().map(parse).transpose()
    }

    fn column(&self, sheet: &Sheet, key: &'static str, name: &str) -> Result<usize, MappingError> {
        let row = self.header_row - 1;
        let same = |column: &usize| {
            sheet.cell(row, *column).text().to_lowercase() == name.trim().to_lowercase()
        };
        let lettered = || column_of(name.trim()).filter(|column| *column < sheet.width());
        (0..sheet.width()).find(same).or_else(lettered).ok_or_else(|| {
            let shown =
                |column| format!("{} '{}'", letters(column), sheet.cell(row, column).text());
            let headings = (0..sheet.width()).map(shown).collect();
            MappingError::NoColumn { key, name: name.to_owned(), row: self.header_row, headings }
        })
    }

    /// Whether each value has exactly one place.
    fn check(&self) -> Result<(), MappingError> {
        let layout = self.layout;
        let needs = |key| Err(MappingError::Needs { layout, key });
        let twice = |key, why| Err(MappingError::NoPlaceFor { layout, key, why });
        let (load, pressure) = (self.load_column.is_some(), self.pressure_column.is_some());
        let across = "because they stand across";
        match layout {
            Layout::List if !load => return needs("load_column"),
            Layout::List if !pressure => return needs("pressure_column"),
            Layout::PressureColumns if pressure => return twice("pressure_column", across),
            Layout::PressureColumns if load => {
                return twice("load_column", "because the loads stand in the cells");
            }
            Layout::SpeedColumns if load == pressure => {
                return needs("load_column` or `pressure_column");
            }
            Layout::SpeedColumns if self.speed_column.is_some() => {
                return twice("speed_column", across);
            }
            Layout::SpeedColumns if self.speed.is_some() => return twice("speed", across),
            _ => {}
        }
        if self.speed.is_some() && self.speed_column.is_some() {
            return twice("speed", "beside `speed_column`");
        }
        if self.fitment.is_some() && self.fitment_column.is_some() {
            return twice("fitment", "beside `fitment_column`");
        }
        let speed = self.speed.is_some() || self.speed_column.is_some() || self.block_titles;
        if layout != Layout::SpeedColumns && !speed {
            return needs("speed` (such as '65 mph'), `speed_column` or `block_titles");
        }
        if self.fitment.is_none() && self.fitment_column.is_none() && !self.block_titles {
            return needs("fitment`, `fitment_column` or `block_titles");
        }
        if self.hold_distance_column.is_some() && self.hold_distance_unit.is_none() {
            return needs("hold_distance_unit");
        }
        Ok(())
    }

    /// The mapping in plain sentences, to show before rows are taken over.
    pub fn describe(&self) -> Vec<String> {
        let mut told = Vec::new();
        let headings = self
            .sheet
            .as_ref()
            .map_or("Headings".to_owned(), |name| format!("Sheet '{name}': headings"));
        let end = self.last_row.map_or("the end".to_owned(), |row| format!("row {row}"));
        told.push(format!("{headings} in row {}, table to {end}.", self.header_row));
        let in_column = |column: &Option<String>| {
            column.as_ref().map_or("in the cells".to_owned(), |name| format!("in column '{name}'"))
        };
        let span = match (&self.first_value_column, &self.last_value_column) {
            (Some(first), Some(last)) => format!("across in columns '{first}' to '{last}'"),
            _ => "across, wherever the heading is a number".to_owned(),
        };
        let pressures = match self.layout {
            Layout::PressureColumns => span.clone(),
            _ => in_column(&self.pressure_column),
        };
        told.push(format!(
            "Loads on one tire: {}, in {}.",
            in_column(&self.load_column),
            self.load_unit
        ));
        told.push(format!("Cold pressures: {pressures}, in {}.", self.pressure_unit));
        let unit = self.speed_unit.map_or(String::new(), |unit| format!(", in {unit}"));
        told.push(match (&self.speed, &self.speed_column, self.layout) {
            (_, _, Layout::SpeedColumns) => format!("Highest speeds: {span}{unit}."),
            (Some(speed), ..) => format!("Highest speed: {speed} for every row."),
            (None, Some(_), _) => {
                format!("Highest speeds: {}{unit}.", in_column(&self.speed_column))
            }
            (None, None, _) if self.block_titles => {
                format!("Highest speeds: in lines of text above the rows{unit}.")
            }
            _ => "Highest speed: not known; write `speed`, such as '65 mph'.".to_owned(),
        });
        told.push(match (self.fitment, &self.fitment_column) {
            (Some(FixedFitment::Single), _) => "Every row is for single tires.".to_owned(),
            (Some(FixedFitment::Dual), _) => "Every row is for dual tires.".to_owned(),
            (None, Some(_)) => format!("Single or dual: {}.", in_column(&self.fitment_column)),
            (None, None) if self.block_titles => {
                "Single or dual: in lines of text above the rows.".to_owned()
            }
            _ => "Single or dual: not known; write `fitment`.".to_owned(),
        });
        if let (Some(_), Some(unit)) = (&self.hold_distance_column, self.hold_distance_unit) {
            told.push(format!(
                "Hold distances: {}, in {unit}.",
                in_column(&self.hold_distance_column)
            ));
        }
        if self.repeat_blanks {
            told.push("A blank cell beside a value repeats the cell above.".to_owned());
        }
        told.push(match self.decimal {
            Decimal::Point => {
                "6,175.5 is six thousand: the point stands before decimals.".to_owned()
            }
            Decimal::Comma => {
                "6.175,5 is six thousand: the comma stands before decimals.".to_owned()
            }
        });
        told
    }
}
