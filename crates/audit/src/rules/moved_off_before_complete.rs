//! Moved off before complete.
//!
//! # What it finds
//! A load came on, and the truck rolls before every channel holds the lowest pressure of the rung the plan starts on with it.
//!
//! # Why it matters
//! An empty-truck pressure under a full load is the worst error there is: overload, heat, a bead that leaves the rim.
//!
//! # Memory
//! Whether the change after the last change of load is still to be completed, and how far the truck has moved meanwhile.
//!
//! # Not judged
//! Moving up under the loader, within the tolerance of a place. Loads the plan has no start rung for, such as the empty one.

use super::Memory;
use super::under_minimum::{STANDING_KMH, below, severity};
use crate::coverage::Judged;
use crate::episode::{Episode, Open, meters};
use crate::rows::{Below, NO_LOAD, Rows};
use crate::{Limits, Rule, Sink};

/// Stable name.
pub const CODE: &str = "moved-off-before-complete";
/// What it keeps from row to row.
pub const MEMORY: Memory = Memory { looks_back_rows: None, bytes: std::mem::size_of::<State>() };

/// What it remembers.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct State {
    load: u8,
    /// Rung to be complete, and road run since the load changed, m.
    pending: Option<(usize, f64)>,
    episode: Episode<Below>,
}

impl Default for State {
    fn default() -> Self {
        Self { load: NO_LOAD, pending: None, episode: Episode::default() }
    }
}

pub(crate) fn feed(
    state: &mut State,
    rows: &mut Rows,
    limits: &Limits,
    judged: &mut Judged,
    sink: &mut impl Sink,
) {
    for i in 0..rows.len {
        let load = rows.load[i];
        if load == NO_LOAD {
            judged.unknown += 1;
            rows.unknown[i] = true;
            continue;
        }
        let of = &limits.loads[usize::from(load)];
        if load != state.load {
            state.finish(sink);
            let came_on = state.load != NO_LOAD;
            state.pending = of.start_rung.filter(|_| came_on).map(|rung| (rung, 0.0));
            state.load = load;
        }
        let Some((rung, moved)) = &mut state.pending else { continue };
        let rung = *rung;
        let lowest = |channel: usize| of.minimum[channel][rung];
        let mut channels = 0..limits.channels;
        if channels.all(|channel| rows.cold_low[channel][i] >= lowest(channel)) {
            judged.known += 1;
            state.pending = None;
            state.finish(sink);
            continue;
        }
        *moved += meters(rows, i);
        if rows.kmh[i] < STANDING_KMH || *moved < limits.tolerance.place.as_m() {
            continue;
        }
        let mut channels = 0..limits.channels;
        let incomplete = channels.any(|channel| rows.cold_high[channel][i] < lowest(channel));
        if incomplete && !rows.kmh[i].is_nan() {
            judged.known += 1;
            let now = rows.furthest_below(i, of, rung);
            state.episode.broken(rows, i, now, |a, b| a.share() < b.share());
        } else {
            judged.unknown += 1;
            rows.unknown[i] = true;
        }
    }
}

impl State {
    pub(crate) fn finish(&mut self, sink: &mut impl Sink) {
        if let Some(open) = self.episode.open.take() {
            hand_over(&open, sink);
        }
    }
}

fn hand_over(open: &Open<Below>, sink: &mut impl Sink) {
    let severity = severity(open.worst.share());
    sink.take(open.finding(Rule::MovedOffBeforeComplete, severity, below(&open.worst)));
}
