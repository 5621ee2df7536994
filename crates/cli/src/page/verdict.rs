//! A practice drive judged and priced, as a page.

use language::{Kind, Round};
use quantity::{GaugePressure, Length, PressureDifference, Speed, Time};
use view::{FindingView, PriceLineView, TallyView, VerdictDocument};

use super::quantities::{cap, chainage, fine, fuel, lowest, stretch, time};
use super::sheet::{Sheet, Side};
use super::text::{line, paragraph, unreviewed};
use crate::terminal::{HEADING, WRONG};
use crate::words::Words;

/// The page.
pub fn verdict(document: &VerdictDocument, words: &Words) -> String {
    let title = words.fill("practice-title", &[("haul", &document.haul), ("seed", &document.seed)]);
    let mut text = line(HEADING, "", &title);
    if document.driven.arrived {
        text.push_str(&paragraph(&words.text("practice-arrived"), "", ""));
    } else {
        text.push_str(&line(WRONG, "", &words.text("practice-not-arrived")));
    }
    for surprise in &document.surprises {
        let what = words.text(&format!("surprise-{surprise}"));
        text.push_str(&paragraph(&words.fill("practice-surprise", &[("what", &what)]), "", ""));
    }
    if document.surprises.is_empty() {
        text.push_str(&paragraph(&words.text("practice-no-surprise"), "", ""));
    }
    text.push('\n');
    text.push_str(&line(HEADING, "", &words.text("practice-findings")));
    text.push_str(&findings(document, words));
    text.push('\n');
    text.push_str(&line(HEADING, "", &words.text("practice-price")));
    text.push_str(&prices(document, words));
    text.push_str(&paragraph(&words.text("practice-on-the-real-road"), "", ""));
    text.push_str(&paragraph(&words.text("caution-maker-approves"), "", ""));
    text.push_str(&unreviewed(words, ""));
    text
}

fn findings(document: &VerdictDocument, words: &Words) -> String {
    let format = &words.format;
    let mut text = String::new();
    if document.findings.is_empty() {
        text.push_str(&paragraph(&words.text("practice-no-finding"), "  ", "  "));
    } else {
        let unit = format.unit(Kind::Distance);
        let mut sheet = Sheet::new(vec![
            (words.text("practice-severity"), Side::Left),
            (words.text("practice-finding"), Side::Left),
            (format!("{}\n{unit}", words.text("practice-at")), Side::Right),
            (words.text("practice-when"), Side::Right),
            (words.text("practice-lasted"), Side::Right),
            (words.text("practice-evidence"), Side::Left),
        ]);
        for one in &document.findings {
            let place = one.km.map(|km| chainage(format, km, Round::Nearest).number);
            sheet.row(vec![
                words.text(&format!("finding-severity-{}", one.severity)),
                words.text(&format!("finding-{}", one.rule)),
                place.unwrap_or_else(|| words.text("unit-unknown")),
                time(format, one.start_s).to_string(),
                time(format, one.lasted_s).to_string(),
                evidence(one, words),
            ]);
        }
        text.push_str(&sheet.lines());
    }
    let run_flat = |one: &FindingView| one.severity == "danger" && one.evidence.cold_kpa.is_some();
    if document.findings.iter().any(run_flat) {
        text.push_str(&paragraph(&words.text("finding-run-flat"), "", ""));
    }
    if document.coverage.unknown_s > 0.0 {
        let unknown = time(format, document.coverage.unknown_s);
        text.push_str(&paragraph(&words.fill("finding-unknown", &[("time", &unknown)]), "", ""));
    }
    text
}

fn evidence(one: &FindingView, words: &Words) -> String {
    let format = &words.format;
    let seen = &one.evidence;
    let none = words.text("unit-unknown");
    let channel = seen.channel.as_ref().unwrap_or(&none);
    let rung = seen.rung.as_ref().unwrap_or(&none);
    if let (Some(reading), Some(limit)) = (seen.reading_kpa, seen.reading_limit_kpa) {
        let reading = format.pressure(GaugePressure::from_kpa(reading), Round::Up);
        let limit = format.pressure(GaugePressure::from_kpa(limit), Round::Down);
        let args: &[(&str, &dyn std::fmt::Display)] =
            &[("channel", channel), ("reading", &reading), ("limit", &limit)];
        return words.fill("finding-above", args);
    }
    if let (Some(cold), Some(minimum)) = (seen.cold_kpa, seen.minimum_kpa) {
        let pressure = format.pressure(quantity::ColdPressure::from_kpa(cold), Round::Down);
        let limit = lowest(format, minimum);
        let governed = seen.min_governed_by.as_ref();
        let governed = governed.map(|by| words.text(&format!("limit-{by}")));
        let (key, governed) = match governed {
            Some(governed) => ("finding-below", governed),
            None => ("finding-below-plain", String::new()),
        };
        let args: &[(&str, &dyn std::fmt::Display)] = &[
            ("channel", channel),
            ("pressure", &pressure),
            ("rung", rung),
            ("load_state", &one.load_state),
            ("limit", &limit),
            ("governed", &governed),
        ];
        return words.fill(key, args);
    }
    if let (Some(kmh), Some(cap_kmh)) = (seen.speed_kmh, seen.cap_kmh) {
        let speed = format.speed(Speed::from_kmh(kmh), Round::Up);
        let args: &[(&str, &dyn std::fmt::Display)] =
            &[("speed", &speed), ("rung", rung), ("cap", &cap(format, cap_kmh))];
        return words.fill("finding-over", args);
    }
    if let (Some(held_s), Some(held_m)) = (seen.held_s, seen.held_m) {
        let limit = match (seen.hold_limit_s, seen.hold_limit_m) {
            (Some(s), Some(m)) => {
                let distance = stretch(format, m, Round::Down);
                let args: &[(&str, &dyn std::fmt::Display)] =
                    &[("time", &time(format, s)), ("distance", &distance)];
                words.fill("finding-hold-both", args)
            }
            (Some(s), None) => time(format, s).to_string(),
            (None, m) => stretch(format, m.unwrap_or(0.0), Round::Down).to_string(),
        };
        let distance = stretch(format, held_m, Round::Up);
        let args: &[(&str, &dyn std::fmt::Display)] = &[
            ("time", &time(format, held_s)),
            ("distance", &distance),
            ("rung", rung),
            ("limit", &limit),
        ];
        return words.fill("finding-held", args);
    }
    let rise = PressureDifference::from_kpa(seen.rise_kpa.unwrap_or(0.0));
    let reading = GaugePressure::from_kpa(seen.reading_kpa.unwrap_or(0.0));
    let args: &[(&str, &dyn std::fmt::Display)] = &[
        ("channel", channel),
        ("rise", &fine(format, Kind::Pressure, rise, Round::Nearest)),
        ("reading", &format.pressure(reading, Round::Nearest)),
    ];
    words.fill("finding-rose", args)
}

fn prices(document: &VerdictDocument, words: &Words) -> String {
    let mut sheet = Sheet::new(vec![
        (words.text("practice-item"), Side::Left),
        (words.text("practice-yours"), Side::Right),
        (words.text("practice-plans"), Side::Right),
        (words.text("practice-more"), Side::Right),
        (words.text("practice-cost"), Side::Right),
    ]);
    for price in &document.prices {
        let (yours, plans) = amounts(&price.item, &document.driven, &document.planned);
        let cost = price.cost.map(|cost| words.format.number(cost, 2, Round::Nearest));
        sheet.row(vec![
            words.text(&format!("practice-item-{}", price.item)),
            shown(&price.item, yours, words),
            shown(&price.item, plans, words),
            shown(&price.item, in_units(price), words),
            cost.unwrap_or_else(|| words.text("practice-no-price")),
        ]);
    }
    let mut text = sheet.lines();
    let facts = match (document.cost, &document.currency) {
        (Some(cost), Some(currency)) => {
            let cost = words.format.number(cost, 2, Round::Nearest);
            words.fill("practice-cost-together", &[("cost", &cost), ("currency", currency)])
        }
        _ => words.text("practice-nothing-priced"),
    };
    text.push_str(&paragraph(&facts, "", ""));
    text
}

/// Amounts of an item, in seconds, liters, a count, kPa km or kPa min.
fn amounts(item: &str, driven: &TallyView, planned: &TallyView) -> (f64, f64) {
    let of = |tally: &TallyView| match item {
        "time" => tally.time_s,
        "fuel" => tally.fuel_l,
        "compressor" => tally.compressor_loaded_s,
        "changes" => tally.changes as f64,
        "road" => tally.hard_kpa_km,
        _ => tally.under_minimum_kpa_min,
    };
    (of(driven), of(planned))
}

/// What is more of an item, in the units of [`amounts`].
fn in_units(price: &PriceLineView) -> f64 {
    match price.item.as_str() {
        "time" | "compressor" => price.more * 3600.0,
        _ => price.more,
    }
}

fn shown(item: &str, amount: f64, words: &Words) -> String {
    let format = &words.format;
    match item {
        "time" | "compressor" => format.minutes(Time::from_s(amount), Round::Nearest).to_string(),
        "fuel" => fuel(format, amount).to_string(),
        "changes" => format.number(amount, 0, Round::Nearest),
        "road" => {
            let pressure =
                fine(format, Kind::Pressure, PressureDifference::from_kpa(1.0), Round::Nearest);
            let unit = format.unit(Kind::Distance);
            let per = PressureDifference::from_kpa(amount);
            let km = Length::from_km(1.0);
            let scaled = product(format, per) * in_distance(format, km);
            format!("{} {} {unit}", format.number(scaled, 0, Round::Nearest), pressure.unit)
        }
        _ => {
            let pressure =
                fine(format, Kind::Pressure, PressureDifference::from_kpa(1.0), Round::Nearest);
            let scaled = product(format, PressureDifference::from_kpa(amount));
            format!("{} {} min", format.number(scaled, 0, Round::Nearest), pressure.unit)
        }
    }
}

/// A pressure in the unit shown, as a plain number.
fn product(format: &language::Format, of: PressureDifference) -> f64 {
    use quantity::Unit;
    of.in_unit(Kind::Pressure.shown(format.profile()).symbol).unwrap_or(of.as_kpa())
}

/// A distance in the unit shown, as a plain number.
fn in_distance(format: &language::Format, of: Length) -> f64 {
    use quantity::Unit;
    of.in_unit(Kind::Distance.shown(format.profile()).symbol).unwrap_or(of.as_km())
}
