//! One axle group: axles that share a load, with their tires.

use std::sync::Arc;

use quantity::{ColdPressure, GaugePressure, Length, Mass};

use crate::tire::{Fitment, Tire};

/// What stands between the air line and the tire at a wheel end.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum WheelValve {
    /// A wheel shut-off, opened and shut by hand; the line always sees the tire.
    ByHand,
    /// A valve that closes itself when line pressure falls under `closes_below`; the
    /// tire is sealed between changes, and one softer than that cannot be reached.
    SelfClosing {
        /// Line pressure under which it shuts.
        closes_below: GaugePressure,
    },
}

/// How two tires of a dual stand to each other.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DualPair {
    /// Center-to-center spacing.
    pub spacing: Length,
    /// Measured difference of the two free diameters.
    pub diameter_difference: Length,
    /// Least gap wanted between the sidewalls at the bottom.
    pub least_gap: Length,
}

/// An axle group of one vehicle.
#[derive(Debug, Clone, PartialEq)]
pub struct AxleGroup {
    /// Name in the survey, such as `drive`.
    pub name: String,
    /// Index of its vehicle in the combination.
    pub vehicle: usize,
    /// Number of axles.
    pub axles: u32,
    /// Single or dual.
    pub fitment: Fitment,
    /// The tire fitted.
    pub tire: Arc<Tire>,
    /// Other tire models fitted at some of its positions on some units; the worst governs.
    pub also_fitted: Vec<Arc<Tire>>,
    /// Spacing and match of the duals; `None` for singles.
    pub dual: Option<DualPair>,
    /// Whether the engine drives it.
    pub driven: bool,
    /// Whether it steers.
    pub steered: bool,
    /// Whether it can be lifted.
    pub liftable: bool,
    /// Index of the air channel that feeds it; `None` keeps a fixed pressure.
    pub channel: Option<usize>,
    /// The pressure a group without a channel is kept at.
    pub fixed_pressure: Option<ColdPressure>,
    /// Highest load the axles may carry, for the group.
    pub axle_rating: Mass,
    /// Valve at each wheel end; `None` for groups without a channel.
    pub wheel_valve: Option<WheelValve>,
    /// Wheel ends shut by hand now, so that their tires do not follow a change.
    pub wheel_ends_shut: u32,
    /// Track: distance between the wheel-end centers of an axle.
    pub track: Length,
    /// Least pressure for turning on the spot, where the survey gives one.
    pub scrub_minimum: Option<ColdPressure>,
}

impl AxleGroup {
    /// Wheel ends of the group: two an axle.
    pub fn wheel_ends(&self) -> u32 {
        self.axles * 2
    }

    /// Tires at each wheel end.
    pub fn tires_per_end(&self) -> u32 {
        match self.fitment {
            Fitment::Single => 1,
            Fitment::Dual => 2,
        }
    }

    /// Tires of the group.
    pub fn tires(&self) -> u32 {
        self.wheel_ends() * self.tires_per_end()
    }

    /// Every tire model that may be at its wheel ends.
    pub fn tire_models(&self) -> impl Iterator<Item = &Arc<Tire>> {
        std::iter::once(&self.tire).chain(&self.also_fitted)
    }

    /// Tires whose wheel ends are open to the air line.
    pub fn open_tires(&self) -> u32 {
        (self.wheel_ends() - self.wheel_ends_shut.min(self.wheel_ends())) * self.tires_per_end()
    }
}
