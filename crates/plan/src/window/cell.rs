//! One cell of the ladder: an air channel in a load state, a chain state and on a rung.

use model::haul_cycle::HaulCycle;
use model::source::Standing;
use model::tire::load_inflation::{Exponent, USUAL_LOWEST_TABLE_PRESSURE};
use quantity::{ColdPressure, Length, PressureDifference, Speed, Temperature};

use super::limit::{Basis, Impossible, Limit, MaximumKind, MinimumKind};
use super::load_share::WorstTire;
use super::minimum::{Case, GroupMinimum};
use super::site::{RungUse, Site};
use super::stack::{SetPoint, dual_mismatch, set_point};
use super::{maximum, minimum};

/// Which cell.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct CellId {
    /// Index of the air channel.
    pub channel: usize,
    /// Index of the load state.
    pub load_state: usize,
    /// Index of the chain state within the load state.
    pub chain_state: usize,
    /// Index of the rung.
    pub rung: usize,
}

/// Who stands behind a cell.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Approval {
    /// Rows the tire maker approved.
    Maker,
    /// A standards table read at the source, used as printed.
    Standard,
    /// Nobody yet: it rests on memory, on a rule used backwards, or lies under the tables.
    NeedsApproval,
    /// No pressure will do.
    NotPossible,
}

/// Lowest and highest pressure of a cell.
#[derive(Debug, Clone, PartialEq)]
pub struct Window {
    /// Limits from below, the governing one first, then the next closest.
    pub minimum: Vec<Limit<MinimumKind>>,
    /// Limits from above, the governing one first; advice is among them.
    pub maximum: Vec<Limit<MaximumKind>>,
}

impl Window {
    /// The limit that sets the lowest pressure.
    pub fn governing_minimum(&self) -> &Limit<MinimumKind> {
        &self.minimum[0]
    }

    /// The next limit of another kind.
    pub fn minimum_runner_up(&self) -> Option<&Limit<MinimumKind>> {
        self.minimum.iter().find(|limit| limit.kind != self.minimum[0].kind)
    }

    /// The binding limit that sets the highest pressure; ground advice binds nothing.
    pub fn governing_maximum(&self) -> &Limit<MaximumKind> {
        self.maximum
            .iter()
            .find(|limit| limit.kind != MaximumKind::Ground)
            .unwrap_or(&self.maximum[0])
    }

    /// What the ground would like, if a leg says.
    pub fn ground_advice(&self) -> Option<&Limit<MaximumKind>> {
        self.maximum.iter().find(|limit| limit.kind == MaximumKind::Ground)
    }
}

/// A cell with its window and the value to set.
#[derive(Debug, Clone, PartialEq)]
pub struct Cell {
    /// Which one.
    pub id: CellId,
    /// Its window, where one can be worked out.
    pub window: Option<Window>,
    /// Value to set, where the window is not empty.
    pub set: Option<SetPoint>,
    /// Why it is not possible.
    pub impossible: Option<Impossible>,
    /// Who stands behind it.
    pub approval: Approval,
    /// Deflection of the worst tire at the cold pressure set, share of section height.
    pub deflection_share: Option<f64>,
    /// The worst tire.
    pub worst: Option<WorstTire>,
    /// Temperature of the warmest credible tire on the rung.
    pub warmest_tire: Temperature,
    /// Longest distance, where a maker's row limits it.
    pub hold: Option<Length>,
    /// A pressure fixed by hand that lay under the lowest, and was not used.
    pub hand_set_too_low: Option<ColdPressure>,
    /// The ordinary table's pressure, where the tire maker counts that as recommended in service.
    pub recommended: Option<ColdPressure>,
}

/// Works out one cell.
pub(crate) fn cell(haul: &HaulCycle, site: &Site, used: RungUse, id: CellId) -> Cell {
    let impossible = |why: Impossible, window: Option<Window>, warmest_tire| Cell {
        id,
        window,
        set: None,
        impossible: Some(why),
        approval: Approval::NotPossible,
        deflection_share: None,
        worst: None,
        warmest_tire,
        hold: None,
        hand_set_too_low: None,
        recommended: None,
    };
    match gather(haul, site, used, id) {
        Err(why) => impossible(why, None, site.warmest),
        Ok(gathered) => finish(haul, site, id, gathered)
            .unwrap_or_else(|(why, window, warmest)| impossible(why, Some(window), warmest)),
    }
}

struct Gathered {
    window: Window,
    /// Minimum of the group that governs, for deflection and warm-up.
    governing: GroupMinimum,
    /// Lowest full-speed table pressure that covers every group.
    full_speed: Option<ColdPressure>,
    recommended: Option<ColdPressure>,
    warmest_tire: Temperature,
    hold: Option<Length>,
}

fn gather(
    haul: &HaulCycle,
    site: &Site,
    used: RungUse,
    id: CellId,
) -> Result<Gathered, Impossible> {
    let combination = &haul.combination;
    let state = &combination.load_states[id.load_state];
    let cap = combination.rungs[id.rung].cap;
    let top_cap = combination.rungs.iter().map(|rung| rung.cap).fold(cap, Speed::max);
    let mut minimum: Vec<Limit<MinimumKind>> = Vec::new();
    let mut groups: Vec<((usize, usize), GroupMinimum)> = Vec::new();
    let mut recommended: Option<ColdPressure> = None;
    let fed = combination.standing_groups_of(id.channel, state).flat_map(|(index, group)| {
        group.tire_models().enumerate().map(move |(model, tire)| (index, group, model, tire))
    });
    for (index, group, model, tire) in fed {
        let case: Case<'_> = minimum::Case {
            index,
            group,
            model,
            tire,
            state,
            chains: &state.chain_states[id.chain_state],
            cap,
            top_cap,
            used,
            site,
        };
        let found = case.limits()?;
        minimum.extend(found.limits.iter().cloned());
        if let Some(table) = found.recommended(tire, group.fitment) {
            recommended = Some(recommended.map_or(table, |known| known.max(table)));
        }
        groups.push(((index, model), found));
    }
    minimum.sort_by(|a, b| b.pressure.total_cmp(&a.pressure));
    let Some(lowest) = minimum.first().map(|limit| limit.pressure) else {
        let name = &combination.channels[id.channel].name;
        let reason = format!("air channel '{name}' feeds no axle group");
        return Err(Impossible::Refused { group: 0, reason });
    };
    let warmest_tire = groups
        .iter()
        .map(|(_, found)| site.warmest + found.warm_up.rise(lowest, cap).value)
        .fold(site.warmest, Temperature::max);
    let mut maximum: Vec<Limit<MaximumKind>> = combination
        .groups_of(id.channel)
        .flat_map(|(index, group)| {
            maximum::limits(index, group, &combination.supply, &used, warmest_tire, site)
        })
        .collect();
    maximum.sort_by(|a, b| a.pressure.total_cmp(&b.pressure));
    let full_speed =
        groups.iter().map(|(_, found)| found.full_speed).reduce(|a, b| Some(a?.max(b?))).flatten();
    let hold = groups.iter().filter_map(|(_, found)| found.hold).min_by(Length::total_cmp);
    let governing_tire = (minimum[0].group, minimum[0].tire);
    let governing = groups
        .into_iter()
        .find(|(index, _)| *index == governing_tire)
        .map(|(_, found)| found)
        .ok_or(Impossible::NotRated { group: governing_tire.0 })?;
    let window = Window { minimum, maximum };
    Ok(Gathered { window, governing, full_speed, recommended, warmest_tire, hold })
}

fn finish(
    haul: &HaulCycle,
    site: &Site,
    id: CellId,
    gathered: Gathered,
) -> Result<Cell, (Impossible, Window, Temperature)> {
    let Gathered { window, governing, full_speed, recommended, warmest_tire, hold } = gathered;
    let combination = &haul.combination;
    let lowest = window.governing_minimum().pressure;
    let governs = window.governing_minimum();
    let group = &combination.groups[governs.group];
    let tire = group.tire_models().nth(governs.tire).unwrap_or(&group.tire);
    let hand_set = combination
        .hand_set
        .iter()
        .find(|cell| {
            (cell.channel, cell.load_state, cell.rung) == (id.channel, id.load_state, id.rung)
        })
        .map(|cell| cell.pressure);
    // Mismatched mates ask for more only where the load asks for the pressure.
    let by_load = window.minimum.iter().find(|limit| {
        let same = (limit.group, limit.tire) == (governs.group, governs.tire);
        same && matches!(limit.basis, Basis::Load { .. } | Basis::Deflection { .. })
    });
    let mismatch = by_load.map_or(PressureDifference::ZERO, |limit| {
        let asked = limit.pressure;
        let deflection = governing.law.deflection(governing.worst.load, asked).ok();
        let more = deflection.map_or(PressureDifference::ZERO, |deflection| {
            dual_mismatch(group, asked, deflection.value, &Exponent::for_tire(tire))
        });
        (asked + more - lowest).max(PressureDifference::ZERO)
    });
    let set = set_point(lowest, mismatch, hand_set, warmest_tire, &combination.controller, site);
    // A tire at ambient temperature filled to the set value holds exactly that as its cold
    // pressure of the day: that, and what the supply must reach, is what the highest bounds.
    let filled_cold = ColdPressure::read_at_reference(set.vented);
    let supply_reads = combination.supply.governor.cut_in;
    let broken = window.maximum.iter().find(|limit| match limit.kind {
        MaximumKind::Ground => false,
        MaximumKind::Supply => set.vented.as_kpa() > supply_reads.as_kpa() + 1e-6,
        MaximumKind::MoldedMaximum | MaximumKind::Rim | MaximumKind::Permit => {
            filled_cold.as_kpa() > limit.pressure.as_kpa() + 1e-6
        }
    });
    if let Some(limit) = broken {
        let (lowest, highest) = match limit.kind {
            MaximumKind::Supply => (set.cold, limit.pressure),
            _ => (filled_cold, limit.pressure),
        };
        return Err((Impossible::Empty { lowest, highest, by: limit.kind }, window, warmest_tire));
    }
    let deflection_share = governing
        .law
        .deflection(governing.worst.load, set.cold)
        .ok()
        .map(|deflection| deflection.share_of_section_height);
    let approval = approval(haul, &window, &set, full_speed, id);
    Ok(Cell {
        id,
        // Under the lowest and what must be added to it, the pressure wanted cannot be used as it is.
        hand_set_too_low: hand_set.filter(|wanted| {
            let controller = &combination.controller;
            *wanted < lowest + mismatch + controller.gauge_error + controller.deadband
        }),
        set: Some(set),
        impossible: None,
        approval,
        deflection_share,
        worst: Some(governing.worst),
        warmest_tire,
        hold,
        recommended,
        window: Some(window),
    })
}

/// Who stands behind the pressure set: the maker's approved rows, the ordinary table, or nobody.
fn approval(
    haul: &HaulCycle,
    window: &Window,
    set: &SetPoint,
    full_speed: Option<ColdPressure>,
    id: CellId,
) -> Approval {
    let combination = &haul.combination;
    let state = &combination.load_states[id.load_state];
    // What the tires are sure to hold: gauge error and deadband may both take from what is set.
    let controller = &combination.controller;
    let held = set.cold - controller.gauge_error - controller.deadband;
    let fitted = || {
        combination.standing_groups_of(id.channel, state).flat_map(|(index, group)| {
            group.tire_models().enumerate().map(move |(model, tire)| (index, group, model, tire))
        })
    };
    let all_by_maker = fitted().all(|(index, _, model, _)| {
        window.minimum.iter().any(|limit| {
            (limit.group, limit.tire) == (index, model) && limit.kind == MinimumKind::MakerRow
        })
    });
    if all_by_maker {
        return Approval::Maker;
    }
    let within_tables = fitted().all(|(_, group, _, tire)| {
        let lowest_row = tire.lowest_table_pressure.unwrap_or(USUAL_LOWEST_TABLE_PRESSURE);
        let rated = tire.rated(group.fitment).map(|point| point.pressure);
        let read = Exponent::for_tire(tire).citation().standing == Standing::Read;
        // At the rated pressure itself no exponent is needed.
        let at_rated = rated.is_some_and(|rated| held >= rated);
        held >= lowest_row && (read || at_rated)
    });
    if within_tables && full_speed.is_some_and(|needed| held >= needed) {
        Approval::Standard
    } else {
        Approval::NeedsApproval
    }
}
