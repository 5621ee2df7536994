//! What a plan does to ground, road, traction, heat, fuel and ride, against other ways to run.
//!
//! Every effect is a band, or says why it was not assessed; nothing that is unknown is taken for
//! no effect. The laws are those of `model`; here they are put on the legs of a haul.

mod band;
mod climb;
mod comfort;
mod depth;
mod gravel;
mod least_resistance;
mod leg;
mod means;
mod pavement;
mod rolling;
mod soil;
mod sources;
mod spread;
mod tire;
mod total;
mod way;

use model::haul_cycle::HaulCycle;
use model::road::trials::{TRIALS, Trial};
use model::route::Surface;

pub use band::{Band, Finding, Input, NotAssessed};
pub use climb::{Grade, Grades, RESERVE, SLIP, Verdict};
pub use comfort::{Heat, WindUp};
pub use depth::DepthProfile;
pub use gravel::{GravelEffect, Thickness};
pub use least_resistance::LeastResistance;
pub use leg::{GroupEffect, LegEffects, LegWay};
pub use means::Means;
pub use pavement::PavementEffect;
pub use soil::SoilEffect;
pub use sources::Kind;
pub use spread::{SoilSpread, Spread, Tenths, Uncertain};
pub use tire::{Contact, DEPTH, OnTire, on_tire};
pub use total::Total;
pub use way::{Held, LESS_LOAD, Run, Way};

pub(crate) use way::Ways;

use crate::workers::Workers;
use crate::{Detail, Plan};

/// The effects of a plan.
#[derive(Debug, Clone, PartialEq)]
pub struct Effects {
    /// Legs in order of chainage, the empty run of each before the laden one.
    pub legs: Vec<LegEffects>,
    /// Ways over the whole haul, the plan first.
    pub totals: Vec<Total>,
    /// Stress over depth under the laden truck, where the plan changes the patch most.
    pub profiles: Vec<DepthProfile>,
    /// Trials on ground such as this haul's, those that found nothing among them.
    pub trials: Vec<Trial>,
}

impl Effects {
    /// Works out the effects of a plan and of its rivals.
    pub fn of(haul: &HaulCycle, plan: &Plan, detail: &Detail, workers: &dyn Workers) -> Self {
        let driven = plan.driven.as_ref().ok();
        let ways = Ways::of(haul, &plan.ladder, driven);
        let known = leg::Known::default();
        let places = (0..haul.route.legs.len()).flat_map(|leg| Run::BOTH.map(|run| (leg, run)));
        let mut legs: Vec<LegEffects> =
            places.map(|(leg, run)| leg::leg_effects(&ways, &known, run, leg)).collect();
        spread::add(&ways, &mut legs, detail, workers);
        let totals = total::totals(&ways, &plan.ladder, driven, &legs, detail, workers);
        let profiles = depth::profiles(&ways, &legs);
        Self { legs, totals, profiles, trials: trials(haul) }
    }

    /// A way over the whole haul.
    pub fn total(&self, way: Way) -> Option<&Total> {
        self.totals.iter().find(|total| total.way == way)
    }
}

/// Trials on the surfaces of a haul.
fn trials(haul: &HaulCycle) -> Vec<Trial> {
    use model::road::trials::Ground;
    let has =
        |surfaces: &[Surface]| haul.route.legs.iter().any(|leg| surfaces.contains(&leg.surface));
    TRIALS
        .into_iter()
        .filter(|trial| match trial.ground {
            Ground::Asphalt | Ground::AsphaltOnPeat | Ground::ThawedPavement => {
                has(&[Surface::Paved, Surface::Sealed])
            }
            Ground::ThinMembrane => has(&[Surface::Sealed]),
            Ground::Aggregate | Ground::DryStrongGravel => has(&[Surface::Gravel]),
            Ground::Subsoil => has(&[Surface::Earth, Surface::SoftGround, Surface::Gravel]),
        })
        .collect()
}
