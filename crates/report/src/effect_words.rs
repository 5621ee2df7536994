//! What to know of effects, in words shared by screen and paper: what a road feels, grades, flags of
//! single tires, what no law reaches, ride, trials.

use language::Round;
use view::{
    GradeView, GroupEffectView, LegEffectsView, LegWayView, MeansView, NotAssessedView, PlanView,
    TrialView,
};

use crate::Words;
use crate::bands::{percent, ratio};
use crate::refusal::in_units;

/// Notes, one a line.
pub fn notes(plan: &PlanView, words: Words<'_>) -> Vec<String> {
    let mut lines = flags(plan, words);
    lines.extend(no_law(plan, words));
    lines.push(ride(plan, words));
    lines.extend(
        ["top", "asphalt", "memory", "own-case"]
            .map(|key| words.text(&format!("effects-note-{key}"))),
    );
    lines
}

/// Effects that no law reaches, each with the legs it is so on.
fn no_law(plan: &PlanView, words: Words<'_>) -> Vec<String> {
    let mut found: Vec<(&str, String, Vec<&str>)> = Vec::new();
    for (leg, lack) in refused(plan) {
        let Some(reason) = lack.reason.as_deref() else { continue };
        let reason = in_units(reason, words.format);
        let leg = leg.leg.as_str();
        match found.iter_mut().find(|one| (one.0, one.1.as_str()) == (&lack.effect, &reason)) {
            Some((.., legs)) if legs.contains(&leg) => {}
            Some((.., legs)) => legs.push(leg),
            None => found.push((&lack.effect, reason, vec![leg])),
        }
    }
    let line = |(effect, reason, legs): (&str, String, Vec<&str>)| {
        let effect = words.text(&format!("effects-of-{effect}"));
        let legs = legs.join(", ");
        words.fill("effects-no-law", &[("leg", &legs), ("effect", &effect), ("reason", &reason)])
    };
    found.into_iter().map(line).collect()
}

/// Places of one flag, by the axle groups flagged there; none for a flag of the whole truck.
type Flag = (&'static str, Vec<(Vec<String>, Vec<String>)>);

/// Legs on which something is flagged: washboard, duals near each other, heat, wind-up, descent.
fn flags(plan: &PlanView, words: Words<'_>) -> Vec<String> {
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
            if way.leave_locks_open == Some(true) {
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

/// Ride in percent, over all legs and axles.
fn ride(plan: &PlanView, words: Words<'_>) -> String {
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

/// What the road feels: the effect its surface is judged by.
pub fn road(leg: &LegEffectsView, way: &LegWayView, words: Words<'_>) -> String {
    let MeansView { gravel_rut_ratio, soil_rut_ratio, asphalt_damage_ratio, .. } = way.means;
    let (key, found) = match leg.surface.as_str() {
        "gravel" => ("effects-road-rut", gravel_rut_ratio),
        "earth" | "soft ground" => ("effects-road-rut", soil_rut_ratio),
        "paved" | "sealed" => ("effects-road-wear", asphalt_damage_ratio),
        _ => ("effects-road-stress", way.means.stress_below_ratio),
    };
    let found = found.map_or_else(|| words.text("effects-unknown"), |of| ratio(&of, words.format));
    words.fill(key, &[("ratio", &found)])
}

/// `doubtful: 4–12–20 of 7`; what goes is short but on the whole page.
pub fn verdict(grade: &GradeView, whole: bool, words: Words<'_>) -> String {
    let word = words.text(&format!("effects-{}", grade.verdict));
    if grade.verdict == "go" && !whole {
        return word;
    }
    let needed = words.format.number(grade.needed_pct, 0, Round::Up);
    let possible = percent(&grade.possible_pct, words.format);
    words.fill("effects-grade", &[("word", &word), ("possible", &possible), ("needed", &needed)])
}

/// How sure the climb is on soft ground, and what to look into first.
pub fn spreads(plan: &PlanView, words: Words<'_>) -> Vec<String> {
    let mut lines = Vec::new();
    for leg in &plan.effects {
        let way = leg.ways.iter().find(|way| way.spread.is_some());
        let spread = way.and_then(|way| way.spread.as_ref()?.climb_pct.as_ref());
        let needed = way.and_then(|way| Some(way.climb.as_ref()?.needed_pct));
        let (Some(climb), Some(needed)) = (spread, needed) else { continue };
        let number = |value: f64| words.format.number(value, 0, Round::Down);
        let first = climb.narrows.first().map_or_else(
            || words.text("effects-spread-nothing"),
            |one| {
                let input = words.text(&format!("effects-uncertain-{}", one.input));
                let share = words.format.percent(one.share_pct / 100.0, 0, Round::Nearest);
                words.fill("effects-spread-by", &[("input", &input), ("share", &share)])
            },
        );
        let told = words.fill(
            "effects-spread",
            &[
                ("leg", &leg.leg),
                ("run", &words.text(&format!("plan-{}", leg.run))),
                ("p10", &number(climb.p10)),
                ("p50", &number(climb.p50)),
                ("p90", &number(climb.p90)),
                ("needed", &words.format.number(needed, 0, Round::Up)),
                ("first", &first),
            ],
        );
        lines.push(told);
    }
    lines
}

/// Whether something was not assessed for want of an input.
fn refused(plan: &PlanView) -> impl Iterator<Item = (&LegEffectsView, &NotAssessedView)> {
    plan.effects.iter().flat_map(|leg| {
        let plan = leg.ways.iter().filter(|way| way.way == "plan");
        plan.flat_map(|way| {
            way.not_assessed.iter().chain(way.groups.iter().flat_map(|group| &group.not_assessed))
        })
        .filter(|lack| lack.why != "give")
        .map(move |lack| (leg, lack))
    })
}

/// What one trial found.
pub fn trial(trial: &TrialView, words: Words<'_>) -> String {
    let number = |value: f64| words.format.number(value, 2, Round::Nearest);
    let found = match (trial.low_ratio, trial.high_ratio) {
        (Some(low), Some(high)) => {
            words.fill("effects-trial-between", &[("low", &number(low)), ("high", &number(high))])
        }
        (None, Some(high)) => words.fill("effects-trial-up-to", &[("high", &number(high))]),
        _ => words.text(&format!("effects-trial-{}", trial.found)),
    };
    words.fill(
        "effects-trial",
        &[
            ("effect", &words.text(&format!("effects-trial-of-{}", trial.effect))),
            ("ground", &words.text(&format!("effects-trial-on-{}", trial.ground))),
            ("found", &found),
            ("source", &trial.source),
            ("read", &words.text(&format!("effects-trial-read-{}", trial.extent_read))),
        ],
    )
}
