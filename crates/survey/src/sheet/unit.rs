//! The units that tables use, found by name in headings and cells.

use quantity::{ColdPressure, Force, Length, Mass, NotFinite, Speed};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A choice of units with their symbols and the other words tables use for them.
macro_rules! units {
    (
        $(#[$doc:meta])*
        $name:ident {
            $( $(#[$unit_doc:meta])* $unit:ident = $symbol:literal, [$($word:literal),*]; )+
        }
    ) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
        pub enum $name {
            $( $(#[$unit_doc])* #[serde(rename = $symbol)] $unit, )+
        }

        impl $name {
            /// The first unit named in a text.
            pub(super) fn named_in(text: &str) -> Option<Self> {
                words(text).find_map(|word| Self::named(&word))
            }

            fn named(word: &str) -> Option<Self> {
                $( if word.eq_ignore_ascii_case($symbol) || [$($word),*].contains(&word) {
                    return Some(Self::$unit);
                } )+
                None
            }
        }

        impl std::fmt::Display for $name {
            fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                f.write_str(match self { $( Self::$unit => $symbol, )+ })
            }
        }
    };
}

units! {
    /// Unit of loads in a table.
    LoadUnit {
        /// Kilogram.
        Kilogram = "kg", ["kgs", "kilogram", "kilograms", "kgf"];
        /// Pound.
        Pound = "lb", ["lbs", "lb.", "lbs.", "pound", "pounds", "lbf"];
        /// Tonne.
        Tonne = "t", ["tonne", "tonnes"];
        /// Kilonewton, taken as the mass that weighs it.
        Kilonewton = "kN", [];
    }
}

units! {
    /// Unit of cold pressures in a table.
    PressureUnit {
        /// Kilopascal.
        Kilopascal = "kPa", ["kilopascal"];
        /// Pound-force per square inch.
        Psi = "psi", ["p.s.i.", "psig", "lb/in2", "lb/in²", "lbf/in2", "lbf/in²"];
        /// Bar.
        Bar = "bar", ["bars"];
    }
}

units! {
    /// Unit of speeds in a table.
    SpeedUnit {
        /// Kilometers per hour.
        KilometersPerHour = "km/h", ["kmh", "kph", "kmph", "km/hr"];
        /// Miles per hour.
        MilesPerHour = "mph", ["mi/h", "m.p.h."];
    }
}

units! {
    /// Unit of hold distances in a table.
    DistanceUnit {
        /// Kilometer.
        Kilometer = "km", ["kilometers", "kilometres"];
        /// Mile.
        Mile = "mi", ["mile", "miles"];
    }
}

/// Words in lower case: letters, digits, points inside, and slashes as in `km/h`.
pub(super) fn words(text: &str) -> impl Iterator<Item = String> + '_ {
    let split = text.split(|c: char| !(c.is_alphanumeric() || matches!(c, '/' | '.' | '²')));
    split.filter(|word| word.chars().any(char::is_alphanumeric)).map(str::to_lowercase)
}

impl LoadUnit {
    pub(super) fn load(self, value: f64) -> Result<Mass, NotFinite> {
        match self {
            Self::Kilogram => Mass::try_from_kg(value),
            Self::Pound => Mass::try_from_lb(value),
            Self::Tonne => Mass::try_from_t(value),
            Self::Kilonewton => Force::try_from_kn(value).map(Force::as_mass),
        }
    }
}

impl PressureUnit {
    pub(super) const ALL: [Self; 3] = [Self::Kilopascal, Self::Psi, Self::Bar];

    pub(super) fn pressure(self, value: f64) -> Result<ColdPressure, NotFinite> {
        match self {
            Self::Kilopascal => ColdPressure::try_from_kpa(value),
            Self::Psi => ColdPressure::try_from_psi(value),
            Self::Bar => ColdPressure::try_from_bar(value),
        }
    }

    pub(super) fn number(self, pressure: ColdPressure) -> f64 {
        match self {
            Self::Kilopascal => pressure.as_kpa(),
            Self::Psi => pressure.as_psi(),
            Self::Bar => pressure.as_bar(),
        }
    }
}

impl SpeedUnit {
    pub(super) fn speed(self, value: f64) -> Result<Speed, NotFinite> {
        match self {
            Self::KilometersPerHour => Speed::try_from_kmh(value),
            Self::MilesPerHour => Speed::try_from_mph(value),
        }
    }
}

impl DistanceUnit {
    pub(super) fn distance(self, value: f64) -> Result<Length, NotFinite> {
        match self {
            Self::Kilometer => Length::try_from_km(value),
            Self::Mile => Length::try_from_mi(value),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn units_are_found_in_headings() {
        assert_eq!(LoadUnit::named_in("Load per tire (LBS)"), Some(LoadUnit::Pound));
        assert_eq!(LoadUnit::named_in("Load rating"), None);
        assert_eq!(PressureUnit::named_in("Cold inflation, kPa"), Some(PressureUnit::Kilopascal));
        assert_eq!(SpeedUnit::named_in("max. km/h"), Some(SpeedUnit::KilometersPerHour));
        assert_eq!(DistanceUnit::named_in("Hold (miles)"), Some(DistanceUnit::Mile));
    }

    #[test]
    fn a_kilonewton_is_the_mass_that_weighs_it() {
        let load = LoadUnit::Kilonewton.load(9.80665).unwrap();
        assert!((load.as_kg() - 1000.0).abs() < 1e-9);
    }
}
