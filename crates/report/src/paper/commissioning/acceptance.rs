//! The acceptance tests: how, what passes, and what the limit is known from.

use language::{Format, Kind, Round};
use quantity::{GaugePressure, PressureDifference};
use view::SetupView;

use super::warmest;
use crate::Words;
use crate::document::{Cell, Column, Look, Source, Table};
use crate::paper::Material;
use crate::paper::mechanic::{Shown, tick};
use crate::quantities::fine;

/// What a limit is known from.
#[derive(Debug, Clone, Copy)]
enum Known {
    /// Common practice, no source.
    Practice,
    /// Read in a source.
    Read,
    /// Given by the survey.
    Given,
    /// The plan's own number.
    Plan,
}

use Known::{Given, Plan, Practice, Read};

/// The tests in the order they are made.
const TESTS: [(&str, Known); 19] = [
    ("identity", Practice),
    ("approval", Practice),
    ("weigh", Plan),
    ("cold", Given),
    ("reference", Practice),
    ("governor", Given),
    ("brake-leak", Read),
    ("priority", Given),
    ("valves", Given),
    ("leak-down", Practice),
    ("lines", Practice),
    ("mates", Practice),
    ("overspeed", Practice),
    ("burst", Practice),
    ("power", Practice),
    ("coupling", Practice),
    ("hot", Plan),
    ("nuts", Practice),
    ("hand-over", Practice),
];

/// Most that brakes leak in a minute, released: a truck alone, and a combination.
///
/// # Source
/// `us-cdl-manual`, air brakes, air leakage rate.
const BRAKE_LEAK: [PressureDifference; 2] =
    [PressureDifference::from_psi(2.0), PressureDifference::from_psi(3.0)];
/// The same for the list of sources.
const BRAKE_LEAK_SOURCE: &str = "us-cdl-manual, air brakes, air leakage rate";
/// Most that a parked tire loses in a day, corrected for temperature; common practice, no source.
const LEAK_IN_A_DAY: PressureDifference = PressureDifference::from_kpa(7.0);
/// Most that the mates of a dual differ by after a change; common practice, no source.
const MATES: PressureDifference = PressureDifference::from_kpa(14.0);

pub(super) fn table(material: &Material<'_>, shown: &Shown<'_>, words: Words<'_>) -> Table {
    let mut table = Table::new(vec![
        Column::figures(words.text("card-number")),
        Column::words(words.text("commission-test"), 8),
        Column::words(words.text("commission-accept"), 7),
        Column::words(words.text("commission-known"), 4),
        Column::words(words.text("commission-measured"), 4),
        Column::centered(words.text("commission-passed"), 2),
        Column::centered(words.text("commission-failed"), 2),
    ]);
    table.look = Look::Small;
    let closes = material.setup.wheel_ends.iter().any(|end| end.closes_below_kpa.is_some());
    let tests = TESTS.iter().filter(|(test, _)| closes || *test != "valves");
    for ((test, known), number) in tests.zip(1usize..) {
        table.row(vec![
            Cell::text(number.to_string()),
            Cell::text(words.text(&format!("commission-test-{test}"))),
            Cell::text(accept(test, material, shown, words)),
            Cell::text(words.text(match known {
                Practice => "plan-standing-practice",
                Read => "plan-standing-read",
                Given => "plan-standing-given",
                Plan => "commission-known-plan",
            })),
            Cell::default(),
            tick(),
            tick(),
        ]);
    }
    table
}

/// Where limits come from that were read.
pub(super) fn sources(words: Words<'_>) -> Vec<Source> {
    vec![Source {
        what: words.text("commission-test-brake-leak"),
        source: BRAKE_LEAK_SOURCE.to_owned(),
        standing: words.text("plan-standing-read"),
    }]
}

/// What passes; its numbers are never wider than what they come from.
fn accept(test: &str, material: &Material<'_>, shown: &Shown<'_>, words: Words<'_>) -> String {
    let setup = material.setup;
    let pressure = |kpa: f64, round: Round| {
        shown.both(|format: &Format| format.pressure(GaugePressure::from_kpa(kpa), round)).text
    };
    let most = |difference: PressureDifference| {
        shown.both(|format: &Format| fine(format, Kind::Pressure, difference, Round::Down)).text
    };
    let key = format!("commission-accept-{test}");
    match test {
        "cold" => {
            let error = most(PressureDifference::from_kpa(setup.controller.gauge_error_kpa));
            words.fill(&key, &[("error", &error)])
        }
        "governor" => words.fill(
            &key,
            &[
                ("in", &pressure(setup.supply.cut_in_kpa, Round::Up)),
                ("out", &pressure(setup.supply.cut_out_kpa, Round::Up)),
            ],
        ),
        "brake-leak" => words
            .fill(&key, &[("single", &most(BRAKE_LEAK[0])), ("combination", &most(BRAKE_LEAK[1]))]),
        "priority" => words.fill(
            &key,
            &[
                ("threshold", &pressure(setup.controller.brake_threshold_kpa, Round::Up)),
                ("resume", &pressure(setup.controller.brake_resume_kpa, Round::Up)),
                ("shuts", &pressure(setup.supply.shuts_kpa, Round::Up)),
            ],
        ),
        "valves" => words.fill(&key, &[("closes", &closing(setup, &pressure))]),
        "leak-down" => words.fill(&key, &[("leak", &most(LEAK_IN_A_DAY))]),
        "mates" => words.fill(&key, &[("difference", &most(MATES))]),
        "hot" => words.fill(&key, &[("warmest", &warmest(material.plan, words))]),
        _ => words.text(&key),
    }
}

/// Closing pressures, each with its groups.
fn closing(setup: &SetupView, pressure: &impl Fn(f64, Round) -> String) -> String {
    let mut told: Vec<(String, Vec<&str>)> = Vec::new();
    for end in &setup.wheel_ends {
        let Some(kpa) = end.closes_below_kpa else { continue };
        let shown = pressure(kpa, Round::Up);
        match told.iter_mut().find(|(known, _)| *known == shown) {
            Some((_, groups)) => groups.push(&end.axle_group),
            None => told.push((shown, vec![&end.axle_group])),
        }
    }
    let told = told.iter().map(|(shown, groups)| format!("{shown}: {}", groups.join(", ")));
    told.collect::<Vec<_>>().join("; ")
}
