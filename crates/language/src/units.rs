//! Unit profiles: in which unit and with how many decimals each kind of number is shown.

/// Units a reader wants, apart from the language read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum UnitProfile {
    /// kPa, km/h, t, °C.
    #[default]
    Si,
    /// psi, mph, lb, °F.
    Us,
    /// As SI, with pressure in bar.
    MetricBar,
}

/// A name that is no unit profile.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("'{0}' is not a unit profile; use si, us or metric-bar")]
pub struct UnknownProfile(pub String);

impl UnitProfile {
    /// Every profile.
    pub const ALL: [Self; 3] = [Self::Si, Self::Us, Self::MetricBar];

    /// The name on the command line and in survey files.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Si => "si",
            Self::Us => "us",
            Self::MetricBar => "metric-bar",
        }
    }
}

impl std::str::FromStr for UnitProfile {
    type Err = UnknownProfile;
    fn from_str(text: &str) -> Result<Self, UnknownProfile> {
        Self::ALL
            .into_iter()
            .find(|profile| profile.name() == text)
            .ok_or_else(|| UnknownProfile(text.to_owned()))
    }
}

impl std::fmt::Display for UnitProfile {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(self.name())
    }
}

/// A kind of number as a reader meets it; one quantity may be shown in several ways.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Kind {
    /// Any pressure, or a difference of two.
    Pressure,
    /// Speed along the road.
    Speed,
    /// Load on a tire, an axle group or a combination.
    Load,
    /// Place on a route, or a long distance.
    Distance,
    /// A short distance along the road, such as a lead.
    Span,
    /// A size of a tire or a depth.
    Size,
    /// Temperature.
    Temperature,
    /// Difference of two temperatures.
    TemperatureStep,
    /// Volume of liquid.
    Liquid,
    /// Volume of a tire or a reservoir.
    AirVolume,
    /// Flow of free air.
    AirFlow,
    /// Mass of air per time.
    MassFlow,
    /// Sonic conductance.
    Conductance,
    /// Power of an engine.
    Power,
    /// Energy.
    Energy,
    /// Force.
    Force,
    /// Contact area.
    Area,
    /// Speed of a shaft.
    Rotation,
    /// A few seconds.
    Seconds,
    /// Time of a change or a leg.
    Minutes,
    /// Time of a shift.
    Hours,
}

/// The unit and decimals a kind is shown with.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Shown {
    /// Symbol that the `quantity` crate knows.
    pub symbol: &'static str,
    /// Symbol as printed.
    pub label: &'static str,
    /// Digits after the decimal mark.
    pub decimals: u8,
}

const fn shown(symbol: &'static str, label: &'static str, decimals: u8) -> Shown {
    Shown { symbol, label, decimals }
}

impl Kind {
    /// Every kind.
    pub const ALL: [Self; 21] = [
        Self::Pressure,
        Self::Speed,
        Self::Load,
        Self::Distance,
        Self::Span,
        Self::Size,
        Self::Temperature,
        Self::TemperatureStep,
        Self::Liquid,
        Self::AirVolume,
        Self::AirFlow,
        Self::MassFlow,
        Self::Conductance,
        Self::Power,
        Self::Energy,
        Self::Force,
        Self::Area,
        Self::Rotation,
        Self::Seconds,
        Self::Minutes,
        Self::Hours,
    ];

    /// How this kind is shown in a profile.
    pub const fn shown(self, profile: UnitProfile) -> Shown {
        use UnitProfile::{MetricBar, Us};
        match (self, profile) {
            (Self::Pressure, Us) => shown("psi", "psi", 0),
            (Self::Pressure, MetricBar) => shown("bar", "bar", 2),
            (Self::Pressure, _) => shown("kPa", "kPa", 0),
            (Self::Speed, Us) => shown("mph", "mph", 0),
            (Self::Speed, _) => shown("km/h", "km/h", 0),
            (Self::Load, Us) => shown("lb", "lb", 0),
            (Self::Load, _) => shown("kg", "kg", 0),
            (Self::Distance, Us) => shown("mi", "mi", 2),
            (Self::Distance, _) => shown("km", "km", 2),
            (Self::Span, Us) => shown("ft", "ft", 0),
            (Self::Span, _) => shown("m", "m", 0),
            (Self::Size, Us) => shown("in", "in", 2),
            (Self::Size, _) => shown("mm", "mm", 0),
            (Self::Temperature | Self::TemperatureStep, Us) => shown("F", "°F", 0),
            (Self::Temperature, _) => shown("C", "°C", 0),
            (Self::TemperatureStep, _) => shown("K", "K", 0),
            (Self::Liquid, Us) => shown("gal", "gal", 1),
            (Self::Liquid, _) => shown("l", "l", 1),
            (Self::AirVolume, Us) => shown("ft3", "ft³", 2),
            (Self::AirVolume, _) => shown("l", "l", 0),
            (Self::AirFlow, Us) => shown("cfm", "cfm", 1),
            (Self::AirFlow, _) => shown("l/min", "l/min", 0),
            (Self::MassFlow, _) => shown("g/s", "g/s", 2),
            (Self::Conductance, _) => shown("dm3/s/bar", "dm³/(s·bar)", 2),
            (Self::Power, Us) => shown("hp", "hp", 0),
            (Self::Power, _) => shown("kW", "kW", 0),
            (Self::Energy, _) => shown("kWh", "kWh", 2),
            (Self::Force, Us) => shown("lbf", "lbf", 0),
            (Self::Force, _) => shown("kN", "kN", 1),
            (Self::Area, Us) => shown("in2", "in²", 1),
            (Self::Area, _) => shown("cm2", "cm²", 0),
            (Self::Rotation, _) => shown("rpm", "rpm", 0),
            (Self::Seconds, _) => shown("s", "s", 0),
            (Self::Minutes, _) => shown("min", "min", 1),
            (Self::Hours, _) => shown("h", "h", 1),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_turn_round_and_others_are_refused() {
        for profile in UnitProfile::ALL {
            assert_eq!(profile.name().parse(), Ok(profile));
        }
        let error = "imperial".parse::<UnitProfile>().unwrap_err();
        assert!(error.to_string().contains("si, us or metric-bar"));
    }
}
