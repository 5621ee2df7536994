//! How long and how far a haul stays on each rung, for hold limits.

use haul::{Record, Sample};
use quantity::{Length, Time};

/// The longest unbroken stay on one rung with one load.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LongestStay {
    /// Index of the load state.
    pub load_state: usize,
    /// Index of the rung.
    pub rung: usize,
    /// Longest time on it, standing included.
    pub time: Time,
    /// Longest road on it.
    pub road: Length,
}

/// Listens to a haul and keeps the longest stay on each rung.
#[derive(Debug, Clone, Default)]
pub(crate) struct Stays {
    longest: Vec<LongestStay>,
    now: Option<(LongestStay, Time, Length)>,
}

impl Stays {
    /// The longest stays, in the order they were first met.
    pub fn longest(self) -> Vec<LongestStay> {
        self.longest
    }
}

impl Record for Stays {
    const WANTS: bool = true;

    fn take(&mut self, sample: Sample) {
        let same =
            |stay: &LongestStay| (stay.load_state, stay.rung) == (sample.load_state, sample.rung);
        let fresh = LongestStay {
            load_state: sample.load_state,
            rung: sample.rung,
            time: Time::ZERO,
            road: Length::ZERO,
        };
        // A stay begins where the one before it was last seen.
        let (mut stay, clock, travelled) = match self.now.take() {
            Some(now) if same(&now.0) => now,
            Some((_, clock, travelled)) => (fresh, clock, travelled),
            None => (fresh, sample.time, sample.travelled),
        };
        stay.time += sample.time - clock;
        // The travelled distance begins anew when the truck turns round.
        let since = if sample.travelled < travelled { Length::ZERO } else { travelled };
        stay.road += sample.travelled - since;
        match self.longest.iter_mut().find(|longest| same(longest)) {
            Some(longest) => {
                longest.time = longest.time.max(stay.time);
                longest.road = longest.road.max(stay.road);
            }
            None => self.longest.push(stay),
        }
        self.now = Some((stay, sample.time, sample.travelled));
    }
}
