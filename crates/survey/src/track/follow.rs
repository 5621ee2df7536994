//! Positions in time to chainage on a track.
//!
//! The nearest place of a track is often the wrong one: a road that comes back beside itself has two.
//! Each position is given the places of the track near it; of all ways to go from place to place the
//! likeliest is taken, one that goes as far along the track as the positions are apart, no faster than a
//! truck can, and that seldom turns round. A position with no place near is off the track.
//!
//! # Source
//! `hidden-markov-map-matching`; the weights are ours.

use quantity::{Length, Time};

use super::Position;
use super::line::{Candidate, Line};

/// Error of a receiver, m: common practice, no source.
const SIGMA_M: f64 = 8.0;
/// How far length along the track and length between positions differ, m.
const DIFFER_M: f64 = 8.0;
/// No truck on a haul road goes faster, m/s.
const FASTEST: f64 = 40.0;
/// Room for the errors of two positions, m.
const ROOM_M: f64 = 60.0;
/// Weight of turning round: a turn is believed where the drive goes the other way for at least sixty
/// meters; less is noise, or a maneuver.
const TURN: f64 = 8.0;
/// Where both directions read the same, the track was driven as it was recorded.
const BACKWARD: f64 = 0.5;
/// After this long without a position near the track it is taken up anew, s.
const FORGETS_S: f64 = 900.0;

/// A position with its time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fix {
    /// When, from any beginning.
    pub at: Time,
    /// Where the receiver took itself to be.
    pub position: Position,
}

/// A place on the track.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OnTrack {
    /// Chainage.
    pub at: Length,
    /// How far the position lies beside it.
    pub off: Length,
    /// Whether chainage rises along the drive.
    pub forward: bool,
}

/// One way to be at a place: with what it cost to come here, and from where.
#[derive(Clone, Copy)]
struct Way {
    candidate: Candidate,
    forward: bool,
    cost: f64,
    from: Option<usize>,
}

/// Places on the track for positions in order of time; `None` for one that is farther from the track
/// than `reach`.
///
/// # Validity
/// Routes of up to some hundred kilometers, at least a position every fifteen minutes; after a longer
/// gap the place is sought anew.
pub(super) fn follow(line: &Line, fixes: &[Fix], reach: Length) -> Vec<Option<OnTrack>> {
    let mut found = vec![None; fixes.len()];
    // Of each position that is near: its number and the ways to be there.
    let mut chain: Vec<(usize, Vec<Way>)> = Vec::new();
    for (number, fix) in fixes.iter().enumerate() {
        let candidates = line.near(fix.position, reach.as_m());
        if candidates.is_empty() {
            continue;
        }
        let next = chain.last().and_then(|(last, ways)| {
            let before = &fixes[*last];
            let seconds = (fix.at - before.at).as_s();
            if seconds > FORGETS_S {
                return None;
            }
            let moved = line.between(before.position, fix.position);
            let next: Vec<Way> = both(&candidates)
                .filter_map(|(candidate, forward)| best(ways, candidate, forward, moved, seconds))
                .collect();
            (!next.is_empty()).then_some(next)
        });
        let next = next.unwrap_or_else(|| {
            settle(&mut found, &chain);
            chain.clear();
            both(&candidates)
                .map(|(candidate, forward)| {
                    let cost = beside(&candidate) + if forward { 0.0 } else { BACKWARD };
                    Way { candidate, forward, cost, from: None }
                })
                .collect()
        });
        chain.push((number, next));
    }
    settle(&mut found, &chain);
    found
}

fn both(candidates: &[Candidate]) -> impl Iterator<Item = (Candidate, bool)> {
    candidates.iter().flat_map(|candidate| [(*candidate, true), (*candidate, false)])
}

fn beside(candidate: &Candidate) -> f64 {
    0.5 * (candidate.off / SIGMA_M).powi(2)
}

/// The cheapest way to a place from those before; `None` where no truck comes here from any of them.
fn best(ways: &[Way], to: Candidate, forward: bool, moved: f64, seconds: f64) -> Option<Way> {
    let costs = ways.iter().enumerate().filter_map(|(index, way)| {
        let along = to.at - way.candidate.at;
        if along.abs() > FASTEST * seconds.max(0.0) + ROOM_M {
            return None;
        }
        let turns = f64::from(u8::from(way.forward != forward));
        let against = if forward { -along } else { along }.max(0.0) / DIFFER_M;
        let differs = (along.abs() - moved).abs() / DIFFER_M;
        Some((index, way.cost + differs + against + turns * TURN))
    });
    let (from, cost) = costs.min_by(|a, b| a.1.total_cmp(&b.1))?;
    Some(Way { candidate: to, forward, cost: cost + beside(&to), from: Some(from) })
}

/// Writes down the cheapest of all ways through the chain.
fn settle(found: &mut [Option<OnTrack>], chain: &[(usize, Vec<Way>)]) {
    let Some((_, last)) = chain.last() else { return };
    let cheapest = last.iter().enumerate().min_by(|a, b| a.1.cost.total_cmp(&b.1.cost));
    let mut at = cheapest.map(|(index, _)| index);
    for (number, ways) in chain.iter().rev() {
        let Some(way) = at.and_then(|index| ways.get(index)) else { return };
        found[*number] = Some(OnTrack {
            at: Length::from_m(way.candidate.at),
            off: Length::from_m(way.candidate.off),
            forward: way.forward,
        });
        at = way.from;
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::track::{Track, read};

    /// A road of three straights with bends, 6 km.
    const ROAD: &str = "lat,lon\n61.500,-120.000\n61.510,-119.980\n61.512,-119.950\n61.530,-119.940\n\
        61.535,-119.930\n";
    const REACH: Length = Length::from_m(50.0);

    fn track(text: &str) -> Track {
        read(text.as_bytes(), "road.csv").unwrap()
    }

    /// The place at a chainage, moved aside by meters.
    fn place(track: &Track, at: f64, east: f64, north: f64) -> Position {
        let after = track.points.partition_point(|point| point.at.as_m() <= at);
        let after = after.clamp(1, track.points.len() - 1);
        let (a, b) = (&track.points[after - 1], &track.points[after]);
        let share = (at - a.at.as_m()) / (b.at - a.at).as_m();
        let between = |a: f64, b: f64| a + (b - a) * share;
        let latitude = between(a.position.latitude_deg(), b.position.latitude_deg());
        let longitude = between(a.position.longitude_deg(), b.position.longitude_deg());
        let degree = 111_320.0;
        let east = east / (degree * latitude.to_radians().cos());
        Position::from_degrees(latitude + north / degree, longitude + east).unwrap()
    }

    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a few thousand")]
    fn steps(way: f64, step: f64) -> usize {
        (way / step) as usize
    }

    fn drive(track: &Track, at: &[f64], noise: &[(f64, f64)]) -> Vec<Fix> {
        let noise = noise.iter().cycle();
        (0..)
            .zip(at.iter().zip(noise))
            .map(|(second, (at, (east, north)))| Fix {
                at: Time::from_s(f64::from(second)),
                position: place(track, *at, *east, *north),
            })
            .collect()
    }

    proptest! {
        #[test]
        fn a_noisy_drive_there_and_back_comes_home_within_the_noise(
            noise in prop::collection::vec((-5.0..5.0_f64, -5.0..5.0_f64), 50..200),
            speed in 5.0..25.0_f64,
            turns_at in 0.4..1.0_f64,
        ) {
            let track = track(ROAD);
            let end = track.length().as_m() * turns_at;
            let steps = steps(end, speed);
            let out = (0..=steps).map(|step| step as f64 * speed);
            let at: Vec<f64> = out.clone().chain(out.rev()).collect();
            let found = track.follow(&drive(&track, &at, &noise), REACH);
            for (second, (found, at)) in found.iter().zip(&at).enumerate() {
                let found = found.unwrap();
                // Noise along the road, and across it at a bend.
                prop_assert!((found.at.as_m() - at).abs() < 15.0, "{second}: {found:?} for {at}");
                if second.abs_diff(steps) > 10 && second > 5 && second + 5 < 2 * steps {
                    prop_assert_eq!(found.forward, second < steps);
                }
            }
        }

        #[test]
        fn a_track_that_comes_back_beside_itself_keeps_its_way(
            noise in prop::collection::vec((-4.0..4.0_f64, -4.0..4.0_f64), 50..200),
            speed in 6.0..22.0_f64,
            backward: bool,
        ) {
            // Out and back on the same road, recorded as one track of twice the length.
            let mut lines: Vec<&str> = ROAD.lines().collect();
            let back: Vec<&str> = lines[1..lines.len() - 1].iter().rev().copied().collect();
            lines.extend(back);
            let track = track(&(lines.join("\n") + "\n"));
            let steps = steps(track.length().as_m(), speed);
            let mut at: Vec<f64> = (0..=steps).map(|step| step as f64 * speed).collect();
            let found = track.follow(&drive(&track, &at, &noise), REACH);
            for (found, at) in found.iter().zip(&at) {
                let found = found.unwrap();
                prop_assert!((found.at.as_m() - at).abs() < 30.0, "{found:?} for {at}");
            }
            // Begun in the middle of the way back, it reads as the way out driven forward or as the
            // way back, but never changes between them.
            at.drain(..steps * 3 / 4);
            if backward {
                at.reverse();
            }
            let found = track.follow(&drive(&track, &at, &noise), REACH);
            let halves: Vec<bool> =
                found.iter().map(|one| one.unwrap().at < track.length() / 2.0).collect();
            prop_assert!(halves.iter().all(|half| *half == halves[0]));
        }
    }

    #[test]
    fn off_the_track_is_told_and_the_drive_goes_on_after_it() {
        let track = track(ROAD);
        let at: Vec<f64> = (0..200).map(|second| f64::from(second) * 15.0).collect();
        let mut fixes = drive(&track, &at, &[(1.0, -1.0)]);
        for (second, fix) in fixes.iter_mut().enumerate().skip(60).take(40) {
            fix.position = place(&track, at[second], -150.0, 400.0);
        }
        let found = track.follow(&fixes, REACH);
        for (second, found) in found.iter().enumerate() {
            assert_eq!(found.is_none(), (60..100).contains(&second), "{second}");
        }
        assert!((found[150].unwrap().at.as_m() - at[150]).abs() < 10.0);
    }

    #[test]
    fn a_loop_passes_its_beginning_twice() {
        let track =
            track("lat,lon\n50.00,10.00\n50.01,10.00\n50.01,10.02\n50.00,10.02\n50.00,10.0001\n");
        let end = track.length().as_m();
        let at: Vec<f64> = (0..steps(end, 10.0)).map(|second| second as f64 * 10.0).collect();
        let found = track.follow(&drive(&track, &at, &[(2.0, 0.0), (-2.0, 1.0)]), REACH);
        let last = found.last().copied().flatten().unwrap();
        assert!(found[0].unwrap().at.as_m() < 10.0);
        assert!((last.at.as_m() - end).abs() < 20.0 && last.forward);
    }

    #[test]
    fn no_position_gives_no_place() {
        assert_eq!(track(ROAD).follow(&[], REACH), []);
    }
}
