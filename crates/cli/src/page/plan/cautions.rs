//! Cautions last: those that break a limit first, then what people must be told.

use language::Round;
use view::{CautionView, PlanView};

use super::cells::{CellName, has_chains, list};
use super::head;
use crate::page::quantities::{at_hand, chainage, highest, lowest, stretch, time};
use crate::page::text::paragraph;
use crate::terminal::WRONG;
use crate::words::Words;

/// Cautions of which the cells or groups are joined into one line.
const JOINED: [&str; 4] =
    ["needs-approval", "not-possible", "not-possible-wanted", "estimated-weight"];

/// A line for each limit that is broken.
pub fn broken(plan: &PlanView, words: &Words) -> Vec<String> {
    let broken: Vec<&CautionView> =
        plan.cautions.iter().filter(|caution| caution.breaks_a_limit).collect();
    lines(plan, &broken, words)
}

/// All cautions.
pub fn cautions(plan: &PlanView, words: &Words) -> String {
    let broken = broken(plan, words);
    let told: Vec<&CautionView> =
        plan.cautions.iter().filter(|caution| !caution.breaks_a_limit).collect();
    let mut text = head(words, "plan-cautions");
    if !broken.is_empty() {
        text.push_str(&format!("  {WRONG}{}{WRONG:#}\n", words.text("plan-cautions-broken")));
        for line in broken {
            text.push_str(&paragraph(&line, "  ! ", "    "));
        }
        text.push_str(&format!("\n  {}\n", words.text("plan-cautions-told")));
    }
    for line in lines(plan, &told, words) {
        text.push_str(&paragraph(&line, "  - ", "    "));
    }
    text
}

fn lines(plan: &PlanView, cautions: &[&CautionView], words: &Words) -> Vec<String> {
    let mut lines = Vec::new();
    let mut joined: Vec<&str> = Vec::new();
    for caution in cautions {
        let kind = caution.caution.as_str();
        if !JOINED.contains(&kind) {
            lines.push(line(plan, caution, words));
        } else if !joined.contains(&kind) {
            joined.push(kind);
            let alike: Vec<&CautionView> =
                cautions.iter().copied().filter(|other| other.caution == kind).collect();
            lines.push(join(plan, kind, &alike, words));
        }
    }
    lines
}

fn join(plan: &PlanView, kind: &str, alike: &[&CautionView], words: &Words) -> String {
    let key = format!("caution-{kind}");
    if kind == "estimated-weight" {
        let groups: Vec<String> = alike
            .iter()
            .map(|one| format!("{} ({})", name(one, "axle_group"), name(one, "load_state")))
            .collect();
        return words.fill(&key, &[("groups", &groups.join(", "))]);
    }
    let cells: Vec<CellName> = alike.iter().map(|one| cell_name(plan, one)).collect();
    words.fill(&key, &[("cells", &list(&cells, &plan.channels))])
}

fn cell_name(plan: &PlanView, caution: &CautionView) -> CellName {
    CellName {
        load_state: name(caution, "load_state").to_owned(),
        chain_state: has_chains(plan).then(|| name(caution, "chain_state").to_owned()),
        rung: name(caution, "rung").to_owned(),
        channel: name(caution, "channel").to_owned(),
    }
}

fn name<'a>(caution: &'a CautionView, role: &str) -> &'a str {
    caution.names.get(role).map_or("?", String::as_str)
}

/// One caution in words, every number it speaks of put in.
fn line(plan: &PlanView, caution: &CautionView, words: &Words) -> String {
    let format = &words.format;
    let mut args: Vec<(String, String)> =
        caution.names.iter().map(|(role, name)| (role.clone(), name.clone())).collect();
    if caution.names.contains_key("rung") && caution.names.contains_key("channel") {
        let cell = list(&[cell_name(plan, caution)], &plan.channels);
        args.push(("cell".to_owned(), cell));
    }
    for (key, value) in &caution.numbers {
        let number = *value;
        let supply = caution.caution == "supply-touches-brakes";
        let (name, shown) = match key.as_str() {
            "wanted_kpa" => ("wanted", lowest(format, number).to_string()),
            "lowest_kpa" if supply => ("lowest", at_hand(format, number).to_string()),
            "lowest_kpa" => ("lowest", lowest(format, number).to_string()),
            "threshold_kpa" => ("threshold", lowest(format, number).to_string()),
            "advice_kpa" => ("advice", highest(format, number).to_string()),
            "road_m" => ("road", stretch(format, number, Round::Up).to_string()),
            "limit_m" => ("limit", stretch(format, number, Round::Down).to_string()),
            "longest_s" => ("longest", time(format, number).to_string()),
            "limit_s" => ("limit", time(format, number).to_string()),
            "change_point" => ("number", format.number(number, 0, Round::Nearest)),
            _ => (key.as_str(), format.number(number, 0, Round::Nearest)),
        };
        args.push((name.to_owned(), shown));
        if key == "change_point" {
            let place = plan
                .change_points
                .iter()
                .zip(1u32..)
                .find(|(_, index)| f64::from(*index) == number)
                .map(|(point, _)| chainage(format, point.km, Round::Nearest).to_string());
            args.push(("place".to_owned(), place.unwrap_or_else(|| words.text("unit-unknown"))));
        }
    }
    let args: Vec<(&str, &dyn std::fmt::Display)> =
        args.iter().map(|(name, text)| (name.as_str(), text as &dyn std::fmt::Display)).collect();
    words.fill(&format!("caution-{}", caution.caution), &args)
}
