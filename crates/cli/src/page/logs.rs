//! What logs hold, as a page.

use language::Round;
use view::{
    BadRecordView, ImportDocument, ImportRouteView, LogFileView, LogGroupView, LogSignalView,
    LogsDocument,
};

use super::sheet::{Sheet, Side};
use super::text::{line, paragraph};
use crate::terminal::{HEADING, LOOK};
use crate::words::Words;

/// Bad records shown of a file.
const SHOWN: usize = 10;
/// Steps back in a hundred frames from which stamps may count from the line before.
const DOUBTFUL_PCT: u64 = 20;

/// The page.
pub fn logs(document: &LogsDocument, words: &Words) -> String {
    let mut parts: Vec<String> = document.files.iter().map(|one| file(one, words)).collect();
    parts.push(line(HEADING, "", &words.text("logs-groups")) + &groups(&document.groups, words));
    let signals = signals(&document.groups, words);
    parts.push(line(HEADING, "", &words.text("logs-signals")) + &signals);
    if !document.trouble_codes.is_empty() {
        let codes = document.trouble_codes.iter().map(|code| {
            let (spn, failure, source) = (&code.spn, &code.failure, &code.source_address);
            let known: [(&str, &dyn std::fmt::Display); 3] =
                [("spn", spn), ("failure", failure), ("source", source)];
            let text = match &code.count {
                Some(count) => {
                    let all = [known[0], known[1], known[2], ("count", count)];
                    words.fill("logs-code-counted", &all)
                }
                None => words.fill("logs-code", &known),
            };
            paragraph(&text, "  ", "    ")
        });
        parts.push(line(HEADING, "", &words.text("logs-codes")) + &codes.collect::<String>());
    }
    if !document.identification.is_empty() {
        let lines = document
            .identification
            .iter()
            .map(|one| format!("  {}: {}\n", one.source_address, one.text));
        let heading = line(HEADING, "", &words.text("logs-identification"));
        parts.push(heading + &lines.collect::<String>());
    }
    parts.join("\n")
}

/// The page of an import.
pub fn imported(document: &ImportDocument, words: &Words) -> String {
    let number = |count: u64| words.format.number(count as f64, 0, Round::Nearest);
    let mut text: String = document.logs.iter().map(|one| file(one, words) + "\n").collect();
    let (rows, files) = (number(document.rows), document.files);
    let written = words
        .fill("logs-written", &[("rows", &rows), ("files", &files), ("folder", &document.folder)]);
    text.push_str(&line(HEADING, "", &written));
    if document.off_grid > 0 {
        let off = words.fill("logs-off-grid", &[("count", &number(document.off_grid))]);
        text.push_str(&paragraph(&off, "  ", "  "));
    }
    if let Some(told) = &document.route {
        text.push_str(&route(told, words));
    }
    text
}

/// Positions on the route, and the wheels against it.
fn route(told: &ImportRouteView, words: &Words) -> String {
    let number = |count: u64| words.format.number(count as f64, 0, Round::Nearest);
    let (positions, off) = (number(told.positions_s), number(told.off_route_s));
    let places = words
        .fill("logs-on-route", &[("route", &told.name), ("positions", &positions), ("off", &off)]);
    let mut text = line(HEADING, "", &places);
    let ratios = [told.wheel_ratio, told.wheel_ratio_low, told.wheel_ratio_high];
    if let [Some(middle), Some(low), Some(high)] = ratios {
        let ratio = |ratio: f64| words.format.number(ratio, 3, Round::Nearest);
        let (middle, low, high) = (ratio(middle), ratio(low), ratio(high));
        let wheels = words.fill(
            "logs-wheels",
            &[("ratio", &middle), ("low", &low), ("high", &high), ("stretches", &told.stretches)],
        );
        text.push_str(&paragraph(&wheels, "  ", "  "));
    }
    match told.wheel_scale_wrong {
        Some(true) => text.push_str(&line(LOOK, "  ", &words.text("logs-wheels-wrong"))),
        Some(false) => {}
        None => text.push_str(&paragraph(&words.text("logs-wheels-unknown"), "  ", "  ")),
    }
    text
}

fn file(file: &LogFileView, words: &Words) -> String {
    let number = |count: u64| words.format.number(count as f64, 0, Round::Nearest);
    let span = file.from_s.zip(file.to_s).map_or(0.0, |(from, to)| to - from);
    let span = format!("{} s", words.format.number(span, 3, Round::Nearest));
    let (name, format, frames) = (&file.file, &file.format, number(file.frames));
    let head = words.fill(
        "logs-file",
        &[("file", name), ("format", format), ("frames", &frames), ("span", &span)],
    );
    let mut text = line(HEADING, "", &head);
    let mut say = |what: &str| text.push_str(&paragraph(what, "  ", "    "));
    if !file.interfaces.is_empty() {
        say(&words.fill("logs-buses", &[("names", &file.interfaces.join(", "))]));
    }
    if file.losses.is_empty() {
        say(&words.text("logs-clean"));
    }
    for loss in &file.losses {
        let key = format!("logs-loss-{}", loss.kind);
        say(&words.fill(&key, &[("count", &number(loss.count))]));
    }
    let count = |count: u64| usize::try_from(count).unwrap_or(usize::MAX);
    if file.clock_steps_back > 0 {
        say(&words.count("logs-clock-back", count(file.clock_steps_back)));
    }
    if file.gaps > 0 {
        say(&words.count("logs-gaps", count(file.gaps)));
    }
    if file.frames >= 100 && file.clock_steps_back * 100 > file.frames * DOUBTFUL_PCT {
        text.push_str(&line(LOOK, "  ", &words.text("logs-since-last-hint")));
    }
    for record in file.bad.iter().take(SHOWN) {
        text.push_str(&bad(record, words));
    }
    if file.bad.len() > SHOWN {
        text.push_str("    ");
        text.push_str(&words.text("logs-more-bad"));
        text.push('\n');
    }
    text
}

fn bad(record: &BadRecordView, words: &Words) -> String {
    let place = match (record.line, record.byte) {
        (Some(line), _) => words.fill("logs-line", &[("line", &line)]),
        (None, Some(byte)) => words.fill("logs-byte", &[("byte", &byte)]),
        (None, None) => String::new(),
    };
    format!("    {place}: {} {}\n", record.kind, record.record)
}

fn groups(groups: &[LogGroupView], words: &Words) -> String {
    let head = |key: &str, side| (words.text(key), side);
    let mut sheet = Sheet::new(vec![
        head("logs-col-pgn", Side::Right),
        head("logs-col-name", Side::Left),
        head("logs-col-from", Side::Right),
        head("logs-col-count", Side::Right),
        head("logs-col-bytes", Side::Right),
    ]);
    for group in groups {
        sheet.row(vec![
            group.pgn.to_string(),
            group.name.clone().unwrap_or_default(),
            group.source_address.to_string(),
            words.format.number(group.count as f64, 0, Round::Nearest),
            group.bytes.to_string(),
        ]);
    }
    sheet.lines()
}

fn signals(groups: &[LogGroupView], words: &Words) -> String {
    let head = |key: &str, side| (words.text(key), side);
    let mut sheet = Sheet::new(vec![
        head("logs-col-signal", Side::Left),
        head("logs-col-spn", Side::Right),
        head("logs-col-from", Side::Right),
        head("logs-col-low", Side::Right),
        head("logs-col-high", Side::Right),
        head("logs-col-unit", Side::Left),
        head("logs-col-values", Side::Right),
        head("logs-col-absent", Side::Right),
    ]);
    let mut any = false;
    for group in groups {
        // A signal that never had a value is in the document; here it would bury the others.
        for signal in group.signals.iter().filter(|signal| signal.values + signal.errors > 0) {
            any = true;
            sheet.row(row(signal, group.source_address, words));
        }
    }
    if any { sheet.lines() } else { format!("  {}\n", words.text("logs-no-signals")) }
}

fn row(signal: &LogSignalView, source: u8, words: &Words) -> Vec<String> {
    let number = |number: Option<f64>| {
        number.map_or_else(String::new, |number| {
            let whole = number.fract() == 0.0;
            words.format.number(number, if whole { 0 } else { 3 }, Round::Nearest)
        })
    };
    let count = |count: u64| words.format.number(count as f64, 0, Round::Nearest);
    vec![
        signal.name.clone(),
        signal.spn.to_string(),
        source.to_string(),
        number(signal.min),
        number(signal.max),
        signal.unit.clone(),
        count(signal.values),
        count(signal.absent),
    ]
}
