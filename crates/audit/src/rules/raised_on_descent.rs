//! Raised on a descent.
//!
//! # What it finds
//! A tire pressure that rises faster than heat makes it, on a sustained descent or on its approach.
//!
//! # Why it matters
//! Brakes own the air: on a descent what the compressor makes belongs to them.
//!
//! # Memory
//! For each channel the lowest reading of the last minute on the stretch.
//!
//! # Not judged
//! A rise slower than the tolerance says: a tire that warms up makes less than that.

use quantity::{GaugePressure, PressureDifference};

use super::Memory;
use crate::coverage::Judged;
use crate::episode::{Episode, Open};
use crate::rows::{NO_LOAD, Rows};
use crate::{Evidence, Limits, MAX_CHANNELS, Rule, Severity, Sink};

/// Stable name.
pub const CODE: &str = "raised-on-descent";
/// What it keeps from row to row.
pub const MEMORY: Memory =
    Memory { looks_back_rows: Some(MINUTE), bytes: std::mem::size_of::<State>() };

/// Rows over which a rise is judged.
const MINUTE: u32 = 60;
/// Rows without a rise after which a filling is over: a slow one needs most of a minute to show again.
const OVER: f64 = 90.0;

#[derive(Debug, Clone, Copy, PartialEq)]
struct Rise {
    channel: u8,
    read: f64,
    by: f64,
    /// Row it is counted from.
    since: u64,
}

/// What it remembers.
#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct State {
    /// By channel, the reading a rise is counted from, kPa, and its row.
    from: [Option<(f64, u64)>; MAX_CHANNELS],
    episode: Episode<Rise>,
}

pub(crate) fn feed(
    state: &mut State,
    rows: &mut Rows,
    limits: &Limits,
    judged: &mut Judged,
    sink: &mut impl Sink,
) {
    let limit = limits.tolerance.filling.as_kpa();
    for i in 0..rows.len {
        let row = rows.first + i as u64;
        if let Some(open) = state.episode.over(row, OVER) {
            hand_over(&open, limits, sink);
        }
        if rows.load[i] == NO_LOAD || rows.km[i].is_nan() {
            judged.unknown += 1;
            rows.unknown[i] = true;
            continue;
        }
        if !rows.place[i].closed {
            state.from = [None; MAX_CHANNELS];
            continue;
        }
        let mut known = true;
        for channel in 0..limits.channels {
            let read = rows.read[channel][i];
            if read.is_nan() {
                known = false;
                continue;
            }
            let from = &mut state.from[channel];
            let (low, since) = match *from {
                Some((low, since)) if read >= low && row - since <= u64::from(MINUTE) => {
                    (low, since)
                }
                _ => (read, row),
            };
            *from = Some((low, since));
            if read - low >= limit {
                let channel = u8::try_from(channel).unwrap_or(u8::MAX);
                let now = Rise { channel, read, by: read - low, since };
                state.episode.broken(rows, i, now, |a, b| a.by > b.by);
                if let Some(open) = &mut state.episode.open {
                    open.start = open.start.min(since);
                    open.rows = row - open.start + 1;
                }
            }
        }
        if known {
            judged.known += 1;
        } else {
            judged.unknown += 1;
            rows.unknown[i] = true;
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

fn hand_over(open: &Open<Rise>, limits: &Limits, sink: &mut impl Sink) {
    let evidence = Evidence::Rose {
        channel: usize::from(open.worst.channel),
        reading: GaugePressure::from_kpa(open.worst.read),
        by: PressureDifference::from_kpa(open.worst.by),
        limit: limits.tolerance.filling,
    };
    sink.take(open.finding(Rule::RaisedOnDescent, Severity::Danger, evidence));
}
