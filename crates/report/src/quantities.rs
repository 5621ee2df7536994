//! Numbers of a document, back to the kinds of quantity their keys name.

use language::{Amount, Format, Kind, Round, UnitProfile};
use quantity::{
    ColdPressure, GaugePressure, Length, Mass, PressureDifference, Speed, Stress, Temperature,
    Time, Unit, Volume,
};

/// A lowest cold pressure, or one to hold: never shown below.
pub fn lowest(format: &Format, kpa: f64) -> Amount {
    format.pressure(ColdPressure::from_kpa(kpa), Round::Up)
}

/// A highest cold pressure: never shown above.
pub fn highest(format: &Format, kpa: f64) -> Amount {
    format.pressure(ColdPressure::from_kpa(kpa), Round::Down)
}

/// A value to set, as the controller reads it: never shown below.
pub fn to_set(format: &Format, kpa: f64) -> Amount {
    format.pressure(GaugePressure::from_kpa(kpa), Round::Up)
}

/// Pressure there is: never shown above, but for less than a pascal that a simulation cannot tell.
pub fn at_hand(format: &Format, kpa: f64) -> Amount {
    let pascals = (kpa * 1e3).round();
    format.pressure(GaugePressure::from_kpa(pascals / 1e3), Round::Down)
}

/// A quantity with one decimal more than on paper: for answers, and what is less than a step.
pub fn fine<Q: Unit>(format: &Format, kind: Kind, value: Q, round: Round) -> Amount {
    format.fine(kind, value, round)
}

/// A cone index: in the units cone penetrometers are read in, kPa or psi.
pub fn cone_index(format: &Format, index: Stress, round: Round) -> Amount {
    let (number, unit) = match format.profile() {
        UnitProfile::Us => (index.as_psi(), "psi"),
        UnitProfile::Si | UnitProfile::MetricBar => (index.as_kpa(), "kPa"),
    };
    let decimals = u8::from(unit == "psi");
    format.in_unit(number, decimals, round, unit)
}

/// Something added.
pub fn added(format: &Format, kpa: f64) -> Amount {
    fine(format, Kind::Pressure, PressureDifference::from_kpa(kpa), Round::Nearest)
}

/// A speed cap: never shown above.
pub fn cap(format: &Format, kmh: f64) -> Amount {
    format.speed(Speed::from_kmh(kmh), Round::Down)
}

/// A load: never shown below.
pub fn load(format: &Format, kg: f64) -> Amount {
    format.load(Mass::from_kg(kg), Round::Up)
}

/// A stretch of road: in short units up to a kilometer.
pub fn stretch(format: &Format, m: f64, round: Round) -> Amount {
    let length = Length::from_m(m);
    if m.abs() < 1000.0 { format.span(length, round) } else { format.distance(length, round) }
}

/// A chainage.
pub fn chainage(format: &Format, km: f64, round: Round) -> Amount {
    format.distance(Length::from_km(km), round)
}

/// A time to allow: never shown below.
pub fn time(format: &Format, s: f64) -> Amount {
    seconds_or_minutes(format, s, Round::Up)
}

/// A time that must not be passed: never shown above.
pub fn time_left(format: &Format, s: f64) -> Amount {
    seconds_or_minutes(format, s, Round::Down)
}

/// In seconds up to two minutes.
fn seconds_or_minutes(format: &Format, s: f64, round: Round) -> Amount {
    let time = Time::from_s(s);
    if s.abs() < 120.0 { format.seconds(time, round) } else { format.minutes(time, round) }
}

/// A volume of fuel: never shown below.
pub fn fuel(format: &Format, l: f64) -> Amount {
    format.liquid(Volume::from_l(l), Round::Up)
}

/// A temperature.
pub fn temperature(format: &Format, c: f64) -> Amount {
    format.temperature(Temperature::from_celsius(c), Round::Nearest)
}

/// A percentage.
pub fn percent(format: &Format, pct: f64, round: Round) -> Amount {
    format.percent(pct / 100.0, 1, round)
}
