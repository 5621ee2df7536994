//! Kinds of physical quantity as types.
//!
//! The mistakes that hurt people in this trade are mistakes of *kind*: a gauge
//! pressure put where the gas law wants an absolute one, a warm reading compared
//! with a cold requirement, psi typed as kPa. Each kind is therefore its own type
//! with a private number, made and read only through constructors and getters
//! named by their unit. Every value is finite: NaN and infinity are refused.
//!
//! ```
//! use quantity::{AbsolutePressure, GaugePressure};
//! let gauge: GaugePressure = "85 psi".parse()?;
//! let ambient = AbsolutePressure::from_kpa(101.325);
//! assert!((gauge.to_absolute(ambient).as_kpa() - 687.379).abs() < 1e-3);
//! # Ok::<(), quantity::ParseError>(())
//! ```

mod flow;
mod kind;
mod mechanics;
mod parse;
mod pressure;
mod temperature;

pub use flow::{MassFlow, SonicConductance, VolumeFlow};
pub use kind::NotFinite;
pub use mechanics::{
    Area, Density, Energy, Force, Length, Mass, Power, RotationalSpeed, SpecificPower, Speed, Time,
    Volume,
};
pub use parse::{ParseError, Unit};
pub use pressure::{AbsolutePressure, ColdPressure, GaugePressure, PressureDifference, Stress};
pub use temperature::{Temperature, TemperatureDifference};
