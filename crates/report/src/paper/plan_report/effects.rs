//! What the plan changes: over the whole haul against rivals, by leg with its chart, trials.

use language::{Kind, Round};
use quantity::{Length, Time, Volume};
use view::{BandView, LegEffectsView, LegWayView, NotAssessedView, PlanView};

use crate::Words;
use crate::bands::{band, ratio};
use crate::document::{Block, Cell, Chart, Column, Look, Table};
use crate::effect_words::{notes, road, spreads, trial, verdict};
use crate::effects::effects_bars;
use crate::rolls_easiest::rolls_easiest;
use crate::strip::Reader;

pub(super) fn blocks(plan: &PlanView, words: Words<'_>) -> Vec<Block> {
    if plan.effects.is_empty() {
        return vec![Block::paragraph(words.text("planreport-effects-none"))];
    }
    let mut blocks =
        vec![Block::paragraph(words.text("effects-how")), Block::Table(totals(plan, words))];
    blocks.extend(heat_loads(plan, words).map(Block::paragraph));
    blocks.extend(chart(plan, words));
    blocks.push(Block::Table(legs(plan, words)));
    blocks.push(Block::paragraph(words.text("effects-legs-how")));
    let mut lines = spreads(plan, words);
    lines.extend(rolls_easiest(plan, words));
    lines.extend(notes(plan, words));
    blocks.push(Block::Points { lines });
    if !plan.trials.is_empty() {
        blocks.push(Block::strong(words.text("effects-trials")));
        let lines = plan.trials.iter().map(|one| trial(one, words)).collect();
        blocks.push(Block::Points { lines });
    }
    blocks
}

fn chart(plan: &PlanView, words: Words<'_>) -> Option<Block> {
    let reader = Reader { texts: words.texts, format: words.format };
    let svg = effects_bars(plan, reader).ok()?;
    Some(Block::Chart(Chart { svg, described: words.text("chart-effects-description") }))
}

/// A heading of the screen, which breaks its lines itself.
fn head(key: &str, words: Words<'_>) -> String {
    words.text(key).replace('\n', " ")
}

/// The ways to run, side by side over the whole haul.
fn totals(plan: &PlanView, words: Words<'_>) -> Table {
    let format = words.format;
    let mut table = Table::new(vec![
        Column::words(head("effects-way", words), 4),
        Column::figures(words.with_unit("effects-cycle", Kind::Minutes)),
        Column::figures(words.with_unit("plan-fuel", Kind::Liquid)),
        Column::figures(head("effects-gravel-rut", words)),
        Column::figures(head("effects-asphalt-wear", words)),
        Column::figures(head("effects-trips", words)),
        Column::figures(head("effects-not-assessed", words)),
    ]);
    table.look = Look::Small;
    let unknown = || Cell::text(words.text("effects-unknown"));
    let asked = |effect: &str, lacks: &[NotAssessedView]| {
        let lacks = lacks.iter().any(|one| one.effect == effect);
        Cell::text(words.text(if lacks { "effects-unknown" } else { "unit-none" }))
    };
    for way in &plan.effect_totals {
        let fuel = |l: f64, round| format.liquid(Volume::from_l(l), round).number;
        let shown = |of: &Option<BandView>, effect: &str| {
            of.as_ref().map_or_else(
                || asked(effect, &way.not_assessed),
                |of| Cell::text(ratio(of, format)),
            )
        };
        table.row(vec![
            Cell::text(words.text(&format!("effects-way-{}", way.way))),
            way.time_s
                .map_or_else(unknown, |s| Cell::bare(&format.minutes(Time::from_s(s), Round::Up))),
            way.fuel_l.as_ref().map_or_else(unknown, |of| Cell::text(band(of, fuel))),
            shown(&way.gravel_rut_ratio, "gravel-rut"),
            shown(&way.asphalt_damage_ratio, "pavement"),
            Cell::text(format.number(way.trips_for_the_same, 2, Round::Nearest)),
            Cell::text(way.legs_not_assessed.to_string()),
        ]);
    }
    table
}

fn heat_loads(plan: &PlanView, words: Words<'_>) -> Option<String> {
    let way = plan.effect_totals.iter().find(|way| way.way == "plan")?;
    let told: Vec<String> = way
        .heat_load
        .iter()
        .map(|group| {
            let tkph = words.format.number(group.tkph_corrected, 0, Round::Up);
            format!("{} {tkph}", group.axle_group)
        })
        .collect();
    if !told.is_empty() {
        return Some(words.fill("effects-heat-load", &[("groups", &told.join(", "))]));
    }
    way.not_assessed.iter().any(|one| one.effect == "heat-load").then(|| {
        let forty = words.format.distance(Length::from_km(40.0), Round::Nearest);
        words.fill("effects-heat-load-too-long", &[("length", &forty)])
    })
}

/// A line a leg and run, in the plan's way; legs that a permit cut and that do not differ stand once.
fn legs(plan: &PlanView, words: Words<'_>) -> Table {
    let mut table = Table::new(vec![
        Column::words(head("effects-leg", words), 5),
        Column::words(head("effects-run", words), 2),
        Column::words(words.text("plan-rung"), 3),
        Column::figures(head("effects-patch", words)),
        Column::words(head("effects-road", words), 4),
        Column::figures(head("effects-rolling", words)),
        Column::words(head("effects-climb", words), 4),
        Column::words(head("effects-descent", words), 4),
    ]);
    table.look = Look::Small;
    for leg in &plan.effects {
        for way in leg.ways.iter().filter(|way| way.way == "plan") {
            let row = row(leg, way, words);
            if !table.rows.iter().any(|known| known.cells == row) {
                table.row(row);
            }
        }
    }
    table
}

fn row(leg: &LegEffectsView, way: &LegWayView, words: Words<'_>) -> Vec<Cell> {
    let unknown = || words.text("effects-unknown");
    let shown = |of: &Option<BandView>| {
        Cell::text(of.as_ref().map_or_else(unknown, |of| ratio(of, words.format)))
    };
    let grade = |of: &Option<view::GradeView>| {
        Cell::text(of.as_ref().map_or_else(unknown, |of| verdict(of, true, words)))
    };
    vec![
        Cell::text(leg.leg.clone()),
        Cell::text(words.text(&format!("plan-{}", leg.run))),
        Cell::text(way.rung.clone()),
        shown(&way.means.contact_area_ratio),
        Cell::text(road(leg, way, words)),
        shown(&way.resistance_ratio),
        grade(&way.climb),
        grade(&way.descent),
    ]
}
