//! The files of a survey as their authors write them: one struct a file, keys with units.
//!
//! Each struct is the deserialised form and the source of the JSON Schema at once; its doc comments
//! are what an editor shows. Numbers stand in the canonical unit of their key.

mod combination;
mod haul;
mod route;
mod survey;
mod tire;
mod truck;
mod vehicle;

pub(crate) use combination::{CombinationFile, LoadStateFile, RungFile};
pub(crate) use haul::{HaulFile, LadenDirectionWord, StandingFile};
pub(crate) use route::{JurisdictionWord, LegFile, RouteFile, SurfaceWord, TravelWord};
pub(crate) use survey::{SurveyFile, UnitsWord};
pub(crate) use tire::{
    AirRetentionWord, BodyWord, ConstructionWord, FitmentWord, MakerRowFile, SizeClassWord,
    TireFile,
};
pub(crate) use truck::{
    AirFile, ControllerFile, EngineFile, GaugeWord, InletWord, PressureUnitWord,
};
pub(crate) use vehicle::{
    AxleGroupFile, ChannelFile, ElementFile, RestrictionFile, TrailerAirWord, VehicleFile,
    VehicleKindWord, WheelValveWord,
};

use serde::Deserialize;

/// How a weight was found.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(crate) enum WeighedWord {
    /// On a certified scale.
    Scale,
    /// With portable pads or an on-board scale.
    Portable,
    /// Taken from a legal limit or a data sheet.
    Estimate,
}
