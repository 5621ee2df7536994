//! Lowered late.
//!
//! # What it finds
//! Seconds on a section that wants a lower rung before every channel is down to it.
//!
//! # Why it matters
//! Hard tires on weak road make ruts and washboard, worst with an empty truck; a permit for the road may hang on it.
//!
//! # Memory
//! The change asked for where the truck is, and whether it was complete there once.
//!
//! # Not judged
//! Pressures raised again on the section after they were down once; tires that warm up there read higher
//! without anybody having filled them.

use quantity::GaugePressure;

use super::Memory;
use super::late::{Late, Off, Verdict};
use crate::coverage::Judged;
use crate::episode::Open;
use crate::rows::Rows;
use crate::{ChangeTo, Evidence, Limits, Rule, Severity, Sink};

/// Stable name.
pub const CODE: &str = "lowered-late";
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
    state.0.feed(rows, limits, judged, judge, |open| hand_over(&open, sink));
}

impl State {
    pub(crate) fn finish(&mut self, sink: &mut impl Sink) {
        if let Some(open) = self.0.finish() {
            hand_over(&open, sink);
        }
    }
}

fn judge(rows: &Rows, i: usize, to: &[ChangeTo]) -> Verdict {
    let mut furthest = None;
    let (mut asks, mut unread) = (false, false);
    for (channel, to) in (0_u8..).zip(to) {
        let ChangeTo::Lowered(limit) = to else { continue };
        asks = true;
        let (value, limit) = (rows.read[usize::from(channel)][i], limit.as_kpa());
        let by = furthest.map_or(0.0, |off: Off| off.value - off.limit);
        if value - limit > by {
            furthest = Some(Off { channel, change: 0, value, limit });
        }
        unread |= value.is_nan();
    }
    match furthest {
        Some(off) => Verdict::Incomplete(off),
        None if !asks => Verdict::Elsewhere,
        None if unread => Verdict::Unknown,
        None => Verdict::Complete,
    }
}

fn hand_over(open: &Open<Off>, sink: &mut impl Sink) {
    let evidence = Evidence::Above {
        channel: usize::from(open.worst.channel),
        change: usize::from(open.worst.change),
        reading: GaugePressure::from_kpa(open.worst.value),
        limit: GaugePressure::from_kpa(open.worst.limit),
    };
    sink.take(open.finding(Rule::LoweredLate, Severity::Loss, evidence));
}
