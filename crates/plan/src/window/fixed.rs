//! Axle groups without an air channel: their one pressure is still tested for every load.

use model::haul_cycle::HaulCycle;
use model::vehicle::ChainState;
use quantity::{ColdPressure, Mass, Speed};

use super::limit::{Impossible, Limit, MinimumKind};
use super::minimum::Case;
use super::site::{RungUse, Site};

/// A group at a fixed pressure in one load state.
#[derive(Debug, Clone, PartialEq)]
pub struct FixedGroup {
    /// Index of the axle group.
    pub group: usize,
    /// Index of the load state.
    pub load_state: usize,
    /// The pressure it is kept at.
    pub pressure: ColdPressure,
    /// Load on the worst tire.
    pub load: Option<Mass>,
    /// What it needs at the highest cap used, with what governs.
    pub needed: Result<Limit<MinimumKind>, Impossible>,
}

impl FixedGroup {
    /// Whether the fixed pressure is enough.
    pub fn is_enough(&self) -> bool {
        self.needed.as_ref().is_ok_and(|limit| self.pressure >= limit.pressure)
    }
}

/// Tests every group without a channel, or whose wheel ends are all shut, in every load state.
pub(crate) fn fixed_groups(haul: &HaulCycle, site: &Site, uses: &[RungUse]) -> Vec<FixedGroup> {
    let combination = &haul.combination;
    let mut found = Vec::new();
    // The steer tires run at the highest cap of the ladder whatever the other tires hold.
    let Some(top) = uses.iter().rposition(|used| used.used) else { return found };
    let cap = combination.rungs[top].cap;
    let top_cap = combination.rungs.iter().map(|rung| rung.cap).fold(cap, Speed::max);
    let crossfall = uses.iter().map(|used| used.crossfall).fold(0.0, f64::max);
    let united_states = uses.iter().any(|used| used.united_states);
    let used = RungUse { crossfall, united_states, ..uses[top] };
    let bare = ChainState { name: String::new(), chained_groups: Vec::new() };
    for (load_state, state) in combination.load_states.iter().enumerate() {
        for (index, group) in combination.groups.iter().enumerate() {
            let Some(pressure) = group.fixed_pressure.filter(|_| group.channel.is_none()) else {
                continue;
            };
            if state.is_lifted(index) {
                continue;
            }
            let worst = group.tire_models().enumerate().map(|(model, tire)| {
                let case = Case {
                    index,
                    group,
                    model,
                    tire,
                    state,
                    chains: state.chain_states.first().unwrap_or(&bare),
                    cap,
                    top_cap,
                    used,
                    site,
                };
                let limits = case.limits();
                let load = limits.as_ref().ok().map(|found| found.worst.load);
                let needed = limits.and_then(|found| {
                    found
                        .limits
                        .into_iter()
                        .max_by(|a, b| a.pressure.total_cmp(&b.pressure))
                        .ok_or(Impossible::NotRated { group: index })
                });
                (load, needed)
            });
            // A tire for which nothing will do is worse than any that asks for much.
            let rank = |needed: &Result<Limit<MinimumKind>, Impossible>| {
                needed.as_ref().map_or(f64::INFINITY, |limit| limit.pressure.as_kpa())
            };
            let Some((load, needed)) = worst.max_by(|a, b| rank(&a.1).total_cmp(&rank(&b.1)))
            else {
                continue;
            };
            found.push(FixedGroup { group: index, load_state, pressure, load, needed });
        }
    }
    found
}
