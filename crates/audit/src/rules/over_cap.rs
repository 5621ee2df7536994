//! Over the cap for the pressure held.
//!
//! # What it finds
//! Driving faster than the speed cap of the fastest rung whose lowest pressures every channel holds. What the driver
//! ordered does not count: what the tires hold does.
//!
//! # Why it matters
//! Low pressure at speed makes heat that harms bead and casing; the damage may show only much later.
//!
//! # Memory
//! None beyond the finding it has open.
//!
//! # Not judged
//! A short excess, as the tolerance says. Tires under the lowest of every rung: the rule `under-minimum`
//! speaks of them.

use quantity::Speed;

use super::Memory;
use crate::coverage::Judged;
use crate::episode::{Episode, Open};
use crate::rows::{NO_LOAD, NO_RUNG, Rows};
use crate::{Evidence, Limits, Rule, Severity, Sink};

/// Stable name.
pub const CODE: &str = "over-cap";
/// What it keeps from row to row.
pub const MEMORY: Memory = Memory { looks_back_rows: Some(0), bytes: std::mem::size_of::<State>() };

#[derive(Debug, Clone, Copy, PartialEq)]
struct Excess {
    rung: u8,
    kmh: f64,
    cap: f64,
}

/// What it remembers.
#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct State {
    episode: Episode<Excess>,
}

pub(crate) fn feed(
    state: &mut State,
    rows: &mut Rows,
    limits: &Limits,
    judged: &mut Judged,
    sink: &mut impl Sink,
) {
    let (gap, over_by) = (limits.tolerance.gap.as_s(), limits.tolerance.speed.as_kmh());
    for i in 0..rows.len {
        if let Some(open) = state.episode.over(rows.first + i as u64, gap) {
            hand_over(&open, limits, sink);
        }
        let (kmh, maybe, surely) = (rows.kmh[i], rows.held_maybe[i], rows.held_surely[i]);
        if rows.load[i] == NO_LOAD || kmh.is_nan() {
            judged.unknown += 1;
            rows.unknown[i] = true;
            continue;
        }
        if maybe == NO_RUNG {
            continue;
        }
        let cap = limits.caps_kmh[usize::from(maybe)];
        let sure = if surely == NO_RUNG { 0.0 } else { limits.caps_kmh[usize::from(surely)] };
        if kmh > cap + over_by {
            judged.known += 1;
            let now = Excess { rung: maybe, kmh, cap };
            state.episode.broken(rows, i, now, |a, b| a.kmh - a.cap > b.kmh - b.cap);
        } else if kmh > sure + over_by {
            judged.unknown += 1;
            rows.unknown[i] = true;
        } else {
            judged.known += 1;
        }
    }
}

impl State {
    pub(crate) fn finish(&mut self, limits: &Limits, sink: &mut impl Sink) {
        if let Some(open) = self.episode.open.take() {
            hand_over(&open, limits, sink);
        }
    }
}

fn hand_over(open: &Open<Excess>, limits: &Limits, sink: &mut impl Sink) {
    if (open.rows as f64) < limits.tolerance.over_cap.as_s() {
        return;
    }
    let evidence = Evidence::Over {
        rung: usize::from(open.worst.rung),
        speed: Speed::from_kmh(open.worst.kmh),
        cap: Speed::from_kmh(open.worst.cap),
    };
    sink.take(open.finding(Rule::OverCap, Severity::Limit, evidence));
}
