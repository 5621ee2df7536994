//! The answer to a call from the road: the big plain answer first, then how far, why, what to check.

use std::fmt::Display;

use language::{Amount, Format, Kind, Round};
use quantity::{GaugePressure, Mass, PressureDifference, Speed};
use view::{GroupAnswerView, NowDocument, NowTableDocument, SaidView, SubjectView};

use super::plan::why;
use super::quantities::{cap, highest, load, lowest, stretch, time_left, to_set};
use super::sheet::{Sheet, Side};
use super::text::{labelled, line, paragraph, unreviewed};
use crate::terminal::{HEADING, WRONG};
use crate::words::Words;

/// The page.
pub fn now(document: &NowDocument, words: &Words) -> String {
    let mut text = answer(document, words) + &unreviewed(words, "");
    text.push_str(&labelled(&facts(document, words)));
    let said = |prefix: &'static str| {
        move |said: &SaidView| in_words(&format!("{prefix}-{}", said.what), said, words)
    };
    let reasons: Vec<String> = document.reasons.iter().map(said("now-reason")).collect();
    let checks: Vec<String> = document.checks.iter().map(said("now-check")).collect();
    text.push_str(&list("now-why", &reasons, words));
    text.push_str(&list("now-next", &checks, words));
    text.push_str(&set_for(document, words));
    text.push_str(&groups(document, words));
    text.push_str(&list("now-safety", &safety(document, words), words));
    text
}

fn answer(document: &NowDocument, words: &Words) -> String {
    let speed = document.highest_speed_kmh.map(|kmh| cap(&words.format, kmh));
    let (style, text) = match (document.verdict.as_str(), speed) {
        ("go", Some(speed)) => (HEADING, words.fill("now-go", &[("speed", &speed)])),
        ("go-slow", Some(_)) if document.how_far.to == "off-the-road" => {
            (WRONG, words.text("now-walk"))
        }
        ("go-slow", Some(speed)) => (WRONG, words.fill("now-go-slow", &[("speed", &speed)])),
        _ => (WRONG, words.text("now-stop")),
    };
    line(style, "", &text)
}

fn facts(document: &NowDocument, words: &Words) -> Vec<(String, String)> {
    let format = &words.format;
    let how_far = &document.how_far;
    let distance = how_far.distance_m.map(|m| stretch(format, m, Round::Down).to_string());
    let minutes = how_far.time_min.map(|min| time_left(format, min * 60.0).to_string());
    let far = match (how_far.to.as_str(), distance, minutes) {
        ("hold", Some(distance), Some(time)) => {
            words.fill("plan-hold-limit-both", &[("time", &time), ("distance", &distance)])
        }
        ("hold", Some(limit), None) | ("hold", None, Some(limit)) => {
            words.fill("now-far-hold", &[("limit", &limit)])
        }
        (to, ..) => words.text(&format!("now-far-{to}")),
    };
    let mut facts = vec![(words.text("now-how-far"), far)];
    facts.push((words.text("now-truck"), truck(&document.subject, words)));
    facts.push((words.text("plan-load-state"), document.load_state.clone()));
    if let Some(chains) = &document.subject.chain_state {
        facts.push((words.text("plan-chain-state"), chains.clone()));
    }
    if let Some(rung) = &document.rung {
        facts.push((words.text("now-holds-rung"), rung.clone()));
    }
    facts
}

fn truck(subject: &SubjectView, words: &Words) -> String {
    let (combination, haul) = (&subject.combination, &subject.haul);
    match &subject.unit {
        Some(unit) => words.fill(
            "now-truck-unit",
            &[("unit", unit), ("combination", combination), ("haul", haul)],
        ),
        None => {
            words.fill("now-truck-combination", &[("combination", combination), ("haul", haul)])
        }
    }
}

fn list(heading: &str, lines: &[String], words: &Words) -> String {
    if lines.is_empty() {
        return String::new();
    }
    let lines: String = lines.iter().map(|one| paragraph(one, "  - ", "    ")).collect();
    format!("\n{}{lines}", line(HEADING, "", &words.text(heading)))
}

/// A reason or a check in words, with every name and number it speaks of put in.
fn in_words(key: &str, said: &SaidView, words: &Words) -> String {
    let format = &words.format;
    let mut args: Vec<(&str, String)> =
        said.names.iter().map(|(role, name)| (role.as_str(), name.clone())).collect();
    if let Some(by) = said.names.get("governed_by") {
        args.retain(|(role, _)| *role != "governed_by");
        args.push(("governed_by", words.text(&format!("limit-{by}"))));
    }
    if let Some(reason) = said.names.get("why") {
        args.retain(|(role, _)| *role != "why");
        args.push(("why", why(reason, &said.numbers, words)));
    }
    args.extend(said.numbers.iter().map(|(key, &number)| number_in_words(key, number, format)));
    // Where too much is what is wrong, what there is rounds up.
    if let Some(&cold) = said.numbers.get("cold_kpa").filter(|_| said.what == "above-highest") {
        args.retain(|(name, _)| *name != "cold");
        args.push(("cold", lowest(format, cold).to_string()));
    }
    let args: Vec<(&str, &dyn Display)> =
        args.iter().map(|(name, text)| (*name, text as &dyn Display)).collect();
    words.fill(key, &args)
}

/// The name and the text of a number; what there is rounds down, what is needed rounds up.
fn number_in_words<'a>(key: &'a str, number: f64, format: &Format) -> (&'a str, String) {
    let difference = || format.pressure(PressureDifference::from_kpa(number), Round::Up);
    let mass = |round| format.load(Mass::from_kg(number), round);
    match key {
        "kept_kpa" => ("kept", highest(format, number).to_string()),
        "cold_kpa" => ("cold", highest(format, number).to_string()),
        "recommended_kpa" => ("recommended", lowest(format, number).to_string()),
        "needed_kpa" => ("needed", lowest(format, number).to_string()),
        "highest_kpa" => ("highest", highest(format, number).to_string()),
        "reading_kpa" => ("reading", read(format, number).to_string()),
        "closes_below_kpa" => ("closes", to_set(format, number).to_string()),
        "set_kpa" => ("set", to_set(format, number).to_string()),
        "difference_kpa" => ("difference", difference().to_string()),
        "share_pct" => ("share", format.percent(number / 100.0, 0, Round::Down).to_string()),
        "load_kg" => ("load", load(format, number).to_string()),
        "highest_kg" => ("highest", mass(Round::Down).to_string()),
        "wheel_ends" => ("count", format.number(number, 0, Round::Nearest)),
        other => (other, format.number(number, 0, Round::Nearest)),
    }
}

/// A reading, as near as the unit shows it to what the gauge showed.
fn read(format: &Format, kpa: f64) -> Amount {
    format.pressure(GaugePressure::from_kpa(kpa), Round::Nearest)
}

fn groups(document: &NowDocument, words: &Words) -> String {
    let format = &words.format;
    let (pressure, speed) = (format.unit(Kind::Pressure), format.unit(Kind::Speed));
    let mut sheet = Sheet::new(vec![
        (words.text("plan-axle-group"), Side::Left),
        (format!("{}\n{pressure}", words.text("now-read")), Side::Right),
        (format!("{}\n{pressure}", words.text("plan-cold")), Side::Right),
        (format!("{}\n{}", words.text("now-air"), format.unit(Kind::Temperature)), Side::Right),
        (format!("{}\n{speed}", words.text("now-at-most")), Side::Right),
        (words.text("now-holds-rung"), Side::Left),
    ]);
    for group in &document.groups {
        sheet.row(row(group, words));
    }
    format!("\n{}{}", line(HEADING, "", &words.text("now-groups")), sheet.lines())
}

fn row(group: &GroupAnswerView, words: &Words) -> Vec<String> {
    let format = &words.format;
    let none = || words.text("unit-none");
    let reading = match group.known_from.as_str() {
        "kept" => words.text("now-kept"),
        "not-gauged" => words.text("now-not-gauged"),
        _ => group.reading_kpa.map_or_else(none, |kpa| read(format, kpa).number),
    };
    let air = group.taken_at_c.map(|c| super::quantities::temperature(format, c).number);
    vec![
        group.axle_group.clone(),
        reading,
        group.cold_kpa.map_or_else(none, |kpa| highest(format, kpa).number),
        air.unwrap_or_else(none),
        speed(group.highest_speed_kmh.filter(|_| group.verdict != "stop"), words),
        group.rung.clone().unwrap_or_else(none),
    ]
}

fn speed(kmh: Option<f64>, words: &Words) -> String {
    let shown = kmh.map(|kmh| words.format.speed(Speed::from_kmh(kmh), Round::Down).number);
    shown.unwrap_or_else(|| words.text("unit-none"))
}

fn set_for(document: &NowDocument, words: &Words) -> String {
    if document.set_for.is_empty() {
        return String::new();
    }
    let format = &words.format;
    let unit = format.unit(Kind::Pressure);
    let mut sheet = Sheet::new(vec![
        (words.text("plan-rung"), Side::Left),
        (words.text("plan-channel"), Side::Left),
        (format!("{}\n{unit}", words.text("now-was-set")), Side::Right),
        (format!("{}\n{unit}", words.text("now-needed")), Side::Right),
    ]);
    let shown = |kpa: Option<f64>| {
        let shown = kpa.map(|kpa| to_set(format, kpa).number);
        shown.unwrap_or_else(|| words.text("unit-none"))
    };
    for set in &document.set_for {
        let (was, needed) = (shown(set.was_set_kpa), shown(set.needed_kpa));
        sheet.row(vec![set.rung.clone(), set.channel.clone(), was, needed]);
    }
    format!("\n{}{}", line(HEADING, "", &words.text("now-set-for")), sheet.lines())
}

/// What protects people: always the same few words, and those of a fast loss where a tire is flat.
fn safety(document: &NowDocument, words: &Words) -> Vec<String> {
    let usual = ["maker-approves", "law-decides", "trained-people", "side-slope", "tipping", "ice"];
    let loss = [
        "loss-stop-filling",
        "loss-slow",
        "loss-stop",
        "loss-look",
        "loss-stay-away",
        "loss-isolate",
        "loss-trained",
        "service-rule",
    ];
    let flat = document.reasons.iter().any(|reason| reason.what == "under-service-share");
    let first = loss.into_iter().filter(|_| flat);
    let keys = first.chain(usual).chain(["rollover", "reads-only"]);
    keys.map(|key| words.text(&format!("caution-{key}"))).collect()
}

/// The table for a card.
pub fn now_table(document: &NowTableDocument, words: &Words) -> String {
    let format = &words.format;
    let title = words.fill("now-table-title", &[("haul", &document.subject.haul)]);
    let mut text = line(HEADING, "", &title);
    let tires = words.text(&format!("now-table-{}", document.tires));
    text.push_str(&paragraph(&tires, "", ""));
    if document.subject.with_unapproved {
        text.push_str(&line(WRONG, "", &words.text("now-reason-unapproved-counted")));
    }
    if let Some(chains) = &document.subject.chain_state {
        text.push_str(&paragraph(chains, "", ""));
    }
    let unit = format.unit(Kind::Speed);
    let mut headings = vec![
        (words.text("plan-channel"), Side::Left),
        (format!("{}\n{}", words.text("now-read"), format.unit(Kind::Pressure)), Side::Right),
    ];
    headings
        .extend(document.load_states.iter().map(|name| (format!("{name}\n{unit}"), Side::Right)));
    let mut sheet = Sheet::new(headings);
    let mut before = None;
    for row in &document.rows {
        let again = before == Some(&row.channel);
        before = Some(&row.channel);
        let reading = read(format, row.reading_kpa).number;
        let mut cells = vec![if again { String::new() } else { row.channel.clone() }, reading];
        cells.extend(row.highest_speed_kmh.iter().map(|kmh| speed(*kmh, words)));
        sheet.row(cells);
    }
    text.push_str(&sheet.lines());
    text.push_str(&paragraph(&words.text("now-table-how"), "", ""));
    text.push_str(&unreviewed(words, ""));
    for key in ["maker-approves", "law-decides", "trained-people", "ice", "rollover"] {
        text.push_str(&paragraph(&words.text(&format!("caution-{key}")), "  - ", "    "));
    }
    text
}
