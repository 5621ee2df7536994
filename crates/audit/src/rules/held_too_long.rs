//! Held too long.
//!
//! # What it finds
//! A stay on a rung that goes beyond its hold limit, in time or in distance. The rung is the fastest whose lowest pressures
//! every channel holds.
//!
//! # Why it matters
//! A very low pressure is approved for a time and a distance because the tire warms up on it.
//!
//! # Memory
//! The stay: since when and how far. It ends when the tires hold another rung for longer than the tolerance says, when the
//! load changes, and after a long stand.
//!
//! # Not judged
//! Rungs without a hold limit. Seconds in which the pressure is unknown neither count nor end the stay.

use quantity::{Length, Time};

use super::Memory;
use super::under_minimum::STANDING_KMH;
use crate::coverage::Judged;
use crate::episode::{Episode, Open, meters};
use crate::rows::{NO_LOAD, NO_RUNG, Rows};
use crate::{Evidence, Hold, Limits, Rule, Severity, Sink};

/// Stable name.
pub const CODE: &str = "held-too-long";
/// What it keeps from row to row.
pub const MEMORY: Memory = Memory { looks_back_rows: None, bytes: std::mem::size_of::<State>() };

#[derive(Debug, Clone, Copy, PartialEq)]
struct Stay {
    load: u8,
    rung: u8,
    hold: Hold,
    seconds: u64,
    meters: f64,
    off: u64,
    standing: u64,
}

/// What it remembers.
#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct State {
    stay: Option<Stay>,
    episode: Episode<Stay>,
}

pub(crate) fn feed(
    state: &mut State,
    rows: &mut Rows,
    limits: &Limits,
    judged: &mut Judged,
    sink: &mut impl Sink,
) {
    let (settle, rest) = (limits.tolerance.settle.as_s(), limits.tolerance.rest.as_s());
    for i in 0..rows.len {
        let (load, rung) = (rows.load[i], rows.held_maybe[i]);
        let known = load != NO_LOAD && !rows.kmh[i].is_nan() && rung == rows.held_surely[i];
        if !known {
            // Where no rung with a hold limit is possible there is nothing to know.
            if state.stay.is_some() || may_be_held(rows, i, limits) {
                judged.unknown += 1;
                rows.unknown[i] = true;
            }
            continue;
        }
        let standing = rows.kmh[i] < STANDING_KMH;
        if let Some(stay) = &mut state.stay {
            judged.known += 1;
            let same = stay.load == load && stay.rung == rung;
            stay.off = if same { 0 } else { stay.off + 1 };
            stay.standing = if standing { stay.standing + 1 } else { 0 };
            if stay.load != load || stay.off as f64 > settle || stay.standing as f64 >= rest {
                state.stay = None;
                state.finish(sink);
            } else if same {
                stay.seconds += 1;
                stay.meters += meters(rows, i);
                if stay.is_too_long() {
                    let now = *stay;
                    state.episode.broken(rows, i, now, |_, _| true);
                }
            }
        }
        if state.stay.is_none() && rung != NO_RUNG && !standing {
            let hold = limits.loads[usize::from(load)].holds[usize::from(rung)];
            state.stay = hold.map(|hold| Stay {
                load,
                rung,
                hold,
                seconds: 1,
                meters: meters(rows, i),
                off: 0,
                standing: 0,
            });
        }
    }
}

/// Whether a rung that may be held has a hold limit.
fn may_be_held(rows: &Rows, i: usize, limits: &Limits) -> bool {
    let load = rows.load[i];
    load == NO_LOAD
        || limits.loads[usize::from(load)].holds[..limits.given.rungs.len()].iter().zip(0_u8..).any(
            |(hold, rung)| {
                let surely = rows.held_surely[i];
                let above = surely == NO_RUNG || rung >= surely;
                hold.is_some()
                    && above
                    && rows.held_maybe[i] != NO_RUNG
                    && rung <= rows.held_maybe[i]
            },
        )
}

impl Stay {
    fn is_too_long(&self) -> bool {
        self.hold.time.is_some_and(|limit| self.seconds as f64 > limit.as_s())
            || self.hold.distance.is_some_and(|limit| self.meters > limit.as_m())
    }
}

impl State {
    pub(crate) fn finish(&mut self, sink: &mut impl Sink) {
        if let Some(open) = self.episode.open.take() {
            hand_over(&open, sink);
        }
    }
}

fn hand_over(open: &Open<Stay>, sink: &mut impl Sink) {
    let stay = &open.worst;
    let evidence = Evidence::Held {
        rung: usize::from(stay.rung),
        time: Time::from_s(stay.seconds as f64),
        distance: Length::from_m(stay.meters),
        limit: stay.hold,
    };
    sink.take(open.finding(Rule::HeldTooLong, Severity::Limit, evidence));
}
