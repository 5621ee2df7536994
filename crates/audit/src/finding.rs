//! What a rule found, with its evidence.

use quantity::{ColdPressure, GaugePressure, Length, PressureDifference, Speed, Time};

use crate::{Hold, Rule};

/// How bad a finding is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Severity {
    /// Time or road was lost.
    Loss,
    /// A limit of the plan was broken.
    Limit,
    /// People may be hurt, or a tire damaged unseen.
    Danger,
}

/// The numbers behind a finding, at its worst moment.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Evidence {
    /// A pressure above what counts as lowered.
    Above {
        /// Index of the air channel.
        channel: usize,
        /// Index of the change among those of the limits.
        change: usize,
        /// As a vented gauge read it.
        reading: GaugePressure,
        /// Highest reading that counts as lowered.
        limit: GaugePressure,
    },
    /// A pressure below the lowest of a cell.
    Below {
        /// Index of the air channel.
        channel: usize,
        /// Rung of the cell that governs.
        rung: usize,
        /// Cold pressure behind the reading; the highest it can be where the tire's temperature
        /// is not known.
        pressure: ColdPressure,
        /// Lowest of the cell.
        limit: ColdPressure,
    },
    /// A speed above the cap of the pressures held.
    Over {
        /// Fastest rung whose lowest pressures every channel held.
        rung: usize,
        /// Speed.
        speed: Speed,
        /// Its cap.
        cap: Speed,
    },
    /// A stay on a rung beyond its hold limit.
    Held {
        /// The rung.
        rung: usize,
        /// How long.
        time: Time,
        /// How far.
        distance: Length,
        /// The limit.
        limit: Hold,
    },
    /// A pressure that rose faster than heat makes it.
    Rose {
        /// Index of the air channel.
        channel: usize,
        /// Reading at the end.
        reading: GaugePressure,
        /// How much it rose within a minute.
        by: PressureDifference,
        /// Rise in a minute from which it counts as filling.
        limit: PressureDifference,
    },
}

/// Something that was not as the plan has it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Finding {
    /// Which rule.
    pub rule: Rule,
    /// How bad.
    pub severity: Severity,
    /// When it began, from the first row of the log.
    pub start: Time,
    /// When it was last seen.
    pub end: Time,
    /// Seconds that break the rule between the two.
    pub lasted: Time,
    /// Chainage where it began, if known.
    pub from: Option<Length>,
    /// Chainage where it was last seen, if known.
    pub to: Option<Length>,
    /// Road run meanwhile.
    pub distance: Length,
    /// Index of the load state.
    pub load_state: usize,
    /// The numbers.
    pub evidence: Evidence,
}

/// Something that takes findings.
pub trait Sink {
    /// Takes one.
    fn take(&mut self, finding: Finding);
}

impl Sink for Vec<Finding> {
    fn take(&mut self, finding: Finding) {
        self.push(finding);
    }
}
