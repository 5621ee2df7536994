//! What to ask the maker of a tire: every load and speed it is run at, and the pressure wanted there.

use model::haul_cycle::HaulCycle;
use model::tire::load_inflation::USUAL_LOWEST_TABLE_PRESSURE;
use model::tire::{Fitment, Tire};
use quantity::{ColdPressure, Length, Mass, Speed, Time};

use crate::Plan;
use crate::sections::wanted_rung;
use crate::window::{Approval, CellId, MinimumKind, Window, worst_tire};

/// One load and speed that a tire is run at, on one group of axles.
#[derive(Debug, Clone, PartialEq)]
pub struct RequestLine {
    /// Index of the axle group.
    pub group: usize,
    /// Single or dual.
    pub fitment: Fitment,
    /// Index of the load state.
    pub load_state: usize,
    /// Index of the rung.
    pub rung: usize,
    /// Load on the worst tire of the group.
    pub load: Mass,
    /// Highest speed: the cap of the rung.
    pub speed: Speed,
    /// Road on it in a cycle.
    pub distance: Length,
    /// Longest road on it at a time; unknown where the haul cannot be driven.
    pub stay: Option<Length>,
    /// Longest time on it at a time, standing included.
    pub hold: Option<Time>,
    /// Lowest cold pressure wanted: nothing else asks for more; unknown where no window is left.
    pub wanted: Option<ColdPressure>,
    /// What a published table gives for the load and speed; `None` under its lowest row, or where
    /// the maker's own rows stand in its place.
    pub table: Option<ColdPressure>,
    /// Cold pressure that the plan holds.
    pub held: Option<ColdPressure>,
    /// What the ground would like at most, where that is less than what is held.
    pub ground: Option<ColdPressure>,
    /// Who stands behind it today.
    pub approval: Approval,
}

/// Every load and speed that a tire model is run at on one haul, in the usual chain state: by
/// group, empty run first, slowest rung first.
///
/// Loads are those of the worst tire on the steepest crossfall of the rung, as in the windows.
/// Groups at a fixed pressure are left out: there is nothing to ask for them.
pub fn lines(haul: &HaulCycle, plan: &Plan, tire: &Tire) -> Vec<RequestLine> {
    let combination = &haul.combination;
    let mut found = Vec::new();
    for (group, axles) in combination.groups.iter().enumerate() {
        let Some(channel) = axles.channel else { continue };
        if !axles.tire_models().any(|model| model.name == tire.name) {
            continue;
        }
        for load_state in [haul.empty_state, haul.laden_state] {
            for rung in 0..combination.rungs.len() {
                let distance = road_on(haul, load_state, rung);
                let id = CellId { channel, load_state, chain_state: 0, rung };
                let Some(cell) = plan.ladder.cell(id).filter(|_| distance > Length::ZERO) else {
                    continue;
                };
                let crossfall = plan.ladder.uses[rung].crossfall;
                let state = &combination.load_states[load_state];
                let load = worst_tire(group, axles, state, crossfall).load;
                // A lifted axle carries nothing, and nothing is to be asked for it.
                if load <= Mass::ZERO {
                    continue;
                }
                let stay = plan.driven.as_ref().ok().and_then(|driven| {
                    let same = |stay: &&crate::hold::LongestStay| {
                        (stay.load_state, stay.rung) == (load_state, rung)
                    };
                    driven.stays.iter().find(same)
                });
                let window = cell.window.as_ref();
                let held = cell.set.as_ref().map(|set| set.cold);
                found.push(RequestLine {
                    group,
                    fitment: axles.fitment,
                    load_state,
                    rung,
                    load,
                    speed: combination.rungs[rung].cap,
                    distance,
                    stay: stay.map(|stay| stay.road),
                    hold: stay.map(|stay| stay.time),
                    wanted: window.map(|window| window.governing_minimum().pressure),
                    table: window.and_then(|window| table(window, group, tire)),
                    held,
                    ground: window
                        .and_then(|window| window.ground_advice())
                        .map(|advice| advice.pressure)
                        .filter(|advice| held.is_none_or(|held| *advice < held)),
                    approval: cell.approval,
                });
            }
        }
    }
    found
}

/// What a published table gives for a group; nothing where that lies under its lowest row.
fn table(window: &Window, group: usize, tire: &Tire) -> Option<ColdPressure> {
    let lowest_row = tire.lowest_table_pressure.unwrap_or(USUAL_LOWEST_TABLE_PRESSURE);
    let of_table = |kind| matches!(kind, MinimumKind::LoadTable | MinimumKind::RestrictedSpeed);
    let limits = window.minimum.iter().filter(|limit| limit.group == group && of_table(limit.kind));
    limits
        .map(|limit| limit.pressure)
        .max_by(ColdPressure::total_cmp)
        .filter(|pressure| *pressure >= lowest_row)
}

/// Road of a run that wants a rung.
fn road_on(haul: &HaulCycle, load_state: usize, rung: usize) -> Length {
    let legs = haul.route.legs.iter().enumerate();
    legs.filter(|(leg, _)| wanted_rung(haul, load_state, *leg) == Some(rung))
        .map(|(_, leg)| leg.to - leg.from)
        .fold(Length::ZERO, |sum, road| sum + road)
}
