//! Raised late.
//!
//! # What it finds
//! Seconds on a section that wants a higher rung before every channel is up to its lowest pressure.
//!
//! # Why it matters
//! The truck must go on slowly, or goes too fast for its tires; the second is the rule `over-cap`.
//!
//! # Memory
//! The change asked for where the truck is, and whether it was complete there once.
//!
//! # Not judged
//! A pressure that falls again on the section after it was up once; other rules speak of that.

use quantity::ColdPressure;

use super::Memory;
use super::late::{Late, Off, Verdict};
use crate::coverage::Judged;
use crate::episode::Open;
use crate::rows::Rows;
use crate::{ChangeTo, Evidence, Limits, Rule, Severity, Sink};

/// Stable name.
pub const CODE: &str = "raised-late";
/// What it keeps from row to row.
pub const MEMORY: Memory = Memory { looks_back_rows: Some(1), bytes: std::mem::size_of::<State>() };

/// What it remembers.
#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct State(Late);

pub(crate) fn feed(
    state: &mut State,
    rows: &mut Rows,
    limits: &Limits,
    judged: &mut Judged,
    sink: &mut impl Sink,
) {
    state.0.feed(rows, limits, judged, judge, |open| hand_over(&open, limits, sink));
}

impl State {
    pub(crate) fn finish(&mut self, limits: &Limits, sink: &mut impl Sink) {
        if let Some(open) = self.0.finish() {
            hand_over(&open, limits, sink);
        }
    }
}

fn judge(rows: &Rows, i: usize, to: &[ChangeTo]) -> Verdict {
    let mut furthest = None;
    let (mut asks, mut unread, mut maybe) = (false, false, false);
    for (channel, to) in (0_u8..).zip(to) {
        let ChangeTo::Raised(limit) = to else { continue };
        asks = true;
        let (at, limit) = (usize::from(channel), limit.as_kpa());
        let (low, high) = (rows.cold_low[at][i], rows.cold_high[at][i]);
        let by = furthest.map_or(0.0, |off: Off| off.limit - off.value);
        if limit - high > by {
            furthest = Some(Off { channel, change: 0, value: high, limit });
        }
        unread |= low.is_infinite();
        maybe |= low < limit;
    }
    match furthest {
        Some(off) => Verdict::Incomplete(off),
        None if !asks => Verdict::Elsewhere,
        None if unread => Verdict::Unknown,
        None if maybe => Verdict::MaybeComplete,
        None => Verdict::Complete,
    }
}

fn hand_over(open: &Open<Off>, limits: &Limits, sink: &mut impl Sink) {
    let change = &limits.given.changes[usize::from(open.worst.change)];
    let evidence = Evidence::Below {
        channel: usize::from(open.worst.channel),
        rung: change.rung,
        pressure: ColdPressure::from_kpa(open.worst.value),
        limit: ColdPressure::from_kpa(open.worst.limit),
    };
    sink.take(open.finding(Rule::RaisedLate, Severity::Loss, evidence));
}
