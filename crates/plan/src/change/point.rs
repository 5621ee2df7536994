//! A change point as it stands in the plan.

use haul::Target;
use quantity::{GaugePressure, Length, Speed, Time};

use super::spread::ChangeSpread;

/// Which way the pressure goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Action {
    /// To a rung with a higher speed cap.
    Raise,
    /// To a rung with a lower speed cap.
    Lower,
}

/// Where a truck stands for a change.
#[derive(Debug, Clone, PartialEq)]
pub struct Stop {
    /// Name of the lay-by.
    pub name: String,
    /// Chainage.
    pub at: Length,
    /// How long it stands.
    pub wait: Time,
}

/// How a change can be made.
#[derive(Debug, Clone, PartialEq)]
pub enum Way {
    /// On the road, complete where it must be.
    Rolling,
    /// On the road, going on at the lower cap past the place until complete.
    GoOnSlowly {
        /// How far past the place.
        past: Length,
    },
    /// Standing in a lay-by until complete.
    LayBy(Stop),
    /// Driving the stretch before it slower, at this mean speed.
    Slower {
        /// Mean speed at which the change just fits.
        mean: Speed,
    },
    /// A lower rung that is reached in time.
    OtherRung {
        /// Index of the rung.
        rung: usize,
    },
    /// More air: the compressor delivery that would just fit, as a multiple of today's.
    MoreAir {
        /// The multiple.
        times: f64,
    },
    /// Starting earlier: how much more road is missing.
    MoreRoad {
        /// Road missing before the place.
        missing: Length,
    },
}

/// A way with what it costs.
#[derive(Debug, Clone, PartialEq)]
pub struct WayTaken {
    /// The way.
    pub way: Way,
    /// Time lost against a change that costs no time; `None` where it was not driven.
    pub time_lost: Option<Time>,
}

/// Why a change that is complete in time may still not be made there.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Refusal {
    /// The compressor would run longer without a pause than it may.
    CompressorLimit,
    /// The reservoirs would not be at cut-in at the top of the next descent.
    SupplyBeforeDescent,
}

/// What calling a change late, or never, does.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Consequence {
    /// Time lost against the plan; below zero where the driver is faster for it.
    pub time_lost: Time,
    /// Road run at a pressure that was not meant for it.
    pub wrong_road: Length,
    /// Whether tires are then filled on a sustained descent, where the brakes need the air.
    pub on_descent: bool,
}

/// A place where the driver must start a change.
#[derive(Debug, Clone, PartialEq)]
pub struct ChangePoint {
    /// Chainage of the place.
    pub at: Length,
    /// Travel distance of the place.
    pub travelled: Length,
    /// Load state of the run.
    pub load_state: usize,
    /// Cells before.
    pub from: Target,
    /// Cells after.
    pub to: Target,
    /// Raise or lower.
    pub action: Action,
    /// Whether it is complete where it must be.
    pub fits: bool,
    /// What refuses it where it would be complete in time.
    pub refused: Option<Refusal>,
    /// Chainage where it must be complete.
    pub reach_by: Length,
    /// Chainage where it is complete.
    pub reached: Length,
    /// Distance from the place to where it is complete at the latest.
    pub lead: Length,
    /// How long it takes, nominally.
    pub time: Time,
    /// How changes spread that begin there, where they were sampled.
    pub spread: Option<ChangeSpread>,
    /// Whether nine of ten changes are complete where they must be; unknown without samples.
    pub fits_p90: Option<bool>,
    /// Speed cap while it is under way.
    pub cap: Speed,
    /// Lowest service pressure meanwhile.
    pub lowest_supply: GaugePressure,
    /// Longest unbroken compressor run.
    pub longest_loaded: Time,
    /// How it is made.
    pub chosen: WayTaken,
    /// How else it could be made.
    pub others: Vec<WayTaken>,
    /// Called one kilometer late; `None` where the run ends before that.
    pub late_1_km: Option<Consequence>,
    /// Never called.
    pub never: Option<Consequence>,
    /// Whether a sustained descent moved it forward.
    pub before_descent: bool,
}
