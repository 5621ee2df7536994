//! Quantities as a reader sees them.

use quantity::{
    AbsolutePressure, Area, ColdPressure, Energy, Force, GaugePressure, Length, Mass, MassFlow,
    Power, PressureDifference, RotationalSpeed, SonicConductance, Speed, Temperature,
    TemperatureDifference, Time, Unit, Volume, VolumeFlow,
};

use crate::{Kind, LanguageError, NumberForm, Round, Shown, UnitProfile};

/// Digits and the unit they are in; as text, `85 psi`.
#[derive(Debug, Clone, PartialEq)]
pub struct Amount {
    /// The digits in the reader's language.
    pub number: String,
    /// The unit as printed.
    pub unit: &'static str,
    /// The number the digits stand for, rounded as they are: for sheets that calculate on.
    pub value: f64,
    /// Digits after the decimal mark.
    pub decimals: u8,
}

impl std::fmt::Display for Amount {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.pad(&format!("{} {}", self.number, self.unit))
    }
}

/// The pressures that are shown in the unit of pressure.
pub trait Pressure: Unit {}
impl Pressure for GaugePressure {}
impl Pressure for ColdPressure {}
impl Pressure for AbsolutePressure {}
impl Pressure for PressureDifference {}

/// Writes quantities in one unit profile and one language.
#[derive(Debug)]
pub struct Format {
    profile: UnitProfile,
    language: String,
    numbers: NumberForm,
}

macro_rules! shows {
    ($( $(#[$doc:meta])* $method:ident($quantity:ty) as $kind:ident; )+) => { $(
        $(#[$doc])*
        pub fn $method(&self, value: $quantity, round: Round) -> Amount {
            self.amount(Kind::$kind, value, round)
        }
    )+ };
}

impl Format {
    /// A format for a profile and a language tag.
    ///
    /// # Errors
    /// [`LanguageError::NotATag`] for what is no language tag.
    pub fn new(profile: UnitProfile, language: &str) -> Result<Self, LanguageError> {
        Ok(Self { profile, language: language.to_owned(), numbers: NumberForm::new(language)? })
    }

    /// The same number form in another profile, such as that of a controller.
    #[must_use]
    pub fn in_profile(&self, profile: UnitProfile) -> Self {
        Self { profile, language: self.language.clone(), numbers: self.numbers.clone() }
    }

    /// The same profile with digits for programs: a decimal point in any language.
    ///
    /// # Errors
    /// As [`Format::new`].
    pub fn for_files(&self) -> Result<Self, LanguageError> {
        Self::new(self.profile, crate::FIRST)
    }

    /// The profile in use.
    pub fn profile(&self) -> UnitProfile {
        self.profile
    }

    /// The language tag of the number form, such as `es-CL`.
    pub fn language(&self) -> &str {
        &self.language
    }

    /// The unit a kind is shown in, for column headings.
    pub fn unit(&self, kind: Kind) -> &'static str {
        kind.shown(self.profile).label
    }

    /// A pressure of any kind.
    pub fn pressure(&self, value: impl Pressure, round: Round) -> Amount {
        self.amount(Kind::Pressure, value, round)
    }

    shows! {
        /// Speed along the road.
        speed(Speed) as Speed;
        /// Load on a tire, a group or a combination.
        load(Mass) as Load;
        /// Place on a route, or a long distance.
        distance(Length) as Distance;
        /// A short distance along the road.
        span(Length) as Span;
        /// A size of a tire or a depth.
        size(Length) as Size;
        /// A temperature.
        temperature(Temperature) as Temperature;
        /// A difference of temperatures.
        temperature_step(TemperatureDifference) as TemperatureStep;
        /// A volume of liquid.
        liquid(Volume) as Liquid;
        /// Volume of a tire or a reservoir.
        air_volume(Volume) as AirVolume;
        /// Flow of free air.
        air_flow(VolumeFlow) as AirFlow;
        /// Mass of air per time.
        mass_flow(MassFlow) as MassFlow;
        /// Sonic conductance.
        conductance(SonicConductance) as Conductance;
        /// Power.
        power(Power) as Power;
        /// Energy.
        energy(Energy) as Energy;
        /// Force.
        force(Force) as Force;
        /// Area.
        area(Area) as Area;
        /// Speed of a shaft.
        rotation(RotationalSpeed) as Rotation;
        /// A few seconds.
        seconds(Time) as Seconds;
        /// Time of a change or a leg.
        minutes(Time) as Minutes;
        /// Time of a shift.
        hours(Time) as Hours;
    }

    /// A quantity with one decimal more than paper has: for answers, and what is less than a step.
    ///
    /// # Panics
    /// For a kind that is not shown in a unit of the quantity.
    pub fn fine<Q: Unit>(&self, kind: Kind, value: Q, round: Round) -> Amount {
        let shown = kind.shown(self.profile);
        self.in_decimals(shown, shown.decimals + 1, value, round)
    }

    /// A number without thousands marks: for anything a driver reads.
    pub fn plain(&self, value: f64, decimals: u8, round: Round) -> String {
        self.numbers.plain(value, decimals, round)
    }

    /// A number with thousands marks: for money and counts in reports.
    pub fn number(&self, value: f64, decimals: u8, round: Round) -> String {
        self.numbers.grouped(value, decimals, round)
    }

    /// A ratio as percent.
    pub fn percent(&self, ratio: f64, decimals: u8, round: Round) -> Amount {
        self.in_unit(ratio * 100.0, decimals, round, "%")
    }

    fn amount<Q: Unit>(&self, kind: Kind, value: Q, round: Round) -> Amount {
        let shown = kind.shown(self.profile);
        self.in_decimals(shown, shown.decimals, value, round)
    }

    fn in_decimals<Q: Unit>(&self, shown: Shown, decimals: u8, value: Q, round: Round) -> Amount {
        let number = value
            .in_unit(shown.symbol)
            .expect("each kind is shown in a unit of its quantity; a test tries them all");
        self.in_unit(number, decimals, round, shown.label)
    }

    /// A number that is in its unit already, without thousands marks.
    pub fn in_unit(&self, value: f64, decimals: u8, round: Round, unit: &'static str) -> Amount {
        Amount {
            number: self.numbers.plain(value, decimals, round),
            unit,
            value: round.at(value, decimals),
            decimals,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn us() -> Format {
        Format::new(UnitProfile::Us, "en").unwrap()
    }

    #[test]
    fn every_kind_has_a_unit_in_every_profile() {
        for profile in UnitProfile::ALL {
            let f = Format::new(profile, "en").unwrap();
            let up = Round::Up;
            let shown = [
                f.pressure(GaugePressure::from_kpa(1.0), up),
                f.speed(Speed::from_kmh(1.0), up),
                f.load(Mass::from_kg(1.0), up),
                f.distance(Length::from_m(1.0), up),
                f.span(Length::from_m(1.0), up),
                f.size(Length::from_m(1.0), up),
                f.temperature(Temperature::from_celsius(1.0), up),
                f.temperature_step(TemperatureDifference::from_kelvin(1.0), up),
                f.liquid(Volume::from_l(1.0), up),
                f.air_volume(Volume::from_l(1.0), up),
                f.air_flow(VolumeFlow::from_l_per_min(1.0), up),
                f.mass_flow(MassFlow::from_g_per_s(1.0), up),
                f.conductance(SonicConductance::from_dm3_per_s_bar(1.0), up),
                f.power(Power::from_kw(1.0), up),
                f.energy(Energy::from_kj(1.0), up),
                f.force(Force::from_n(1.0), up),
                f.area(Area::from_cm2(1.0), up),
                f.rotation(RotationalSpeed::from_rpm(1.0), up),
                f.seconds(Time::from_s(1.0), up),
                f.minutes(Time::from_s(1.0), up),
                f.hours(Time::from_s(1.0), up),
            ];
            assert_eq!(shown.len(), Kind::ALL.len());
            for (amount, kind) in shown.iter().zip(Kind::ALL) {
                assert_eq!(amount.unit, f.unit(kind));
            }
        }
    }

    #[test]
    fn a_whole_psi_stays_whole_after_conversion() {
        for psi in 1..=200u32 {
            let snapped = ColdPressure::from_kpa(ColdPressure::from_psi(psi.into()).as_kpa());
            for round in [Round::Up, Round::Down, Round::Nearest] {
                assert_eq!(us().pressure(snapped, round).number, psi.to_string());
            }
        }
    }

    #[test]
    fn amounts_pad_like_text() {
        let p = us().pressure(GaugePressure::from_psi(85.0), Round::Nearest);
        assert_eq!(format!("{p:>8}|"), "  85 psi|");
    }

    #[test]
    fn the_decimal_mark_is_the_readers() {
        let fr = Format::new(UnitProfile::MetricBar, "fr-CA").unwrap();
        assert_eq!(fr.pressure(ColdPressure::from_kpa(586.0), Round::Up).to_string(), "5,86 bar");
    }

    /// Digits as any language writes them, read back; a thousands mark would not parse.
    fn back<Q: Unit + std::str::FromStr>(shown: &Amount) -> Q
    where
        Q::Err: std::fmt::Debug,
    {
        shown.to_string().replace(',', ".").parse().unwrap()
    }

    fn every_form() -> impl Iterator<Item = Format> {
        crate::OFFERED
            .into_iter()
            .flat_map(|tag| UnitProfile::ALL.map(|profile| Format::new(profile, tag).unwrap()))
    }

    #[test]
    fn files_have_a_decimal_point_in_any_language() {
        let fr = Format::new(UnitProfile::MetricBar, "fr-CA").unwrap().for_files().unwrap();
        assert_eq!(fr.pressure(ColdPressure::from_kpa(586.0), Round::Up).number, "5.86");
    }

    proptest! {
        #[test]
        fn a_shown_minimum_is_not_below(kpa in 0.0..20_000.0f64) {
            let minimum = ColdPressure::from_kpa(kpa);
            for format in every_form() {
                let shown = format.pressure(minimum, Round::Up);
                let back: ColdPressure = back(&shown);
                prop_assert!(back.as_kpa() >= kpa * (1.0 - 1e-9) - 1e-9, "{shown} for {kpa} kPa");
            }
        }

        #[test]
        fn a_shown_maximum_is_not_above(kpa in 0.0..20_000.0f64) {
            let maximum = GaugePressure::from_kpa(kpa);
            for format in every_form() {
                let shown = format.pressure(maximum, Round::Down);
                let back: GaugePressure = back(&shown);
                prop_assert!(back.as_kpa() <= kpa * (1.0 + 1e-9) + 1e-9, "{shown} for {kpa} kPa");
                let fine = format.fine(Kind::Pressure, maximum, Round::Down);
                let back: GaugePressure = super::tests::back(&fine);
                prop_assert!(back.as_kpa() <= kpa * (1.0 + 1e-9) + 1e-9, "{fine} for {kpa} kPa");
            }
        }

        #[test]
        fn a_shown_cap_is_not_above(kmh in 0.0..120.0f64) {
            for format in every_form() {
                let shown = format.speed(Speed::from_kmh(kmh), Round::Down);
                let back: Speed = back(&shown);
                prop_assert!(back.as_kmh() <= kmh * (1.0 + 1e-9) + 1e-9, "{shown} for {kmh} km/h");
            }
        }

        #[test]
        fn a_shown_load_is_not_below(kg in 0.0..200_000.0f64) {
            for format in every_form() {
                let shown = format.load(Mass::from_kg(kg), Round::Up);
                let back: Mass = back(&shown);
                prop_assert!(back.as_kg() >= kg * (1.0 - 1e-9) - 1e-9, "{shown} for {kg} kg");
            }
        }

        #[test]
        fn road_left_is_not_above(m in 0.0..500_000.0f64) {
            for format in every_form() {
                let shown = format.distance(Length::from_m(m), Round::Down);
                let back: Length = back(&shown);
                prop_assert!(back.as_m() <= m * (1.0 + 1e-9) + 1e-9, "{shown} for {m} m");
            }
        }
    }
}
