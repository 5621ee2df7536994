//! The figures a cost is made of, each of which may be varied.

use model::money::{Money, PaidBy};
use quantity::{Length, Time, Volume};

use crate::effect::{Band, Finding, Input, NotAssessed};

/// A figure of the cost.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Figure {
    /// Price of the system.
    Capex,
    /// Years it lasts.
    Life,
    /// Interest.
    Interest,
    /// Service, training, audit.
    Service,
    /// Trips a year.
    Trips,
    /// Time lost on a trip.
    LostTime,
    /// An hour of the truck.
    TruckHour,
    /// Fuel added on a trip.
    FuelAdded,
    /// Price of fuel.
    FuelPrice,
    /// Tire cost saved.
    TireSaving,
    /// Repairs saved.
    RepairSaving,
    /// Season days gained.
    SeasonDays,
    /// Margin of a trip in them.
    Margin,
    /// Payload gained.
    Payload,
    /// Rate for it.
    PayloadRate,
    /// Upkeep of the road for a pass over a kilometer.
    RoadCost,
    /// Share of it saved.
    RoadSaving,
}

impl Figure {
    /// All of them.
    pub const ALL: [Self; 17] = [
        Self::Capex,
        Self::Life,
        Self::Interest,
        Self::Service,
        Self::Trips,
        Self::LostTime,
        Self::TruckHour,
        Self::FuelAdded,
        Self::FuelPrice,
        Self::TireSaving,
        Self::RepairSaving,
        Self::SeasonDays,
        Self::Margin,
        Self::Payload,
        Self::PayloadRate,
        Self::RoadCost,
        Self::RoadSaving,
    ];

    /// What the survey must give for it.
    const fn input(self) -> Input {
        match self {
            Self::FuelPrice => Input::FuelPrice,
            Self::TireSaving => Input::TireSaving,
            Self::RepairSaving => Input::RepairSaving,
            Self::SeasonDays | Self::Margin => Input::Season,
            Self::Payload | Self::PayloadRate => Input::Payload,
            Self::RoadCost => Input::RoadCost,
            Self::RoadSaving => Input::RoadSaving,
            _ => Input::Money,
        }
    }
}

/// What the haul itself brings into the cost, a trip at a time.
#[derive(Debug, Clone, PartialEq)]
pub struct Trip {
    /// Time lost against full pressure; below zero it is won.
    pub lost: Finding<Time>,
    /// Fuel added against full pressure.
    pub fuel_added: Finding<Band<Volume>>,
    /// Unpaved road passed over, out and back.
    pub unpaved: Length,
    /// Trips a day.
    pub trips_per_day: f64,
}

/// Every figure with its band, or why it is not known.
#[derive(Debug, Clone, PartialEq)]
pub struct Figures {
    values: Vec<Finding<Band<f64>>>,
    /// Unpaved kilometers of a trip.
    pub(super) road_km: f64,
    /// Trips a day.
    pub(super) trips_per_day: f64,
    /// Share of the road saving passed on.
    pub(super) passed_on: f64,
    /// What the system is worth at the end.
    pub(super) salvage: f64,
    /// Who pays what.
    pub(super) paid_by: PaidBy,
}

/// How far a figure without a band of its own is varied.
pub const SWING: f64 = 0.2;

impl Figures {
    /// Figures of a survey and of what the haul brings.
    pub fn new(money: &Money, trip: &Trip) -> Self {
        let value = |figure| {
            let told = match figure {
                Figure::Capex => Some(money.capex),
                Figure::Life => Some(money.life_years),
                Figure::Interest => Some(money.interest),
                Figure::Service => Some(money.service_per_year),
                Figure::Trips => Some(money.trips_per_year),
                Figure::TruckHour => Some(money.truck_hour),
                Figure::FuelPrice => money.fuel_price_per_l,
                Figure::TireSaving => money.tire_saving_per_year,
                Figure::RepairSaving => money.repair_saving_per_year,
                Figure::SeasonDays => money.season.map(|season| season.days),
                Figure::Margin => money.season.map(|season| season.margin_per_trip),
                Figure::Payload => money.payload.map(|payload| payload.extra.as_t()),
                Figure::PayloadRate => money.payload.map(|payload| payload.rate_per_t),
                Figure::RoadCost => money.road.map(|road| road.per_pass_km),
                Figure::LostTime => {
                    return trip.lost.clone().map(|lost| Band::exact(lost.as_h()));
                }
                Figure::FuelAdded => {
                    return trip.fuel_added.clone().map(|fuel| fuel.map(Volume::as_l));
                }
                Figure::RoadSaving => {
                    let saving = money.road.and_then(|road| road.saving);
                    let band = saving.map(|[low, middle, high]| Band { low, middle, high });
                    return band.ok_or(NotAssessed::Give(figure.input()));
                }
            };
            told.map(Band::exact).ok_or(NotAssessed::Give(figure.input()))
        };
        Self {
            values: Figure::ALL.map(value).to_vec(),
            road_km: trip.unpaved.as_km(),
            trips_per_day: trip.trips_per_day,
            passed_on: money.road.map_or(0.0, |road| road.passed_on),
            salvage: money.salvage,
            paid_by: money.paid_by,
        }
    }

    /// A figure.
    pub(super) fn get(&self, figure: Figure) -> Finding<Band<f64>> {
        self.values[figure as usize].clone()
    }

    /// A figure that every survey with money gives.
    pub(super) fn given(&self, figure: Figure) -> f64 {
        self.values[figure as usize].as_ref().map_or(0.0, |band| band.middle)
    }

    /// The same with one figure held at a value.
    pub(super) fn with(&self, figure: Figure, value: f64) -> Self {
        let mut other = self.clone();
        other.values[figure as usize] = Ok(Band::exact(value));
        other
    }

    /// Ends a figure is varied between: its own band, or a fifth either way.
    pub(super) fn ends(&self, figure: Figure) -> Option<[f64; 2]> {
        let band = self.values[figure as usize].as_ref().ok()?;
        let own = [band.low, band.high];
        let swung = [band.middle * (1.0 - SWING), band.middle * (1.0 + SWING)];
        let ends = if band.low < band.high { own } else { swung };
        (ends[0] < ends[1] || ends[1] < ends[0]).then_some(ends)
    }
}
