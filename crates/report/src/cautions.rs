//! Cautions of a plan in words: those about cells or groups alike are told in one line.

use language::Round;
use view::{CautionView, PlanView};

use crate::Words;
use crate::cells::{CellName, list};
use crate::quantities::{at_hand, chainage, highest, lowest, stretch, time, time_left};

/// Cautions about one cell or group each, told in one line where their numbers are the same.
const JOINED: [&str; 7] = [
    "under-recommended",
    "needs-approval",
    "hand-set-too-low",
    "not-possible",
    "not-possible-wanted",
    "above-ground-advice",
    "estimated-weight",
];

/// A line for each limit that is broken.
pub fn broken(plan: &PlanView, words: Words<'_>) -> Vec<String> {
    let broken: Vec<&CautionView> =
        plan.cautions.iter().filter(|caution| caution.breaks_a_limit).collect();
    lines(plan, &broken, words)
}

/// A line for each caution that breaks none.
pub fn told(plan: &PlanView, words: Words<'_>) -> Vec<String> {
    let told: Vec<&CautionView> =
        plan.cautions.iter().filter(|caution| !caution.breaks_a_limit).collect();
    lines(plan, &told, words)
}

fn lines(plan: &PlanView, cautions: &[&CautionView], words: Words<'_>) -> Vec<String> {
    let mut lines = Vec::new();
    let mut told: Vec<&CautionView> = Vec::new();
    for caution in cautions {
        if !JOINED.contains(&caution.caution.as_str()) {
            lines.push(line(plan, &[caution], words));
        } else if !told.contains(caution) {
            let alike: Vec<&CautionView> = cautions
                .iter()
                .copied()
                .filter(|other| {
                    other.caution == caution.caution && other.numbers == caution.numbers
                })
                .collect();
            told.extend(&alike);
            lines.push(line(plan, &alike, words));
        }
    }
    lines
}

fn cell_name(caution: &CautionView) -> Option<CellName<'_>> {
    let name = |role: &str| caution.names.get(role).map(String::as_str);
    Some(CellName {
        channel: name("channel")?,
        load_state: name("load_state")?,
        chain_state: name("chain_state")?,
        rung: name("rung")?,
    })
}

/// A caution in words, or several alike, with every name and number they speak of put in.
fn line(plan: &PlanView, alike: &[&CautionView], words: Words<'_>) -> String {
    let format = words.format;
    let Some(caution) = alike.first() else { return String::new() };
    let mut args: Vec<(String, String)> =
        caution.names.iter().map(|(role, name)| (role.clone(), name.clone())).collect();
    let cells: Vec<CellName<'_>> = alike.iter().filter_map(|one| cell_name(one)).collect();
    args.push(("cells".to_owned(), list(plan, &cells, words)));
    let groups: Vec<String> = alike
        .iter()
        .filter_map(|one| Some((one.names.get("axle_group")?, one.names.get("load_state")?)))
        .map(|(group, state)| format!("{group} ({state})"))
        .collect();
    args.push(("groups".to_owned(), groups.join(", ")));
    for (key, value) in &caution.numbers {
        let number = *value;
        let supply = caution.caution == "supply-touches-brakes";
        let (name, shown) = match key.as_str() {
            "recommended_kpa" => ("recommended", lowest(format, number).to_string()),
            "wanted_kpa" => ("wanted", lowest(format, number).to_string()),
            "lowest_kpa" if supply => ("lowest", at_hand(format, number).to_string()),
            "lowest_kpa" => ("lowest", lowest(format, number).to_string()),
            "threshold_kpa" => ("threshold", lowest(format, number).to_string()),
            "advice_kpa" => ("advice", highest(format, number).to_string()),
            "road_m" => ("road", stretch(format, number, Round::Up).to_string()),
            "limit_m" => ("limit", stretch(format, number, Round::Down).to_string()),
            "longest_s" => ("longest", time(format, number).to_string()),
            "time_s" => ("time", time(format, number).to_string()),
            "limit_s" => ("limit", time_left(format, number).to_string()),
            "from_km" => ("from", chainage(format, number, Round::Nearest).to_string()),
            "to_km" => ("to", chainage(format, number, Round::Nearest).to_string()),
            "change_point" => ("number", format.number(number, 0, Round::Nearest)),
            _ => (key.as_str(), format.number(number, 0, Round::Nearest)),
        };
        args.push((name.to_owned(), shown));
        if key == "change_point" {
            let place = plan
                .change_points
                .iter()
                .zip(1u32..)
                .find(|(_, index)| (f64::from(*index) - number).abs() < 0.5)
                .map(|(point, _)| chainage(format, point.km, Round::Nearest).to_string());
            args.push(("place".to_owned(), place.unwrap_or_else(|| words.text("unit-unknown"))));
        }
    }
    let args: Vec<(&str, &dyn std::fmt::Display)> =
        args.iter().map(|(name, text)| (name.as_str(), text as &dyn std::fmt::Display)).collect();
    words.fill(&format!("caution-{}", caution.caution), &args)
}
