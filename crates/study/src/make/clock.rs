//! The clock of the logger, and the order of frames on the bus.

use haul::chance::{normal, uniform};
use logs::{Frame, Timestamp};
use quantity::Time;

/// Drift of a logger's clock, one standard deviation: a usual crystal, from memory.
const DRIFT: f64 = 25e-6;
/// Mean wait of a frame for the bus, s: common practice, no source.
const WAITS: f64 = 0.4e-3;
/// Time a frame of eight bytes takes on a bus of 250 kbit/s, s.
const FRAME_TAKES: f64 = 0.54e-3;
/// Share of hours in which the logger loses a stretch: common practice, no source.
const GAPS_AN_HOUR: f64 = 0.25;
/// The logger wakes up later than the bus by this, s: common practice, no source.
const WAKES_LATE: f64 = 3.5;

/// A stretch in which nothing was recorded.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gap {
    /// From when, by the clock of the day.
    pub from: Time,
    /// Until when.
    pub until: Time,
    /// Whether it was asked for.
    pub asked_for: bool,
}

/// A jump of the logger's clock.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ClockStep {
    /// From when, by the clock of the day.
    pub from: Time,
    /// Until when; `None` to the end.
    pub until: Option<Time>,
    /// By how much it then is ahead.
    pub by: Time,
}

/// Stamps frames as a logger does.
#[derive(Debug, Clone)]
pub(super) struct LogClock {
    seed: u64,
    begins_us: i64,
    pub drift: f64,
    pub gaps: Vec<Gap>,
    pub steps: Vec<ClockStep>,
    last: f64,
    frames: usize,
    pub lost: usize,
}

impl LogClock {
    pub fn new(seed: u64, begins_us: i64, mut gaps: Vec<Gap>, steps: Vec<ClockStep>) -> Self {
        let span = |from: f64, until: f64| Gap {
            from: Time::from_s(from),
            until: Time::from_s(until),
            asked_for: false,
        };
        gaps.push(span(0.0, WAKES_LATE));
        for hour in 0..24_u8 {
            let sample = usize::from(hour);
            if uniform(seed, sample, "logger: gap") < GAPS_AN_HOUR {
                let within = uniform(seed, sample, "logger: gap from");
                let from = (f64::from(hour) + within) * 3600.0;
                let longer = uniform(seed, sample, "logger: gap for");
                gaps.push(span(from, from + 2.0 + 90.0 * longer * longer));
            }
        }
        gaps.sort_by(|a, b| a.from.total_cmp(&b.from));
        let drift = DRIFT * normal(seed, 0, "logger: drift");
        Self { seed, begins_us, drift, gaps, steps, last: 0.0, frames: 0, lost: 0 }
    }

    /// Puts a frame that is due at a time on the bus; `None` where the logger loses it.
    pub fn stamp(&mut self, frame: &mut Frame, due: f64) -> bool {
        self.frames += 1;
        let waited = -WAITS * uniform(self.seed, self.frames, "bus: waits").ln();
        let seen = (due + waited).max(self.last + FRAME_TAKES);
        self.last = seen;
        let at = Time::from_s(seen);
        if self.gaps.iter().any(|gap| at >= gap.from && at < gap.until) {
            self.lost += 1;
            return false;
        }
        let ahead: f64 = self
            .steps
            .iter()
            .filter(|step| at >= step.from && step.until.is_none_or(|until| at < until))
            .map(|step| step.by.as_s())
            .sum();
        frame.time = Timestamp::from_us(self.begins_us + micros(seen * (1.0 + self.drift) + ahead));
        true
    }
}

/// Whole microseconds.
pub(super) fn micros(seconds: f64) -> i64 {
    #[expect(clippy::cast_possible_truncation, reason = "days in microseconds fit well")]
    let us = (seconds * 1e6).round() as i64;
    us
}

#[cfg(test)]
mod tests {
    use super::*;
    use logs::{CanId, Data, Interface};

    fn frame() -> Frame {
        Frame {
            time: Timestamp::default(),
            interface: Interface(0),
            id: CanId::extended(0x18FEF433).unwrap(),
            data: Data::new(&[0; 8]).unwrap(),
        }
    }

    #[test]
    fn frames_never_stand_closer_than_the_bus_lets_them_and_gaps_swallow_theirs() {
        let gap = Gap { from: Time::from_s(100.0), until: Time::from_s(110.0), asked_for: true };
        let mut clock = LogClock::new(1, 0, vec![gap], Vec::new());
        let mut last = None;
        for tick in 0..20_000 {
            let due = f64::from(tick / 4) * 0.05;
            let mut one = frame();
            let kept = clock.stamp(&mut one, due);
            assert!(!(kept && (100.01..109.99).contains(&due)), "{due}");
            assert!(
                kept || due < 3.6
                    || clock
                        .gaps
                        .iter()
                        .any(|gap| { due > gap.from.as_s() - 0.1 && due < gap.until.as_s() })
            );
            if kept {
                if let Some(before) = last {
                    assert!(one.time.ns_since(before) >= 530_000);
                }
                last = Some(one.time);
            }
        }
    }

    #[test]
    fn a_step_of_the_clock_ends_when_it_is_told_to() {
        let step = ClockStep {
            from: Time::from_s(50.0),
            until: Some(Time::from_s(60.0)),
            by: Time::from_s(90.0),
        };
        let mut clock = LogClock::new(1, 0, Vec::new(), vec![step]);
        clock.gaps.clear();
        let mut at = |due| {
            let mut one = frame();
            assert!(clock.stamp(&mut one, due));
            f64::from(u32::try_from(one.time.as_us() / 1000).unwrap()) / 1000.0
        };
        assert!((at(49.0) - 49.0).abs() < 0.02);
        assert!((at(55.0) - 145.0).abs() < 0.02);
        assert!((at(61.0) - 61.0).abs() < 0.02);
    }
}
