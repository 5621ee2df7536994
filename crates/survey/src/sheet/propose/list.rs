//! Recognizing a list: headings over columns of loads, pressures, speeds and fitments.

use super::clues::{Clues, Found, Guess};
use crate::sheet::cell::{Cell, Sheet};
use crate::sheet::mapping::Layout;
use crate::sheet::unit::{DistanceUnit, LoadUnit, PressureUnit};
use crate::sheet::word::{Field, fields_in};

/// A mapping, if this row heads a list.
pub(super) fn guess(sheet: &Sheet, heading: usize) -> Option<Guess> {
    let clues = Clues::new(sheet, heading);
    let held: Vec<(usize, Field)> = (0..sheet.width())
        .filter_map(|column| match sheet.cell(heading, column) {
            Cell::Text(text) => match fields_in(text)[..] {
                [field] => Some((column, field)),
                _ => None,
            },
            _ => None,
        })
        .collect();
    let only = |wanted: Field| {
        let mut columns = held.iter().filter(|(_, field)| *field == wanted);
        let first = columns.next().map(|(column, _)| *column);
        first.filter(|_| columns.next().is_none())
    };
    let (load, pressure) = (only(Field::Load)?, only(Field::Pressure)?);
    if clues.data_rows(&[load]).is_empty() || clues.data_rows(&[pressure]).is_empty() {
        return None;
    }
    let texts = |column| [clues.heading_text(column), clues.titles.clone()];
    let pressures = Found {
        written: texts(pressure).iter().find_map(|text| PressureUnit::named_in(text)),
        median: clues.median(&[pressure]),
    };
    let loads = Found {
        written: texts(load).iter().find_map(|text| LoadUnit::named_in(text)),
        median: clues.median(&[load]),
    };
    let mut guess = clues.start(Layout::List, pressures, loads);
    guess.mapping.load_column = Some(clues.name(load));
    guess.mapping.pressure_column = Some(clues.name(pressure));
    let mut labels = vec![load, pressure];
    if let Some(speed) = only(Field::Speed) {
        guess.mapping.speed_column = Some(clues.name(speed));
        let unit = clues.speed_unit(&[clues.heading_text(speed)], &mut guess);
        guess.mapping.speed_unit = Some(unit);
        labels.push(speed);
    }
    if let Some(fitment) = only(Field::Fitment) {
        guess.mapping.fitment_column = Some(clues.name(fitment));
        labels.push(fitment);
    }
    if let Some(hold) = only(Field::HoldDistance)
        && let Some(unit) = DistanceUnit::named_in(&clues.heading_text(hold))
    {
        guess.mapping.hold_distance_column = Some(clues.name(hold));
        guess.mapping.hold_distance_unit = Some(unit);
    }
    guess.mapping.repeat_blanks = clues.has_blanks(&labels, &[load, pressure]);
    clues.complete(&mut guess, &[load, pressure]);
    Some(guess)
}
