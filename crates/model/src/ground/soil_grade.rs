//! The grade a combination climbs on soft soil, wheel by wheel.

use quantity::Mass;

use super::wheel_pull::{Pull, Pulls, SoilWheel, WheelPullError, pulls};
use crate::source::Key;

/// Sum of pull and resistance over the wheels: statics, written out here.
pub const WHEEL_SUM: Key = Key("wheel-by-wheel-balance");

/// Tires of one kind under one load.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SoilTires {
    /// One of them.
    pub wheel: SoilWheel,
    /// How many there are.
    pub count: u32,
    /// Whether they are driven.
    pub driven: bool,
}

/// Why there is no grade.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum SoilGradeError {
    /// Nothing rolls.
    #[error("no tires were given; give every axle group of the combination")]
    NoTires,
    /// Nothing drives.
    #[error(
        "none of the tires is driven, so the combination climbs nothing; mark the driven groups"
    )]
    NoneDriven,
    /// A wheel refused.
    #[error(transparent)]
    Wheel(#[from] WheelPullError),
}

/// The grade by one model, as rise over run; below zero the combination is stuck on the level.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Climb {
    /// Steepest grade.
    pub grade: f64,
    /// Whether a wheel lies outside what the model was made from.
    pub extrapolated: bool,
}

/// The grade by each model; where one has no answer for a wheel it says why.
#[derive(Debug, Clone, PartialEq)]
pub struct SoilGrade {
    /// The lowest as a rule, and the one to plan by.
    pub brixius: Climb,
    /// Between the two as a rule.
    pub maclaurin: Result<Climb, WheelPullError>,
    /// The highest as a rule.
    pub gee_clough: Result<Climb, WheelPullError>,
}

/// Steepest grade on soft soil: `tan θ = Σ_driven μ_g w - Σ ρ w`, w the share of weight on each tire.
///
/// # Validity
/// Equal slip on all driven tires; no load transfer by the grade; straight; every tire on its own soil, so
/// wheels that follow in a track made by others are given their own cone index. Not for hard or
/// slippery ground: there [`adhesion`](super::adhesion) limits.
///
/// # Errors
/// [`SoilGradeError`]: no tires, none driven, a slip outside 0.01 to 0.6.
///
/// # Source
/// [`WHEEL_SUM`] over the models of [`wheel_pull`](super::wheel_pull).
pub fn steepest_grade(tires: &[SoilTires], slip: f64) -> Result<SoilGrade, SoilGradeError> {
    let tires: Vec<_> = tires.iter().filter(|group| group.count > 0).collect();
    if tires.is_empty() {
        return Err(SoilGradeError::NoTires);
    }
    if !tires.iter().any(|group| group.driven) {
        return Err(SoilGradeError::NoneDriven);
    }
    let carried = |group: &SoilTires| group.wheel.load() * f64::from(group.count);
    let total: Mass = tires.iter().map(|group| carried(group)).sum();
    let each: Vec<(f64, bool, Pulls)> = tires
        .iter()
        .map(|group| Ok((carried(group) / total, group.driven, pulls(&group.wheel, slip)?)))
        .collect::<Result<_, WheelPullError>>()?;
    let sum = |of: &dyn Fn(&Pulls) -> Result<Pull, WheelPullError>| {
        let mut climb = Climb { grade: 0.0, extrapolated: false };
        for (share, driven, models) in &each {
            let pull = of(models)?;
            climb.grade += share * if *driven { pull.net } else { -pull.towed_resistance };
            climb.extrapolated |= pull.extrapolated;
        }
        Ok(climb)
    };
    Ok(SoilGrade {
        brixius: sum(&|models| Ok(models.brixius))?,
        maclaurin: sum(&|models| models.maclaurin.clone()),
        gee_clough: sum(&|models| models.gee_clough.clone()),
    })
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use quantity::{Force, Length, Stress};

    use super::*;

    fn tires(ci: f64, ratio: f64, count: u32, driven: bool) -> SoilTires {
        let m = Length::from_m;
        let load = Force::from_kn(20.0).as_mass();
        let wheel = SoilWheel::new(load, Stress::from_kpa(ci), m(0.279), m(1.05), ratio).unwrap();
        SoilTires { wheel, count, driven }
    }

    fn grade(ci: f64, ratio: f64) -> f64 {
        let all = [tires(ci, ratio, 31, true), tires(ci, ratio, 69, false)];
        steepest_grade(&all, 0.2).unwrap().brixius.grade * 100.0
    }

    // 31 % of the weight driven, all tires 20 kN, by hand: percent at each cone index and deflection.
    #[test]
    fn worked_combination() {
        for (ci, percents) in [
            (600.0, [-6.5, -3.3, -0.8, 1.4]),
            (900.0, [1.4, 3.9, 5.9, 7.5]),
            (1500.0, [8.9, 10.6, 11.9, 12.9]),
            (2500.0, [13.6, 14.5, 15.1, 15.6]),
        ] {
            for (ratio, pct) in [0.10, 0.15, 0.20, 0.25].into_iter().zip(percents) {
                let ours = grade(ci, ratio);
                assert!((ours - pct).abs() < 0.06, "{ci} {ratio}: {ours}");
            }
        }
    }

    #[test]
    fn nothing_driven_climbs_nothing() {
        let rolling = tires(900.0, 0.2, 4, false);
        assert_eq!(steepest_grade(&[rolling], 0.2), Err(SoilGradeError::NoneDriven));
        assert_eq!(steepest_grade(&[], 0.2), Err(SoilGradeError::NoTires));
        let none = SoilTires { count: 0, driven: true, ..rolling };
        assert_eq!(steepest_grade(&[none, rolling], 0.2), Err(SoilGradeError::NoneDriven));
        let driven = SoilTires { driven: true, ..rolling };
        assert!(matches!(steepest_grade(&[driven], 2.0), Err(SoilGradeError::Wheel(_))));
    }

    #[test]
    fn one_wheel_too_soft_silences_that_model_only() {
        let found =
            steepest_grade(&[tires(900.0, 0.2, 4, true), tires(200.0, 0.08, 2, false)], 0.2)
                .unwrap();
        assert!(found.maclaurin.is_err() && found.gee_clough.is_err());
        assert!(found.brixius.grade.is_finite());
    }

    proptest! {
        #[test]
        fn all_driven_is_the_pull_of_one(ci in 400.0..3000.0f64, ratio in 0.08..0.4f64, count in 1..20u32) {
            let group = tires(ci, ratio, count, true);
            let climb = steepest_grade(&[group], 0.2).unwrap().brixius.grade;
            let pull = pulls(&group.wheel, 0.2).unwrap().brixius.net;
            prop_assert!((climb - pull).abs() < 1e-12);
        }

        #[test]
        fn driving_more_climbs_more(ci in 400.0..3000.0f64, driven in 1..50u32) {
            let at = |driven| {
                let all = [tires(ci, 0.15, driven, true), tires(ci, 0.15, 100 - driven, false)];
                steepest_grade(&all, 0.2).unwrap().brixius.grade
            };
            prop_assert!(at(driven + 10) > at(driven));
        }
    }
}
