//! The air that changes the tires: supply, restrictions, lines, and the whole network.

mod compressor;
mod cubic_table;
mod duty;
mod fill_time;
mod intake_water;
mod network;
mod reference_air;
mod restriction;
mod series;
mod supply;
mod true_air;
mod vent_time;

pub use compressor::{
    Compressor, CompressorError, CompressorInlet, Governor, displacement_of_rating,
};
pub use duty::Duty;
pub use fill_time::{FillTimeError, adiabatic_fill_time, fill_time};
pub use intake_water::{HumidityError, water_taken_in};
pub use network::{
    Advance, AirEvent, AirState, BrakeGate, ChannelOrder, ChannelSpec, MAX_CHANNELS, Network,
    NetworkError, Surroundings, Totals,
};
pub use reference_air::{REFERENCE_DENSITY, REFERENCE_TEMPERATURE, mass_of_free_air};
pub use restriction::{FlowError, Restriction, RestrictionError};
pub use series::{EmptyPath, SeriesCurve, series_mass_flow};
pub use supply::{AirSupply, BrakeUse, PathElement, ProtectionValve};
pub use true_air::{
    AirFault, AirFaultError, ControllerHabits, GAS_TO_WALL, GAS_TO_WALL_AT, TrueAdvance, TrueAir,
    TrueState, TrueSurroundings, TrueTotals, WheelEnd,
};
pub use vent_time::{AdiabaticVent, VentTimeError, adiabatic_vent, vent_time};

/// Source keys of this module's equations.
pub mod sources {
    pub use super::compressor::{RATING_SOURCE, SOURCE as COMPRESSOR};
    pub use super::fill_time::SOURCE as CLOSED_FORMS;
    pub use super::intake_water::SOURCE as INTAKE_WATER;
    pub use super::network::{INFLATION_TIMES_SOURCE, SOURCE as NETWORK};
    pub use super::reference_air::SOURCE as REFERENCE_AIR;
    pub use super::restriction::{ORIFICE_SOURCE, SOURCE as RESTRICTION, TUBE_SOURCE};
    pub use super::series::SOURCE as SERIES;
    pub use super::true_air::GAS_TO_WALL_SOURCE as GAS_TO_WALL;
}
