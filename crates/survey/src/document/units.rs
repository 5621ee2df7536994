//! Units in keys: which spellings of a key are the same quantity, and the change to the canonical one.

use quantity::{
    Area, GaugePressure, Length, Mass, Power, SonicConductance, Speed, Temperature, Time, Unit,
    Volume, VolumeFlow,
};

/// The spellings of one kind of key: `_kpa` is canonical, `_psi` and `_bar` may stand for it.
#[derive(Debug)]
pub(crate) struct Family {
    /// Suffix of the canonical key; without an underscore before it, the whole key.
    pub suffix: &'static str,
    /// Unit symbol of the canonical key.
    pub symbol: &'static str,
    /// Other suffixes with their unit symbols.
    pub others: &'static [(&'static str, &'static str)],
    convert: fn(f64, &str, &str) -> Option<f64>,
}

fn through<Q: Unit>(value: f64, from: &str, to: &str) -> Option<f64> {
    Q::from_unit(value, from)?.ok()?.in_unit(to)
}

const fn family(
    suffix: &'static str,
    symbol: &'static str,
    others: &'static [(&'static str, &'static str)],
    convert: fn(f64, &str, &str) -> Option<f64>,
) -> Family {
    Family { suffix, symbol, others, convert }
}

/// Longer suffixes stand before the shorter ones they end with.
static FAMILIES: [Family; 23] = [
    // A width of temperature, not a temperature.
    family("ambient_c", "C", &[("ambient_f", "F")], width),
    // Money for a kilometer and a kilopascal.
    family("hard_kpa_km", "", &[], never),
    // Layers are measured in small units too.
    family(
        "thickness_m",
        "m",
        &[("thickness_mm", "mm"), ("thickness_in", "in"), ("thickness_ft", "ft")],
        length,
    ),
    // Prices of a liter and of a kilometer.
    family("_per_l", "/l", &[("_per_gal", "/gal")], price),
    family("_per_km", "/km", &[("_per_mi", "/mi")], price),
    family("_dm3_s_bar", "dm3/s/bar", &[("_m3_s_pa", "m3/s/Pa")], through::<SonicConductance>),
    family("_l_min", "l/min", &[("_l_s", "l/s"), ("_cfm", "cfm")], through::<VolumeFlow>),
    // Fuel an hour: the hour stays, the volume changes.
    family("_l_h", "l", &[("_gal_h", "gal")], through::<Volume>),
    family("_kpa", "kPa", &[("_psi", "psi"), ("_bar", "bar")], through::<GaugePressure>),
    family("_kg", "kg", &[("_lb", "lb"), ("_t", "t")], through::<Mass>),
    family("_kmh", "km/h", &[("_mph", "mph")], through::<Speed>),
    family("_mm", "mm", &[("_in", "in"), ("_cm", "cm")], length),
    family("_km", "km", &[("_mi", "mi"), ("_m", "m")], length),
    family("_kw", "kW", &[("_hp", "hp")], through::<Power>),
    family("_cm3", "cm3", &[("_in3", "in3")], through::<Volume>),
    family("_m2", "m2", &[("_ft2", "ft2")], area),
    family("_min", "min", &[("_s", "s"), ("_h", "h")], through::<Time>),
    family("_rpm", "rpm", &[], never),
    family("_pct", "%", &[], never),
    family("_m", "m", &[("_ft", "ft")], length),
    family("_l", "l", &[("_gal", "gal"), ("_in3", "in3"), ("_ft3", "ft3")], through::<Volume>),
    family("_c", "C", &[("_f", "F")], through::<Temperature>),
    family("_s", "s", &[("_min", "min")], through::<Time>),
];

fn never(_: f64, _: &str, _: &str) -> Option<f64> {
    None
}

/// A price of one unit in another: what is larger costs more.
fn price(value: f64, from: &str, to: &str) -> Option<f64> {
    let (from, to) = (from.strip_prefix('/')?, to.strip_prefix('/')?);
    let one = through::<Volume>(1.0, to, from).or_else(|| through::<Length>(1.0, to, from))?;
    Some(value * one)
}

/// Difference of two temperatures.
fn width(value: f64, from: &str, to: &str) -> Option<f64> {
    const FAHRENHEIT: f64 = 1.8;
    match (from, to) {
        ("F", "C") => Some(value / FAHRENHEIT),
        ("C", "F") => Some(value * FAHRENHEIT),
        _ => None,
    }
}

/// Length with the centimeter, which rulers and data sheets use and calculations do not.
fn length(value: f64, from: &str, to: &str) -> Option<f64> {
    match (from, to) {
        ("cm", _) => through::<Length>(value * 10.0, "mm", to),
        (_, "cm") => through::<Length>(value, from, "mm").map(|mm| mm / 10.0),
        _ => through::<Length>(value, from, to),
    }
}

/// Area with the square foot, in which drag areas are printed in the US.
fn area(value: f64, from: &str, to: &str) -> Option<f64> {
    const SQUARE_INCHES: f64 = 144.0;
    match (from, to) {
        ("ft2", _) => through::<Area>(value * SQUARE_INCHES, "in2", to),
        (_, "ft2") => through::<Area>(value, from, "in2").map(|in2| in2 / SQUARE_INCHES),
        _ => through::<Area>(value, from, to),
    }
}

impl Family {
    /// The family of a canonical key, with the key's stem.
    pub fn of(key: &str) -> Option<(&'static Self, &str)> {
        FAMILIES.iter().find_map(|family| {
            let stem = key.strip_suffix(family.suffix)?;
            (stem.is_empty() || family.suffix.starts_with('_')).then_some((family, stem))
        })
    }

    /// A number in the unit `symbol` as a number in the canonical unit.
    pub fn to_canonical(&self, value: f64, symbol: &str) -> Option<f64> {
        (self.convert)(value, symbol, self.symbol)
    }

    /// A number in the canonical unit as it is written in the unit `symbol`.
    pub fn written_in(&self, value: f64, symbol: &str) -> Option<f64> {
        if symbol == self.symbol {
            return Some(value);
        }
        (self.convert)(value, self.symbol, symbol)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_spelling_goes_there_and_back() {
        for family in &FAMILIES {
            for (_, symbol) in family.others {
                let there = family.written_in(123.0, symbol).unwrap();
                let back = family.to_canonical(there, symbol).unwrap();
                assert!((back - 123.0).abs() < 1e-9, "{} {symbol}: {back}", family.suffix);
            }
        }
    }

    #[test]
    fn the_longest_suffix_wins() {
        assert_eq!(Family::of("leakage_l_min").unwrap().0.suffix, "_l_min");
        assert_eq!(Family::of("check_interval_min").unwrap().0.suffix, "_min");
        assert_eq!(Family::of("c_dm3_s_bar").unwrap().1, "c");
        assert!(Family::of("axles").is_none());
        assert_eq!(Family::of("ambient_c").unwrap().0.others[0].0, "ambient_f");
        assert_eq!(Family::of("coldest_ambient_c").unwrap().1, "coldest_ambient");
        assert!(Family::of("hard_kpa_km").unwrap().0.others.is_empty());
    }
}
