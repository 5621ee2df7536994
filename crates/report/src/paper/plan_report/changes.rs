//! Change points with their times, and what calling late or never does.

use language::{Kind, Round};
use view::{ChangePointView, ConsequenceView, PlanView};

use crate::Words;
use crate::changes::{early, place, way};
use crate::document::{Block, Cell, Column, Look, Table};
use crate::quantities::{cap, chainage, stretch, time};

pub(super) fn blocks(plan: &PlanView, words: Words<'_>) -> Vec<Block> {
    if plan.change_points.is_empty() {
        return vec![Block::paragraph(words.text("plan-no-change-points"))];
    }
    let notes: Vec<String> = plan
        .change_points
        .iter()
        .zip(1..)
        .filter(|(point, _)| !point.fits || point.chosen.way != "rolling")
        .map(|(point, number): (_, usize)| {
            let made = way(&point.chosen, words);
            words.fill("plan-chosen-way", &[("number", &number), ("way", &made)])
        })
        .collect();
    let mut blocks = vec![Block::Table(table(plan, words))];
    if !notes.is_empty() {
        blocks.push(Block::Points { lines: notes });
    }
    blocks.push(Block::Table(late(plan, words)));
    blocks
}

fn table(plan: &PlanView, words: Words<'_>) -> Table {
    let format = words.format;
    let mut table = Table::new(vec![
        Column::figures(words.text("card-number")),
        Column::words(words.text("plan-load-state"), 3),
        Column::figures(words.with_unit("plan-at", Kind::Distance)),
        Column::words(words.text("plan-place"), 5),
        Column::words(words.text("plan-call"), 5),
        Column::figures(words.text("plan-time")),
        Column::figures(words.text("plan-lead")),
        Column::figures(words.with_unit("plan-done-by", Kind::Distance)),
        Column::figures(words.with_unit("plan-cap", Kind::Speed)),
    ]);
    table.look = Look::Small;
    for (point, number) in plan.change_points.iter().zip(1usize..) {
        let start =
            if point.action == "raise" { "plan-start-raising" } else { "plan-start-lowering" };
        let takes = point.change_time_p90_s.unwrap_or(point.change_time_s);
        table.row(vec![
            Cell::text(number.to_string()),
            Cell::text(point.load_state.clone()),
            Cell::bare(&chainage(format, point.km, early(point))),
            Cell::text(place(point, words)),
            Cell::text(format!("{}\n{} → {}", words.text(start), point.from_rung, point.to_rung)),
            Cell::amount(&time(format, takes)),
            Cell::amount(&stretch(format, point.lead_m, Round::Up)),
            Cell::bare(&chainage(format, point.reach_by_km, early(point))),
            Cell::bare(&cap(format, point.cap_kmh)),
        ]);
    }
    table
}

fn late(plan: &PlanView, words: Words<'_>) -> Table {
    let one_km = chainage(words.format, 1.0, Round::Nearest);
    let mut table = Table::new(vec![
        Column::figures(words.text("card-number")),
        Column::words(words.fill("plan-late-by", &[("distance", &one_km)]), 1),
        Column::words(words.text("plan-never"), 1),
    ]);
    table.caption = words.text("planreport-late");
    table.look = Look::Small;
    for (point, number) in plan.change_points.iter().zip(1usize..) {
        let point: &ChangePointView = point;
        let tell = |found: Option<&ConsequenceView>| {
            Cell::text(
                found.map_or_else(|| words.text("plan-run-ends"), |one| consequence(one, words)),
            )
        };
        table.row(vec![
            Cell::text(number.to_string()),
            tell(point.late_1_km.as_ref()),
            tell(point.never.as_ref()),
        ]);
    }
    table
}

fn consequence(found: &ConsequenceView, words: Words<'_>) -> String {
    let format = words.format;
    let lost = found.time_lost_s;
    let mut told = vec![if lost > 0.5 {
        words.fill("plan-loses", &[("time", &time(format, lost))])
    } else if lost < -0.5 {
        words.fill("plan-gains", &[("time", &time(format, -lost))])
    } else {
        words.text("plan-loses-nothing")
    }];
    if found.wrong_road_m > 0.0 {
        let road = stretch(format, found.wrong_road_m, Round::Up);
        told.push(words.fill("plan-wrong-road", &[("distance", &road)]));
    }
    let what = told.join("; ");
    if found.on_descent { words.fill("plan-on-descent", &[("what", &what)]) } else { what }
}
