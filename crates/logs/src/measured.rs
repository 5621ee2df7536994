//! Where a tire pressure in a log comes from: a sensor in the tire, the line sampled, or nothing measured.

use std::fmt;

use crate::signal::Spn;

/// How a number that stands for a tire came to be.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Measured {
    /// By a sensor in or at the tire.
    TireSensor,
    /// By the controller, which sampled the line that leads to the tires; true only while it samples.
    LineSampled,
    /// Not at all: what was set, wanted or told, and may be assumed of the tire.
    Assumed,
}

impl Measured {
    /// Of a signal; `None` of one that says nothing of the pressure or heat in a tire.
    ///
    /// # Source
    /// The names of the signals, as in [`crate::table`].
    ///
    /// ```
    /// use logs::{measured::Measured, signal::Spn};
    /// assert_eq!(Measured::of(Spn(241)), Some(Measured::TireSensor));
    /// assert_eq!(Measured::of(Spn(84)), None);
    /// ```
    pub const fn of(signal: Spn) -> Option<Self> {
        match signal.0 {
            // Tire condition, and its wide range.
            241 | 242 | 6988 => Some(Self::TireSensor),
            // Channel pressures of the controller.
            144..=146 => Some(Self::LineSampled),
            // Channel targets; reference pressures; the pressure required; cold pressures set.
            141..=143 | 3191 | 3193 | 6974 | 6980 | 6989 => Some(Self::Assumed),
            _ => None,
        }
    }

    /// As files name it.
    pub const fn name(self) -> &'static str {
        match self {
            Self::TireSensor => "tire sensor",
            Self::LineSampled => "line sampled",
            Self::Assumed => "assumed",
        }
    }
}

impl fmt::Display for Measured {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.name())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::definitions::Definitions;
    use crate::signal::{Signal, Unit};

    #[test]
    fn every_pressure_of_a_tire_or_its_channel_says_where_it_comes_from() {
        let definitions = Definitions::default();
        let of_tires = |name: &str| {
            ["tire_pressure", "tire_temperature", "channel_pressure", "channel_target"]
                .iter()
                .any(|part| name.contains(part))
                || (name.contains("cold_pressure") || name.contains("reference_pressure"))
        };
        let signals = definitions.groups().iter().flat_map(|group| group.signals.iter());
        let mut told = 0;
        let in_air = |signal: &&Signal| matches!(signal.unit, Unit::Kilopascal | Unit::Celsius);
        for signal in signals.filter(in_air) {
            assert_eq!(
                Measured::of(signal.spn).is_some(),
                of_tires(&signal.name),
                "{}",
                signal.name
            );
            told += u32::from(of_tires(&signal.name));
        }
        assert!(told >= 12, "{told}");
    }
}
