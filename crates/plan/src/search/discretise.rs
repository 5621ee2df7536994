//! From a haul to the discretised problem: what each leg and each change costs at each cap.

use haul::{ChangeCurve, Course, SetPressures, State, Stepper, StepperError, Target, Truck};
use model::haul_cycle::HaulCycle;
use model::route::Leg;
use model::vehicle::Rung;
use quantity::{ColdPressure, GaugePressure, Length, PressureDifference, Speed, Time};

use super::problem::{Edges, LadderProblem, RunProblem, Terms};
use crate::window::{Cell, CellId, RungUse, Site, cell};
use crate::{Detail, NotDriven, PlanError};

/// The caps to choose from.
#[derive(Debug, Clone, PartialEq)]
pub struct Candidates {
    /// Speed caps, rising.
    pub caps: Vec<Speed>,
    /// Indices of caps that must be among the rungs.
    pub required: Vec<usize>,
}

impl Candidates {
    /// Every multiple of a step from `lowest` to the highest speed limit of the route, and the
    /// caps that must be there.
    pub fn of(haul: &HaulCycle, step: Speed, lowest: Speed, required: &[Speed]) -> Self {
        let highest = haul.route.legs.iter().map(|leg| leg.speed_limit).fold(lowest, Speed::max);
        let mut caps: Vec<Speed> = required.to_vec();
        for steps in 0..MOST_CAPS {
            let cap = lowest + step * steps as f64;
            caps.push(cap);
            if cap >= highest - step * 1e-6 {
                break;
            }
        }
        caps.sort_by(Speed::total_cmp);
        caps.dedup_by(|a, b| (*a - *b).abs() < Speed::from_kmh(0.01));
        let required = required
            .iter()
            .filter_map(|wanted| {
                caps.iter().position(|cap| (*cap - *wanted).abs() < Speed::from_kmh(0.01))
            })
            .collect();
        Self { caps, required }
    }
}

/// Most candidate caps.
const MOST_CAPS: usize = 40;
/// Cells of the road while legs are only timed.
const COARSE: Length = Length::from_m(50.0);

/// Why a problem cannot be set up.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum DiscretiseError {
    /// The plan itself cannot begin.
    #[error(transparent)]
    Plan(#[from] PlanError),
    /// The haul cannot be driven.
    #[error(transparent)]
    NotDriven(#[from] NotDriven),
    /// No cap to choose from.
    #[error("no speed cap to choose from; give a lowest cap under the speed limits of the route")]
    NoCaps,
}

impl From<StepperError> for DiscretiseError {
    fn from(error: StepperError) -> Self {
        Self::NotDriven(error.into())
    }
}

/// A problem with the route's legs behind it.
#[derive(Debug, Clone, PartialEq)]
pub struct Discretised {
    /// The problem.
    pub problem: LadderProblem,
    /// For each stretch of the route in order of chainage, the legs joined into it.
    pub stretches: Vec<std::ops::Range<usize>>,
    /// Whether the empty run meets the stretches in order of chainage.
    pub empty_forward: bool,
}

/// Neighboring legs that are alike in all but name are one stretch.
fn stretches(legs: &[Leg]) -> Vec<std::ops::Range<usize>> {
    let alike = |a: &Leg, b: &Leg| {
        let bare = |leg: &Leg| Leg {
            name: String::new(),
            from: Length::ZERO,
            to: Length::ZERO,
            ..leg.clone()
        };
        bare(a) == bare(b)
    };
    let mut found: Vec<std::ops::Range<usize>> = Vec::new();
    for index in 0..legs.len() {
        match found.last_mut() {
            Some(last) if alike(&legs[index - 1], &legs[index]) => last.end = index + 1,
            _ => found.push(index..index + 1),
        }
    }
    found
}

/// Works out what each leg and each change costs.
///
/// Pressures of a leg at a cap are those of the leg by itself; a rung shared by several legs
/// takes the highest of them, which the whole simulation of the winner then shows.
///
/// # Errors
/// [`DiscretiseError`] for weather out of range, or a haul that cannot be driven at all.
pub fn discretise(
    haul: &HaulCycle,
    candidates: &Candidates,
    detail: &Detail,
) -> Result<Discretised, DiscretiseError> {
    if candidates.caps.is_empty() {
        return Err(DiscretiseError::NoCaps);
    }
    let mut capped = haul.clone();
    capped.combination.rungs = candidates
        .caps
        .iter()
        .map(|&cap| Rung { name: String::new(), cap, hold: None, surfaces: vec![] })
        .collect();
    capped.combination.hand_set.clear();
    capped.shift_start.parked_rung = 0;
    let stretches = stretches(&haul.route.legs);
    let table = Pressures::of(&capped, &stretches)?;
    let mut work = Work { haul: &capped, detail, stretches: &stretches, table: &table };
    work.build(candidates)
}

/// Set pressure and cold pressure of each channel.
type ChannelPressures = Vec<(GaugePressure, ColdPressure)>;

/// Pressures by load state, stretch and cap.
struct Pressures {
    /// Set pressures of all channels; `None` where the cell is not possible.
    set: Vec<Vec<Vec<Option<ChannelPressures>>>>,
}

impl Pressures {
    fn of(haul: &HaulCycle, stretches: &[std::ops::Range<usize>]) -> Result<Self, PlanError> {
        let site = Site::new(&haul.weather)?;
        let (channels, caps) = (haul.combination.channels.len(), haul.combination.rungs.len());
        let mut known: Vec<(usize, RungUse, Vec<Option<ChannelPressures>>)> = Vec::new();
        let mut set = Vec::new();
        for load_state in [haul.empty_state, haul.laden_state] {
            let mut of_state = Vec::new();
            for stretch in stretches {
                let used = RungUse::of_legs(&haul.route.legs[stretch.clone()]);
                let found = known
                    .iter()
                    .find(|(state, use_, _)| *state == load_state && *use_ == used)
                    .map(|(_, _, found)| found.clone());
                let by_cap = found.unwrap_or_else(|| {
                    let by_cap: Vec<_> = (0..caps)
                        .map(|rung| {
                            (0..channels)
                                .map(|channel| {
                                    let id = CellId { channel, load_state, chain_state: 0, rung };
                                    let found: Cell = cell(haul, &site, used, id);
                                    found.set.map(|set| (set.vented, set.cold))
                                })
                                .collect()
                        })
                        .collect();
                    known.push((load_state, used, by_cap.clone()));
                    by_cap
                });
                of_state.push(by_cap);
            }
            set.push(of_state);
        }
        Ok(Self { set })
    }

    fn get(
        &self,
        run: usize,
        stretch: usize,
        cap: usize,
    ) -> Option<&[(GaugePressure, ColdPressure)]> {
        self.set[run][stretch][cap].as_deref()
    }
}

struct Work<'a> {
    haul: &'a HaulCycle,
    detail: &'a Detail,
    stretches: &'a [std::ops::Range<usize>],
    table: &'a Pressures,
}

impl Work<'_> {
    fn build(&mut self, candidates: &Candidates) -> Result<Discretised, DiscretiseError> {
        let haul = self.haul;
        let caps = candidates.caps.len();
        let truck = self.truck(caps)?;
        let style = self.detail.style;
        let (empty_course, laden_course) =
            Course::of_haul(haul, COARSE, &style).map_err(NotDriven::from)?;
        let (raise, lower) = self.curves(&truck)?;
        let curves = Curves { raise, lower, channels: haul.combination.channels.len() };
        let start = start_state(&truck, &empty_course, self.detail, haul)?;
        let mut times = Vec::new();
        for (run, course) in [&empty_course, &laden_course].into_iter().enumerate() {
            let load_state = [haul.empty_state, haul.laden_state][run];
            let places: Vec<Length> =
                self.order(course).map(|index| self.end(course, index)).collect();
            let by_cap = (0..caps)
                .map(|rung| {
                    haul::times_between(&truck, course, style, load_state, rung, &places, &start)
                })
                .collect::<Result<Vec<_>, _>>()?;
            times.push(by_cap);
        }
        let empty = self.run(0, &empty_course, &times[0], &curves, caps);
        let laden = self.run(1, &laden_course, &times[1], &curves, caps);
        let loading = self.standing(&curves, (0, &empty_course), (1, &laden_course), caps, true);
        let unloading = self.standing(&curves, (1, &laden_course), (0, &empty_course), caps, false);
        let problem = LadderProblem {
            caps,
            empty,
            loading,
            laden,
            unloading,
            required: candidates.required.clone(),
        };
        Ok(Discretised {
            problem,
            stretches: self.stretches.to_vec(),
            empty_forward: empty_course.direction() == haul::Direction::Forward,
        })
    }

    /// Pressures that any channel may ever be asked for: lowest and highest.
    fn extremes(&self) -> (Vec<GaugePressure>, Vec<GaugePressure>) {
        let channels = self.haul.combination.channels.len();
        let all = |channel: usize| {
            self.table
                .set
                .iter()
                .flatten()
                .flatten()
                .flatten()
                .map(move |pressures| pressures[channel].0)
        };
        let fallback = GaugePressure::from_kpa(500.0);
        let pick = |find: fn(GaugePressure, GaugePressure) -> GaugePressure| {
            (0..channels).map(|c| all(c).reduce(find).unwrap_or(fallback)).collect()
        };
        (pick(GaugePressure::min), pick(GaugePressure::max))
    }

    fn truck(&self, caps: usize) -> Result<Truck, DiscretiseError> {
        let (_, highest) = self.extremes();
        let channels = self.haul.combination.channels.len();
        let set = SetPressures::new(
            channels,
            self.haul.combination.load_states.len(),
            caps,
            |channel, _, _| highest[channel],
        );
        Ok(Truck::new(self.haul, set).map_err(NotDriven::from)?)
    }

    /// One raise and one lowering over everything that may be asked for, from the worst credible start.
    fn curves(&self, truck: &Truck) -> Result<(ChangeCurve, ChangeCurve), DiscretiseError> {
        let (lowest, highest) = self.extremes();
        let supply = self.haul.combination.supply.governor.cut_in;
        let raise = truck.change_curve(&lowest, &highest, supply)?;
        let lower = truck.change_curve(&highest, &lowest, supply)?;
        Ok((raise, lower))
    }

    /// Stretches in the order of travel.
    fn order(&self, course: &Course) -> Box<dyn Iterator<Item = usize>> {
        let count = self.stretches.len();
        match course.direction() {
            haul::Direction::Forward => Box::new(0..count),
            haul::Direction::Backward => Box::new((0..count).rev()),
        }
    }

    /// Travel distance where a stretch ends.
    fn end(&self, course: &Course, stretch: usize) -> Length {
        let legs = &self.haul.route.legs;
        let range = &self.stretches[stretch];
        match course.direction() {
            haul::Direction::Forward => legs[range.end - 1].to,
            haul::Direction::Backward => course.length() - legs[range.start].from,
        }
    }

    fn run(
        &self,
        run: usize,
        course: &Course,
        times: &[Vec<Time>],
        curves: &Curves,
        caps: usize,
    ) -> RunProblem {
        let order: Vec<usize> = self.order(course).collect();
        let legs = order
            .iter()
            .enumerate()
            .map(|(step, &stretch)| {
                (0..caps).map(|cap| self.leg(run, stretch, cap, times[cap][step])).collect()
            })
            .collect();
        let changes = order
            .windows(2)
            .enumerate()
            .map(|(step, pair)| {
                square(caps, |from, to| {
                    let a = self.table.get(run, pair[0], from)?;
                    let b = self.table.get(run, pair[1], to)?;
                    Some(curves.rolling(a, b, times[from][step]))
                })
            })
            .collect();
        RunProblem { legs, changes }
    }

    fn leg(&self, run: usize, stretch: usize, cap: usize, time: Time) -> Option<Terms> {
        let pressures = self.table.get(run, stretch, cap)?;
        let leg = &self.haul.route.legs[self.stretches[stretch].start];
        let range = &self.stretches[stretch];
        let road = self.haul.route.legs[range.end - 1].to - leg.from;
        let terms = Terms::of_time(time);
        let Some(wanted) = leg.ground_maximum else { return Some(terms) };
        let above: PressureDifference =
            pressures.iter().map(|(_, cold)| (*cold - wanted).max(PressureDifference::ZERO)).sum();
        Some(terms.with_hard_road(above / pressures.len() as f64, road))
    }

    /// Changes made standing: at loading they take time unless made meanwhile, at unloading none.
    fn standing(
        &self,
        curves: &Curves,
        (run, course): (usize, &Course),
        (next_run, next_course): (usize, &Course),
        caps: usize,
        loading: bool,
    ) -> Edges {
        let (Some(last), Some(first)) = (self.order(course).last(), self.order(next_course).next())
        else {
            return square(caps, |_, _| None);
        };
        let meanwhile = if loading && self.haul.loading.change_while_loading {
            self.haul.loading.time
        } else if loading {
            Time::ZERO
        } else {
            Time::from_h(24.0)
        };
        square(caps, |from, to| {
            let a = self.table.get(run, last, from)?;
            let b = self.table.get(next_run, first, to)?;
            Some(curves.rolling(a, b, meanwhile))
        })
    }
}

fn square(caps: usize, mut edge: impl FnMut(usize, usize) -> Option<Terms>) -> Edges {
    (0..caps).map(|from| (0..caps).map(|to| edge(from, to)).collect()).collect()
}

struct Curves {
    raise: ChangeCurve,
    lower: ChangeCurve,
    channels: usize,
}

impl Curves {
    /// A change that may take `free` without costing time.
    fn rolling(
        &self,
        a: &[(GaugePressure, ColdPressure)],
        b: &[(GaugePressure, ColdPressure)],
        free: Time,
    ) -> Terms {
        let mut longest = Time::ZERO;
        let mut raising = Time::ZERO;
        let mut changes = false;
        for channel in 0..self.channels {
            let (from, to) = (a[channel].0, b[channel].0);
            if from == to {
                continue;
            }
            changes = true;
            let up = to > from;
            let curve = if up { &self.raise } else { &self.lower };
            let time = curve.between(channel, from, to).unwrap_or(Time::from_h(4.0));
            longest = longest.max(time);
            if up {
                raising = raising.max(time);
            }
        }
        if !changes {
            return Terms::default();
        }
        Terms::of_time((longest - free).max(Time::ZERO)).with_change(raising)
    }
}

fn start_state(
    truck: &Truck,
    course: &Course,
    detail: &Detail,
    haul: &HaulCycle,
) -> Result<State, DiscretiseError> {
    let envelope = haul::Envelope::new(course, &[], &detail.style);
    let stepper = Stepper::new(truck, course, &envelope, detail.style);
    let at = Target { rung: 0, load_state: haul.empty_state };
    let supply = haul.combination.supply.governor.cut_out;
    let state = stepper.start(at, haul.empty_state, supply).map_err(StepperError::from)?;
    Ok(state)
}
