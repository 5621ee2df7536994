//! Go or no-go: the grade a combination climbs and holds on a leg, against the grade there is.

use model::ground::adhesion::{
    GripSurface, WheelForce, adhesion, steepest_climb, steepest_descent,
};
use model::ground::soil_grade::{SoilTires, steepest_grade};
use model::route::{Leg, LegGround, Surface};
use model::vehicle::LoadState;
use quantity::{Length, Stress};

use super::band::{Band, Finding, Input, NotAssessed};
use super::soil::{self, cone_index, is_soft};
use super::tire::OnTire;
use super::way::{Run, Ways};

/// Slip at which pull is told.
pub const SLIP: f64 = 0.2;
/// Share of gravity left to slow down with on a descent: an engineering choice.
pub const RESERVE: f64 = 0.1;
/// Shortest stretch whose grade counts: a truck carries itself over less.
const STRETCH: Length = Length::from_m(50.0);

/// What a grade comes to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Verdict {
    /// Even by the least.
    Go,
    /// By some of the models and strengths.
    Doubtful,
    /// Not even by the most.
    NoGo,
}

/// A grade that can be had against one that is there; rise over run.
#[derive(Debug, Clone, PartialEq)]
pub struct Grade {
    /// Steepest that can be had; below zero the combination does not move on the level.
    pub possible: Band<f64>,
    /// Steepest on the leg in the direction of the run.
    pub needed: f64,
    /// What it comes to.
    pub verdict: Verdict,
}

impl Grade {
    fn new(possible: Band<f64>, needed: f64) -> Self {
        let verdict = if possible.low >= needed {
            Verdict::Go
        } else if possible.high < needed {
            Verdict::NoGo
        } else {
            Verdict::Doubtful
        };
        Self { possible, needed, verdict }
    }
}

/// Climb and descent of one leg in one run.
#[derive(Debug, Clone, PartialEq)]
pub struct Grades {
    /// Up.
    pub climb: Finding<Grade>,
    /// Down, with [`RESERVE`] left.
    pub descent: Finding<Grade>,
    /// Whether what it climbs by the least is steeper than what it holds going down by the least:
    /// grip that lower pressure gives on soil is not there for the brakes to the same degree.
    pub climbs_more_than_it_holds: bool,
}

/// Steepest climb and descent of a leg in the direction of a run, over 50 m.
pub fn steepest(ways: &Ways<'_>, run: Run, leg: &Leg) -> (f64, f64) {
    let profile = &ways.haul.route.profile;
    let sign = if run.forward(ways.haul) { 1.0 } else { -1.0 };
    let stretch = STRETCH.min(leg.to - leg.from);
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a route's length")]
    let count = (((leg.to - leg.from) / stretch).ceil() as usize).max(1);
    let mut ends = (0.0_f64, 0.0_f64);
    let mut before = profile.elevation(leg.from);
    for i in 1..=count {
        let at = (leg.from + stretch * i as f64).min(leg.to);
        let from = (leg.from + stretch * (i - 1) as f64).min(leg.to);
        let here = profile.elevation(at);
        if at > from {
            let grade = sign * ((here - before) / (at - from));
            ends = (ends.0.max(grade), ends.1.max(-grade));
        }
        before = here;
    }
    ends
}

/// Climb and descent with these tires, by group; a lifted group has none.
pub fn grades(
    ways: &Ways<'_>,
    run: Run,
    leg: &Leg,
    state: &LoadState,
    tires: &[Option<OnTire>],
) -> Grades {
    let (up, down) = steepest(ways, run, leg);
    let climb = possible_climb(ways, leg, state, tires).map(|band| Grade::new(band, up));
    let descent = possible_descent(leg).map(|band| Grade::new(band, down));
    let climbs_more_than_it_holds = matches!((&climb, &descent), (Ok(climb), Ok(descent))
        if climb.possible.low > descent.possible.low);
    Grades { climb, descent, climbs_more_than_it_holds }
}

fn possible_climb(
    ways: &Ways<'_>,
    leg: &Leg,
    state: &LoadState,
    tires: &[Option<OnTire>],
) -> Finding<Band<f64>> {
    let by_grip = by_grip(ways, leg, state);
    if !is_soft(leg.surface) {
        return by_grip;
    }
    let cone = cone_index(leg)?;
    let by_soil = Band {
        low: by_models(ways, tires, cone.low)?.low,
        middle: by_models(ways, tires, cone.value)?.middle,
        high: by_models(ways, tires, cone.high)?.high,
    };
    // The skin of an earth road may be slick over strong soil; no grip is known of other soft ground.
    Ok(match by_grip {
        Ok(grip) => Band {
            low: by_soil.low.min(grip.low),
            middle: by_soil.middle.min(grip.high),
            high: by_soil.high.min(grip.high),
        },
        Err(_) => by_soil,
    })
}

/// The three models on soil of one cone index, wheel by wheel.
fn by_models(ways: &Ways<'_>, tires: &[Option<OnTire>], cone_index: Stress) -> Finding<Band<f64>> {
    let mut all = Vec::with_capacity(tires.len());
    for (group, tire) in ways.haul.combination.groups.iter().zip(tires) {
        let Some(tire) = tire else { continue };
        let wheel = soil::wheel(group, tire.load, tire.deflection.clone()?, cone_index)?;
        all.push(SoilTires { wheel, count: group.tires(), driven: group.driven });
    }
    three_models(&all)
}

/// The three models for wheels on soil.
pub(super) fn three_models(all: &[SoilTires]) -> Finding<Band<f64>> {
    let found = steepest_grade(all, SLIP).map_err(|error| NotAssessed::refused(&error))?;
    let low = found.brixius.grade;
    let others = [&found.maclaurin, &found.gee_clough];
    let others = others.map(|model| model.as_ref().ok().map(|climb| climb.grade));
    // Where a model says the soil is too soft for it, that counts as the low end, not as silence.
    let middle = others[0].unwrap_or(low);
    Ok(Band::spanning(middle, others.into_iter().flatten().chain([low])))
}

/// By grip on a hard or slippery surface; pressure has no part in it.
pub(super) fn by_grip(ways: &Ways<'_>, leg: &Leg, state: &LoadState) -> Finding<Band<f64>> {
    let mu = grip(leg, WheelForce::Driving)?;
    let driven = ways.haul.combination.groups.iter().zip(&state.groups).enumerate();
    let driven = driven.filter(|(index, (group, _))| group.driven && !state.is_lifted(*index));
    let share: f64 = driven.map(|(_, (_, load))| load.mass / state.gross()).sum();
    let climb = |mu: f64| {
        steepest_climb(mu, share.min(1.0), leg.rolling_resistance)
            .map_err(|error| NotAssessed::refused(&error))
    };
    Ok(Band { low: climb(mu.low)?, middle: climb(mu.middle)?, high: climb(mu.high)? })
}

fn possible_descent(leg: &Leg) -> Finding<Band<f64>> {
    let mu = grip(leg, WheelForce::Braking)?;
    let hold =
        |mu: f64| steepest_descent(mu, 1.0, RESERVE).map_err(|error| NotAssessed::refused(&error));
    Ok(Band { low: hold(mu.low)?, middle: hold(mu.middle)?, high: hold(mu.high)? })
}

/// Grip of a leg, wet to dry; as measured where it was.
fn grip(leg: &Leg, force: WheelForce) -> Finding<Band<f64>> {
    if let Some(mu) = leg.ground.as_ref().and_then(|ground: &LegGround| ground.grip) {
        return Ok(Band::exact(mu));
    }
    let (wet, dry) = match leg.surface {
        Surface::Paved | Surface::Sealed => (GripSurface::WetAsphalt, GripSurface::DryAsphalt),
        Surface::Gravel => (GripSurface::WetGravel, GripSurface::DryGravel),
        Surface::Earth => (GripSurface::WetEarth, GripSurface::DryEarth),
        Surface::Sand => (GripSurface::DrySand, GripSurface::WetSand),
        Surface::SnowOrIce => (GripSurface::Ice, GripSurface::PackedSnow),
        Surface::SoftGround => return Err(NotAssessed::Give(Input::Grip)),
    };
    let (wet, dry) = (adhesion(wet, force), adhesion(dry, force));
    Ok(Band::spanning(wet.value.midpoint(dry.value), [wet.low, wet.high, dry.low, dry.high]))
}
