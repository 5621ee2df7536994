//! Ton-kilometers per hour: whether an earthmover tire can shed the heat of a haul.

use quantity::{Length, Mass, Speed, Temperature, Time};

use crate::source::Key;

/// Site rating and ambient correction as an earthmover tire maker publishes them.
pub const TKPH: Key = Key("tkph-site-rating");
/// Correction for cycles over 5 km.
pub const TKPH_DISTANCE: Key = Key("tkph-distance");
/// Corrections for ambient temperature in four forms.
pub const TKPH_AMBIENT: Key = Key("tkph-ambient");

/// Ambient temperature that ratings are stated at.
pub const RATING_AMBIENT: Temperature = Temperature::from_celsius(38.0);
/// Mean speed up to which rating data hold.
pub const RATING_SPEED: Speed = Speed::from_kmh(50.0);

/// Cycle length in kilometers, out and back, and K1.
const K1_TABLE: [(f64, f64); 20] = [
    (5.0, 1.0),
    (6.0, 1.04),
    (7.0, 1.06),
    (8.0, 1.09),
    (9.0, 1.1),
    (10.0, 1.12),
    (11.0, 1.13),
    (12.0, 1.14),
    (13.0, 1.15),
    (14.0, 1.16),
    (15.0, 1.16),
    (16.0, 1.17),
    (17.0, 1.18),
    (18.0, 1.18),
    (19.0, 1.19),
    (20.0, 1.19),
    (25.0, 1.21),
    (30.0, 1.22),
    (35.0, 1.23),
    (40.0, 1.24),
];

/// Heat load of a tire: mean load times mean speed.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Tkph(f64);

impl Tkph {
    /// Makes it from tonne-kilometers per hour.
    ///
    /// # Panics
    /// If the number is not finite or below zero.
    pub const fn from_tkph(value: f64) -> Self {
        assert!(value.is_finite() && value >= 0.0, "a heat load is zero or more");
        Self(value)
    }

    /// Tonne-kilometers per hour.
    pub const fn as_tkph(self) -> f64 {
        self.0
    }

    /// Short-ton-miles per hour.
    pub fn as_tmph(self) -> f64 {
        self.0 * (1000.0 / Mass::from_lb(2000.0).as_kg()) / Length::from_mi(1.0).as_km()
    }

    fn times(self, factor: f64) -> Self {
        Self(self.0 * factor)
    }
}

/// A haul as the rating sees it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Haulage {
    /// Load on the worst tire, empty.
    pub empty_load: Mass,
    /// Load on the worst tire, laden.
    pub laden_load: Mass,
    /// Length of the cycle, out and back.
    pub cycle_length: Length,
    /// Cycles in the shift.
    pub cycles: f64,
    /// Hours of the shift with normal stops, without shift-change breaks.
    pub hours: Time,
    /// Highest ambient temperature of the shift.
    pub ambient: Temperature,
}

/// Why there is no site rating.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum TkphError {
    /// Loads that are no pair of empty and laden.
    #[error(
        "an empty load of {empty} and a laden load of {laden} on one tire do not fit; empty must be above zero and at most laden"
    )]
    Loads {
        /// Empty load.
        empty: Mass,
        /// Laden load.
        laden: Mass,
    },
    /// A cycle, count or time that is not above zero.
    #[error("cycle length {length}, cycles {cycles} and hours {hours} must all be above zero")]
    Cycle {
        /// Length of the cycle.
        length: Length,
        /// Number of cycles.
        cycles: f64,
        /// Time.
        hours: Time,
    },
    /// A cycle longer than the distance table.
    #[error("a cycle of {length} is longer than the distance table's 40 km; ask the tire maker")]
    TooLong {
        /// Length of the cycle.
        length: Length,
    },
    /// An ambient temperature outside the corrections.
    #[error("an ambient of {ambient} is outside the corrections' -40 to 60 °C")]
    Ambient {
        /// Temperature offered.
        ambient: Temperature,
    },
}

/// Correction for cycles over 5 km, which multiplies the site value.
///
/// # Validity
/// Cycles up to 40 km; linear between the rows; 1 up to 5 km.
///
/// # Errors
/// [`TkphError::TooLong`].
///
/// # Source
/// [`TKPH_DISTANCE`], from memory.
pub fn k1(cycle_length: Length) -> Result<f64, TkphError> {
    let l = cycle_length.as_km();
    if l <= 5.0 {
        return Ok(1.0);
    }
    K1_TABLE
        .windows(2)
        .find(|pair| l <= pair[1].0)
        .map(|pair| {
            let ((l1, k1), (l2, k2)) = (pair[0], pair[1]);
            k1 + (k2 - k1) * (l - l1) / (l2 - l1)
        })
        .ok_or(TkphError::TooLong { length: cycle_length })
}

/// Ambient correction in the forms found, each a factor on the site value.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AmbientFactors {
    /// `1 + 0.0096 (Ta - 38)` above 38 °C; read.
    pub form_a: f64,
    /// Rating less 2 % for each degree above, more 1 % for each below; read.
    pub form_b: f64,
    /// `(Vm + 0.25 (Ta - 38)) / Vm`; from memory.
    pub form_c: f64,
    /// `1 / (1 + α (38 - Ta))` with the larger α of small tires, 0.011; from memory.
    pub form_d: f64,
}

impl AmbientFactors {
    /// The largest, which is the default: the forms differ by 10 %.
    pub fn largest(&self) -> f64 {
        self.form_a.max(self.form_b).max(self.form_c).max(self.form_d)
    }
}

/// The four ambient corrections at a mean speed.
///
/// # Validity
/// -40 to 60 °C.
///
/// # Errors
/// [`TkphError::Ambient`] outside that.
///
/// # Source
/// [`TKPH_AMBIENT`].
pub fn ambient_factors(
    ambient: Temperature,
    mean_speed: Speed,
) -> Result<AmbientFactors, TkphError> {
    let ta = ambient.as_celsius();
    if !(-40.0..=60.0).contains(&ta) {
        return Err(TkphError::Ambient { ambient });
    }
    let above = ta - RATING_AMBIENT.as_celsius();
    let vm = mean_speed.as_kmh();
    let per_degree = if above > 0.0 { 0.02 } else { 0.01 };
    Ok(AmbientFactors {
        form_a: 1.0 + 0.0096 * above.max(0.0),
        form_b: 1.0 / (1.0 - per_degree * above),
        form_c: if vm > 0.0 { (vm + 0.25 * above) / vm } else { 1.0 },
        form_d: 1.0 / (1.0 - 0.011 * above),
    })
}

/// A haul's heat load with its corrections.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SiteTkph {
    /// Mean load times mean speed.
    pub site: Tkph,
    /// Mean of empty and laden load.
    pub mean_load: Mass,
    /// Mean speed over the shift.
    pub mean_speed: Speed,
    /// Distance correction.
    pub k1: f64,
    /// Ambient corrections in every form.
    pub ambient: AmbientFactors,
    /// Site value with the distance correction and the largest ambient one: to compare with the tire's rating.
    pub corrected: Tkph,
    /// Whether the mean speed is over [`RATING_SPEED`].
    pub extrapolated: bool,
}

/// The heat load of a haul: `Qm Vm`, corrected for distance and ambient.
///
/// # Validity
/// Worst tire position; ratings hold to 50 km/h mean speed, marked above.
///
/// # Errors
/// [`TkphError`].
///
/// # Source
/// [`TKPH`], read; [`TKPH_DISTANCE`], [`TKPH_AMBIENT`] for the corrections.
///
/// ```
/// use model::tire::tkph::{Haulage, site_tkph};
/// use quantity::{Length, Mass, Temperature, Time};
/// let found = site_tkph(Haulage {
///     empty_load: Mass::from_kg(14480.0),
///     laden_load: Mass::from_kg(25320.0),
///     cycle_length: Length::from_km(6.45),
///     cycles: 52.0,
///     hours: Time::from_h(24.0),
///     ambient: Temperature::from_celsius(38.0),
/// })?;
/// assert!((found.site.as_tkph() - 278.0).abs() < 0.5);
/// # Ok::<(), model::tire::tkph::TkphError>(())
/// ```
pub fn site_tkph(haulage: Haulage) -> Result<SiteTkph, TkphError> {
    let Haulage { empty_load, laden_load, cycle_length, cycles, hours, ambient } = haulage;
    if empty_load <= Mass::ZERO || laden_load < empty_load {
        return Err(TkphError::Loads { empty: empty_load, laden: laden_load });
    }
    let moves =
        cycle_length > Length::ZERO && hours > Time::ZERO && cycles > 0.0 && cycles.is_finite();
    if !moves {
        return Err(TkphError::Cycle { length: cycle_length, cycles, hours });
    }
    let mean_load = (empty_load + laden_load) / 2.0;
    let mean_speed = Speed::from_kmh(cycle_length.as_km() * cycles / hours.as_h());
    let site = Tkph::from_tkph(mean_load.as_t() * mean_speed.as_kmh());
    let k1 = k1(cycle_length)?;
    let ambient = ambient_factors(ambient, mean_speed)?;
    Ok(SiteTkph {
        site,
        mean_load,
        mean_speed,
        k1,
        ambient,
        corrected: site.times(k1 * ambient.largest()),
        extrapolated: mean_speed > RATING_SPEED,
    })
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    // An earthmover tire maker's published example: 27.00R49, front tire.
    fn example(celsius: f64) -> Haulage {
        Haulage {
            empty_load: Mass::from_kg(14_480.0),
            laden_load: Mass::from_kg(25_320.0),
            cycle_length: Length::from_km(6.45),
            cycles: 52.0,
            hours: Time::from_h(24.0),
            ambient: Temperature::from_celsius(celsius),
        }
    }

    #[test]
    fn table_27_00r49_example() {
        let found = site_tkph(example(38.0)).unwrap();
        assert!((found.site.as_tkph() - 278.0).abs() < 0.5);
        assert!((found.mean_load.as_t() - 19.9).abs() < 1e-9);
        assert!((found.mean_speed.as_kmh() - 13.975).abs() < 1e-9);
        assert!((found.ambient.largest() - 1.0).abs() < 1e-12);
        assert!(!found.extrapolated);
    }

    // At 45 °C and 13.975 km/h, worked by hand: A 1.067, B 1.163, C 1.125, D 1.07 to 1.08.
    #[test]
    fn worked_ambient_forms() {
        let found = site_tkph(example(45.0)).unwrap().ambient;
        assert!((found.form_a - 1.067).abs() < 5e-4);
        assert!((found.form_b - 1.163).abs() < 5e-4);
        assert!((found.form_c - 1.125).abs() < 5e-4);
        assert!((1.06..1.09).contains(&found.form_d));
        assert!((found.largest() - found.form_b).abs() < 1e-12);
    }

    #[test]
    fn cold_weather_earns_nothing_by_default() {
        assert!((site_tkph(example(10.0)).unwrap().ambient.largest() - 1.0).abs() < 1e-12);
    }

    // K1 follows 1.25 (1 - 1/L) within 2 % (tire-maker practice, recalled).
    #[test]
    fn regress_distance_table_follows_its_fit() {
        for (l, k) in K1_TABLE {
            assert!((k / (1.25 * (1.0 - 1.0 / l)) - 1.0).abs() < 0.02, "{l}");
        }
        assert!((k1(Length::from_km(6.45)).unwrap() - 1.049).abs() < 1e-9);
        assert!(k1(Length::from_km(41.0)).is_err());
    }

    // TMPH in short tons is 0.685 of TKPH.
    #[test]
    fn table_short_ton_miles() {
        assert!((Tkph::from_tkph(1000.0).as_tmph() - 685.0).abs() < 0.1);
    }

    #[test]
    fn bad_hauls_are_refused() {
        let good = example(38.0);
        assert!(site_tkph(Haulage { cycles: 0.0, ..good }).is_err());
        assert!(site_tkph(Haulage { hours: Time::ZERO, ..good }).is_err());
        assert!(site_tkph(Haulage { laden_load: Mass::from_kg(1.0), ..good }).is_err());
        assert!(site_tkph(example(70.0)).is_err());
        assert!(site_tkph(Haulage { cycles: 200.0, ..good }).unwrap().extrapolated);
    }

    proptest! {
        #[test]
        fn hotter_and_longer_never_load_less(
            celsius in -40.0..59.0f64, km in 0.5..39.0f64, more in 0.01..1.0f64,
        ) {
            let at = |celsius, km| {
                let haul = Haulage { cycle_length: Length::from_km(km), ..example(celsius) };
                site_tkph(haul).unwrap().corrected
            };
            prop_assert!(at(celsius + more, km) >= at(celsius, km));
            prop_assert!(at(celsius, km + more) >= at(celsius, km));
        }
    }
}
