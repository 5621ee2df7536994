//! The files of a survey as their authors write them: one struct a file, keys with units.
//!
//! Each struct is the deserialised form and the source of the JSON Schema at once; its doc comments
//! are what an editor shows. Numbers stand in the canonical unit of their key.

mod approval;
mod combination;
mod ground;
mod haul;
mod money;
mod permit;
mod route;
mod survey;
mod tire;
mod truck;
mod unit;
mod vehicle;

pub(crate) use approval::{ApprovalFile, RecommendedWord};
pub(crate) use combination::{BodyPositionWord, CombinationFile, LoadStateFile, RungFile};
pub(crate) use ground::{AggregateFile, LayerFile, SeasonWord, SoilClassWord};
pub(crate) use haul::{HaulFile, LadderFile, LadenDirectionWord, SpreadFile, StandingFile};
pub(crate) use money::{MoneyFile, PaidByFile, PayerWord, RoadFile};
pub(crate) use permit::{PermitFile, PressuresWord, StretchFile};
pub(crate) use route::{JurisdictionWord, LegFile, RouteFile, SurfaceWord, TravelWord};
pub(crate) use survey::{SurveyFile, UnitsWord};
pub(crate) use tire::{
    AirRetentionWord, BodyWord, ConstructionWord, FitmentWord, MakerRowFile, SizeClassWord,
    TireFile,
};
pub(crate) use truck::{
    AirFile, ControllerFile, EngineFile, GaugeWord, InletWord, PressureUnitWord,
};
pub(crate) use unit::{FittedWord, UnitFile, UnitsFile};
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
