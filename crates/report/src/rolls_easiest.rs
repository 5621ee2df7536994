//! Where tires roll easiest on soft ground, in words shared by screen and paper.

use language::Round;
use quantity::ColdPressure;
use view::{GroupEffectView, PlanView};

use crate::Words;
use crate::bands::band;

/// A line a soft leg and run, and how to read them; nothing where no leg is soft.
pub fn rolls_easiest(plan: &PlanView, words: Words<'_>) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for leg in &plan.effects {
        let run = words.text(&format!("plan-{}", leg.run));
        for way in leg.ways.iter().filter(|way| way.way == "plan") {
            let groups: Vec<String> =
                way.groups.iter().filter_map(|one| group(one, words)).collect();
            let groups_said = groups.join("; ");
            let line = words.fill(
                "effects-easiest",
                &[("leg", &leg.leg), ("run", &run), ("groups", &groups_said)],
            );
            if !groups.is_empty() && !lines.contains(&line) {
                lines.push(line);
            }
        }
    }
    if !lines.is_empty() {
        lines.push(words.text("effects-easiest-how"));
    }
    lines
}

fn group(of: &GroupEffectView, words: Words<'_>) -> Option<String> {
    let pressure = |kpa, round| words.format.pressure(ColdPressure::from_kpa(kpa), round);
    let easiest = of.least_resistance_kpa?;
    let unit = pressure(easiest.middle, Round::Nearest).unit;
    let shown = band(&easiest, |kpa, round| pressure(kpa, round).number);
    let more = words.format.percent(of.resistance_over_least? - 1.0, 0, Round::Nearest);
    let lowest = of.least_resistance_at_lowest?;
    let key = if lowest { "effects-easiest-lowest" } else { "effects-easiest-group" };
    let held = pressure(of.pressure_kpa, Round::Nearest);
    let pressure = format!("{shown} {unit}");
    Some(words.fill(
        key,
        &[("group", &of.axle_group), ("pressure", &pressure), ("held", &held), ("more", &more)],
    ))
}
