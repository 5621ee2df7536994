//! Effects by axle group on every leg, in the plan's way.

use language::{Kind, Round};
use quantity::{Area, GaugePressure, Length};
use view::{BandView, GroupEffectView, PlanView};

use crate::page::plan::with_unit;
use crate::page::quantities::{lowest, percent, temperature};
use crate::page::sheet::{Sheet, Side};
use crate::page::text::{line, paragraph};
use crate::terminal::HEADING;
use crate::words::Words;
use report::bands::{self, band, ratio};

/// A table a leg and run of the tires on the ground, in the plan's way.
pub fn groups(plan: &PlanView, words: &Words) -> String {
    let mut text = paragraph(&words.text("effects-groups-how"), "\n  ", "  ");
    let mut before: Vec<String> = Vec::new();
    for leg in &plan.effects {
        for way in leg.ways.iter().filter(|way| way.way == "plan") {
            let table = table(&way.groups, words);
            let run = words.text(&format!("plan-{}", leg.run));
            let title = format!("{}, {run}, {}", leg.leg, way.rung);
            // A leg cut by a permit is the same tires on the same road.
            if before.contains(&format!("{title}{table}")) {
                continue;
            }
            before.push(format!("{title}{table}"));
            text.push_str(&(line(HEADING, "  ", &title) + &table + "\n"));
        }
    }
    text + &pavements(plan, words)
}

fn table(groups: &[GroupEffectView], words: &Words) -> String {
    let format = &words.format;
    let (pressure, size) = (format.unit(Kind::Pressure), format.unit(Kind::Size));
    let mut sheet = Sheet::new(vec![
        (words.text("plan-axle-group"), Side::Left),
        (with_unit(words, "plan-cold", pressure), Side::Right),
        (with_unit(words, "effects-bends", "%"), Side::Right),
        (with_unit(words, "effects-area", format.unit(Kind::Area)), Side::Right),
        (with_unit(words, "effects-mean-pressure", pressure), Side::Right),
        (with_unit(words, "effects-stress-below", pressure), Side::Right),
        (with_unit(words, "effects-gap", size), Side::Right),
        (words.text("effects-air"), Side::Right),
        (with_unit(words, "effects-ride", "%"), Side::Right),
    ]);
    let unknown = || words.text("effects-unknown");
    let none = || words.text("unit-none");
    let stress = |kpa: f64, round| format.pressure(GaugePressure::from_kpa(kpa), round).number;
    let area = |cm2: f64, round| format.area(Area::from_cm2(cm2), round).number;
    let gap = |mm: f64, round| format.size(Length::from_mm(mm), round).number;
    let shown = |of: &Option<BandView>, number: &dyn Fn(f64, Round) -> String| {
        of.as_ref().map_or_else(unknown, |of| band(of, number))
    };
    for group in groups {
        let bends = |pct| percent(format, pct, Round::Nearest).number;
        let ride = |of: &BandView| bands::percent(of, &words.format);
        sheet.row(vec![
            group.axle_group.clone(),
            lowest(format, group.pressure_kpa).number,
            group.deflection_pct.map_or_else(unknown, bends),
            shown(&group.contact_area_cm2, &area),
            shown(&group.contact_pressure_kpa, &stress),
            shown(&group.stress_below_kpa, &stress),
            group.dual_gap_mm.as_ref().map_or_else(none, |of| band(of, gap)),
            group.air_c.map_or_else(unknown, |c| temperature(format, c).to_string()),
            group.ride_change_pct.as_ref().map_or_else(unknown, ride),
        ]);
    }
    sheet.lines()
}

/// Strains under the tires on pavements whose layers are told.
fn pavements(plan: &PlanView, words: &Words) -> String {
    let mut sheet = Sheet::new(vec![
        (words.text("effects-leg"), Side::Left),
        (words.text("plan-axle-group"), Side::Left),
        (words.text("effects-asphalt-strain"), Side::Right),
        (words.text("effects-asphalt-life"), Side::Right),
        (words.text("effects-subgrade-strain"), Side::Right),
        (words.text("effects-subgrade-life"), Side::Right),
    ]);
    let mut any = false;
    for leg in &plan.effects {
        let groups = leg.ways.iter().filter(|way| way.way == "plan").flat_map(|way| &way.groups);
        for group in groups {
            let (Some(asphalt), Some(subgrade)) =
                (group.asphalt_strain_ue, group.subgrade_strain_ue)
            else {
                continue;
            };
            any = true;
            let run = words.text(&format!("plan-{}", leg.run));
            let strain = |ue: f64| words.format.number(ue, 0, Round::Nearest);
            let life = |of: &Option<BandView>| {
                of.as_ref().map_or_else(String::new, |of| ratio(of, &words.format))
            };
            sheet.row(vec![
                format!("{}, {run}", leg.leg),
                group.axle_group.clone(),
                strain(asphalt),
                life(&group.asphalt_life_ratio),
                strain(subgrade),
                life(&group.subgrade_life_ratio),
            ]);
        }
    }
    if any { sheet.lines() } else { String::new() }
}
