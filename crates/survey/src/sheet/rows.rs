//! Rows out of a sheet by its mapping, cell by cell.

use model::tire::{Fitment, MakerRow};
use quantity::{ColdPressure, Length, Mass, NotFinite, Speed};

use super::cell::{Cell, Sheet};
use super::mapping::{Columns, Layout, Mapping};
use super::number::read;
use super::problem::{CellPlace, Fault, SheetProblem, Wanted};
use super::unit::{DistanceUnit, LoadUnit, PressureUnit, SpeedUnit};
use super::word::{fitment_in, speed_in};

/// A row with the cell it is known by: the load's in a list, the value's in a table.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Candidate {
    pub row: MakerRow,
    pub place: CellPlace,
}

/// Everything read so far.
pub(super) struct Reading<'a> {
    sheet: &'a Sheet,
    mapping: &'a Mapping,
    columns: Columns,
    block_speed: Option<Speed>,
    block_fitment: Option<Fitment>,
    first_empty: Option<CellPlace>,
    empty: usize,
    pub candidates: Vec<Candidate>,
    pub problems: Vec<SheetProblem>,
}

/// Reads every row of the table; nothing is judged but whether it can be read.
pub(super) fn read_rows<'a>(
    sheet: &'a Sheet,
    mapping: &'a Mapping,
    columns: Columns,
) -> Reading<'a> {
    let mut reading = Reading {
        sheet,
        mapping,
        columns,
        block_speed: None,
        block_fitment: None,
        first_empty: None,
        empty: 0,
        candidates: Vec::new(),
        problems: Vec::new(),
    };
    for row in 0..mapping.header_row - 1 {
        reading.take_block_title(&sheet.row_text(row));
    }
    for row in mapping.body(sheet) {
        if sheet.rows[row].iter().all(Cell::is_blank) || reading.repeats_headings(row) {
            continue;
        }
        if reading.is_text_line(row) {
            reading.text_line(row);
        } else if mapping.layout == Layout::List {
            reading.list_row(row);
        } else {
            reading.table_row(row);
        }
    }
    if let Some(place) = reading.first_empty {
        reading.problem(place, Fault::EmptyCells { count: reading.empty });
    }
    reading
}

impl Reading<'_> {
    fn problem(&mut self, place: CellPlace, fault: Fault) {
        let value = match fault {
            Fault::Remark => self.sheet.row_text(place.row),
            _ => self.sheet.cell(place.row, place.column).text(),
        };
        self.problems.push(SheetProblem { sheet: self.sheet.name.clone(), place, value, fault });
    }

    /// Whether a cell begins with a number that is not the speed of a title line.
    fn holds_value(&self, row: usize, column: usize) -> bool {
        read(self.sheet.cell(row, column), self.mapping.decimal)
            .is_some_and(|written| SpeedUnit::named_in(&written.rest).is_none())
    }

    /// Columns whose cells make a row of the table.
    fn value_columns(&self) -> Vec<usize> {
        match self.mapping.layout {
            Layout::List => self.columns.load.into_iter().chain(self.columns.pressure).collect(),
            _ => self.columns.across.clone(),
        }
    }

    fn repeats_headings(&self, row: usize) -> bool {
        let heading = self.mapping.header_row - 1;
        self.value_columns()
            .iter()
            .all(|column| self.sheet.cell(row, *column) == self.sheet.cell(heading, *column))
    }

    /// No number where values stand, and not two different texts either: that is a spoiled row.
    fn is_text_line(&self, row: usize) -> bool {
        let columns = self.value_columns();
        let mut texts: Vec<String> = columns
            .iter()
            .map(|column| self.sheet.cell(row, *column))
            .filter(|cell| !cell.is_empty())
            .map(Cell::text)
            .collect();
        texts.dedup();
        texts.len() <= 1 && !columns.iter().any(|column| self.holds_value(row, *column))
    }

    /// A line of text that gives the speed or fitment of the rows under it.
    fn take_block_title(&mut self, text: &str) -> bool {
        let (speed, fitment) = (speed_in(text, None), fitment_in(text));
        let taken = self.mapping.block_titles && (speed.is_some() || fitment.is_some());
        if taken {
            self.block_speed = speed.or(self.block_speed);
            self.block_fitment = fitment.or(self.block_fitment);
        }
        taken
    }

    fn text_line(&mut self, row: usize) {
        if !self.take_block_title(&self.sheet.row_text(row)) {
            let column = self.sheet.rows[row].iter().position(|cell| !cell.is_blank());
            self.problem(CellPlace { row, column: column.unwrap_or(0) }, Fault::Remark);
        }
    }

    /// The cell beside the values, or where blanks repeat, the nearest above that is not blank.
    fn label(&self, row: usize, column: usize) -> &Cell {
        let mut above =
            (self.mapping.header_row..=row).rev().map(|row| self.sheet.cell(row, column));
        let own = self.sheet.cell(row, column);
        if !self.mapping.repeat_blanks {
            return own;
        }
        above.find(|cell| !cell.is_blank()).unwrap_or(own)
    }

    fn refuse<T>(&mut self, place: CellPlace, blank: bool, wanted: Wanted) -> Option<T> {
        let fault = if blank { Fault::Missing { wanted } } else { Fault::Unreadable { wanted } };
        self.problem(place, fault);
        None
    }

    /// Reads a number with its own unit or the mapping's.
    fn quantity<U, Q>(
        &mut self,
        place: CellPlace,
        wanted: Wanted,
        unit: Option<U>,
        named: impl Fn(&str) -> Option<U>,
        convert: impl Fn(U, f64) -> Result<Q, NotFinite>,
    ) -> Option<Q> {
        let cell = self.label(place.row, place.column);
        let (blank, written) = (cell.is_empty(), read(cell, self.mapping.decimal));
        let own = written.as_ref().and_then(|written| named(&written.rest));
        let unit = match &written {
            Some(written) if written.rest.is_empty() => unit,
            _ => own,
        };
        let found = written
            .zip(unit)
            .and_then(|(written, unit)| Some((convert(unit, written.value).ok()?, written.marked)));
        let Some((quantity, marked)) = found else { return self.refuse(place, blank, wanted) };
        if marked {
            self.problem(place, Fault::FootnoteMark);
        }
        Some(quantity)
    }

    fn load(&mut self, place: CellPlace, unit: LoadUnit) -> Option<Mass> {
        self.quantity(place, Wanted::Load, Some(unit), LoadUnit::named_in, LoadUnit::load)
    }

    fn pressure(&mut self, place: CellPlace) -> Option<ColdPressure> {
        let unit = Some(self.mapping.pressure_unit);
        self.quantity(place, Wanted::Pressure, unit, PressureUnit::named_in, PressureUnit::pressure)
    }

    fn speed(&mut self, row: usize, fallback: CellPlace) -> Option<Speed> {
        if let Some(fixed) = self.columns.fixed_speed {
            return Some(fixed);
        }
        let Some(column) = self.columns.speed else {
            return self.block_speed.or_else(|| self.refuse(fallback, true, Wanted::Speed));
        };
        let cell = self.label(row, column);
        let (blank, speed) = (cell.is_empty(), speed_in(&cell.text(), self.mapping.speed_unit));
        speed.or_else(|| self.refuse(CellPlace { row, column }, blank, Wanted::Speed))
    }

    fn fitment(&mut self, row: usize, fallback: CellPlace) -> Option<Fitment> {
        if let Some(fixed) = self.mapping.fitment {
            return Some(fixed.into());
        }
        let Some(column) = self.columns.fitment else {
            return self.block_fitment.or_else(|| self.refuse(fallback, true, Wanted::Fitment));
        };
        let cell = self.label(row, column);
        let (blank, fitment) = (cell.is_empty(), fitment_in(&cell.text()));
        fitment.or_else(|| self.refuse(CellPlace { row, column }, blank, Wanted::Fitment))
    }

    /// The hold distance: none where the column is missing or its cell blank, an error if refused.
    fn hold_distance(&mut self, row: usize) -> Result<Option<Length>, ()> {
        let columns = self.columns.hold_distance.zip(self.mapping.hold_distance_unit);
        let Some((column, unit)) =
            columns.filter(|(column, _)| !self.label(row, *column).is_empty())
        else {
            return Ok(None);
        };
        let place = CellPlace { row, column };
        let (named, convert) = (DistanceUnit::named_in, DistanceUnit::distance);
        self.quantity(place, Wanted::HoldDistance, Some(unit), named, convert).map(Some).ok_or(())
    }

    fn list_row(&mut self, row: usize) {
        let (Some(load), Some(pressure)) = (self.columns.load, self.columns.pressure) else {
            return;
        };
        let place = CellPlace { row, column: load };
        // All cells are read before any is given up, so that every fault of the row is told at once.
        let load = self.load(place, self.mapping.load_unit);
        let pressure = self.pressure(CellPlace { row, column: pressure });
        let (speed, fitment) = (self.speed(row, place), self.fitment(row, place));
        let hold_distance = self.hold_distance(row);
        if let (Some(load), Some(pressure), Some(speed), Some(fitment), Ok(hold_distance)) =
            (load, pressure, speed, fitment, hold_distance)
        {
            let row = MakerRow { fitment, load, speed, pressure, hold_distance };
            self.candidates.push(Candidate { row, place });
        }
    }

    fn table_row(&mut self, row: usize) {
        let fallback = CellPlace { row, column: self.columns.across[0] };
        let row_speed = match self.mapping.layout {
            Layout::SpeedColumns => None,
            _ => self.speed(row, fallback),
        };
        let fitment = self.fitment(row, fallback);
        let hold_distance = self.hold_distance(row);
        let (unit, row_load, row_pressure) = self.row_labels(row);
        for column in self.columns.across.clone() {
            let place = CellPlace { row, column };
            if self.sheet.cell(row, column).is_empty() {
                self.first_empty = self.first_empty.or(Some(place));
                self.empty += 1;
                continue;
            }
            let heading = CellPlace { row: self.mapping.header_row - 1, column };
            let (load, pressure, speed) = match self.mapping.layout {
                Layout::SpeedColumns => {
                    let text = self.sheet.cell(heading.row, column).text();
                    let speed = speed_in(&text, self.mapping.speed_unit)
                        .or_else(|| self.refuse(heading, false, Wanted::Speed));
                    match self.columns.load {
                        Some(_) => (row_load, self.pressure(place), speed),
                        None => (self.load(place, unit), row_pressure, speed),
                    }
                }
                _ => (self.load(place, unit), self.pressure(heading), row_speed),
            };
            if let (Some(load), Some(pressure), Some(speed), Some(fitment), Ok(hold_distance)) =
                (load, pressure, speed, fitment, hold_distance)
            {
                let row = MakerRow { fitment, load, speed, pressure, hold_distance };
                self.candidates.push(Candidate { row, place });
            }
        }
    }

    /// The unit of loads that the row's own label names, and the load or pressure it stands for.
    fn row_labels(&mut self, row: usize) -> (LoadUnit, Option<Mass>, Option<ColdPressure>) {
        let label = |column: Option<usize>| column.map(|column| self.label(row, column).text());
        let own = label(self.columns.fitment).and_then(|text| LoadUnit::named_in(&text));
        let unit = own.unwrap_or(self.mapping.load_unit);
        let place = |column| CellPlace { row, column };
        let load = self.columns.load.and_then(|column| self.load(place(column), unit));
        let pressure = self.columns.pressure.and_then(|column| self.pressure(place(column)));
        (unit, load, pressure)
    }
}
