//! Effects by leg: of the plan alone, or of every way.

use language::Round;
use view::{GradeView, LegEffectsView, LegWayView, MeansView, NotAssessedView, PlanView};

use super::bands::{percent, ratio};
use crate::page::quantities::chainage;
use crate::page::sheet::{Sheet, Side};
use crate::page::text::{line, paragraph};
use crate::terminal::HEADING;
use crate::words::Words;
use report::cells::Extent;

/// The table by leg, and what is said of it.
pub fn legs(plan: &PlanView, extent: Extent, words: &Words) -> String {
    let (tables, how) = match extent {
        Extent::Driven => {
            let how = [words.text("effects-legs-how"), words.text("effects-legs-more")];
            (of_the_plan(plan, words), how.join(" "))
        }
        Extent::Whole => (of_every_way(plan, words), words.text("effects-legs-how")),
    };
    tables + &paragraph(&how, "  ", "  ") + &spreads(plan, words)
}

/// One table: a line a leg and run, in the plan's way.
fn of_the_plan(plan: &PlanView, words: &Words) -> String {
    let first = [words.text("effects-leg"), words.text("effects-run")];
    let mut sheet = Sheet::new(headings(&first, words));
    let mut shown: Vec<Vec<String>> = Vec::new();
    for leg in &plan.effects {
        let run = words.text(&format!("plan-{}", leg.run));
        for way in leg.ways.iter().filter(|way| way.way == "plan") {
            let cells = row(&[leg.leg.clone(), run.clone()], leg, way, false, words);
            // A leg cut by a permit stands there once where nothing differs.
            if !shown.contains(&cells) {
                sheet.row(cells.clone());
                shown.push(cells);
            }
        }
    }
    sheet.lines()
}

/// A table a leg and run: a line a way.
fn of_every_way(plan: &PlanView, words: &Words) -> String {
    let first = [words.text("effects-way")];
    let table = |leg: &LegEffectsView| {
        let mut sheet = Sheet::new(headings(&first, words));
        for way in &leg.ways {
            let name = words.text(&format!("effects-way-{}", way.way));
            sheet.row(row(&[name], leg, way, true, words));
        }
        let run = words.text(&format!("plan-{}", leg.run));
        let near = |km| chainage(&words.format, km, Round::Nearest);
        let title = words.fill(
            "effects-leg-title",
            &[
                ("leg", &leg.leg),
                ("run", &run),
                ("from", &near(leg.from_km)),
                ("to", &near(leg.to_km)),
            ],
        );
        line(HEADING, "  ", &title) + &sheet.lines() + "\n"
    };
    plan.effects.iter().map(table).collect()
}

fn headings(first: &[String], words: &Words) -> Vec<(String, Side)> {
    let first = first.iter().map(|name| (name.clone(), Side::Left));
    let others = [
        ("effects-patch", Side::Right),
        ("effects-road", Side::Left),
        ("effects-rolling", Side::Right),
        ("effects-climb", Side::Left),
        ("effects-descent", Side::Left),
    ];
    first.chain(others.map(|(key, side)| (words.text(key), side))).collect()
}

fn row(
    first: &[String],
    leg: &LegEffectsView,
    way: &LegWayView,
    whole: bool,
    words: &Words,
) -> Vec<String> {
    let unknown = || words.text("effects-unknown");
    let grade =
        |of: &Option<GradeView>| of.as_ref().map_or_else(unknown, |of| verdict(of, whole, words));
    let shown =
        |of: &Option<view::BandView>| of.as_ref().map_or_else(unknown, |of| ratio(of, words));
    let cells = [
        shown(&way.means.contact_area_ratio),
        road(leg, way, words),
        shown(&way.resistance_ratio),
        grade(&way.climb),
        grade(&way.descent),
    ];
    first.iter().cloned().chain(cells).collect()
}

/// What the road feels: the effect its surface is judged by.
fn road(leg: &LegEffectsView, way: &LegWayView, words: &Words) -> String {
    let MeansView { gravel_rut_ratio, soil_rut_ratio, asphalt_damage_ratio, .. } = way.means;
    let (key, found) = match leg.surface.as_str() {
        "gravel" => ("effects-road-rut", gravel_rut_ratio),
        "earth" | "soft ground" => ("effects-road-rut", soil_rut_ratio),
        "paved" | "sealed" => ("effects-road-wear", asphalt_damage_ratio),
        _ => ("effects-road-stress", way.means.stress_below_ratio),
    };
    let found = found.map_or_else(|| words.text("effects-unknown"), |of| ratio(&of, words));
    words.fill(key, &[("ratio", &found)])
}

/// `doubtful: 4–12–20 of 7`; what goes is short but on the whole page.
fn verdict(grade: &GradeView, whole: bool, words: &Words) -> String {
    let word = words.text(&format!("effects-{}", grade.verdict));
    if grade.verdict == "go" && !whole {
        return word;
    }
    let needed = words.format.number(grade.needed_pct, 0, Round::Up);
    let possible = percent(&grade.possible_pct, words);
    words.fill("effects-grade", &[("word", &word), ("possible", &possible), ("needed", &needed)])
}

/// How sure the climb is on soft ground, and what to look into first.
fn spreads(plan: &PlanView, words: &Words) -> String {
    let mut text = String::new();
    for leg in &plan.effects {
        let way = leg.ways.iter().find(|way| way.spread.is_some());
        let spread = way.and_then(|way| way.spread.as_ref()?.climb_pct.as_ref());
        let needed = way.and_then(|way| Some(way.climb.as_ref()?.needed_pct));
        let (Some(climb), Some(needed)) = (spread, needed) else { continue };
        let number = |value: f64| words.format.number(value, 0, Round::Down);
        let first = climb.narrows.first().map_or_else(
            || words.text("effects-spread-nothing"),
            |one| {
                let input = words.text(&format!("effects-uncertain-{}", one.input));
                let share = words.format.percent(one.share_pct / 100.0, 0, Round::Nearest);
                words.fill("effects-spread-by", &[("input", &input), ("share", &share)])
            },
        );
        let told = words.fill(
            "effects-spread",
            &[
                ("leg", &leg.leg),
                ("run", &words.text(&format!("plan-{}", leg.run))),
                ("p10", &number(climb.p10)),
                ("p50", &number(climb.p50)),
                ("p90", &number(climb.p90)),
                ("needed", &words.format.number(needed, 0, Round::Up)),
                ("first", &first),
            ],
        );
        text.push_str(&paragraph(&told, "  - ", "    "));
    }
    text
}

/// Whether something was not assessed for want of an input.
pub(super) fn refused(
    plan: &PlanView,
) -> impl Iterator<Item = (&LegEffectsView, &NotAssessedView)> {
    plan.effects.iter().flat_map(|leg| {
        let plan = leg.ways.iter().filter(|way| way.way == "plan");
        plan.flat_map(|way| {
            way.not_assessed.iter().chain(way.groups.iter().flat_map(|group| &group.not_assessed))
        })
        .filter(|lack| lack.why != "give")
        .map(move |lack| (leg, lack))
    })
}
