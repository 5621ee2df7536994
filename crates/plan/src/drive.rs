//! The haul driven on its ladder: change points found, the cycle simulated whole.

use haul::{
    Course, CourseError, Cycle, CyclePlan, LadenChange, Record, State, Stepper, StepperError,
    Target, Truck, TruckError,
};
use model::air::water_taken_in;
use model::haul_cycle::HaulCycle;
use quantity::{Length, Mass, Time};

use crate::Detail;
use crate::change::{ChangePoint, KeptLow, LadenChoice, Run, Sampling, choose_laden_change, walk};
use crate::hold::{LongestStay, Stays};
use crate::ladder::Ladder;
use crate::sections::{NoRung, Section, sections};
use crate::workers::Workers;

/// Why the haul cannot be driven as surveyed.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum NotDriven {
    /// The route cannot be cut into cells.
    #[error(transparent)]
    Course(#[from] CourseError),
    /// A leg without a rung.
    #[error(transparent)]
    NoRung(#[from] NoRung),
    /// The combination cannot be made ready.
    #[error(transparent)]
    Truck(#[from] TruckError),
    /// The truck cannot go on.
    #[error(transparent)]
    Stepper(#[from] StepperError),
    /// No rung is possible where one is wanted.
    #[error(
        "load state '{load_state}' has no possible rung at or under '{rung}'; see the windows for the reason"
    )]
    NoUsableRung {
        /// The load state.
        load_state: String,
        /// The rung wanted.
        rung: String,
    },
}

/// The haul as planned and driven.
#[derive(Debug, Clone, PartialEq)]
pub struct Driven {
    /// Change points of the empty run, then of the laden run, in the order of travel.
    pub points: Vec<ChangePoint>,
    /// How the laden pressures are reached.
    pub laden_change: LadenChoice,
    /// The cycle.
    pub cycle: Cycle,
    /// Water the compressor takes in with its air in one cycle, for the dryer.
    pub water: Option<Mass>,
    /// The same haul at the highest rung all the way.
    pub full_pressure_time: Time,
    /// What the driver does.
    pub plan: CyclePlan,
    /// Rungs that were wanted but are not possible, with the slower one used: (load state, wanted, used).
    pub replaced: Vec<(usize, usize, usize)>,
    /// Stretches kept on a slower rung because the raise would not be complete within them.
    pub kept_low: Vec<KeptLow>,
    /// Longest stay on each rung, for hold limits.
    pub stays: Vec<LongestStay>,
    /// Sections of the empty and of the laden run.
    pub sections: [Vec<Section>; 2],
}

/// Longest cell of the road while a change is sampled.
const SAMPLING_CELL: Length = Length::from_m(50.0);

/// A haul with its truck and courses, ready to be driven.
struct Ready {
    truck: Truck,
    empty: Course,
    laden: Course,
}

fn ready(haul: &HaulCycle, ladder: &Ladder, detail: &Detail) -> Result<Ready, NotDriven> {
    let truck = Truck::new(haul, ladder.set_pressures(haul))?;
    let (empty, laden) = Course::of_haul(haul, detail.cell, &detail.style)?;
    Ok(Ready { truck, empty, laden })
}

/// Sections with every rung replaced by the usable one.
fn usable_sections(
    haul: &HaulCycle,
    ladder: &Ladder,
    course: &Course,
    load_state: usize,
    replaced: &mut Vec<(usize, usize, usize)>,
) -> Result<Vec<Section>, NotDriven> {
    let combination = &haul.combination;
    let mut found: Vec<Section> = Vec::new();
    for section in sections(haul, load_state, course)? {
        let rung = ladder.usable_rung(load_state, section.rung).ok_or_else(|| {
            NotDriven::NoUsableRung {
                load_state: combination.load_states[load_state].name.clone(),
                rung: combination.rungs[section.rung].name.clone(),
            }
        })?;
        let swap = (load_state, section.rung, rung);
        if rung != section.rung && !replaced.contains(&swap) {
            replaced.push(swap);
        }
        match found.last_mut() {
            Some(last) if last.rung == rung => last.to = section.to,
            _ => found.push(Section { rung, ..section }),
        }
    }
    Ok(found)
}

pub(crate) fn drive(
    haul: &HaulCycle,
    ladder: &Ladder,
    detail: &Detail,
    workers: &dyn Workers,
) -> Result<Driven, NotDriven> {
    let Ready { truck, empty, laden } = ready(haul, ladder, detail)?;
    let (empty_coarse, laden_coarse) =
        Course::of_haul(haul, detail.cell.max(SAMPLING_CELL), &detail.style)?;
    let mut replaced = Vec::new();
    let (empty_state, laden_state) = (haul.empty_state, haul.laden_state);
    let empty_sections = usable_sections(haul, ladder, &empty, empty_state, &mut replaced)?;
    let laden_sections = usable_sections(haul, ladder, &laden, laden_state, &mut replaced)?;
    let empty_run = Run {
        truck: &truck,
        course: &empty,
        coarse: &empty_coarse,
        sections: &empty_sections,
        style: detail.style,
        load_state: empty_state,
    };
    let laden_run = Run {
        truck: &truck,
        course: &laden,
        coarse: &laden_coarse,
        sections: &laden_sections,
        style: detail.style,
        load_state: laden_state,
    };
    let empty_start = empty_run.target(empty_sections[0].rung);
    let laden_start = laden_run.target(laden_sections[0].rung);

    let begin = after_shift_start(haul, &empty_run, empty_start)?;
    let sampling = Sampling { samples: detail.samples, workers };
    let walked = walk(haul, &empty_run, &begin, sampling)?;
    let caps = empty_run.caps_of(&walked.changes);
    let (laden_change, rolled) =
        choose_laden_change(haul, &empty_run, &walked.last, &caps, laden_start)?;
    let mut changes = walked.changes;
    changes.extend(rolled);
    let empty_caps = empty_run.caps_of(&changes);
    let loaded =
        after_loading(haul, &empty_run, &walked.last, &changes, &empty_caps, &laden_change)?;
    let laden_walked = walk(haul, &laden_run, &loaded, sampling)?;
    let laden_caps = laden_run.caps_of(&laden_walked.changes);

    let mut points = walked.points;
    points.extend(laden_walked.points);
    let mut kept_low = walked.kept_low;
    kept_low.extend(laden_walked.kept_low);
    let plan = CyclePlan {
        empty_start,
        empty: changes,
        empty_caps,
        laden_change: laden_change.chosen,
        laden_start,
        laden: laden_walked.changes,
        laden_caps,
    };
    let mut stays = Stays::default();
    let cycle = Cycle::drive(haul, &truck, (&empty, &laden), &plan, detail.style, &mut stays)?;
    let stays = stays.longest();
    let full_pressure_time = full_pressure(haul, ladder, &truck, (&empty, &laden), detail)?;
    let weather = &haul.weather;
    let water = water_taken_in(cycle.compressed(), weather.ambient, weather.humidity).ok();
    Ok(Driven {
        points,
        laden_change,
        cycle,
        water,
        full_pressure_time,
        plan,
        replaced,
        kept_low,
        stays,
        sections: [empty_sections, laden_sections],
    })
}

/// The state in which the empty run begins.
fn after_shift_start(
    haul: &HaulCycle,
    run: &Run<'_>,
    start: Target,
) -> Result<State, StepperError> {
    let envelope = run.envelope(&[]);
    let stepper = Stepper::new(run.truck, run.course, &envelope, run.style);
    let parked = Target { rung: haul.shift_start.parked_rung, load_state: haul.empty_state };
    let mut state = stepper.start(parked, haul.empty_state, haul.shift_start.supply)?;
    let up = haul::StandUntil::Supply(haul.combination.supply.governor.cut_in);
    stepper.stand(&mut state, up, true, &mut haul::NoRecord)?;
    stepper.order(&mut state, start);
    stepper.stand(&mut state, haul::StandUntil::Complete, true, &mut haul::NoRecord)?;
    Ok(state)
}

/// The state in which the laden run begins: empty run driven, loaded, laden pressures complete.
fn after_loading(
    haul: &HaulCycle,
    run: &Run<'_>,
    last: &State,
    changes: &[haul::PlannedChange],
    caps: &[haul::CappedStretch],
    choice: &LadenChoice,
) -> Result<State, StepperError> {
    let envelope = run.envelope(caps);
    let stepper = Stepper::new(run.truck, run.course, &envelope, run.style);
    let mut state = last.clone();
    let rest: Vec<_> =
        changes.iter().copied().filter(|change| change.at > last.travelled()).collect();
    let mut record = haul::NoRecord;
    stepper.run(&mut state, &mut haul::Schedule::new(rest), &mut record)?;
    if choice.chosen == LadenChange::WhileLoading {
        stepper.order(&mut state, choice.to);
    }
    let passed = haul::StandUntil::Passed(haul.loading.time);
    stepper.stand(&mut state, passed, haul.loading.high_idle, &mut record)?;
    stepper.load(&mut state, haul.laden_state);
    if state.ordered() != choice.to {
        stepper.order(&mut state, choice.to);
    }
    stepper.stand(&mut state, haul::StandUntil::Complete, true, &mut record)?;
    stepper.turn_round(&mut state);
    Ok(state)
}

/// Cycle time on the highest possible rung all the way, without a change but for the load.
fn full_pressure(
    haul: &HaulCycle,
    ladder: &Ladder,
    truck: &Truck,
    courses: (&Course, &Course),
    detail: &Detail,
) -> Result<Time, NotDriven> {
    let top = haul.combination.rungs.len() - 1;
    let highest = |load_state: usize| {
        let rung = ladder.usable_rung(load_state, top).ok_or_else(|| NotDriven::NoUsableRung {
            load_state: haul.combination.load_states[load_state].name.clone(),
            rung: haul.combination.rungs[top].name.clone(),
        })?;
        // Full pressure is the laden one, held empty and laden alike.
        Ok::<_, NotDriven>(Target { rung, load_state: haul.laden_state })
    };
    let target = highest(haul.laden_state)?;
    let plan = CyclePlan {
        empty_start: target,
        empty: Vec::new(),
        empty_caps: Vec::new(),
        laden_change: LadenChange::AfterLoading,
        laden_start: target,
        laden: Vec::new(),
        laden_caps: Vec::new(),
    };
    let cycle = Cycle::drive(haul, truck, courses, &plan, detail.style, &mut haul::NoRecord)?;
    Ok(cycle.time())
}

/// Drives a planned haul again with something listening, for tables, charts and logs.
///
/// # Errors
/// [`NotDriven`] as the plan itself.
pub fn simulate<R: Record>(
    haul: &HaulCycle,
    ladder: &Ladder,
    plan: &CyclePlan,
    detail: &Detail,
    record: &mut R,
) -> Result<Cycle, NotDriven> {
    let Ready { truck, empty, laden } = ready(haul, ladder, detail)?;
    Ok(Cycle::drive(haul, &truck, (&empty, &laden), plan, detail.style, record)?)
}
