//! A change that is not complete on the stretch that asks for it: what raising and lowering late share.

use crate::coverage::Judged;
use crate::episode::{Episode, Open};
use crate::places::NO_CHANGE;
use crate::rows::{NO_LOAD, Rows};
use crate::{ChangeTo, Limits};

/// What one row says of a change.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Verdict {
    /// The change asks nothing of this rule.
    Elsewhere,
    /// Complete on every channel.
    Complete,
    /// Not complete, as a known pressure says.
    Incomplete(Off),
    /// Complete if the tires are cool, and not if they are warm.
    MaybeComplete,
    /// Nobody can tell.
    Unknown,
}

/// Whether the change was complete once on its section.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Once {
    No,
    Maybe,
    Surely,
}

/// The channel furthest off, kPa.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Off {
    pub channel: u8,
    pub change: u16,
    pub value: f64,
    pub limit: f64,
}

impl Off {
    fn by(&self) -> f64 {
        (self.value - self.limit).abs()
    }
}

/// The change asked for where the truck is, and whether it was complete there once.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Late {
    change: u16,
    complete: Once,
    episode: Episode<Off>,
}

impl Default for Late {
    fn default() -> Self {
        Self { change: NO_CHANGE, complete: Once::No, episode: Episode::default() }
    }
}

impl Late {
    /// Judges rows; `judge` says of a row how the change stands.
    pub fn feed(
        &mut self,
        rows: &mut Rows,
        limits: &Limits,
        judged: &mut Judged,
        judge: impl Fn(&Rows, usize, &[ChangeTo]) -> Verdict,
        mut over: impl FnMut(Open<Off>),
    ) {
        for i in 0..rows.len {
            if rows.load[i] == NO_LOAD || rows.km[i].is_nan() {
                judged.unknown += 1;
                rows.unknown[i] = true;
                continue;
            }
            let change = rows.place[i].change;
            if change != self.change {
                if let Some(open) = self.episode.open.take() {
                    over(open);
                }
                (self.change, self.complete) = (change, Once::No);
            }
            if change == NO_CHANGE || self.complete == Once::Surely {
                continue;
            }
            match judge(rows, i, &limits.given.changes[usize::from(change)].to) {
                Verdict::Elsewhere => self.complete = Once::Surely,
                Verdict::Complete => {
                    judged.known += 1;
                    self.complete = Once::Surely;
                }
                Verdict::Incomplete(off) if self.complete == Once::No => {
                    judged.known += 1;
                    let off = Off { change, ..off };
                    self.episode.broken(rows, i, off, |a, b| a.by() > b.by());
                }
                verdict => {
                    if verdict == Verdict::MaybeComplete {
                        self.complete = Once::Maybe;
                    }
                    judged.unknown += 1;
                    rows.unknown[i] = true;
                }
            }
        }
    }

    /// What is open at the end of the log.
    pub fn finish(&mut self) -> Option<Open<Off>> {
        self.episode.open.take()
    }
}
