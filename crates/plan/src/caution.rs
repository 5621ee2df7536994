//! What people must be told with a plan, as values with their numbers.

use model::haul_cycle::HaulCycle;
use model::tire::Lapse;
use model::tire::roadside::SERVICE_SHARE;
use model::vehicle::Weighing;
use quantity::{ColdPressure, GaugePressure, Length, Time};

use crate::change::KeptLow;
use crate::drive::{Driven, NotDriven};
use crate::hold::LongestStay;
use crate::ladder::Ladder;
use crate::morning::MorningAfter;
use crate::window::{Approval, CellId, FixedGroup};

/// Something to be told.
#[derive(Debug, Clone, PartialEq)]
pub enum Caution {
    /// The tire maker approves pressures.
    TireMakerApproves,
    /// Local law and the road authority decide.
    LocalLawDecides,
    /// Wheel, rim and brake work belongs to trained and licensed people.
    LicensedWork,
    /// Rollover is not assessed.
    RolloverNotAssessed,
    /// No low rung on side slope, in tight curves, while tipping or lifting.
    NoLowRungOnSideSlope,
    /// No lowering for grip on ice or hard snow.
    NoLoweringOnIce,
    /// A cell nobody stands behind yet.
    NeedsApproval {
        /// The cell.
        cell: CellId,
    },
    /// An approval once given no longer counts, so its rows only advise.
    ApprovalLapsed {
        /// Tire model.
        tire: String,
        /// The document.
        document: String,
        /// Why.
        lapse: Lapse,
    },
    /// Set at or under 80 % of what the tire maker counts as recommended pressure in service.
    UnderRecommended {
        /// The cell.
        cell: CellId,
        /// The ordinary table's pressure.
        recommended: ColdPressure,
    },
    /// A cell with an empty window.
    NotPossible {
        /// The cell.
        cell: CellId,
        /// Whether the haul as surveyed wants it.
        wanted: bool,
    },
    /// A rung that is not possible was replaced by a slower one.
    SlowerRungUsed {
        /// Load state.
        load_state: usize,
        /// Rung wanted.
        wanted: usize,
        /// Rung used.
        used: usize,
    },
    /// A fixed-pressure group is too soft for its load.
    FixedGroupTooSoft {
        /// Axle group.
        group: usize,
        /// Load state.
        load_state: usize,
    },
    /// Wheel ends shut by hand: their tires do not follow.
    WheelEndsShut {
        /// Axle group.
        group: usize,
        /// How many.
        count: u32,
    },
    /// A pressure fixed by hand lay under the lowest and was not used.
    HandSetTooLow {
        /// The cell.
        cell: CellId,
        /// The pressure wanted.
        wanted: ColdPressure,
        /// The lowest.
        lowest: ColdPressure,
    },
    /// The ground would like less than the lowest allowed.
    AboveGroundAdvice {
        /// The cell.
        cell: CellId,
        /// What the ground would like.
        advice: ColdPressure,
    },
    /// A change is not complete where it must be.
    LeadDoesNotFit {
        /// Index of the change point.
        point: usize,
    },
    /// The nominal change fits, but fewer than nine of ten do.
    LeadFitsOnlyNominally {
        /// Index of the change point.
        point: usize,
    },
    /// Before the first move the tires must be brought up.
    BeforeFirstMove {
        /// Index of the channel.
        channel: usize,
    },
    /// A rung is held longer than its limit allows.
    HeldTooLong {
        /// Rung.
        rung: usize,
        /// Load state.
        load_state: usize,
        /// Road on it.
        road: Length,
        /// Limit.
        limit: Length,
    },
    /// A rung is held longer in time than its limit allows.
    HeldTooLongInTime {
        /// Rung.
        rung: usize,
        /// Load state.
        load_state: usize,
        /// Time on it, standing included.
        time: Time,
        /// Limit.
        limit: Time,
    },
    /// A stretch stays on a slower rung: the raise would not be complete within it.
    KeptLow {
        /// The stretch.
        kept: KeptLow,
    },
    /// The compressor runs longer without a pause than it may.
    CompressorOverLimit {
        /// Longest run.
        longest: Time,
        /// Limit.
        limit: Time,
    },
    /// Service pressure fell to the pressure where tire air stops.
    SupplyTouchesBrakes {
        /// Lowest.
        lowest: GaugePressure,
        /// Where it stops.
        threshold: GaugePressure,
    },
    /// Crossfall adds nothing to the load because the height of the load is not known.
    CrossfallNotAssessed {
        /// Load state.
        load_state: usize,
    },
    /// A weight was estimated.
    EstimatedWeight {
        /// Axle group.
        group: usize,
        /// Load state.
        load_state: usize,
    },
    /// A load state with the body raised: no low rung in it.
    BodyRaised {
        /// Load state.
        load_state: usize,
    },
    /// The loads of a state are not known: those of another stand in for them.
    TreatedAs {
        /// Load state.
        load_state: usize,
        /// The state whose loads stand in.
        other: usize,
    },
    /// Self-closing wheel valves shut before a lowering was complete: the tires stay harder.
    WheelValvesShutEarly {
        /// Index of the channel.
        channel: usize,
    },
    /// Driving habits are assumed.
    DrivingHabitsAssumed,
    /// The haul cannot be driven as surveyed.
    NotDriven {
        /// Why.
        reason: String,
    },
}

impl Caution {
    /// Whether it means that the plan must not be driven as it stands.
    pub fn breaks_a_limit(&self) -> bool {
        matches!(
            self,
            Self::FixedGroupTooSoft { .. }
                | Self::HandSetTooLow { .. }
                | Self::LeadDoesNotFit { .. }
                | Self::HeldTooLong { .. }
                | Self::HeldTooLongInTime { .. }
                | Self::CompressorOverLimit { .. }
                | Self::NotDriven { .. }
        ) || matches!(self, Self::NotPossible { wanted: true, .. })
    }
}

pub(crate) fn gather(
    haul: &HaulCycle,
    ladder: &Ladder,
    fixed: &[FixedGroup],
    morning: &[MorningAfter],
    driven: &Result<Driven, NotDriven>,
) -> Vec<Caution> {
    let mut found = vec![
        Caution::TireMakerApproves,
        Caution::LocalLawDecides,
        Caution::LicensedWork,
        Caution::RolloverNotAssessed,
        Caution::NoLowRungOnSideSlope,
        Caution::NoLoweringOnIce,
    ];
    of_cells(haul, ladder, &mut found);
    found.extend(fixed.iter().filter(|group| !group.is_enough()).map(|group| {
        Caution::FixedGroupTooSoft { group: group.group, load_state: group.load_state }
    }));
    of_survey(haul, ladder, &mut found);
    found.extend(
        morning
            .iter()
            .filter(|channel| !channel.may_move())
            .map(|channel| Caution::BeforeFirstMove { channel: channel.channel }),
    );
    match driven {
        Ok(driven) => of_drive(haul, ladder, driven, &mut found),
        Err(why) => found.push(Caution::NotDriven { reason: why.to_string() }),
    }
    found.push(Caution::DrivingHabitsAssumed);
    found
}

fn of_cells(haul: &HaulCycle, ladder: &Ladder, found: &mut Vec<Caution>) {
    let driven_state = |state| state == haul.empty_state || state == haul.laden_state;
    for cell in ladder.cells() {
        let id = cell.id;
        let wanted =
            ladder.uses[id.rung].used && id.chain_state == 0 && driven_state(id.load_state);
        match cell.approval {
            Approval::NotPossible => found.push(Caution::NotPossible { cell: id, wanted }),
            Approval::NeedsApproval => found.push(Caution::NeedsApproval { cell: id }),
            Approval::Maker | Approval::Standard => {}
        }
        let set = cell.set.as_ref().map(|set| set.cold);
        if let (Some(recommended), Some(set)) = (cell.recommended, set)
            && set <= recommended.scaled(SERVICE_SHARE)
        {
            found.push(Caution::UnderRecommended { cell: id, recommended });
        }
        if let (Some(wanted), Some(window)) = (cell.hand_set_too_low, &cell.window) {
            let lowest = window.governing_minimum().pressure;
            found.push(Caution::HandSetTooLow { cell: id, wanted, lowest });
        }
        if let (Some(set), Some(window)) = (&cell.set, &cell.window)
            && let Some(advice) = window.ground_advice()
            && set.cold > advice.pressure
        {
            found.push(Caution::AboveGroundAdvice { cell: id, advice: advice.pressure });
        }
    }
}

fn of_survey(haul: &HaulCycle, ladder: &Ladder, found: &mut Vec<Caution>) {
    let combination = &haul.combination;
    let tires = combination.groups.iter().flat_map(model::vehicle::AxleGroup::tire_models);
    for tire in tires {
        let Some(table) = &tire.maker_table else { continue };
        let Some(lapse) = table.lapsed else { continue };
        let caution = Caution::ApprovalLapsed {
            tire: tire.name.clone(),
            document: table.document.clone(),
            lapse,
        };
        if !found.contains(&caution) {
            found.push(caution);
        }
    }
    for (group, axles) in combination.groups.iter().enumerate() {
        if axles.wheel_ends_shut > 0 {
            found.push(Caution::WheelEndsShut { group, count: axles.wheel_ends_shut });
        }
    }
    let crossfall = ladder.uses.iter().any(|used| used.crossfall > 0.0);
    for (load_state, state) in combination.load_states.iter().enumerate() {
        if crossfall && state.center_height.is_none() {
            found.push(Caution::CrossfallNotAssessed { load_state });
        }
        if state.body_raised {
            found.push(Caution::BodyRaised { load_state });
        }
        if let Some(other) = state.treat_as {
            found.push(Caution::TreatedAs { load_state, other });
        }
        for (group, load) in state.groups.iter().enumerate() {
            if load.weighing == Weighing::Estimate {
                found.push(Caution::EstimatedWeight { group, load_state });
            }
        }
    }
}

fn of_drive(haul: &HaulCycle, ladder: &Ladder, driven: &Driven, found: &mut Vec<Caution>) {
    let combination = &haul.combination;
    for &(load_state, wanted, used) in &driven.replaced {
        found.push(Caution::SlowerRungUsed { load_state, wanted, used });
    }
    for (index, point) in driven.points.iter().enumerate() {
        if !point.fits {
            found.push(Caution::LeadDoesNotFit { point: index });
        }
        if point.fits && point.fits_p90 == Some(false) {
            found.push(Caution::LeadFitsOnlyNominally { point: index });
        }
    }
    for stay in &driven.stays {
        let LongestStay { load_state, rung, time, road } = *stay;
        let of_rows = ladder.cells().iter().filter_map(|cell| {
            let id = cell.id;
            let driven = (id.load_state, id.chain_state, id.rung) == (load_state, 0, rung);
            cell.hold.filter(|_| driven)
        });
        let hold = combination.rungs[rung].hold;
        let limit = of_rows.chain(hold.map(|hold| hold.distance)).min_by(Length::total_cmp);
        if let Some(limit) = limit.filter(|limit| road > *limit) {
            found.push(Caution::HeldTooLong { rung, load_state, road, limit });
        }
        if let Some(limit) = hold.map(|hold| hold.time).filter(|limit| time > *limit) {
            found.push(Caution::HeldTooLongInTime { rung, load_state, time, limit });
        }
    }
    for kept in &driven.kept_low {
        found.push(Caution::KeptLow { kept: *kept });
    }
    let limit = combination.controller.compressor_limit;
    let longest = driven
        .cycle
        .phases
        .iter()
        .map(|phase| phase.longest_loaded)
        .max_by(Time::total_cmp)
        .unwrap_or(Time::ZERO);
    if longest > limit {
        found.push(Caution::CompressorOverLimit { longest, limit });
    }
    let threshold = combination.controller.brake_threshold;
    if let Some(lowest) = driven.cycle.lowest_supply()
        && lowest <= threshold + quantity::PressureDifference::from_kpa(1.0)
    {
        found.push(Caution::SupplyTouchesBrakes { lowest, threshold });
    }
}
