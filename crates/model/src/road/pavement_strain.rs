//! The two strains that wear out a pavement, under one side of an axle group.

use quantity::{Force, GaugePressure, Length, Stress};

use super::layered::{Accuracy, Depth, LayeredError, Pavement, Point, Wheel, respond};
use super::strain::Strain;

pub use super::layered::LAYERED;

/// One side of an axle group: tires that all carry the same and hold the same pressure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TireGroup {
    /// Load on each tire.
    pub wheel_load: Force,
    /// Inflation pressure as it is while rolling; taken as the contact pressure.
    pub pressure: GaugePressure,
    /// Distance between the centers of a dual; none for single tires.
    pub dual_spacing: Option<Length>,
    /// Axles in the group.
    pub axles: u8,
    /// Distance between axles; not used for one axle.
    pub axle_spacing: Length,
}

/// Across the pair, where the larger strain was found.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Place {
    /// Under the middle of a tire.
    UnderTire,
    /// Midway between the tires of a dual.
    MidGap,
}

/// The larger strain and where it is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Worst {
    /// The strain.
    pub strain: Strain,
    /// Where.
    pub place: Place,
}

/// The strains that wear out a pavement.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PavementStrain {
    /// Largest horizontal strain at the bottom of the first layer; tension positive.
    pub asphalt: Worst,
    /// Vertical strain at the top of the last layer; compression positive.
    pub subgrade: Worst,
    /// The contact circles of a dual overlap: the model is past its range, the truth lower.
    pub overlapping: bool,
}

/// Why there are no strains.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum PavementStrainError {
    /// Nothing between surface and ground.
    #[error("these strains need two layers or more; one layer has no bottom")]
    OneLayer,
    /// A group of no or too many axles.
    #[error("a group of {axles} axles; give 1 to 8")]
    Axles {
        /// Axles given.
        axles: u8,
    },
    /// Tires in the same place.
    #[error("{what} is {spacing}; it must be above zero")]
    Spacing {
        /// Which spacing.
        what: &'static str,
        /// Spacing given.
        spacing: Length,
    },
    /// The layers give no answer.
    #[error(transparent)]
    Layered(#[from] LayeredError),
}

/// The strains under a single or dual tire: the larger of under the tire and mid-gap.
///
/// # Validity
/// As [`respond`]: elastic layers, full bond, a uniform circle at inflation pressure.
///
/// # Errors
/// [`PavementStrainError`] for one layer and for tires that press nothing.
///
/// # Source
/// [`LAYERED`].
///
/// ```
/// use model::road::layered::{Layer, Pavement};
/// use model::road::pavement_strain::pavement_strain;
/// use quantity::{Force, GaugePressure, Length, Stress};
/// let layer = |mpa, poisson, mm: Option<f64>| Layer {
///     modulus: Stress::from_mpa(mpa),
///     poisson,
///     thickness: mm.map(Length::from_mm),
/// };
/// let pavement = Pavement::new(vec![
///     layer(3000.0, 0.35, Some(75.0)),
///     layer(200.0, 0.35, Some(250.0)),
///     layer(50.0, 0.40, None),
/// ])?;
/// let under = |kpa| {
///     let dual = Some(Length::from_mm(340.0));
///     pavement_strain(Force::from_kn(20.0), GaugePressure::from_kpa(kpa), dual, &pavement)
/// };
/// let (high, low) = (under(690.0)?, under(345.0)?);
/// assert!((high.asphalt.strain.as_microstrain() - 368.0).abs() < 0.5);
/// // 248.7 under the tire, but by now there is more between the two.
/// assert!((low.asphalt.strain.as_microstrain() - 255.5).abs() < 0.5);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn pavement_strain(
    wheel_load: Force,
    pressure: GaugePressure,
    dual_spacing: Option<Length>,
    pavement: &Pavement,
) -> Result<PavementStrain, PavementStrainError> {
    let axle_spacing = Length::ZERO;
    let group = TireGroup { wheel_load, pressure, dual_spacing, axles: 1, axle_spacing };
    group_strain(&group, pavement, Accuracy::Fine)
}

/// The strains under one side of an axle group: the larger of all places, under the outer axle
/// and under the middle one.
///
/// # Validity
/// As [`pavement_strain`]; the other side of the axle is left out (under 2 % at 1.8 m on an
/// ordinary road).
///
/// # Errors
/// As [`pavement_strain`], and for a group of no axles or with axles in one place.
///
/// # Source
/// [`LAYERED`].
pub fn group_strain(
    group: &TireGroup,
    pavement: &Pavement,
    accuracy: Accuracy,
) -> Result<PavementStrain, PavementStrainError> {
    let last = pavement.layers().len() - 1;
    if last == 0 {
        return Err(PavementStrainError::OneLayer);
    }
    let wheels = group.wheels()?;
    let mut points = Vec::new();
    let mut places = Vec::new();
    for depth in [Depth::BottomOf(0), Depth::TopOf(last)] {
        for (x, y, place) in group.places() {
            points.push(Point { x, y, depth });
            places.push(place);
        }
    }
    let found = respond(pavement, &wheels, &points, accuracy)?;
    let half = found.len() / 2;
    let worst = |first: usize, of: &dyn Fn(usize) -> Strain| {
        let at = |i| Worst { strain: of(i), place: places[i] };
        let larger = |worst: Worst, next: Worst| {
            if next.strain > worst.strain { next } else { worst }
        };
        (first + 1..first + half).map(at).fold(at(first), larger)
    };
    Ok(PavementStrain {
        asphalt: worst(0, &|i| found[i].strain.largest_horizontal()),
        subgrade: worst(half, &|i| -found[i].strain.zz),
        overlapping: group.dual_spacing.is_some_and(|d| d < wheels[0].radius() * 2.0),
    })
}

impl TireGroup {
    /// Contact circles, outer axle first.
    fn wheels(&self) -> Result<Vec<Wheel>, PavementStrainError> {
        if !(1..=8).contains(&self.axles) {
            return Err(PavementStrainError::Axles { axles: self.axles });
        }
        let positive = |what, spacing| match spacing {
            spacing if spacing > Length::ZERO => Ok(()),
            spacing => Err(PavementStrainError::Spacing { what, spacing }),
        };
        if self.axles > 1 {
            positive("the axle spacing", self.axle_spacing)?;
        }
        if let Some(spacing) = self.dual_spacing {
            positive("the dual spacing", spacing)?;
        }
        let across = std::iter::once(Length::ZERO).chain(self.dual_spacing);
        let wheel = |x, axle: u8| Wheel {
            x,
            y: self.axle_spacing * f64::from(axle),
            load: self.wheel_load,
            pressure: Stress::from_kpa(self.pressure.as_kpa()),
        };
        Ok(across.flat_map(|x| (0..self.axles).map(move |axle| wheel(x, axle))).collect())
    }

    /// Under the tire and mid-gap of the outer axle, and of the middle one where there is one.
    fn places(&self) -> impl Iterator<Item = (Length, Length, Place)> {
        let outer_and_middle = [0, (self.axles - 1) / 2];
        let count = if self.axles > 2 { 2 } else { 1 };
        let gap = self.dual_spacing.map(|d| (d / 2.0, Place::MidGap));
        let across = std::iter::once((Length::ZERO, Place::UnderTire)).chain(gap);
        let spacing = self.axle_spacing;
        across.flat_map(move |(x, place)| {
            let axles = outer_and_middle.into_iter().take(count);
            axles.map(move |axle| (x, spacing * f64::from(axle), place))
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::road::layered::Layer;

    fn road(layers: &[(f64, f64, Option<f64>)]) -> Pavement {
        let layer = |(mpa, poisson, mm): &(f64, f64, Option<f64>)| Layer {
            modulus: Stress::from_mpa(*mpa),
            poisson: *poisson,
            thickness: mm.map(Length::from_mm),
        };
        Pavement::new(layers.iter().map(layer).collect()).unwrap()
    }

    fn thin() -> Pavement {
        road(&[(3000.0, 0.35, Some(50.0)), (200.0, 0.35, Some(250.0)), (50.0, 0.4, None)])
    }

    fn strain(kpa: f64, dual_mm: Option<f64>, pavement: &Pavement) -> PavementStrain {
        let dual = dual_mm.map(Length::from_mm);
        pavement_strain(Force::from_kn(20.0), GaugePressure::from_kpa(kpa), dual, pavement).unwrap()
    }

    // Another solver of the same model: under one tire, and single tires.
    #[test]
    fn regress_pressures_on_thin_asphalt() {
        for (kpa, dual, single, subgrade) in
            [(690.0, 431.9, 417.6, 833.0), (345.0, 240.3, 225.3, 770.0)]
        {
            let pair = strain(kpa, Some(340.0), &thin());
            let one = strain(kpa, None, &thin());
            let near = |ours: Strain, theirs: f64| {
                let off = (ours.as_microstrain() / theirs - 1.0).abs();
                assert!(off < 2e-3, "{kpa} kPa: {ours} against {theirs}");
            };
            near(pair.asphalt.strain, dual);
            near(one.asphalt.strain, single);
            near(one.subgrade.strain, subgrade);
            assert_eq!(one.asphalt.place, Place::UnderTire);
        }
    }

    #[test]
    fn between_the_tires_of_a_dual_the_subgrade_gets_more() {
        let found = strain(690.0, Some(340.0), &thin());
        assert_eq!(found.subgrade.place, Place::MidGap);
        assert_eq!(found.asphalt.place, Place::UnderTire);
        assert!(!found.overlapping && strain(200.0, Some(300.0), &thin()).overlapping);
    }

    #[test]
    fn lower_pressure_spares_the_asphalt_and_hardly_the_subgrade() {
        for top in [50.0, 75.0, 150.0] {
            let road =
                road(&[(3000.0, 0.35, Some(top)), (200.0, 0.35, Some(250.0)), (50.0, 0.4, None)]);
            let (high, low) =
                (strain(690.0, Some(340.0), &road), strain(345.0, Some(340.0), &road));
            let share =
                |of: fn(&PavementStrain) -> Strain| of(&low).as_ratio() / of(&high).as_ratio();
            assert!((0.5..0.9).contains(&share(|s| s.asphalt.strain)));
            assert!((0.96..1.0).contains(&share(|s| s.subgrade.strain)));
        }
    }

    #[test]
    fn a_group_is_one_axle_far_from_the_others() {
        let group = |axles, meters| TireGroup {
            wheel_load: Force::from_kn(20.0),
            pressure: GaugePressure::from_kpa(690.0),
            dual_spacing: Some(Length::from_mm(340.0)),
            axles,
            axle_spacing: Length::from_m(meters),
        };
        let of = |axles, meters| group_strain(&group(axles, meters), &thin(), Accuracy::Fine);
        let alone = of(1, 0.0).unwrap();
        let apart = of(3, 15.0).unwrap();
        let near = |a: Worst, b: Worst| {
            assert!((a.strain.as_ratio() / b.strain.as_ratio() - 1.0).abs() < 1e-3);
        };
        near(alone.asphalt, apart.asphalt);
        near(alone.subgrade, apart.subgrade);
        let screen = group_strain(&group(2, 1.3), &thin(), Accuracy::Screen).unwrap();
        let fine = of(2, 1.3).unwrap();
        near(screen.asphalt, fine.asphalt);
        near(screen.subgrade, fine.subgrade);
        assert!(matches!(of(0, 1.0), Err(PavementStrainError::Axles { axles: 0 })));
        assert!(matches!(of(2, 0.0), Err(PavementStrainError::Spacing { .. })));
    }

    #[test]
    fn the_other_side_of_the_axle_adds_little() {
        let group = TireGroup {
            wheel_load: Force::from_kn(20.0),
            pressure: GaugePressure::from_kpa(690.0),
            dual_spacing: Some(Length::from_mm(340.0)),
            axles: 2,
            axle_spacing: Length::from_m(1.3),
        };
        let near = group.wheels().unwrap();
        let far = near.iter().map(|wheel| Wheel { x: wheel.x + Length::from_m(1.8), ..*wheel });
        let both: Vec<Wheel> = near.iter().copied().chain(far).collect();
        let [x, y] = [Length::from_mm(170.0), Length::ZERO];
        let ask = |wheels: &[Wheel]| {
            let points = [Depth::BottomOf(0), Depth::TopOf(2)].map(|depth| Point { x, y, depth });
            let found = respond(&thin(), wheels, &points, Accuracy::Fine).unwrap();
            [found[0].strain.largest_horizontal(), found[1].strain.zz].map(Strain::as_ratio)
        };
        for (one, two) in ask(&near).iter().zip(ask(&both)) {
            assert!((two / one - 1.0).abs() < 0.02, "{one} {two}");
        }
    }

    #[test]
    fn what_has_no_bottom_is_refused() {
        let ground = road(&[(50.0, 0.4, None)]);
        let found =
            pavement_strain(Force::from_kn(20.0), GaugePressure::from_kpa(690.0), None, &ground);
        assert_eq!(found, Err(PavementStrainError::OneLayer));
        let unloaded = pavement_strain(Force::ZERO, GaugePressure::from_kpa(690.0), None, &thin());
        assert!(matches!(unloaded, Err(PavementStrainError::Layered(_))));
    }
}
