//! The plan asked backwards, in words.

use language::Round;
use quantity::{Speed, Volume};
use view::{AnswerView, AskDocument, AskedChangeView, CapView, LateView, SupplyView};

use super::quantities::{cap, chainage, lowest, stretch, time};
use super::sheet::{Sheet, Side};
use super::text::{labelled, line, paragraph, unreviewed};
use crate::terminal::{HEADING, WRONG};
use crate::words::Words;

/// The page.
pub fn ask(document: &AskDocument, words: &Words) -> String {
    match &document.answer {
        AnswerView::Supply(view) => supply(view, words),
        AnswerView::Cap(view) => cap_page(view, words),
        AnswerView::Late(view) => late(view, words),
    }
}

/// The change asked about, in one line.
fn change(view: &AskedChangeView, words: &Words) -> String {
    let near = |km| chainage(&words.format, km, Round::Nearest);
    words.fill(
        "ask-change",
        &[
            ("number", &view.number),
            ("load_state", &view.load_state),
            ("from", &view.from_rung),
            ("to", &view.to_rung),
            ("at", &near(view.km)),
            ("reach_by", &near(view.reach_by_km)),
        ],
    )
}

fn supply(view: &SupplyView, words: &Words) -> String {
    let format = &words.format;
    let mut text = line(HEADING, "", &words.text("ask-supply-title"));
    text.push_str(&paragraph(&change(&view.change, words), "", ""));
    if view.fits_today {
        text.push_str(&paragraph(&words.text("ask-supply-fits"), "", ""));
        return text;
    }
    let compressor = match view.compressor_times {
        Some(times) => {
            words.fill("ask-supply-times", &[("times", &format.number(times, 2, Round::Up))])
        }
        None => words.fill(
            "ask-supply-times-not",
            &[("times", &format.number(view.compressor_times_tried, 0, Round::Nearest))],
        ),
    };
    let volume = |l| format.air_volume(Volume::from_l(l), Round::Up);
    let reserve = match view.more_reserve_l {
        Some(more) => words.fill("ask-supply-reserve", &[("volume", &volume(more))]),
        None => {
            words.fill("ask-supply-reserve-not", &[("volume", &volume(view.more_reserve_tried_l))])
        }
    };
    text.push_str(&labelled(&[
        (words.text("ask-supply-compressor"), compressor),
        (words.text("ask-supply-tank"), reserve),
    ]));
    let judged = words.text(&format!("ask-judged-{}", view.judged_by));
    text.push_str(&paragraph(&judged, "", ""));
    text
}

fn cap_page(view: &CapView, words: &Words) -> String {
    let format = &words.format;
    let speed = |kmh: Option<f64>| {
        kmh.map_or_else(|| words.text("ask-cap-none"), |kmh| cap(format, kmh).to_string())
    };
    let load = view.load_state.clone().unwrap_or_else(|| words.text("unit-unknown"));
    let title = words.fill(
        "ask-cap-title",
        &[
            ("channel", &view.channel),
            ("load_state", &load),
            ("pressure", &lowest(format, view.pressure_kpa)),
        ],
    );
    let mut text = line(HEADING, "", &title);
    if view.above_highest {
        text.push_str(&line(WRONG, "", &words.text("ask-cap-above-highest")));
    }
    let exact = view.exact_cap_kmh.map(|kmh| {
        super::fine(format, language::Kind::Speed, Speed::from_kmh(kmh), Round::Down).to_string()
    });
    let mut facts = vec![
        (words.text("ask-cap-approved"), speed(view.approved_cap_kmh)),
        (words.text("ask-cap-window"), speed(view.cap_kmh)),
        (words.text("ask-cap-exact"), exact.unwrap_or_else(|| words.text("ask-cap-none"))),
    ];
    if let Some(by) = &view.next_governed_by {
        facts.push((words.text("ask-cap-governed"), words.text(&format!("limit-{by}"))));
    }
    text.push_str(&labelled(&facts));
    text.push_str(&paragraph(&words.text("caution-maker-approves"), "", ""));
    text.push_str(&unreviewed(words, ""));
    text
}

fn late(view: &LateView, words: &Words) -> String {
    let format = &words.format;
    let place = |km| chainage(format, km, Round::Nearest).number;
    let mut text = line(HEADING, "", &words.text("ask-late-title"));
    text.push_str(&paragraph(&change(&view.change, words), "", ""));
    match (view.latest_km, view.in_hand_m) {
        (Some(km), Some(in_hand)) => {
            let latest = super::fine(
                format,
                language::Kind::Distance,
                quantity::Length::from_km(km),
                Round::Nearest,
            );
            let in_hand = stretch(format, in_hand, Round::Down);
            let args: &[(&str, &dyn std::fmt::Display)] =
                &[("latest", &latest), ("in_hand", &in_hand)];
            text.push_str(&paragraph(&words.fill("ask-late-latest", args), "", ""));
        }
        _ => text.push_str(&line(WRONG, "", &words.text("ask-late-never"))),
    }
    if view.calls.is_empty() {
        text.push_str(&paragraph(&words.text("ask-late-standing"), "", ""));
        return text;
    }
    let unit = format.unit(language::Kind::Distance);
    let mut sheet = Sheet::new(vec![
        (words.text("ask-late-by"), Side::Right),
        (format!("{}\n{unit}", words.text("plan-at")), Side::Right),
        (format!("{}\n{unit}", words.text("ask-late-complete")), Side::Right),
        (words.text("plan-time-lost"), Side::Right),
        (words.text("ask-late-wrong-road"), Side::Right),
        (words.text("ask-late-descent"), Side::Left),
    ]);
    for call in &view.calls {
        sheet.row(vec![
            stretch(format, call.by_m, Round::Nearest).to_string(),
            place(call.km),
            call.reached_km.map_or_else(|| words.text("plan-run-ends"), place),
            time(format, call.time_lost_s).to_string(),
            stretch(format, call.wrong_road_m, Round::Up).to_string(),
            words.text(if call.on_descent { "ask-late-on-descent" } else { "unit-none" }),
        ]);
    }
    text.push_str(&sheet.lines());
    text.push_str(&paragraph(&words.text("ask-late-how"), "", ""));
    text
}
