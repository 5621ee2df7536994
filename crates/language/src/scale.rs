//! From the unit of output keys to the unit shown: for a page that shows numbers itself.

use quantity::{
    Area, Energy, Force, GaugePressure, Length, Mass, MassFlow, Power, RotationalSpeed,
    SonicConductance, Speed, Temperature, TemperatureDifference, Time, Unit, Volume, VolumeFlow,
};

use crate::{Kind, UnitProfile};

impl Kind {
    /// Its name in documents.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Pressure => "pressure",
            Self::Speed => "speed",
            Self::Load => "load",
            Self::Distance => "distance",
            Self::Span => "span",
            Self::Size => "size",
            Self::Temperature => "temperature",
            Self::TemperatureStep => "temperature-step",
            Self::Liquid => "liquid",
            Self::AirVolume => "air-volume",
            Self::AirFlow => "air-flow",
            Self::MassFlow => "mass-flow",
            Self::Conductance => "conductance",
            Self::Power => "power",
            Self::Energy => "energy",
            Self::Force => "force",
            Self::Area => "area",
            Self::Rotation => "rotation",
            Self::Seconds => "seconds",
            Self::Minutes => "minutes",
            Self::Hours => "hours",
        }
    }

    /// Factor and offset from the unit of output keys, which is the one of the `si` profile:
    /// shown = given × factor + offset.
    ///
    /// ```
    /// use language::{Kind, UnitProfile};
    /// let (factor, offset) = Kind::Temperature.scale(UnitProfile::Us);
    /// assert!((factor - 1.8).abs() < 1e-9 && (offset - 32.0).abs() < 1e-9);
    /// ```
    pub fn scale(self, profile: UnitProfile) -> (f64, f64) {
        let (from, to) = (self.shown(UnitProfile::Si).symbol, self.shown(profile).symbol);
        match self {
            Self::Pressure => scale::<GaugePressure>(from, to),
            Self::Speed => scale::<Speed>(from, to),
            Self::Load => scale::<Mass>(from, to),
            Self::Distance | Self::Span | Self::Size => scale::<Length>(from, to),
            Self::Temperature => scale::<Temperature>(from, to),
            Self::TemperatureStep => scale::<TemperatureDifference>(from, to),
            Self::Liquid | Self::AirVolume => scale::<Volume>(from, to),
            Self::AirFlow => scale::<VolumeFlow>(from, to),
            Self::MassFlow => scale::<MassFlow>(from, to),
            Self::Conductance => scale::<SonicConductance>(from, to),
            Self::Power => scale::<Power>(from, to),
            Self::Energy => scale::<Energy>(from, to),
            Self::Force => scale::<Force>(from, to),
            Self::Area => scale::<Area>(from, to),
            Self::Rotation => scale::<RotationalSpeed>(from, to),
            Self::Seconds | Self::Minutes | Self::Hours => scale::<Time>(from, to),
        }
    }
}

fn scale<Q: Unit>(from: &str, to: &str) -> (f64, f64) {
    // Two points far apart, so that little is lost where an offset is large.
    let at = |value: f64| Q::from_unit(value, from)?.ok()?.in_unit(to);
    let both = at(0.0).zip(at(1000.0));
    let (zero, far) = both.expect("each kind is shown in units of its quantity; a test tries all");
    ((far - zero) / 1000.0, zero)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_kind_has_a_scale_in_every_profile() {
        for kind in Kind::ALL {
            for profile in UnitProfile::ALL {
                let (factor, offset) = kind.scale(profile);
                assert!(factor > 0.0 && offset.is_finite(), "{kind:?} {profile}");
            }
        }
    }

    // NIST Special Publication 811, appendix B: exact factors.
    #[test]
    fn table_scales_are_those_of_sp_811() {
        let near = |kind: Kind, profile, factor: f64| {
            assert!((kind.scale(profile).0 / factor - 1.0).abs() < 1e-9, "{kind:?}");
        };
        near(Kind::Pressure, UnitProfile::Us, 1.0 / 6.894_757_293_168_36);
        near(Kind::Pressure, UnitProfile::MetricBar, 0.01);
        near(Kind::Speed, UnitProfile::Us, 1.0 / 1.609_344);
        near(Kind::Load, UnitProfile::Us, 1.0 / 0.453_592_37);
        near(Kind::Span, UnitProfile::Us, 1.0 / 0.3048);
    }
}
