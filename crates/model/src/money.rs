//! What a haul costs and earns, and who pays, as the survey states it.
//!
//! Money is a bare number in the currency of the survey; a year is a calendar year.

use quantity::Mass;

/// Somebody who pays or gains.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Payer {
    /// Who runs the trucks.
    Haulier,
    /// Who owns and keeps the road.
    RoadOwner,
    /// Who the load is for.
    Client,
}

impl Payer {
    /// Everybody, in the order of tables.
    pub const ALL: [Self; 3] = [Self::Haulier, Self::RoadOwner, Self::Client];
}

/// Who pays each kind of cost, or gains by it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PaidBy {
    /// The system and its upkeep.
    pub system: Payer,
    /// Truck time.
    pub time: Payer,
    /// Fuel.
    pub fuel: Payer,
    /// Tires and repairs.
    pub truck: Payer,
    /// Days of season gained, and payload.
    pub season: Payer,
    /// The road.
    pub road: Payer,
}

impl Default for PaidBy {
    /// The usual split: the road is its owner's, all else the haulier's.
    fn default() -> Self {
        use Payer::{Haulier, RoadOwner};
        Self {
            system: Haulier,
            time: Haulier,
            fuel: Haulier,
            truck: Haulier,
            season: Haulier,
            road: RoadOwner,
        }
    }
}

/// Season gained by running when others may not.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SeasonGain {
    /// Days a year.
    pub days: f64,
    /// Money a trip leaves.
    pub margin_per_trip: f64,
}

/// Payload gained where it is permitted.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PayloadGain {
    /// More payload a trip.
    pub extra: Mass,
    /// Money for a metric ton on a trip.
    pub rate_per_t: f64,
}

/// Upkeep of the road.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RoadCost {
    /// Money for one pass over one kilometer: grading and aggregate.
    pub per_pass_km: f64,
    /// Share of it that the plan saves, as the user judges it: least, expected, most.
    pub saving: Option<[f64; 3]>,
    /// Share of the saving that the road owner passes on to who pays for the system.
    pub passed_on: f64,
}

/// Money of one haul; a part that is `None` was not told and is not assumed.
#[derive(Debug, Clone, PartialEq)]
pub struct Money {
    /// Name of the money.
    pub currency: String,
    /// Price of the system, fitted.
    pub capex: f64,
    /// What it is worth at the end of its life.
    pub salvage: f64,
    /// Years it lasts.
    pub life_years: f64,
    /// Interest a year, as a ratio.
    pub interest: f64,
    /// Service, training and audit a year.
    pub service_per_year: f64,
    /// Trips a year of this combination on this haul.
    pub trips_per_year: f64,
    /// An hour of the truck with its driver.
    pub truck_hour: f64,
    /// A liter of fuel.
    pub fuel_price_per_l: Option<f64>,
    /// Tire cost saved a year, below zero where tires cost more.
    pub tire_saving_per_year: Option<f64>,
    /// Repairs saved a year.
    pub repair_saving_per_year: Option<f64>,
    /// Season.
    pub season: Option<SeasonGain>,
    /// Payload.
    pub payload: Option<PayloadGain>,
    /// The road.
    pub road: Option<RoadCost>,
    /// Who pays what.
    pub paid_by: PaidBy,
}
