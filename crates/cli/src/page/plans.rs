//! The list of issued plans, and the ladder a unit drives by in short.

use language::{Kind, Round};
use quantity::Speed;
use view::{CellView, FrozenPlan, InForceView, IssuedPlanView, PlanView, PlansDocument, RungView};

use super::quantities::to_set;
use super::sheet::{Sheet, Side};
use super::text::{line, paragraph, unreviewed};
use crate::terminal::{HEADING, WRONG};
use crate::words::Words;

/// The page.
pub fn plans(document: &PlansDocument, words: &Words) -> String {
    let mut text = match (&document.in_force, document.plans.is_empty()) {
        (Some(unit), true) => {
            paragraph(&words.fill("issued-nothing-unit", &[("unit", &unit.unit)]), "", "")
        }
        (None, true) => paragraph(&words.text("issued-nothing"), "", ""),
        (_, false) => table(document, words),
    };
    if let Some(unit) = document.in_force.as_ref().filter(|_| !document.plans.is_empty()) {
        text.push('\n');
        text.push_str(&in_force(document, unit, words));
    }
    text
}

fn table(document: &PlansDocument, words: &Words) -> String {
    let keys = ["plan", "date", "haul", "of-units", "days", "in-force", "standing"];
    let mut sheet =
        Sheet::new(keys.map(|key| (words.text(&format!("issued-{key}")), Side::Left)).to_vec());
    for plan in &document.plans {
        sheet.row(vec![
            plan.id.clone(),
            plan.date.clone(),
            plan.haul.clone(),
            plan.units.join(", "),
            days(plan, words),
            holds(plan, words),
            standing(plan, words),
        ]);
    }
    let title = words.fill("issued-title", &[("day", &document.date)]);
    line(HEADING, "", &title) + &sheet.lines()
}

fn days(plan: &IssuedPlanView, words: &Words) -> String {
    match &plan.valid_until {
        None => words.fill("issued-open", &[("from", &plan.valid_from)]),
        Some(until) => words.fill("issued-closed", &[("from", &plan.valid_from), ("until", until)]),
    }
}

fn holds(plan: &IssuedPlanView, words: &Words) -> String {
    if plan.units.is_empty() {
        words.text("issued-in-force-unassigned")
    } else if plan.in_force_for.is_empty() {
        words.text("issued-in-force-none")
    } else if plan.in_force_for == plan.units {
        words.text("issued-in-force-all")
    } else {
        words.fill("issued-in-force-for", &[("units", &plan.in_force_for.join(", "))])
    }
}

fn standing(plan: &IssuedPlanView, words: &Words) -> String {
    let only_comments = plan.changed_files.iter().all(|file| file.change == "comments only");
    let key = match plan.stale_cause.as_deref() {
        Some("approval or permit lapsed") => "issued-lapsed",
        Some("cannot tell") => "issued-cannot-tell",
        Some(_) => "issued-values",
        None if plan.changed_files.is_empty() => "issued-current",
        None if only_comments => "issued-comments-only",
        None => "issued-touched",
    };
    let files = plan.changed_files.iter().map(|file| match file.change.as_str() {
        "added" => words.fill("issued-added", &[("file", &file.file)]),
        "removed" => words.fill("issued-removed", &[("file", &file.file)]),
        _ => file.file.clone(),
    });
    words.fill(key, &[("files", &files.collect::<Vec<_>>().join(", "))])
}

fn in_force(document: &PlansDocument, unit: &InForceView, words: &Words) -> String {
    let day = &document.date;
    if !unit.disputed.is_empty() {
        let plans = unit.disputed.join(", ");
        let told = words
            .fill("issued-unit-disputed", &[("unit", &unit.unit), ("day", day), ("plans", &plans)]);
        return line(WRONG, "", &told);
    }
    let Some(plan) = &unit.plan else {
        let told = words.fill("issued-unit-none", &[("unit", &unit.unit), ("day", day)]);
        return line(WRONG, "", &told);
    };
    let told =
        words.fill("issued-unit-plan", &[("unit", &unit.unit), ("plan", &plan.id), ("day", day)]);
    let mut text = line(HEADING, "", &told);
    if document.plans.iter().any(|listed| listed.id == plan.id && listed.stale) {
        text.push_str(&line(WRONG, "  ", &words.text("issued-unit-stale")));
    }
    text + &ladder(plan, words)
}

/// What a driver may be shown, rung by rung.
fn ladder(plan: &FrozenPlan, words: &Words) -> String {
    let mut text = String::new();
    for plan in &plan.plan.plans {
        for chains in once_each(plan.ladder.iter().map(|cell| cell.chain_state.as_str())) {
            let unit = words.format.unit(Kind::Pressure);
            let told = words.fill("issued-ladder", &[("chains", &chains), ("unit", &unit)]);
            text.push_str(&line(HEADING, "  ", &told));
            text.push_str(&rungs(plan, chains, words));
        }
    }
    text.push_str(&paragraph(&words.text("issued-road-mark"), "  ", "  "));
    text + &unreviewed(words, "  ")
}

fn rungs(plan: &PlanView, chains: &str, words: &Words) -> String {
    let of_chains = || plan.ladder.iter().filter(|cell| cell.chain_state == chains);
    let columns = once_each(of_chains().map(|cell| (&cell.channel, &cell.load_state)));
    let speed = words.format.unit(Kind::Speed);
    let mut headings = vec![
        (words.text("issued-rung"), Side::Left),
        (format!("{}\n{speed}", words.text("issued-up-to")), Side::Right),
    ];
    headings.extend(
        columns.iter().map(|(channel, state)| (format!("{channel}\n{state}"), Side::Right)),
    );
    let mut sheet = Sheet::new(headings);
    for rung in &plan.rungs {
        let mut row = vec![rung.name.clone(), cap(rung, words)];
        row.extend(columns.iter().map(|column| {
            let cell = of_chains().find(|cell| {
                cell.rung == rung.name && (&cell.channel, &cell.load_state) == *column
            });
            shown(cell, words)
        }));
        sheet.row(row);
    }
    sheet.lines()
}

fn cap(rung: &RungView, words: &Words) -> String {
    words.format.speed(Speed::from_kmh(rung.cap_kmh), Round::Down).number
}

fn shown(cell: Option<&CellView>, words: &Words) -> String {
    let Some((cell, kpa)) = cell.and_then(|cell| Some((cell, cell.driver_set_kpa?))) else {
        return words.text("unit-none");
    };
    let mark = if cell.driver == "road pressure" { "*" } else { "" };
    format!("{}{mark}", to_set(&words.format, kpa).number)
}

fn once_each<T: PartialEq>(all: impl Iterator<Item = T>) -> Vec<T> {
    let mut found = Vec::new();
    for one in all {
        if !found.contains(&one) {
            found.push(one);
        }
    }
    found
}
