//! Quantities in sentences: both units, no digits that say nothing.

use quantity::{ColdPressure, GaugePressure, Length, Mass, Speed};

fn kpa_psi(kpa: f64, psi: f64) -> String {
    format!("{kpa:.0} kPa ({psi:.0} psi)")
}

pub(super) fn cold(pressure: ColdPressure) -> String {
    kpa_psi(pressure.as_kpa(), pressure.as_psi())
}

pub(super) fn gauge(pressure: GaugePressure) -> String {
    kpa_psi(pressure.as_kpa(), pressure.as_psi())
}

pub(super) fn mass(mass: Mass) -> String {
    format!("{:.0} kg ({:.0} lb)", mass.as_kg(), mass.as_lb())
}

pub(super) fn speed(speed: Speed) -> String {
    format!("{:.0} km/h ({:.0} mph)", speed.as_kmh(), speed.as_mph())
}

pub(super) fn size(length: Length) -> String {
    format!(
        "{} mm ({} in)",
        short((length.as_mm() * 10.0).round() / 10.0),
        short((length.as_in() * 100.0).round() / 100.0)
    )
}

pub(super) fn way(length: Length) -> String {
    format!("{} km", short((length.as_km() * 1000.0).round() / 1000.0))
}

/// A number without digits that say nothing.
pub(super) fn short(value: f64) -> String {
    let rounded = (value * 1e4).round() / 1e4;
    format!("{rounded}")
}

pub(super) fn sign(symbol: &str) -> &str {
    match symbol {
        "C" => "°C",
        "F" => "°F",
        other => other,
    }
}
