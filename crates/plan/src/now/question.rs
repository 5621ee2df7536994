//! What is known when the call comes in.

use std::sync::Arc;

use model::tire::Tire;
use model::tire::cold_warm::ConditionsError;
use quantity::{GaugePressure, Speed, Temperature};

use crate::PlanError;

/// What the truck carries.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Load {
    /// A load state of the combination, by index.
    State(usize),
    /// Nobody knows: every load state must be stood, so the heavier counts.
    Unknown,
}

/// Whether the tires were cold when they were gauged.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Warmth {
    /// Standing for hours, or moved a mile at most.
    Cold,
    /// Rolling not long ago.
    Warm,
    /// Nobody knows, which is taken as warm.
    NotKnown,
}

/// Whose tires were gauged.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Whose {
    /// All groups of an air channel, by index.
    Channel(usize),
    /// One axle group, by index.
    Group(usize),
}

/// What the gauge showed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Gauged {
    /// One tire.
    One(GaugePressure),
    /// The two mates of a dual.
    Mates(GaugePressure, GaugePressure),
}

impl Gauged {
    /// The softer.
    pub fn softer(self) -> GaugePressure {
        match self {
            Self::One(reading) => reading,
            Self::Mates(one, other) => one.min(other),
        }
    }

    /// The harder.
    pub fn harder(self) -> GaugePressure {
        match self {
            Self::One(reading) => reading,
            Self::Mates(one, other) => one.max(other),
        }
    }
}

/// A reading by hand with a vented gauge.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reading {
    /// Whose tires.
    pub whose: Whose,
    /// What it showed.
    pub gauged: Gauged,
    /// Cold or warm.
    pub warmth: Warmth,
    /// Unit the reading was given in, to see slips of unit.
    pub typed_in: Option<&'static str>,
}

/// What is coupled behind the truck.
#[derive(Debug, Clone, PartialEq)]
pub enum Trailer {
    /// The trailers the combination plans with.
    AsPlanned,
    /// None.
    None,
    /// One that nobody knows: road pressure only.
    Unknown,
    /// One with tires of another model.
    OtherTires(Arc<Tire>),
    /// One that was left standing on low pressure.
    LeftLow,
    /// One that was left with its wheel ends shut.
    LeftShut,
    /// The planned one, but the controller still holds the pressures of this load state.
    OtherLoadStateSelected(usize),
}

/// A call from the road.
#[derive(Debug, Clone, PartialEq)]
pub struct Call {
    /// What the truck carries.
    pub load: Load,
    /// Name of the chain state; `None` is the usual one of the load state.
    pub chains: Option<String>,
    /// Readings; several of one group count by the softest and the hardest.
    pub readings: Vec<Reading>,
    /// Whether it ran in the last hour: then no tire is cold, whatever was said.
    pub ran_last_hour: bool,
    /// Temperature of the air around the truck; `None` is the warmest the survey plans for.
    pub ambient: Option<Temperature>,
    /// What is coupled.
    pub trailer: Trailer,
    /// Whether pressures that nobody approved count too: for the specialist, never for the driver.
    pub with_unapproved: bool,
    /// Step that speeds between rungs are rounded down to.
    pub cap_step: Speed,
}

/// Why a call cannot be answered.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum CallError {
    /// Weather of the survey outside the gas law's range.
    #[error(transparent)]
    Plan(#[from] PlanError),
    /// A temperature outside the gas law's range.
    #[error(transparent)]
    Ambient(#[from] ConditionsError),
    /// A load state that is not there.
    #[error("there is no load state number {index}; the combination has {known}")]
    NoSuchLoadState {
        /// Index asked for.
        index: usize,
        /// How many there are.
        known: usize,
    },
    /// A chain state that no load state asked about has.
    #[error("load state '{load_state}' has no chain state '{wanted}'; it has: {}", known.join(", "))]
    NoSuchChainState {
        /// Load state.
        load_state: String,
        /// Name asked for.
        wanted: String,
        /// Names there are.
        known: Vec<String>,
    },
    /// A reading of something that is not there.
    #[error("a reading was given for {what} number {index}, which the combination does not have")]
    NoSuchPlace {
        /// Air channel or axle group.
        what: &'static str,
        /// Index.
        index: usize,
    },
    /// Two mates where tires are single.
    #[error("two mates were read on '{group}', whose tires are single; give one reading a tire")]
    NoMates {
        /// The group.
        group: String,
    },
    /// A reading of a trailer that is not coupled.
    #[error("a reading was given for '{group}', but no trailer is coupled; leave one of them out")]
    NotCoupled {
        /// The group.
        group: String,
    },
    /// A pressure no tire has.
    #[error("a gauge cannot show {reading} on a tire; give a reading of 0 to 2000 kPa")]
    NotAReading {
        /// What was given.
        reading: GaugePressure,
    },
    /// A step of speed that is no step.
    #[error("a speed step of {step} is not above zero")]
    NoStep {
        /// What was given.
        step: Speed,
    },
    /// A combination without rungs.
    #[error("the combination has no rungs, so no speed can be named")]
    NoRungs,
}
