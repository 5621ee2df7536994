//! What headings, title lines and the sizes of numbers tell about a table.

use crate::sheet::cell::{Cell, Sheet, letters};
use crate::sheet::mapping::{Layout, Mapping};
use crate::sheet::number::{self, Decimal};
use crate::sheet::unit::{LoadUnit, PressureUnit, SpeedUnit};
use crate::sheet::word::{fitment_in, speed_in};

/// A mapping under way, with what had to be guessed.
pub(super) struct Guess {
    pub mapping: Mapping,
    pub reasons: Vec<String>,
    pub incomplete: bool,
}

/// A sheet seen from a row of headings.
pub(super) struct Clues<'a> {
    pub sheet: &'a Sheet,
    /// The heading row, from zero.
    pub heading: usize,
    pub decimal: Decimal,
    /// The name of the sheet and every line above the headings.
    pub titles: String,
}

impl<'a> Clues<'a> {
    pub fn new(sheet: &'a Sheet, heading: usize) -> Self {
        let decimal = number::guess(sheet.rows.iter().flatten());
        let lines = (0..heading).map(|row| sheet.row_text(row));
        let titles =
            std::iter::once(sheet.name.clone()).chain(lines).collect::<Vec<_>>().join("\n");
        Self { sheet, heading, decimal, titles }
    }

    /// The number a cell begins with, unless it is a speed as titles and headings write it.
    pub fn number(&self, row: usize, column: usize) -> Option<f64> {
        let written = number::read(self.sheet.cell(row, column), self.decimal)?;
        SpeedUnit::named_in(&written.rest).is_none().then_some(written.value)
    }

    /// Rows below the headings with a number in at least one of the columns.
    pub fn data_rows(&self, columns: &[usize]) -> Vec<usize> {
        let rows = self.heading + 1..self.sheet.rows.len();
        rows.filter(|row| columns.iter().any(|c| self.number(*row, *c).is_some())).collect()
    }

    /// The middle one of the numbers below the headings; zero without any.
    pub fn median(&self, columns: &[usize]) -> f64 {
        let rows = self.heading + 1..self.sheet.rows.len();
        let mut numbers: Vec<f64> =
            rows.flat_map(|row| columns.iter().filter_map(move |c| self.number(row, *c))).collect();
        numbers.sort_by(f64::total_cmp);
        numbers.get(numbers.len() / 2).copied().unwrap_or(0.0)
    }

    /// The heading of a column with text right above or below it, where units stand.
    pub fn heading_text(&self, column: usize) -> String {
        let text = |row: usize| match self.sheet.cell(row, column) {
            Cell::Text(text) if number::read_text(text, self.decimal).is_none() => text.clone(),
            _ => String::new(),
        };
        let own = self.sheet.cell(self.heading, column).text();
        let below = text(self.heading + 1);
        let above = self.heading.checked_sub(1).map(text).unwrap_or_default();
        [own, below, above].join(" ")
    }

    /// What to call a column: its heading if no other has the same, else its letters.
    pub fn name(&self, column: usize) -> String {
        let heading = |column| self.sheet.cell(self.heading, column).text().to_lowercase();
        let own = heading(column);
        let alike = (0..self.sheet.width()).filter(|other| heading(*other) == own).count();
        let text = self.sheet.cell(self.heading, column).text();
        if own.is_empty() || alike > 1 { letters(column) } else { text }
    }

    /// A mapping with units, still without columns, speed and fitment.
    pub fn start(
        &self,
        layout: Layout,
        pressures: Found<PressureUnit>,
        loads: Found<LoadUnit>,
    ) -> Guess {
        let mut reasons = Vec::new();
        let pressure_unit = pressures.written.unwrap_or_else(|| {
            let unit = match pressures.median {
                ..15.0 => PressureUnit::Bar,
                15.0..175.0 => PressureUnit::Psi,
                _ => PressureUnit::Kilopascal,
            };
            reasons.push(format!("no unit of pressure is written; {unit} fits the numbers"));
            unit
        });
        let load_unit = loads.written.unwrap_or_else(|| {
            let unit = match (loads.median, pressure_unit) {
                (..50.0, _) => LoadUnit::Tonne,
                (_, PressureUnit::Psi) => LoadUnit::Pound,
                _ => LoadUnit::Kilogram,
            };
            reasons.push(format!("no unit of load is written; {unit} goes with {pressure_unit}"));
            unit
        });
        let mapping = Mapping {
            layout,
            sheet: self.sheet.in_workbook.then(|| self.sheet.name.clone()),
            header_row: self.heading + 1,
            last_row: None,
            decimal: self.decimal,
            load_unit,
            load_column: None,
            pressure_unit,
            pressure_column: None,
            speed_unit: None,
            speed_column: None,
            speed: None,
            fitment_column: None,
            fitment: None,
            hold_distance_column: None,
            hold_distance_unit: None,
            first_value_column: None,
            last_value_column: None,
            block_titles: false,
            repeat_blanks: false,
        };
        Guess { mapping, reasons, incomplete: false }
    }

    /// The unit of speeds: written in one of the texts or the titles, else what goes with the pressures.
    pub fn speed_unit(&self, texts: &[String], guess: &mut Guess) -> SpeedUnit {
        let mut texts = texts.iter().chain([&self.titles]);
        texts.find_map(|text| SpeedUnit::named_in(text)).unwrap_or_else(|| {
            let unit = match guess.mapping.pressure_unit {
                PressureUnit::Psi => SpeedUnit::MilesPerHour,
                _ => SpeedUnit::KilometersPerHour,
            };
            let with = guess.mapping.pressure_unit;
            guess.reasons.push(format!("no unit of speed is written; {unit} goes with {with}"));
            unit
        })
    }

    /// Speed and fitment for a table that has no column of them: from lines between the rows, else
    /// from the titles, else missing.
    pub fn complete(&self, guess: &mut Guess, columns: &[usize]) {
        let lines: Vec<String> = (self.heading + 1..self.sheet.rows.len())
            .filter(|row| columns.iter().all(|c| self.number(*row, *c).is_none()))
            .map(|row| self.sheet.row_text(row))
            .collect();
        let mapping = &mut guess.mapping;
        let held = mapping.layout == Layout::SpeedColumns || mapping.speed_column.is_some();
        if !held {
            if lines.iter().any(|line| speed_in(line, None).is_some()) {
                mapping.block_titles = true;
            } else if let Some(speed) = speed_in(&self.titles, None) {
                let (number, unit) = match SpeedUnit::named_in(&self.titles) {
                    Some(SpeedUnit::MilesPerHour) => (speed.as_mph(), SpeedUnit::MilesPerHour),
                    _ => (speed.as_kmh(), SpeedUnit::KilometersPerHour),
                };
                mapping.speed = Some(format!("{} {unit}", (number * 1e3).round() / 1e3));
            } else {
                guess.incomplete = true;
                guess.reasons.push("the sheet does not say the speed; fill in `speed`".to_owned());
            }
        }
        if mapping.fitment_column.is_none() {
            if lines.iter().any(|line| fitment_in(line).is_some()) {
                mapping.block_titles = true;
            } else if let Some(fitment) = self.titles.lines().find_map(fitment_in) {
                mapping.fitment = Some(fitment.into());
            } else {
                guess.incomplete = true;
                let missing = "the sheet does not say single or dual; fill in `fitment`";
                guess.reasons.push(missing.to_owned());
            }
        }
    }

    /// Whether a cell of these columns is blank beside a row of values.
    pub fn has_blanks(&self, labels: &[usize], values: &[usize]) -> bool {
        let rows = self.data_rows(values);
        rows.iter().any(|row| labels.iter().any(|c| self.sheet.cell(*row, *c).is_blank()))
    }
}

/// A unit as far as it is written, and the middle number it would belong to.
#[derive(Clone, Copy)]
pub(super) struct Found<U> {
    pub written: Option<U>,
    pub median: f64,
}
