//! How sure climb and resistance on soft ground are: strength, moisture, load, grip and the choice of
//! model drawn together, and which of them to look into first.

use model::ground::Estimate;
use model::ground::rolling_resistance::soft_ground;
use model::ground::soil_grade::SoilTires;
use model::route::{Leg, SoilGiven};
use model::tire::deflection::DeflectionLaw;
use quantity::{ColdPressure, Mass, Stress};

use super::band::{Band, Finding, NotAssessed};
use super::climb::{by_grip, three_models};
use super::leg::LegEffects;
use super::soil::{cone_index, is_soft, wheel};
use super::way::{Run, Way, Ways};
use crate::Detail;
use crate::chance::normal;
use crate::workers::{Workers, collect};

/// Something that is not known exactly.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Uncertain {
    /// Strength of the soil as measured or judged.
    Strength,
    /// How much wetter or drier it is than when it was measured.
    Moisture,
    /// Weight on the axles.
    Load,
    /// Grip of the skin of the road.
    Grip,
    /// Which model of pull holds.
    Model,
}

impl Uncertain {
    /// All of them.
    pub const ALL: [Self; 5] =
        [Self::Strength, Self::Moisture, Self::Load, Self::Grip, Self::Model];
}

/// One in ten, half, and nine in ten lie under these.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tenths {
    /// One in ten.
    pub p10: f64,
    /// Half.
    pub p50: f64,
    /// Nine in ten.
    pub p90: f64,
}

/// Samples of a number, and what their spread comes from.
#[derive(Debug, Clone, PartialEq)]
pub struct Spread {
    /// The samples.
    pub tenths: Tenths,
    /// Share of the variance that would go if one input were known, the largest first; shares too
    /// small to tell from chance are left out.
    pub narrows: Vec<(Uncertain, f64)>,
}

/// Spread of a leg on soft ground.
#[derive(Debug, Clone, PartialEq)]
pub struct SoilSpread {
    /// Steepest climb, rise over run.
    pub climb: Finding<Spread>,
    /// Rolling resistance over that at full pressure.
    pub resistance: Finding<Spread>,
}

/// Ends of a credible span, in deviations: one in ten lies beyond each.
const TENTH: f64 = 1.2816;
/// Ends of thirds of the normal distribution, in deviations.
const THIRD: f64 = 0.4307;
/// Deviation of strength by moisture, as a logarithm: two points of moisture on silt, whose rating
/// cone index falls from 113 to 66 psi over five.
///
/// The two points are an engineering choice; source `ci-rci-moisture`.
const BY_MOISTURE: f64 = 0.2;
/// Least share told: less cannot be told from chance with a hundred samples in three parts.
const LEAST_SHARE: f64 = 0.06;

/// Adds the spread of every soft leg in the plan's way; none without samples.
pub(super) fn add(
    ways: &Ways<'_>,
    legs: &mut [LegEffects],
    detail: &Detail,
    workers: &dyn Workers,
) {
    if detail.samples == 0 {
        return;
    }
    let found = collect(workers, legs.len(), |index| {
        let (leg, run) = (legs[index].leg, legs[index].run);
        let soft = is_soft(ways.haul.route.legs[leg].surface);
        soft.then(|| SoilLeg::of(ways, run, leg).map(|soil| soil.spread(detail.samples)))
    });
    for (leg, found) in legs.iter_mut().zip(found) {
        let plan = leg.ways.iter_mut().find(|way| way.way == Way::Plan);
        if let (Some(plan), Some(found)) = (plan, found) {
            plan.spread = Some(found.unwrap_or_else(|why| SoilSpread {
                climb: Err(why.clone()),
                resistance: Err(why),
            }));
        }
    }
}

/// A group on soft ground.
struct OnSoil<'a> {
    group: &'a model::vehicle::AxleGroup,
    law: DeflectionLaw,
    load: Mass,
    uncertainty: f64,
    count: u32,
    full: ColdPressure,
    pressure: ColdPressure,
}

/// A soft leg in one run, ready to be sampled.
struct SoilLeg<'a> {
    leg: &'a Leg,
    seed: u64,
    cone: Estimate<Stress>,
    by_moisture: f64,
    grip: Option<Band<f64>>,
    groups: Vec<OnSoil<'a>>,
}

/// One sample: deviations of each input, and what they give.
struct Sample {
    deviations: [f64; 5],
    climb: Finding<f64>,
    resistance: Finding<f64>,
}

impl<'a> SoilLeg<'a> {
    fn of(ways: &Ways<'a>, run: Run, index: usize) -> Finding<Self> {
        let haul = ways.haul;
        let leg = &haul.route.legs[index];
        let state = ways.state(Way::Plan, run);
        let mut groups = Vec::new();
        for (number, group) in haul.combination.groups.iter().enumerate() {
            let Some(load) = ways.tire_load(Way::Plan, run, number) else { continue };
            let held = |way| ways.held(way, run, index, number).map(|held| held.cold);
            let (full, plan) = (held(Way::FullPressure), held(Way::Plan));
            groups.push(OnSoil {
                group,
                law: DeflectionLaw::of(&group.tire)
                    .map_err(|error| NotAssessed::refused(&error))?,
                load,
                uncertainty: state.groups[number].uncertainty,
                count: state.tires_down(number, group),
                full: full.ok_or(NotAssessed::NoSuchWay)?,
                pressure: plan.ok_or(NotAssessed::NoSuchWay)?,
            });
        }
        let soil = leg.ground.as_ref().and_then(|ground| ground.soil);
        // A class judged with its season spans the moisture of that season already.
        let measured = matches!(soil, Some(SoilGiven::Measured { .. }));
        Ok(Self {
            leg,
            seed: haul.spread.seed,
            cone: cone_index(leg)?,
            by_moisture: if measured { BY_MOISTURE } else { 0.0 },
            grip: by_grip(ways, leg, state).ok(),
            groups,
        })
    }

    fn spread(&self, samples: usize) -> SoilSpread {
        let drawn: Vec<Sample> = (0..samples).map(|sample| self.sample(sample)).collect();
        SoilSpread {
            climb: spread(&drawn, |sample| sample.climb.clone()),
            resistance: spread(&drawn, |sample| sample.resistance.clone()),
        }
    }

    fn sample(&self, sample: usize) -> Sample {
        // Soil and skin are the leg's own; load and model are the same on every leg.
        let own = |name: &str| normal(self.seed, sample, &format!("{name} of {}", self.leg.name));
        let all = |name: &str| normal(self.seed, sample, name);
        let deviations =
            [own("strength"), own("moisture"), all("load"), own("grip"), all("pull model")];
        let [strength, moisture, load, grip, model] = deviations;
        let wetter = (moisture * self.by_moisture).exp();
        let [low, middle, high] = [self.cone.low, self.cone.value, self.cone.high];
        let cone = middle * skewed([low / middle, 1.0, high / middle], strength) * wetter;
        let loads: Vec<Mass> =
            self.groups.iter().map(|one| one.load * (1.0 + one.uncertainty * load)).collect();
        Sample {
            deviations,
            climb: self.climb(&loads, cone, model).map(|climb| match self.grip {
                Some(Band { low, middle, high }) => climb.min(between([low, middle, high], grip)),
                None => climb,
            }),
            resistance: self.resistance(&loads, cone),
        }
    }

    fn climb(&self, loads: &[Mass], cone: Stress, model: f64) -> Finding<f64> {
        let mut all = Vec::with_capacity(loads.len());
        for (one, load) in self.groups.iter().zip(loads) {
            let bent = one.law.deflection(*load, one.pressure);
            let bent = bent.map_err(|error| NotAssessed::refused(&error))?;
            let wheel = wheel(one.group, *load, bent.share_of_section_height, cone)?;
            all.push(SoilTires { wheel, count: one.count, driven: one.group.driven });
        }
        let band = three_models(&all)?;
        Ok(match third(model) {
            0 => band.low,
            1 => band.middle,
            _ => band.high,
        })
    }

    fn resistance(&self, loads: &[Mass], cone: Stress) -> Finding<f64> {
        let (mut now, mut before) = (0.0, 0.0);
        for (one, load) in self.groups.iter().zip(loads) {
            let carried = load.as_kg() * f64::from(one.count);
            let at = |pressure| {
                soft_ground(&one.group.tire, *load, pressure, cone)
                    .map(|found| found.total() * carried)
                    .map_err(|error| NotAssessed::refused(&error))
            };
            let full = at(one.full)?;
            before += full;
            now += if one.pressure == one.full { full } else { at(one.pressure)? };
        }
        Ok(now / before)
    }
}

/// A ratio above zero whose ends are those of one in ten either way.
fn skewed([low, middle, high]: [f64; 3], deviation: f64) -> f64 {
    let end = if deviation < 0.0 { low } else { high };
    middle * (end / middle).powf(deviation.abs() / TENTH)
}

/// A number whose ends are those of one in ten either way.
fn between([low, middle, high]: [f64; 3], deviation: f64) -> f64 {
    let end = if deviation < 0.0 { low } else { high };
    middle + (end - middle) * deviation.abs() / TENTH
}

/// The third of the distribution a deviation lies in.
fn third(deviation: f64) -> usize {
    usize::from(deviation > -THIRD) + usize::from(deviation > THIRD)
}

fn spread(samples: &[Sample], of: impl Fn(&Sample) -> Finding<f64>) -> Finding<Spread> {
    let values: Vec<f64> = samples.iter().map(of).collect::<Finding<_>>()?;
    let mut sorted = values.clone();
    sorted.sort_by(f64::total_cmp);
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a share of them")]
    let under = |share: f64| sorted[((sorted.len() - 1) as f64 * share).round() as usize];
    let shares = Uncertain::ALL.map(|input| {
        let parts = samples.iter().map(|sample| third(sample.deviations[input as usize]));
        (input, share_between(&values, parts))
    });
    let mut narrows: Vec<(Uncertain, f64)> =
        shares.into_iter().filter(|(_, share)| *share >= LEAST_SHARE).collect();
    narrows.sort_by(|a, b| b.1.total_cmp(&a.1));
    Ok(Spread { tenths: Tenths { p10: under(0.1), p50: under(0.5), p90: under(0.9) }, narrows })
}

/// Share of the variance that lies between three parts: the correlation ratio.
fn share_between(values: &[f64], parts: impl Iterator<Item = usize>) -> f64 {
    let count = values.len() as f64;
    let mean = values.iter().sum::<f64>() / count;
    let whole: f64 = values.iter().map(|value| (value - mean).powi(2)).sum();
    let mut sums = [(0.0, 0.0); 3];
    for (value, part) in values.iter().zip(parts) {
        sums[part].0 += 1.0;
        sums[part].1 += value - mean;
    }
    let between: f64 =
        sums.iter().filter(|(count, _)| *count > 0.0).map(|(count, sum)| sum * sum / count).sum();
    if whole > count * 1e-24 { between / whole } else { 0.0 }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_ends_of_a_span_are_passed_one_time_in_ten() {
        let draws = (0..5000).map(|sample| skewed([0.5, 1.0, 3.0], normal(1, sample, "soil")));
        let draws: Vec<f64> = draws.collect();
        let share = |of: fn(f64) -> bool| {
            draws.iter().filter(|value| of(**value)).count() as f64 / draws.len() as f64
        };
        assert!((share(|value| value < 0.5) - 0.1).abs() < 0.015);
        assert!((share(|value| value > 3.0) - 0.1).abs() < 0.015);
    }

    #[test]
    fn what_moves_a_number_alone_has_all_of_its_spread() {
        let sample = |number| {
            let z = |name| normal(1, number, name);
            let deviations = [z("a"), z("b"), z("c"), z("d"), z("e")];
            let value = [1.0, 2.0, 4.0][third(deviations[4])];
            Sample { deviations, climb: Ok(value), resistance: Ok(1.0) }
        };
        let samples: Vec<Sample> = (0..200).map(sample).collect();
        let climb = spread(&samples, |sample| sample.climb.clone()).unwrap();
        assert_eq!(climb.narrows[0].0, Uncertain::Model);
        assert!((climb.narrows[0].1 - 1.0).abs() < 1e-9);
        assert!(climb.narrows.len() == 1, "{climb:?}");
        let same = spread(&samples, |sample| sample.resistance.clone()).unwrap();
        assert!(same.narrows.is_empty() && (same.tenths.p10 - same.tenths.p90).abs() < 1e-12);
    }
}
