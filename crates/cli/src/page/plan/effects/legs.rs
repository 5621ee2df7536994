//! Effects by leg: of the plan alone, or of every way.

use language::Round;
use view::{GradeView, LegEffectsView, LegWayView, PlanView};

use crate::page::quantities::chainage;
use crate::page::sheet::{Sheet, Side};
use crate::page::text::{line, paragraph};
use crate::terminal::HEADING;
use crate::words::Words;
use report::bands::ratio;
use report::cells::Extent;
use report::effect_words;
use report::rolls_easiest::rolls_easiest;

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
    let grade = |of: &Option<GradeView>| {
        of.as_ref().map_or_else(unknown, |of| effect_words::verdict(of, whole, words.of_paper()))
    };
    let shown = |of: &Option<view::BandView>| {
        of.as_ref().map_or_else(unknown, |of| ratio(of, &words.format))
    };
    let cells = [
        shown(&way.means.contact_area_ratio),
        effect_words::road(leg, way, words.of_paper()),
        shown(&way.resistance_ratio),
        grade(&way.climb),
        grade(&way.descent),
    ];
    first.iter().cloned().chain(cells).collect()
}

/// How sure the climb is on soft ground, what to look into first, and where tires roll easiest.
fn spreads(plan: &PlanView, words: &Words) -> String {
    let mut lines = effect_words::spreads(plan, words.of_paper());
    lines.extend(rolls_easiest(plan, words.of_paper()));
    lines.iter().map(|line| paragraph(line, "  - ", "    ")).collect()
}
