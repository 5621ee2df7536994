//! The cycle: time, fuel, air, and its parts.

use language::{Kind, Round};
use view::{CycleView, PlanView};

use super::{head, with_unit};
use crate::page::quantities::{at_hand, fuel, time};
use crate::page::sheet::{Sheet, Side};
use crate::page::text::labelled;
use crate::words::Words;

/// The cycle as a whole and in parts.
pub fn cycle(plan: &PlanView, words: &Words) -> String {
    plan.cycle.as_ref().map(|cycle| whole(cycle, words) + &parts(cycle, words)).unwrap_or_default()
}

fn whole(cycle: &CycleView, words: &Words) -> String {
    let format = &words.format;
    let water = cycle.water_g.map_or_else(
        || words.text("unit-unknown"),
        |grams| format!("{} g", format.number(grams, 0, Round::Up)),
    );
    let facts = [
        ("plan-cycle-time", time(format, cycle.time_s).to_string()),
        ("plan-cycle-time-added", time(format, cycle.time_added_s).to_string()),
        ("plan-cycle-waited", time(format, cycle.waited_s).to_string()),
        ("plan-cycle-fuel", fuel(format, cycle.fuel_l).to_string()),
        ("plan-compressor-loaded", time(format, cycle.compressor_loaded_s).to_string()),
        ("plan-lowest-supply", at_hand(format, cycle.lowest_supply_kpa).to_string()),
        ("plan-cycle-water", water),
        ("plan-cycles-per-day", format.number(cycle.cycles_per_day, 1, Round::Nearest)),
    ];
    let facts: Vec<(String, String)> =
        facts.into_iter().map(|(key, fact)| (words.text(key), fact)).collect();
    head(words, "plan-cycle") + &labelled(&facts)
}

fn parts(cycle: &CycleView, words: &Words) -> String {
    let format = &words.format;
    let mut sheet = Sheet::new(vec![
        (words.text("plan-part"), Side::Left),
        (words.text("plan-time"), Side::Right),
        (words.text("plan-waited"), Side::Right),
        (with_unit(words, "plan-fuel", format.unit(Kind::Liquid)), Side::Right),
        (words.text("plan-compressor-time"), Side::Right),
        (with_unit(words, "plan-lowest-supply-brief", format.unit(Kind::Pressure)), Side::Right),
    ]);
    for phase in &cycle.phases {
        sheet.row(vec![
            words.text(match phase.phase.as_str() {
                "shift start" => "plan-phase-shift-start",
                "empty" => "plan-phase-empty",
                "loading" => "plan-phase-loading",
                "laden" => "plan-phase-laden",
                _ => "plan-phase-unloading",
            }),
            time(format, phase.time_s).to_string(),
            time(format, phase.waited_s).to_string(),
            fuel(format, phase.fuel_l).number,
            time(format, phase.compressor_loaded_s).to_string(),
            at_hand(format, phase.lowest_supply_kpa).number,
        ]);
    }
    format!("\n{}", sheet.lines())
}
