//! Approval requests: a letter for each tire, and the same lines as a table to fill in.

use language::{Format, Kind, Round};
use quantity::{ColdPressure, Length, Mass, Speed, Time};
use view::{AskedHaulView, AskedLineView, RequestView, RequestsDocument};

use crate::page::quantities::{chainage, highest, load, temperature, time};
use crate::page::sheet::{Sheet, Side};
use crate::page::text::{labelled, line, paragraph};
use crate::terminal::HEADING;
use crate::words::Words;

/// The letters, one after another.
pub fn letters(document: &RequestsDocument, words: &Words) -> String {
    if document.requests.is_empty() {
        return paragraph(&words.text("request-nothing"), "", "");
    }
    let letters: Vec<String> =
        document.requests.iter().map(|request| letter(document, request, words)).collect();
    letters.join("\n\n")
}

fn letter(document: &RequestsDocument, request: &RequestView, words: &Words) -> String {
    let title = words.fill(
        "request-title",
        &[
            ("size", &request.size),
            ("index", &request.load_index),
            ("symbol", &request.speed_symbol),
        ],
    );
    let mut text = line(HEADING, "", &title) + &facts(document, request, words);
    let mut number = 0;
    for haul in &request.hauls {
        text.push('\n');
        text.push_str(&about(haul, words));
        text.push_str(&table(haul, number + 1, words));
        text.push_str(&notes(haul, number + 1, words));
        number += haul.lines.len();
    }
    text.push('\n');
    text.push_str(&paragraph(&words.text("request-how"), "  ", "  "));
    text.push('\n');
    text + &questions(request, words)
}

fn facts(document: &RequestsDocument, request: &RequestView, words: &Words) -> String {
    let format = &words.format;
    let maximum = highest(format, request.rim_maximum_kpa);
    let rim = match &request.rim {
        Some(rim) => words.fill("request-rim-what", &[("rim", rim), ("maximum", &maximum)]),
        None => words.fill("request-rim-unknown", &[("maximum", &maximum)]),
    };
    let facts = [
        (
            "request-from",
            words.fill(
                "request-from-who",
                &[("responsible", &document.responsible), ("survey", &document.survey)],
            ),
        ),
        (
            "request-tire",
            words.fill(
                "request-tire-what",
                &[("size", &request.size), ("body", &request.body), ("name", &request.tire)],
            ),
        ),
        ("request-rim", rim),
        ("request-molded", highest(format, request.molded_maximum_kpa).to_string()),
        (
            "request-so-far",
            match &request.document {
                None => words.text("request-none-so-far"),
                Some(document) if request.document_counts => document.clone(),
                Some(document) => words.fill("request-lapsed", &[("document", document)]),
            },
        ),
    ];
    labelled(&facts.map(|(key, fact)| (words.text(key), fact)))
}

fn about(haul: &AskedHaulView, words: &Words) -> String {
    let format = &words.format;
    let told = words.fill(
        "request-haul",
        &[
            ("haul", &haul.haul),
            ("distance", &chainage(format, haul.distance_per_cycle_km, Round::Up)),
            ("cycles", &format.number(haul.cycles_per_day, 1, Round::Nearest)),
            ("coldest", &temperature(format, haul.coldest_c)),
            ("warmest", &temperature(format, haul.warmest_c)),
            ("reference", &temperature(format, haul.reference_c)),
        ],
    );
    paragraph(&told, "  ", "  ")
}

/// A speed asked about: never shown below.
fn asked_speed(line: &AskedLineView, format: &Format) -> String {
    format.speed(Speed::from_kmh(line.speed_kmh), Round::Up).number
}

/// A time asked about: never shown below.
fn minutes(min: f64, format: &Format) -> String {
    format.minutes(Time::from_min(min), Round::Up).number
}

/// The lowest pressure wanted: never shown above.
fn wanted(line: &AskedLineView, format: &Format) -> Option<String> {
    let kpa = line.wanted_kpa?;
    Some(format.pressure(ColdPressure::from_kpa(kpa), Round::Down).number)
}

fn table(haul: &AskedHaulView, first: usize, words: &Words) -> String {
    let format = &words.format;
    let headed = |key: &str, kind: Kind| {
        (format!("{}\n{}", words.text(key), format.unit(kind)), Side::Right)
    };
    let mut sheet = Sheet::new(vec![
        (words.text("request-line"), Side::Right),
        (words.text("plan-axle-group"), Side::Left),
        (words.text("request-state"), Side::Left),
        headed("request-load", Kind::Load),
        headed("request-speed", Kind::Speed),
        headed("request-distance", Kind::Distance),
        headed("request-stay", Kind::Distance),
        (words.text("request-hold"), Side::Right),
        headed("request-wanted", Kind::Pressure),
        (words.text("request-today"), Side::Left),
    ]);
    let none = words.text("unit-none");
    let mut last = "";
    for (number, line) in (first..).zip(&haul.lines) {
        let group = if line.axle_group == last {
            String::new()
        } else {
            format!("{}\n{}", line.axle_group, fitment(line, words))
        };
        last = &line.axle_group;
        let stay = line.stay_km.map(|km| chainage(format, km, Round::Up).number);
        let hold = line.hold_min.map(|min| minutes(min, format));
        sheet.row(vec![
            number.to_string(),
            group,
            line.load_state.clone(),
            load(format, line.load_kg).number,
            asked_speed(line, format),
            chainage(format, line.distance_km, Round::Up).number,
            stay.unwrap_or_else(|| none.clone()),
            hold.unwrap_or_else(|| none.clone()),
            wanted(line, format).unwrap_or_else(|| none.clone()),
            words.text(today(line)),
        ]);
    }
    sheet.lines()
}

fn fitment(line: &AskedLineView, words: &Words) -> String {
    words.text(if line.fitment == "dual" { "plan-dual" } else { "plan-single" })
}

fn today(line: &AskedLineView) -> &'static str {
    match line.approval.as_str() {
        "maker" => "plan-approval-brief-maker",
        "standard" => "plan-approval-brief-standard",
        "needs approval" => "plan-approval-needed",
        _ => "plan-approval-not-possible",
    }
}

fn notes(haul: &AskedHaulView, first: usize, words: &Words) -> String {
    let mut text = String::new();
    for (number, line) in (first..).zip(&haul.lines) {
        if let Some(kpa) = line.ground_wants_kpa {
            let pressure = highest(&words.format, kpa);
            let told = words.fill("request-ground", &[("line", &number), ("pressure", &pressure)]);
            text.push_str(&paragraph(&told, "  - ", "    "));
        }
        if line.approval == "not possible" {
            let told = words.fill("request-none-left", &[("line", &number)]);
            text.push_str(&paragraph(&told, "  - ", "    "));
        }
    }
    text
}

fn questions(request: &RequestView, words: &Words) -> String {
    let standing = request.hauls.iter().map(|haul| haul.loading_s).fold(0.0, f64::max);
    let standing = time(&words.format, standing);
    let asked = [
        words.text("request-please-pressure"),
        words.text("request-please-hold"),
        words.fill("request-please-standing", &[("time", &standing)]),
        words.text("request-please-service"),
        words.text("request-please-days"),
    ];
    let mut text = paragraph(&words.text("request-please"), "  ", "  ");
    for told in asked {
        text.push_str(&paragraph(&told, "  - ", "    "));
    }
    text
}

/// The lines of every request as CSV in the reader's units, with a decimal point in any language; the last four columns are the maker's.
pub fn csv_of_requests(document: &RequestsDocument, words: &Words) -> anyhow::Result<String> {
    let format = &words.format.for_files()?;
    let unit = |name: &str, kind: Kind| {
        let unit = format.unit(kind).replace('/', "").to_lowercase();
        format!("{name}_{unit}")
    };
    let mut writer = csv::Writer::from_writer(Vec::new());
    writer.write_record([
        "line".to_owned(),
        "tire".to_owned(),
        "size".to_owned(),
        "rim".to_owned(),
        "haul".to_owned(),
        "axle_group".to_owned(),
        "fitment".to_owned(),
        "load_state".to_owned(),
        "rung".to_owned(),
        unit("load", Kind::Load),
        unit("speed", Kind::Speed),
        unit("distance_a_cycle", Kind::Distance),
        unit("distance_at_once", Kind::Distance),
        "time_at_once_min".to_owned(),
        unit("wanted", Kind::Pressure),
        "today".to_owned(),
        unit("approved", Kind::Pressure),
        unit("approved_distance_at_once", Kind::Distance),
        "approved_time_at_once_min".to_owned(),
        "remarks".to_owned(),
    ])?;
    for request in &document.requests {
        let lines = request.hauls.iter().flat_map(|haul| haul.lines.iter().map(move |l| (haul, l)));
        for (number, (haul, line)) in (1..).zip(lines) {
            writer.write_record(record(number, request, haul, line, format))?;
        }
    }
    Ok(String::from_utf8(writer.into_inner()?)?)
}

fn record(
    number: usize,
    request: &RequestView,
    haul: &AskedHaulView,
    line: &AskedLineView,
    format: &Format,
) -> Vec<String> {
    let km = |km: f64| format.distance(Length::from_km(km), Round::Up).number;
    let mut record = vec![
        number.to_string(),
        request.tire.clone(),
        request.size.clone(),
        request.rim.clone().unwrap_or_default(),
        haul.haul.clone(),
        line.axle_group.clone(),
        line.fitment.clone(),
        line.load_state.clone(),
        line.rung.clone(),
        format.load(Mass::from_kg(line.load_kg), Round::Up).number,
        asked_speed(line, format),
        km(line.distance_km),
        line.stay_km.map(km).unwrap_or_default(),
        line.hold_min.map(|min| minutes(min, format)).unwrap_or_default(),
        wanted(line, format).unwrap_or_default(),
        line.approval.clone(),
    ];
    record.resize(20, String::new());
    record
}
