//! Recognizing a table: a run of rising or falling numbers across, values under them.

use super::clues::{Clues, Found, Guess};
use crate::sheet::cell::{Sheet, letters};
use crate::sheet::mapping::{Layout, Mapping};
use crate::sheet::unit::{LoadUnit, PressureUnit, SpeedUnit};
use crate::sheet::word::{Field, fields_in, fitment_in, speed_in};

/// Values under one heading are of another size by less than this.
const STACKED: f64 = 0.03;

/// A mapping, if this row heads a table.
pub(super) fn guess(sheet: &Sheet, row: usize) -> Option<Guess> {
    let first = Clues::new(sheet, row);
    let run = run(&first)?;
    let above = row.checked_sub(1);
    if above.is_some_and(|above| run.iter().any(|c| first.number(above, *c).is_some())) {
        return None;
    }
    // The same headings in another unit may stand below: the last row before the values counts.
    let clues = match (row + 1..sheet.rows.len())
        .find(|next| !repeats_in_other_unit(&first, *next, &run))
    {
        Some(body) => Clues::new(sheet, body - 1),
        None => return None,
    };
    let filled = |row: &usize| run.iter().filter(|c| clues.number(*row, **c).is_some()).count() > 1;
    let body = clues.data_rows(&run).into_iter().filter(filled).count();
    if body == 0 {
        return None;
    }
    let labels: Vec<Label> = (0..run[0]).filter_map(|column| label(&clues, column, &run)).collect();
    match kind_of_run(&clues, &run, &labels)? {
        (Field::Pressure, reason) => Some(pressure_columns(&clues, &run, &labels, reason)),
        (_, reason) => speed_columns(&clues, &run, &labels, reason),
    }
}

/// Neighboring columns whose headings are numbers that rise or fall throughout.
fn run(clues: &Clues) -> Option<Vec<usize>> {
    let heading = |column: usize| {
        let text = clues.sheet.cell(clues.heading, column).text();
        let speed = || speed_in(&text, None).map(quantity::Speed::as_kmh);
        clues.number(clues.heading, column).or_else(speed)
    };
    let mut longest: Vec<usize> = Vec::new();
    let mut current: Vec<usize> = Vec::new();
    for column in 0..clues.sheet.width() {
        if heading(column).is_some() {
            current.push(column);
        } else {
            current.clear();
        }
        if current.len() > longest.len() {
            longest.clone_from(&current);
        }
    }
    let numbers: Vec<f64> = longest.iter().filter_map(|column| heading(*column)).collect();
    let rising = numbers.windows(2).all(|pair| pair[0] < pair[1]);
    let falling = numbers.windows(2).all(|pair| pair[0] > pair[1]);
    (numbers.len() > 1 && (rising || falling)).then_some(longest)
}

fn repeats_in_other_unit(clues: &Clues, row: usize, run: &[usize]) -> bool {
    let ratio =
        |column: &usize| Some(clues.number(row, *column)? / clues.number(clues.heading, *column)?);
    let ratios: Option<Vec<f64>> = run.iter().map(ratio).collect();
    let Some(ratios) = ratios else { return false };
    let first = ratios[0];
    (first - 1.0).abs() > STACKED
        && ratios.iter().all(|ratio| (ratio / first - 1.0).abs() < STACKED)
}

/// A column beside the values and what it holds.
struct Label {
    column: usize,
    holds: Field,
    text: String,
}

fn label(clues: &Clues, column: usize, run: &[usize]) -> Option<Label> {
    let rows = clues.data_rows(run);
    let cells: Vec<String> = rows
        .iter()
        .map(|row| clues.sheet.cell(*row, column))
        .filter(|cell| !cell.is_blank())
        .map(crate::sheet::Cell::text)
        .collect();
    if cells.is_empty() {
        return None;
    }
    let most = |count: usize| count * 5 >= cells.len() * 4;
    let heading = clues.heading_text(column);
    let text = format!("{heading} {}", cells.join(" "));
    if most(cells.iter().filter(|cell| fitment_in(cell).is_some()).count()) {
        return Some(Label { column, holds: Field::Fitment, text });
    }
    let unit = SpeedUnit::named_in(&cells[0]);
    let speeds =
        cells.iter().filter(|cell| speed_in(cell, Some(SpeedUnit::MilesPerHour)).is_some());
    if !most(speeds.count()) {
        return None;
    }
    let named = fields_in(clues.sheet.cell(clues.heading, column).text().as_str());
    let median = clues.median(&[column]);
    let holds = match named[..] {
        _ if unit.is_some() => Field::Speed,
        [field] => field,
        _ if named.contains(&Field::Load) && median > 150.0 => Field::Load,
        [first, ..] => first,
        [] if median > 500.0 => Field::Load,
        [] => match fields_in(&heading)[..] {
            [field] => field,
            _ => return None,
        },
    };
    Some(Label { column, holds, text })
}

/// What stands across, and why if it is a guess.
fn kind_of_run(clues: &Clues, run: &[usize], labels: &[Label]) -> Option<(Field, Option<String>)> {
    let either = |fields: &[Field]| match (
        fields.contains(&Field::Pressure),
        fields.contains(&Field::Speed),
    ) {
        (true, false) => Some(Field::Pressure),
        (false, true) => Some(Field::Speed),
        _ => None,
    };
    let own: Vec<String> = run.iter().map(|column| clues.heading_text(*column)).collect();
    let beside = (0..run[0]).flat_map(|column| {
        let holds = labels.iter().find(|label| label.column == column).map(|label| label.holds);
        let heading = clues.sheet.cell(clues.heading, column).text();
        fields_in(&heading).into_iter().filter(move |field| Some(*field) != holds)
    });
    let beside: Vec<Field> = beside.collect();
    if let Some(kind) = either(&fields_in(&own.join(" "))).or_else(|| either(&beside)) {
        return Some((kind, None));
    }
    let by_size =
        |kind: &str| Some(format!("the numbers across are taken as {kind} from their size"));
    if labels.iter().any(|label| matches!(label.holds, Field::Load | Field::Pressure)) {
        return Some((Field::Speed, by_size("speeds")));
    }
    let across = clues.number(clues.heading, run[run.len() - 1])?;
    (clues.median(run) > 3.0 * across).then(|| (Field::Pressure, by_size("pressures")))
}

fn place_across(mapping: &mut Mapping, run: &[usize]) {
    mapping.first_value_column = Some(letters(run[0]));
    mapping.last_value_column = Some(letters(run[run.len() - 1]));
}

/// Columns of speed and fitment, and whether their blanks repeat.
fn place_labels(clues: &Clues, guess: &mut Guess, run: &[usize], labels: &[Label]) {
    for label in labels {
        let name = Some(clues.name(label.column));
        match label.holds {
            Field::Speed if guess.mapping.layout == Layout::PressureColumns => {
                guess.mapping.speed_column = name;
                let unit = clues.speed_unit(std::slice::from_ref(&label.text), guess);
                guess.mapping.speed_unit = Some(unit);
            }
            Field::Fitment => guess.mapping.fitment_column = name,
            Field::Load if guess.mapping.layout == Layout::SpeedColumns => {
                guess.mapping.load_column = name;
            }
            Field::Pressure if guess.mapping.layout == Layout::SpeedColumns => {
                guess.mapping.pressure_column = name;
            }
            Field::Load | Field::Pressure | Field::Speed | Field::HoldDistance => {}
        }
    }
    let columns: Vec<usize> = labels.iter().map(|label| label.column).collect();
    guess.mapping.repeat_blanks = clues.has_blanks(&columns, run);
}

/// Every text that may name a unit, the nearest first.
fn texts(clues: &Clues, run: &[usize], labels: &[Label]) -> Vec<String> {
    let across = run.iter().map(|column| clues.heading_text(*column));
    let beside = labels.iter().map(|label| label.text.clone());
    let unlabeled = (0..run[0]).map(|column| clues.heading_text(column));
    across.chain(beside).chain(unlabeled).chain([clues.titles.clone()]).collect()
}

fn pressure_columns(
    clues: &Clues,
    run: &[usize],
    labels: &[Label],
    reason: Option<String>,
) -> Guess {
    let texts = texts(clues, run, labels);
    let middle = clues.number(clues.heading, run[run.len() / 2]).unwrap_or(0.0);
    let pressures = Found {
        written: texts.iter().find_map(|text| PressureUnit::named_in(text)),
        median: middle,
    };
    let loads = Found {
        written: texts.iter().find_map(|text| LoadUnit::named_in(text)),
        median: clues.median(run),
    };
    let mut guess = clues.start(Layout::PressureColumns, pressures, loads);
    guess.reasons.extend(reason);
    place_across(&mut guess.mapping, run);
    place_labels(clues, &mut guess, run, labels);
    clues.complete(&mut guess, run);
    guess
}

fn speed_columns(
    clues: &Clues,
    run: &[usize],
    labels: &[Label],
    reason: Option<String>,
) -> Option<Guess> {
    let texts = texts(clues, run, labels);
    let key = labels.iter().find(|label| matches!(label.holds, Field::Load | Field::Pressure))?;
    let (loads_in, pressures_in) = match key.holds {
        Field::Load => (vec![key.column], run.to_vec()),
        _ => (run.to_vec(), vec![key.column]),
    };
    let pressures = Found {
        written: texts.iter().find_map(|text| PressureUnit::named_in(text)),
        median: clues.median(&pressures_in),
    };
    let loads = Found {
        written: texts.iter().find_map(|text| LoadUnit::named_in(text)),
        median: clues.median(&loads_in),
    };
    let mut guess = clues.start(Layout::SpeedColumns, pressures, loads);
    guess.reasons.extend(reason);
    place_across(&mut guess.mapping, run);
    place_labels(clues, &mut guess, run, labels);
    let unit = clues.speed_unit(&texts, &mut guess);
    guess.mapping.speed_unit = Some(unit);
    clues.complete(&mut guess, run);
    Some(guess)
}
