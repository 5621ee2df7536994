//! Cautions as identifiers with their arguments.

use std::collections::BTreeMap;

use model::haul_cycle::HaulCycle;
use model::tire::Lapse;
use plan::{Caution, CellId};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::ladder::group_name;

/// Something to be told.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct CautionView {
    /// Which, such as `needs-approval`.
    pub caution: String,
    /// Whether it means that the plan must not be driven as it stands.
    pub breaks_a_limit: bool,
    /// Names it speaks of, by role.
    pub names: BTreeMap<String, String>,
    /// Numbers it speaks of, by name with unit.
    pub numbers: BTreeMap<String, f64>,
}

pub(super) fn caution(haul: &HaulCycle, caution: &Caution) -> CautionView {
    let mut view = CautionView {
        caution: String::new(),
        breaks_a_limit: caution.breaks_a_limit(),
        names: BTreeMap::new(),
        numbers: BTreeMap::new(),
    };
    view.caution = fill(haul, caution, &mut view).to_owned();
    view
}

#[expect(clippy::too_many_lines, reason = "one short arm a caution")]
fn fill(haul: &HaulCycle, caution: &Caution, view: &mut CautionView) -> &'static str {
    let combination = &haul.combination;
    match caution {
        Caution::TireMakerApproves => "maker-approves",
        Caution::LocalLawDecides => "law-decides",
        Caution::LicensedWork => "trained-people",
        Caution::RolloverNotAssessed => "rollover",
        Caution::NoLowRungOnSideSlope => "side-slope",
        Caution::NoLoweringOnIce => "ice",
        Caution::NeedsApproval { cell } => {
            view.cell(haul, *cell);
            "needs-approval"
        }
        Caution::ApprovalLapsed { tire, document, lapse } => {
            view.name("tire", tire);
            view.name("document", document);
            match lapse {
                Lapse::Expired { on } => {
                    view.name("date", &on.to_string());
                    "approval-expired"
                }
                Lapse::TireChanged => "approval-tire-changed",
                Lapse::RimChanged => "approval-rim-changed",
            }
        }
        Caution::UnderRecommended { cell, recommended } => {
            view.cell(haul, *cell);
            view.number("recommended_kpa", recommended.as_kpa());
            "under-recommended"
        }
        Caution::NotPossible { cell, wanted } => {
            view.cell(haul, *cell);
            if *wanted { "not-possible-wanted" } else { "not-possible" }
        }
        Caution::SlowerRungUsed { load_state, wanted, used } => {
            view.name("load_state", &combination.load_states[*load_state].name);
            view.name("wanted", &combination.rungs[*wanted].name);
            view.name("rung", &combination.rungs[*used].name);
            "slower-rung-used"
        }
        Caution::FixedGroupTooSoft { group, load_state } => {
            view.name("axle_group", &group_name(haul, *group));
            view.name("load_state", &combination.load_states[*load_state].name);
            "fixed-group-too-soft"
        }
        Caution::WheelEndsShut { group, count } => {
            view.name("axle_group", &group_name(haul, *group));
            view.number("count", f64::from(*count));
            "wheel-ends-shut"
        }
        Caution::HandSetTooLow { cell, wanted, lowest } => {
            view.cell(haul, *cell);
            view.number("wanted_kpa", wanted.as_kpa());
            view.number("lowest_kpa", lowest.as_kpa());
            "hand-set-too-low"
        }
        Caution::AboveGroundAdvice { cell, advice } => {
            view.cell(haul, *cell);
            view.number("advice_kpa", advice.as_kpa());
            "above-ground-advice"
        }
        Caution::LeadDoesNotFit { point } => {
            view.number("change_point", (point + 1) as f64);
            "lead-does-not-fit"
        }
        Caution::LeadFitsOnlyNominally { point } => {
            view.number("change_point", (point + 1) as f64);
            "lead-fits-only-nominally"
        }
        Caution::BeforeFirstMove { channel } => {
            view.name("channel", &combination.channels[*channel].name);
            "before-first-move"
        }
        Caution::HeldTooLong { rung, load_state, road, limit } => {
            view.name("rung", &combination.rungs[*rung].name);
            view.name("load_state", &combination.load_states[*load_state].name);
            view.number("road_m", road.as_m());
            view.number("limit_m", limit.as_m());
            "held-too-long"
        }
        Caution::HeldTooLongInTime { rung, load_state, time, limit } => {
            view.name("rung", &combination.rungs[*rung].name);
            view.name("load_state", &combination.load_states[*load_state].name);
            view.number("time_s", time.as_s());
            view.number("limit_s", limit.as_s());
            "held-too-long-in-time"
        }
        Caution::KeptLow { kept } => {
            view.name("load_state", &combination.load_states[kept.load_state].name);
            view.name("wanted", &combination.rungs[kept.wanted].name);
            view.name("rung", &combination.rungs[kept.kept].name);
            view.number("from_km", kept.from.as_km());
            view.number("to_km", kept.to.as_km());
            "kept-low"
        }
        Caution::CompressorOverLimit { longest, limit } => {
            view.number("longest_s", longest.as_s());
            view.number("limit_s", limit.as_s());
            "compressor-over-limit"
        }
        Caution::SupplyTouchesBrakes { lowest, threshold } => {
            view.number("lowest_kpa", lowest.as_kpa());
            view.number("threshold_kpa", threshold.as_kpa());
            "supply-touches-brakes"
        }
        Caution::CrossfallNotAssessed { load_state } => {
            view.name("load_state", &combination.load_states[*load_state].name);
            "crossfall-not-assessed"
        }
        Caution::EstimatedWeight { group, load_state } => {
            view.name("axle_group", &group_name(haul, *group));
            view.name("load_state", &combination.load_states[*load_state].name);
            "estimated-weight"
        }
        Caution::BodyRaised { load_state } => {
            view.name("load_state", &combination.load_states[*load_state].name);
            "body-raised"
        }
        Caution::TreatedAs { load_state, other } => {
            view.name("load_state", &combination.load_states[*load_state].name);
            view.name("other_state", &combination.load_states[*other].name);
            "treated-as"
        }
        Caution::WheelValvesShutEarly { channel } => {
            view.name("channel", &combination.channels[*channel].name);
            "wheel-valves-shut-early"
        }
        Caution::DrivingHabitsAssumed => "driving-habits",
        Caution::NotDriven { reason } => {
            view.name("reason", reason);
            "not-driven"
        }
    }
}

impl CautionView {
    fn name(&mut self, role: &str, name: &str) {
        self.names.insert(role.to_owned(), name.to_owned());
    }

    fn number(&mut self, key: &str, value: f64) {
        self.numbers.insert(key.to_owned(), value);
    }

    fn cell(&mut self, haul: &HaulCycle, cell: CellId) {
        let combination = &haul.combination;
        let state = &combination.load_states[cell.load_state];
        self.name("channel", &combination.channels[cell.channel].name);
        self.name("load_state", &state.name);
        self.name("chain_state", &state.chain_states[cell.chain_state].name);
        self.name("rung", &combination.rungs[cell.rung].name);
    }
}
