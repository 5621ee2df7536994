//! Made logs and the faults they can hold, as tables.

use language::Round;
use study::make::FaultKind;
use view::MadeLogsDocument;

use super::sheet::{Sheet, Side};
use crate::words::Words;

/// Every fault with a call that asks for it.
pub fn fault_list(kinds: &[FaultKind], words: &Words) -> String {
    let mut sheet = Sheet::new(vec![
        (words.text("make-fault"), Side::Left),
        (words.text("make-fault-range"), Side::Left),
        (words.text("make-fault-what"), Side::Left),
    ]);
    for kind in kinds {
        let (low, high, unit) = kind.range();
        let range =
            if unit.is_empty() { "–".to_owned() } else { format!("{low} … {high} {unit}") };
        sheet.row(vec![
            kind.name().to_owned(),
            range,
            words.text(&format!("make-fault-{}", kind.name())),
        ]);
    }
    let mut text = sheet.lines();
    text.push('\n');
    text.push_str(&words.text("make-fault-examples"));
    text.push('\n');
    let examples = kinds.iter().map(|kind| format!("  {}\n", kind.example()));
    text + &examples.collect::<String>()
}

/// The logs that were made, a line each.
pub fn made_logs(document: &MadeLogsDocument, words: &Words) -> String {
    let right = |key: &str| (words.text(key), Side::Right);
    let mut sheet = Sheet::new(vec![
        (words.text("make-log"), Side::Left),
        right("make-frames"),
        right("make-lost"),
        right("make-hours"),
        right("make-distance"),
        right("make-asked"),
        right("make-complete"),
        right("make-forgotten"),
    ]);
    let number = |value: f64, places| words.format.number(value, places, Round::Nearest);
    for log in &document.logs {
        let length = quantity::Length::from_km(log.driven_km);
        sheet.row(vec![
            log.log.clone(),
            number(log.frames as f64, 0),
            number(log.lost_frames as f64, 0),
            number(log.span_s / 3600.0, 1),
            words.format.distance(length, Round::Nearest).to_string(),
            log.changes_asked.to_string(),
            log.changes_complete.to_string(),
            log.changes_forgotten.to_string(),
        ]);
    }
    let mut text = sheet.lines();
    text.push('\n');
    text.push_str(&words.text("make-truth-beside"));
    text.push('\n');
    text
}
