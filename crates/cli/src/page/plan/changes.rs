//! Change points in the order of travel, what calling late does, and the change when laden.

use language::{Kind, Round};
use report::changes::{early, place, way};
use view::{ChangePointView, ConsequenceView, LadenOptionView, PlanView};

use super::{head, with_unit};
use crate::page::quantities::{at_hand, cap, chainage, stretch, time};
use crate::page::sheet::{Sheet, Side};
use crate::page::text::{line, paragraph, unreviewed};
use crate::terminal::{HEADING, WRONG};
use crate::words::Words;

/// Change points of both runs.
pub fn points(plan: &PlanView, words: &Words) -> String {
    if plan.cycle.is_none() {
        return String::new();
    }
    let mut text = head(words, "plan-change-points");
    if plan.change_points.is_empty() {
        return text + &paragraph(&words.text("plan-no-change-points"), "  ", "  ");
    }
    let sampled =
        plan.change_points.iter().filter(|point| point.change_time_p90_s.is_some()).count();
    let times = words.text(match sampled {
        0 => "plan-times-nominal",
        all if all == plan.change_points.len() => "plan-times-sampled",
        _ => "plan-times-partly-sampled",
    });
    let how = words.fill("plan-change-points-how", &[("times", &times)]);
    text.push_str(&paragraph(&how, "  ", "  "));
    let numbered: Vec<(usize, &ChangePointView)> =
        plan.change_points.iter().enumerate().map(|(index, point)| (index + 1, point)).collect();
    let runs = numbered.chunk_by(|(_, a), (_, b)| a.load_state == b.load_state);
    for run in runs {
        let Some((_, first)) = run.first() else { continue };
        let title = words.fill("plan-run", &[("load_state", &first.load_state)]);
        text.push('\n');
        text.push_str(&line(HEADING, "  ", &title));
        text.push_str(&table(run, words));
        for (number, point) in run {
            text.push_str(&options(*number, point, words));
        }
    }
    text.push('\n');
    text.push_str(&line(HEADING, "  ", &words.text("plan-late")));
    text + &late(&numbered, words)
}

fn table(run: &[(usize, &ChangePointView)], words: &Words) -> String {
    let format = &words.format;
    let distance = format.unit(Kind::Distance);
    let sampled = run.iter().any(|(_, point)| point.change_time_p90_s.is_some());
    let mut sheet = Sheet::new(vec![
        (words.text("plan-number"), Side::Right),
        (with_unit(words, "plan-at", distance), Side::Right),
        (words.text("plan-place"), Side::Left),
        (words.text("plan-call"), Side::Left),
        (words.text(if sampled { "plan-time-sampled" } else { "plan-time" }), Side::Right),
        (words.text("plan-lead"), Side::Right),
        (with_unit(words, "plan-done-by", distance), Side::Right),
        (with_unit(words, "plan-cap", format.unit(Kind::Speed)), Side::Right),
    ]);
    for (number, point) in run {
        let round = early(point);
        let call = words.text(match point.action.as_str() {
            "raise" => "plan-start-raising",
            _ => "plan-start-lowering",
        });
        sheet.row(vec![
            number.to_string(),
            chainage(format, point.km, round).number,
            place(point, words.of_paper()),
            format!("{call}\n{} → {}", point.from_rung, point.to_rung),
            change_time(point, words),
            stretch(format, point.lead_m, Round::Up).to_string(),
            chainage(format, point.reach_by_km, round).number,
            cap(format, point.cap_kmh).number,
        ]);
    }
    sheet.lines()
}

/// The middle time, and the one that nine of ten changes keep.
fn change_time(point: &ChangePointView, words: &Words) -> String {
    let format = &words.format;
    let middle = time(format, point.change_time_s);
    match point.change_time_p90_s {
        Some(p90) => format!("{middle}\n({})", time(format, p90)),
        None => middle.to_string(),
    }
}

/// What to say of a point that is not simply rolled through.
fn options(number: usize, point: &ChangePointView, words: &Words) -> String {
    let mut text = String::new();
    if !point.fits && point.refused.is_none() {
        let told = words.fill("plan-does-not-fit", &[("number", &number)]);
        text.push_str(&line(WRONG, "", paragraph(&told, "  ! ", "    ").trim_end()));
    }
    if point.fits && point.fits_p90 == Some(false) {
        let told = words.fill("plan-does-not-fit-p90", &[("number", &number)]);
        text.push_str(&paragraph(&told, "  ! ", "    "));
    }
    if let Some(why) = &point.refused {
        let told = words.fill(&format!("plan-refused-{why}"), &[("number", &number)]);
        text.push_str(&paragraph(&told, "  ! ", "    "));
    }
    if !point.fits || point.chosen.way != "rolling" {
        let chosen = way(&point.chosen, words.of_paper());
        let told = words.fill("plan-chosen-way", &[("number", &number), ("way", &chosen)]);
        text.push_str(&paragraph(&told, "  - ", "    "));
    }
    if !point.others.is_empty() {
        let others: Vec<String> =
            point.others.iter().map(|other| way(other, words.of_paper())).collect();
        let told =
            words.fill("plan-other-ways", &[("number", &number), ("ways", &others.join("; "))]);
        text.push_str(&paragraph(&told, "  - ", "    "));
    }
    if point.before_descent {
        let told = words.fill("plan-before-descent", &[("number", &number)]);
        text.push_str(&paragraph(&told, "  - ", "    "));
    }
    text
}

/// What calling late or never does, with air and compressor of each change.
fn late(points: &[(usize, &ChangePointView)], words: &Words) -> String {
    let format = &words.format;
    let one_km = chainage(format, 1.0, Round::Nearest);
    let mut sheet = Sheet::new(vec![
        (words.text("plan-number"), Side::Right),
        (words.fill("plan-late-by", &[("distance", &one_km)]), Side::Left),
        (words.text("plan-never"), Side::Left),
        (with_unit(words, "plan-lowest-supply-brief", format.unit(Kind::Pressure)), Side::Right),
        (words.text("plan-compressor-run"), Side::Right),
    ]);
    for (number, point) in points {
        let tell = |found: Option<&ConsequenceView>| {
            found.map_or_else(|| words.text("plan-run-ends"), |found| consequence(found, words))
        };
        sheet.row(vec![
            number.to_string(),
            tell(point.late_1_km.as_ref()),
            tell(point.never.as_ref()),
            at_hand(format, point.lowest_supply_kpa).number,
            time(format, point.longest_loaded_s).to_string(),
        ]);
    }
    sheet.lines()
}

fn consequence(found: &ConsequenceView, words: &Words) -> String {
    let format = &words.format;
    let lost = found.time_lost_s;
    let clock = if lost > 0.5 {
        words.fill("plan-loses", &[("time", &time(format, lost))])
    } else if lost < -0.5 {
        words.fill("plan-gains", &[("time", &time(format, -lost))])
    } else {
        words.text("plan-loses-nothing")
    };
    let road = stretch(format, found.wrong_road_m, Round::Up);
    let mut told = vec![clock];
    if found.wrong_road_m > 0.0 {
        told.push(words.fill("plan-wrong-road", &[("distance", &road)]));
    }
    let what = told.join("; ");
    if found.on_descent { words.fill("plan-on-descent", &[("what", &what)]) } else { what }
}

/// The ways from the empty to the laden pressures, compared.
pub fn laden(plan: &PlanView, words: &Words) -> String {
    if plan.laden_change.is_empty() {
        return String::new();
    }
    let mut sheet = Sheet::new(vec![
        (words.text("plan-way"), Side::Left),
        (words.text("plan-time"), Side::Right),
        (words.text("plan-time-lost"), Side::Right),
        (words.text("plan-ordered-at"), Side::Right),
        (words.text("plan-empty-road-hard"), Side::Right),
        (words.text("plan-choice"), Side::Left),
    ]);
    for option in &plan.laden_change {
        sheet.row(laden_row(option, words));
    }
    let mut text = head(words, "plan-laden-change") + &sheet.lines();
    for option in &plan.laden_change {
        if let Some(why) = &option.not_possible_because {
            let why = words.text(&format!("plan-laden-{why}"));
            let way = laden_way(option, words);
            let told = words.fill("plan-laden-why", &[("way", &way), ("why", &why)]);
            text.push_str(&paragraph(&told, "  - ", "    "));
        }
    }
    text.push_str(&paragraph(&words.text("caution-wait-complete"), "  ", "  "));
    text + &unreviewed(words, "  ")
}

fn laden_way(option: &LadenOptionView, words: &Words) -> String {
    words.text(match option.way.as_str() {
        "rolling" => "plan-laden-rolling",
        "while loading" => "plan-laden-while-loading",
        _ => "plan-laden-after-loading",
    })
}

fn laden_row(option: &LadenOptionView, words: &Words) -> Vec<String> {
    let format = &words.format;
    let none = words.text("unit-none");
    let choice = match (option.chosen, option.possible) {
        (true, true) => words.text("plan-chosen"),
        (true, false) => words.text("plan-chosen-not-possible"),
        (false, true) => none.clone(),
        (false, false) => words.text("plan-approval-not-possible"),
    };
    vec![
        laden_way(option, words),
        option.change_time_s.map_or(none.clone(), |s| time(format, s).to_string()),
        option.time_lost_s.map_or(none.clone(), |s| time(format, s).to_string()),
        option.km.map_or(none, |km| chainage(format, km, Round::Nearest).to_string()),
        if option.possible {
            stretch(format, option.empty_road_hard_m, Round::Up).to_string()
        } else {
            words.text("unit-none")
        },
        choice,
    ]
}
