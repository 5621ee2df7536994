//! Under the minimum.
//!
//! # What it finds
//! Rolling while a channel is under the lowest pressure of even the slowest rung for the load that is on: no speed is
//! allowed then. At 80 % of it and less the finding is a danger.
//!
//! # Why it matters
//! A tire run at 80 % of its recommended pressure or less must come off and be looked at inside before it
//! is filled again (29 CFR 1910.177). That the recommended pressure is that of the load and speed
//! actually run is our reading of the rule.
//!
//! # Memory
//! Whether a pressure for the load has been held since the load came on.
//!
//! # Not judged
//! Standing. The way from a load coming on to its first sufficient pressure: the rule
//! `moved-off-before-complete` speaks of it.

use quantity::ColdPressure;

use super::Memory;
use crate::coverage::Judged;
use crate::episode::{Episode, Open};
use crate::rows::{Below, NO_LOAD, NO_RUNG, Rows};
use crate::{Evidence, Limits, Rule, Severity, Sink};

/// Stable name.
pub const CODE: &str = "under-minimum";
/// What it keeps from row to row.
pub const MEMORY: Memory = Memory { looks_back_rows: None, bytes: std::mem::size_of::<State>() };

/// Speed under which a truck stands, km/h.
pub(super) const STANDING_KMH: f64 = 1.0;
/// Share of the lowest at which a tire counts as run flat; 29 CFR 1910.177(f)(2).
const RUN_FLAT: f64 = 0.8;

/// What it remembers.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct State {
    load: u8,
    /// Nothing was held yet since the load came on.
    waiting: bool,
    episode: Episode<Below>,
}

impl Default for State {
    fn default() -> Self {
        Self { load: NO_LOAD, waiting: false, episode: Episode::default() }
    }
}

pub(crate) fn feed(
    state: &mut State,
    rows: &mut Rows,
    limits: &Limits,
    judged: &mut Judged,
    sink: &mut impl Sink,
) {
    let gap = limits.tolerance.gap.as_s();
    for i in 0..rows.len {
        if let Some(open) = state.episode.over(rows.first + i as u64, gap) {
            hand_over(&open, sink);
        }
        let (load, kmh) = (rows.load[i], rows.kmh[i]);
        if load == NO_LOAD || kmh.is_nan() {
            judged.unknown += 1;
            rows.unknown[i] = true;
            continue;
        }
        let of = &limits.loads[usize::from(load)];
        if load != state.load {
            state.waiting = state.load != NO_LOAD && of.start_rung.is_some();
            state.load = load;
        }
        state.waiting &= rows.held_maybe[i] == NO_RUNG;
        if kmh < STANDING_KMH || state.waiting {
            continue;
        }
        let slowest = of.slowest_possible(limits.given.rungs.len());
        match (rows.held_maybe[i], rows.held_surely[i], slowest) {
            (NO_RUNG, _, Some(slowest)) => {
                judged.known += 1;
                let now = rows.furthest_below(i, of, slowest);
                state.episode.broken(rows, i, now, |a, b| a.share() < b.share());
            }
            (_, NO_RUNG, _) => {
                judged.unknown += 1;
                rows.unknown[i] = true;
            }
            _ => judged.known += 1,
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

/// How bad it is to roll at a share of the lowest pressure.
pub(super) fn severity(share: f64) -> Severity {
    if share <= RUN_FLAT { Severity::Danger } else { Severity::Limit }
}

/// The evidence of a channel below the lowest.
pub(super) fn below(worst: &Below) -> Evidence {
    Evidence::Below {
        channel: worst.channel,
        rung: worst.rung,
        pressure: ColdPressure::from_kpa(worst.cold),
        limit: ColdPressure::from_kpa(worst.minimum),
    }
}

fn hand_over(open: &Open<Below>, sink: &mut impl Sink) {
    let severity = severity(open.worst.share());
    sink.take(open.finding(Rule::UnderMinimum, severity, below(&open.worst)));
}
