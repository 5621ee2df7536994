//! An invented haul for tests and benches: numbers in the range of real trucks, nothing real.
//!
//! It is a development aid; nothing that is shipped depends on it.

mod combination;
mod long;
mod route;
mod supply;
mod tires;

use model::haul_cycle::{HaulCycle, LadenDirection, ShiftStart, Spread, Standing, Weather};
use quantity::{AbsolutePressure, GaugePressure, Temperature, Time};

pub use combination::combination;
pub use long::{four_channels, hundred_km_cycle};
pub use route::{leg, long_route, route};
pub use supply::supply;
pub use tires::{metric_single, us_dual};

/// Indices of the load states of [`combination`].
pub const EMPTY: usize = 0;
/// Index of the laden state.
pub const LADEN: usize = 1;

/// Mild weather at 300 m.
pub fn weather() -> Weather {
    let c = Temperature::from_celsius;
    Weather {
        reference: c(20.0),
        coldest: c(-15.0),
        warmest: c(32.0),
        ambient: c(12.0),
        ambient_pressure: AbsolutePressure::from_kpa(97.77),
        humidity: 0.7,
    }
}

/// A log haul from a soft spur over gravel to a highway.
pub fn haul() -> HaulCycle {
    HaulCycle {
        name: "spur to mill".into(),
        combination: combination(),
        route: route(),
        laden_direction: LadenDirection::Forward,
        empty_state: EMPTY,
        laden_state: LADEN,
        loading: Standing {
            time: Time::from_min(30.0),
            high_idle: true,
            change_while_loading: false,
        },
        unloading: Standing {
            time: Time::from_min(20.0),
            high_idle: false,
            change_while_loading: false,
        },
        cycles_per_day: 2.0,
        shift_start: ShiftStart { supply: GaugePressure::from_psi(80.0), parked_rung: 2 },
        weather: weather(),
        leg_rungs: None,
        spread: Spread::default(),
        ladder_wish: None,
        money: None,
    }
}

/// The same on a route of 100 km, out and back, for benches.
pub fn long_haul() -> HaulCycle {
    HaulCycle { name: "long haul".into(), route: long_route(), ..haul() }
}
