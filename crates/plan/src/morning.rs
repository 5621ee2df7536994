//! The morning after: tires parked on the lowest rung through the coldest night.

use model::haul_cycle::HaulCycle;
use model::tire::roadside::SERVICE_SHARE;
use model::vehicle::WheelValve;
use quantity::{ColdPressure, GaugePressure};

use crate::PlanError;
use crate::ladder::Ladder;
use crate::window::{CellId, Site};

/// One channel in the morning.
#[derive(Debug, Clone, PartialEq)]
pub struct MorningAfter {
    /// Index of the channel.
    pub channel: usize,
    /// Rung it was parked on.
    pub rung: usize,
    /// What a vented gauge reads at the coldest.
    pub reading: GaugePressure,
    /// What the empty truck needs on that rung.
    pub needed: ColdPressure,
    /// Reading over need.
    pub share: f64,
    /// Whether it stays above the closing pressure of its wheel valves; `None` without such valves.
    pub above_closing: Option<bool>,
}

impl MorningAfter {
    /// Whether the truck may move off as it stands.
    pub fn may_move(&self) -> bool {
        self.share > SERVICE_SHARE && self.above_closing != Some(false)
    }
}

/// Looks at every channel, parked empty on the lowest rung that is possible.
///
/// The 80 % of 29 CFR 1910.177 is judged on the cold reading against what the load and speed
/// need; that is our reading of the rule.
///
/// # Errors
/// [`PlanError::Weather`].
pub(crate) fn after(haul: &HaulCycle, ladder: &Ladder) -> Result<Vec<MorningAfter>, PlanError> {
    let site = Site::new(&haul.weather)?;
    let combination = &haul.combination;
    let mut found = Vec::new();
    for channel in 0..combination.channels.len() {
        let lowest = (0..combination.rungs.len()).find_map(|rung| {
            let id = CellId { channel, load_state: haul.empty_state, chain_state: 0, rung };
            let cell = ladder.cell(id)?;
            Some((
                rung,
                cell.set.as_ref()?.cold,
                cell.window.as_ref()?.governing_minimum().pressure,
            ))
        });
        let Some((rung, held, needed)) = lowest else { continue };
        let reading = site.read_at(held, site.coldest);
        let above_closing = combination
            .groups_of(channel)
            .filter_map(|(_, group)| match group.wheel_valve {
                Some(WheelValve::SelfClosing { closes_below }) => Some(reading > closes_below),
                _ => None,
            })
            .reduce(|a, b| a && b);
        found.push(MorningAfter {
            channel,
            rung,
            reading,
            needed,
            share: reading.as_kpa() / needed.as_kpa(),
            above_closing,
        });
    }
    Ok(found)
}
