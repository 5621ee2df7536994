//! A combination on a route: how the cycle is run, and in what weather.

use quantity::{
    AbsolutePressure, GaugePressure, Length, PressureDifference, Speed, Temperature,
    TemperatureDifference, Time,
};

use crate::money::Money;
use crate::route::Route;
use crate::vehicle::Combination;

/// Which way the load goes along the route.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LadenDirection {
    /// From chainage zero to the end: loads at zero.
    Forward,
    /// From the end to chainage zero: loads at the end.
    Backward,
}

/// Loading or unloading.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Standing {
    /// How long it takes.
    pub time: Time,
    /// Whether the engine runs at high idle meanwhile; otherwise at idle.
    pub high_idle: bool,
    /// Whether tires may be changed while the load comes on (the maker gave a standing row).
    pub change_while_loading: bool,
}

/// Temperatures the plan must stand.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Weather {
    /// Reference temperature of cold pressures.
    pub reference: Temperature,
    /// Coldest credible ambient.
    pub coldest: Temperature,
    /// Warmest credible ambient.
    pub warmest: Temperature,
    /// Ambient for the nominal run.
    pub ambient: Temperature,
    /// Ambient pressure at the site, from altitude.
    pub ambient_pressure: AbsolutePressure,
    /// Relative humidity for the water the compressor takes in, 0 to 1.
    pub humidity: f64,
}

/// Start of the shift.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ShiftStart {
    /// Reservoir pressure found.
    pub supply: GaugePressure,
    /// Index of the rung the tires were parked on.
    pub parked_rung: usize,
}

/// Which rung each leg is run on, chosen by a search instead of by surface.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LegRungs {
    /// Index of the rung of each leg, in order of chainage, on the empty run.
    pub empty: Vec<usize>,
    /// The same on the laden run.
    pub laden: Vec<usize>,
}

/// How much trucks differ from each other, one standard deviation as a share of the value.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TruckSpread {
    /// Compressor delivery.
    pub delivery: f64,
    /// Conductance of lines, seals and valves.
    pub conductance: f64,
    /// Air volume of the tires.
    pub tire_volume: f64,
}

/// How much runs of one truck differ, one standard deviation.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RunSpread {
    /// Ambient temperature.
    pub ambient: TemperatureDifference,
    /// Engine speed while pulling, as a share.
    pub engine_speed: f64,
    /// Road speed, as a share.
    pub road_speed: f64,
    /// How far past the place the driver acts.
    pub reaction: Length,
    /// Tire pressure found when the change begins, either way.
    pub held_pressure: PressureDifference,
}

/// Both kinds of spread, kept apart.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spread {
    /// Truck to truck.
    pub truck: TruckSpread,
    /// Run to run.
    pub run: RunSpread,
    /// Seed of the draws.
    pub seed: u64,
}

impl Spread {
    /// No spread at all.
    pub const NONE: Self = Self {
        truck: TruckSpread { delivery: 0.0, conductance: 0.0, tire_volume: 0.0 },
        run: RunSpread {
            ambient: TemperatureDifference::ZERO,
            engine_speed: 0.0,
            road_speed: 0.0,
            reaction: Length::ZERO,
            held_pressure: PressureDifference::ZERO,
        },
        seed: 1,
    };
}

impl Default for Spread {
    /// Widths a specialist would start from: an engineering choice, to be replaced by measured ones.
    fn default() -> Self {
        Self {
            truck: TruckSpread { delivery: 0.07, conductance: 0.08, tire_volume: 0.04 },
            run: RunSpread {
                ambient: TemperatureDifference::from_kelvin(5.0),
                engine_speed: 0.06,
                road_speed: 0.06,
                reaction: Length::from_m(30.0),
                held_pressure: PressureDifference::from_kpa(7.0),
            },
            seed: 1,
        }
    }
}

/// What the search for the best ladder needs; the unit of money is the survey's.
#[derive(Debug, Clone, PartialEq)]
pub struct LadderWish {
    /// How many rungs at most; never more than the controller stores.
    pub rungs: usize,
    /// Step between candidate caps.
    pub cap_step: Speed,
    /// Lowest candidate cap.
    pub lowest_cap: Speed,
    /// Caps that must be among the rungs.
    pub fixed_caps: Vec<Speed>,
    /// Money for an hour of the truck.
    pub truck_hour: f64,
    /// Money for a kilometer one kilopascal above what the ground wants.
    pub hard_kpa_km: f64,
    /// Money for a change.
    pub change: f64,
    /// Money for an hour of loaded compressor.
    pub compressor_hour: f64,
    /// Name of the money.
    pub currency: String,
}

/// A combination on a route.
#[derive(Debug, Clone, PartialEq)]
pub struct HaulCycle {
    /// Name in the survey.
    pub name: String,
    /// The combination.
    pub combination: Combination,
    /// The route.
    pub route: Route,
    /// Direction of the laden run.
    pub laden_direction: LadenDirection,
    /// Index of the load state on the way to loading.
    pub empty_state: usize,
    /// Index of the load state on the way from loading.
    pub laden_state: usize,
    /// Loading.
    pub loading: Standing,
    /// Unloading.
    pub unloading: Standing,
    /// Cycles a day.
    pub cycles_per_day: f64,
    /// Start of shift.
    pub shift_start: ShiftStart,
    /// Weather.
    pub weather: Weather,
    /// Rungs by leg, where they were searched for; otherwise legs and surfaces say.
    pub leg_rungs: Option<LegRungs>,
    /// How trucks and runs differ.
    pub spread: Spread,
    /// What a search for the best ladder needs, where the survey says.
    pub ladder_wish: Option<LadderWish>,
    /// What things cost and who pays, where the survey says.
    pub money: Option<Money>,
}
