//! Where a change point is and how the change is made, in words.

use language::Round;
use view::{ChangePointView, WayView};

use crate::Words;
use crate::quantities::{cap, chainage, stretch, time};

/// Whether the run goes up the chainage.
pub fn forward(point: &ChangePointView) -> bool {
    point.reach_by_km > point.km || (point.reach_by_km >= point.km && point.reached_km >= point.km)
}

/// A chainage that must not be passed: shown so that the driver is early.
pub fn early(point: &ChangePointView) -> Round {
    if forward(point) { Round::Down } else { Round::Up }
}

/// `470 m before gate`.
pub fn place(point: &ChangePointView, words: Words<'_>) -> String {
    let (Some(near), Some(along)) = (&point.near, point.from_landmark_m) else {
        return words.text("unit-none");
    };
    let (key, round) = match along {
        along if along.abs() < 1.0 => ("plan-at-landmark", Round::Nearest),
        along if along < 0.0 => ("plan-before-landmark", Round::Up),
        _ => ("plan-beyond-landmark", Round::Down),
    };
    let distance = stretch(words.format, along.abs(), round);
    words.fill(key, &[("distance", &distance), ("landmark", near)])
}

/// How a change is made, or could be.
pub fn way(way: &WayView, words: Words<'_>) -> String {
    let format = words.format;
    let road = |round| way.distance_m.map(|m| stretch(format, m, round).to_string());
    let unknown = || words.text("unit-unknown");
    let what = match way.way.as_str() {
        "go on slowly" => words.fill(
            "plan-way-go-on-slowly",
            &[("distance", &road(Round::Up).unwrap_or_else(unknown))],
        ),
        "lay-by" => words.fill(
            "plan-way-lay-by",
            &[
                ("place", &way.place.clone().unwrap_or_else(unknown)),
                (
                    "km",
                    &way.km.map_or_else(unknown, |km| {
                        chainage(format, km, Round::Nearest).to_string()
                    }),
                ),
            ],
        ),
        "slower" => words.fill(
            "plan-way-slower",
            &[("speed", &way.mean_kmh.map_or_else(unknown, |kmh| cap(format, kmh).to_string()))],
        ),
        "other rung" => words
            .fill("plan-way-other-rung", &[("rung", &way.rung.clone().unwrap_or_else(unknown))]),
        "more air" => words.fill(
            "plan-way-more-air",
            &[(
                "times",
                &way.times_the_air.map_or_else(unknown, |times| format.number(times, 1, Round::Up)),
            )],
        ),
        "more road" => words
            .fill("plan-way-more-road", &[("distance", &road(Round::Up).unwrap_or_else(unknown))]),
        _ => words.text("plan-way-rolling"),
    };
    match way.time_lost_s {
        Some(lost) if lost > 0.5 => {
            format!("{what} ({})", words.fill("plan-loses", &[("time", &time(format, lost))]))
        }
        _ => what,
    }
}
