//! The ways to run, side by side over the whole haul.

use language::{Kind, Round};
use quantity::{Length, Time, Volume};
use view::PlanView;

use crate::page::plan::with_unit;
use crate::page::sheet::{Sheet, Side};
use crate::page::text::paragraph;
use crate::words::Words;
use report::bands::{band, ratio};

/// A line a way.
pub fn totals(plan: &PlanView, words: &Words) -> String {
    let format = &words.format;
    let mut sheet = Sheet::new(vec![
        (words.text("effects-way"), Side::Left),
        (with_unit(words, "effects-cycle", format.unit(Kind::Minutes)), Side::Right),
        (with_unit(words, "plan-fuel", format.unit(Kind::Liquid)), Side::Right),
        (words.text("effects-gravel-rut"), Side::Right),
        (words.text("effects-asphalt-wear"), Side::Right),
        (words.text("effects-trips"), Side::Right),
        (words.text("effects-not-assessed"), Side::Right),
    ]);
    let unknown = || words.text("effects-unknown");
    let none = || words.text("unit-none");
    let asked = |effect: &str, lacks: &[view::NotAssessedView]| {
        if lacks.iter().any(|one| one.effect == effect) { unknown() } else { none() }
    };
    for way in &plan.effect_totals {
        let minutes = |s: f64| format.minutes(Time::from_s(s), Round::Up).number;
        let fuel = |l: f64, round| format.liquid(Volume::from_l(l), round).number;
        let lacks = &way.not_assessed;
        let shown = |of: &Option<view::BandView>, effect: &str| {
            of.as_ref().map_or_else(|| asked(effect, lacks), |of| ratio(of, &words.format))
        };
        sheet.row(vec![
            words.text(&format!("effects-way-{}", way.way)),
            way.time_s.map_or_else(unknown, minutes),
            way.fuel_l.as_ref().map_or_else(unknown, |of| band(of, fuel)),
            shown(&way.gravel_rut_ratio, "gravel-rut"),
            shown(&way.asphalt_damage_ratio, "pavement"),
            format.number(way.trips_for_the_same, 2, Round::Nearest),
            way.legs_not_assessed.to_string(),
        ]);
    }
    sheet.lines() + &heat_loads(plan, words)
}

/// Heat load of the tires, where its corrections reach.
fn heat_loads(plan: &PlanView, words: &Words) -> String {
    let format = &words.format;
    let mut text = String::new();
    for way in plan.effect_totals.iter().filter(|way| way.way == "plan") {
        let told: Vec<String> = way
            .heat_load
            .iter()
            .map(|group| {
                let tkph = format.number(group.tkph_corrected, 0, Round::Up);
                format!("{} {tkph}", group.axle_group)
            })
            .collect();
        if !told.is_empty() {
            let line = words.fill("effects-heat-load", &[("groups", &told.join(", "))]);
            text.push_str(&paragraph(&line, "  ", "  "));
        } else if way.not_assessed.iter().any(|one| one.effect == "heat-load") {
            let forty = format.distance(Length::from_km(40.0), Round::Nearest);
            let line = words.fill("effects-heat-load-too-long", &[("length", &forty)]);
            text.push_str(&paragraph(&line, "  ", "  "));
        }
    }
    text
}
