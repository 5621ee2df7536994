//! Groups at a fixed pressure, and the tires on the morning after.

use language::Kind;
use view::{FixedGroupView, PlanView};

use super::{head, with_unit};
use crate::page::quantities::{at_hand, load, lowest};
use crate::page::sheet::{Sheet, Side};
use crate::page::text::paragraph;
use crate::words::Words;
use language::Round;
use report::cells::{Extent, drives_loaded};

/// Groups at a fixed pressure, each tested for its load.
pub fn fixed(plan: &PlanView, extent: Extent, words: &Words) -> String {
    if plan.fixed_groups.is_empty() {
        return String::new();
    }
    let format = &words.format;
    let pressure = format.unit(Kind::Pressure);
    let mut sheet = Sheet::new(vec![
        (words.text("plan-axle-group"), Side::Left),
        (words.text("plan-load-state"), Side::Left),
        (with_unit(words, "plan-worst-tire-load", format.unit(Kind::Load)), Side::Right),
        (with_unit(words, "plan-holds-cold", pressure), Side::Right),
        (with_unit(words, "plan-needs-cold", pressure), Side::Right),
        (words.text("plan-governed-by"), Side::Left),
        (words.text("plan-verdict"), Side::Left),
    ]);
    let none = words.text("unit-none");
    let shown =
        |group: &&FixedGroupView| extent == Extent::Whole || drives_loaded(plan, &group.load_state);
    for group in plan.fixed_groups.iter().filter(shown) {
        let by = &group.governed_by;
        let key = format!("limit-brief-{by}");
        // Where no pressure would do, the reason stands in place of a limit.
        let governed = match words.texts.try_get(&key, &[]) {
            Ok(text) => text,
            Err(_) => words.texts.try_get(&format!("why-brief-{by}"), &[]).unwrap_or(by.clone()),
        };
        sheet.row(vec![
            group.axle_group.clone(),
            group.load_state.clone(),
            group.worst_tire_kg.map_or(none.clone(), |kg| load(format, kg).number),
            lowest(format, group.pressure_kpa).number,
            group.needed_kpa.map_or(none.clone(), |kpa| lowest(format, kpa).number),
            governed,
            words.text(if group.enough { "plan-enough" } else { "plan-too-low" }),
        ]);
    }
    head(words, "plan-fixed-groups") + &sheet.lines()
}

/// The tires after the coldest night, parked on the rung they stood on.
pub fn morning(plan: &PlanView, words: &Words) -> String {
    if plan.morning_after.is_empty() {
        return String::new();
    }
    let format = &words.format;
    let pressure = format.unit(Kind::Pressure);
    let mut sheet = Sheet::new(vec![
        (words.text("plan-channel"), Side::Left),
        (words.text("plan-parked-on"), Side::Left),
        (with_unit(words, "plan-reads", pressure), Side::Right),
        (with_unit(words, "plan-needs", pressure), Side::Right),
        (words.text("plan-share"), Side::Right),
        (words.text("plan-before-first-move"), Side::Left),
    ]);
    for channel in &plan.morning_after {
        sheet.row(vec![
            channel.channel.clone(),
            channel.rung.clone(),
            at_hand(format, channel.reading_kpa).number,
            lowest(format, channel.needed_kpa).number,
            format.percent(channel.share_pct / 100.0, 0, Round::Down).to_string(),
            words.text(if channel.may_move { "plan-may-move" } else { "plan-raise-first" }),
        ]);
    }
    let coldest = crate::page::quantities::temperature(format, plan.coldest_c);
    let how = words.fill("plan-morning-how", &[("coldest", &coldest)]);
    head(words, "plan-morning-after") + &paragraph(&how, "  ", "  ") + &sheet.lines()
}
