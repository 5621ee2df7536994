//! What to know of the effects: flags of single tires, what no law reaches, ride, memory, trials.

use language::Round;
use view::{GroupEffectView, PlanView, TrialView};

use super::legs::refused;
use crate::page::text::paragraph;
use crate::words::Words;
use report::cells::Extent;

/// Notes, and the trials.
pub fn notes(plan: &PlanView, extent: Extent, words: &Words) -> String {
    let mut lines = flags(plan, words);
    lines.extend(no_law(plan, words));
    lines.push(ride(plan, words));
    lines.extend(
        ["top", "asphalt", "memory", "own-case"]
            .map(|key| words.text(&format!("effects-note-{key}"))),
    );
    let lines: String = lines.iter().map(|line| paragraph(line, "  - ", "    ")).collect();
    lines + &trials(&plan.trials, extent, words)
}

/// Effects that no law reaches, each with the legs it is so on.
fn no_law(plan: &PlanView, words: &Words) -> Vec<String> {
    let mut found: Vec<(&str, &str, Vec<&str>)> = Vec::new();
    for (leg, lack) in refused(plan) {
        let Some(reason) = lack.reason.as_deref() else { continue };
        let leg = leg.leg.as_str();
        match found.iter_mut().find(|one| (one.0, one.1) == (&lack.effect, reason)) {
            Some((.., legs)) if legs.contains(&leg) => {}
            Some((.., legs)) => legs.push(leg),
            None => found.push((&lack.effect, reason, vec![leg])),
        }
    }
    let line = |(effect, reason, legs): (&str, &str, Vec<&str>)| {
        let effect = words.text(&format!("effects-of-{effect}"));
        let legs = legs.join(", ");
        words.fill("effects-no-law", &[("leg", &legs), ("effect", &effect), ("reason", &reason)])
    };
    found.into_iter().map(line).collect()
}

/// Places of one flag, by the axle groups flagged there; none for a flag of the whole truck.
type Flag = (&'static str, Vec<(Vec<String>, Vec<String>)>);

/// Legs on which something is flagged: washboard, duals near each other, heat, wind-up, descent.
fn flags(plan: &PlanView, words: &Words) -> Vec<String> {
    let mut flagged: Vec<Flag> = Vec::new();
    let mut flag = |key: &'static str, groups: Vec<String>, place: &str| {
        if !flagged.iter().any(|(known, _)| *known == key) {
            flagged.push((key, Vec::new()));
        }
        let Some((_, places)) = flagged.iter_mut().find(|(known, _)| *known == key) else { return };
        match places.iter_mut().find(|(known, _)| *known == groups) {
            Some((_, places)) => places.push(place.to_owned()),
            None => places.push((groups, vec![place.to_owned()])),
        }
    };
    for leg in &plan.effects {
        let run = words.text(&format!("plan-{}", leg.run));
        let place = format!("{} ({run})", leg.leg);
        for way in leg.ways.iter().filter(|way| way.way == "plan") {
            if way.climbs_more_than_it_holds {
                flag("effects-flag-descent", Vec::new(), &place);
            }
            if way.wind_up_slip_pct.as_ref().is_some_and(|slip| slip.middle >= WIND_UP_PCT) {
                flag("effects-flag-wind-up", Vec::new(), &place);
            }
            for (key, of) in GROUP_FLAGS {
                let groups = way.groups.iter().filter(|group| of(group));
                let groups: Vec<String> = groups.map(|group| group.axle_group.clone()).collect();
                if !groups.is_empty() {
                    flag(key, groups, &place);
                }
            }
        }
    }
    let told = |(groups, places): (Vec<String>, Vec<String>)| {
        let places = places.join(", ");
        if groups.is_empty() { places } else { format!("{places}: {}", groups.join(", ")) }
    };
    flagged
        .into_iter()
        .map(|(key, places)| {
            let places: Vec<String> = places.into_iter().map(told).collect();
            words.fill(key, &[("places", &places.join("; "))])
        })
        .collect()
}

/// Key of a text, and whether it is said of an axle group.
type GroupFlag = (&'static str, fn(&GroupEffectView) -> bool);

/// What is flagged of an axle group.
const GROUP_FLAGS: [GroupFlag; 4] = [
    ("effects-flag-washboard", |group| group.washboard_likely == Some(true)),
    ("effects-flag-gap", |group| group.measure_the_gap),
    ("effects-flag-heat-stop", |group| group.heat.as_deref() == Some("stop")),
    ("effects-flag-heat-warn", |group| group.heat.as_deref() == Some("warn")),
];

/// Difference of circumference between locked driven axles that is told: common practice, no source.
const WIND_UP_PCT: f64 = 0.5;

/// Ride in percent, over all legs and axles.
fn ride(plan: &PlanView, words: &Words) -> String {
    let changes = plan.effects.iter().flat_map(|leg| {
        let ways = leg.ways.iter().filter(|way| way.way == "plan");
        ways.filter_map(|way| way.means.ride_change_pct)
    });
    let ends = changes.fold(None, |ends: Option<(f64, f64)>, band| {
        let (low, high) = ends.unwrap_or((band.low, band.high));
        Some((low.min(band.low), high.max(band.high)))
    });
    match ends {
        Some((low, high)) if low < 0.0 => {
            let number = |value: f64, round| words.format.number(-value, 0, round);
            let least = number(high.min(0.0), Round::Down);
            let most = number(low, Round::Up);
            words.fill("effects-ride-less", &[("least", &least), ("most", &most)])
        }
        _ => words.text("effects-ride-none"),
    }
}

/// Every trial, or on the short page those that found nothing and how many found a gain.
fn trials(trials: &[TrialView], extent: Extent, words: &Words) -> String {
    if trials.is_empty() {
        return String::new();
    }
    let shown = |trial: &&TrialView| extent == Extent::Whole || trial.found == "no-difference";
    let gained = trials.iter().filter(|trial| trial.found != "no-difference").count();
    let head = match extent {
        Extent::Whole => words.text("effects-trials"),
        Extent::Driven => words.count("effects-trials-brief", gained),
    };
    let mut text = paragraph(&head, "  ", "  ");
    let number = |value: f64| words.format.number(value, 2, Round::Nearest);
    for trial in trials.iter().filter(shown) {
        let found = match (trial.low_ratio, trial.high_ratio) {
            (Some(low), Some(high)) => words
                .fill("effects-trial-between", &[("low", &number(low)), ("high", &number(high))]),
            (None, Some(high)) => words.fill("effects-trial-up-to", &[("high", &number(high))]),
            _ => words.text(&format!("effects-trial-{}", trial.found)),
        };
        let line = words.fill(
            "effects-trial",
            &[
                ("effect", &words.text(&format!("effects-trial-of-{}", trial.effect))),
                ("ground", &words.text(&format!("effects-trial-on-{}", trial.ground))),
                ("found", &found),
                ("source", &trial.source),
                ("read", &words.text(&format!("effects-trial-read-{}", trial.extent_read))),
            ],
        );
        text.push_str(&paragraph(&line, "    - ", "      "));
    }
    text
}
