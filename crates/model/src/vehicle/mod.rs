//! Trucks and trailers joined into a combination, and the states it is run in.

mod axle_group;
mod channel;
mod combination;
mod load_state;
mod powertrain;
mod rung;

pub use axle_group::{AxleGroup, DualPair, WheelValve};
pub use channel::{AirChannel, Controller, GaugeKind, MeasuredAir};
pub use combination::{Combination, Vehicle};
pub use load_state::{ChainState, GroupLoad, LoadState, Weighing};
pub use powertrain::Powertrain;
pub use rung::{HandSetCell, HoldLimit, Rung};
