//! What every axle group on one air line needs at one speed, for a tire that stands on the road.

use model::haul_cycle::HaulCycle;
use model::source::Standing;
use model::tire::load_inflation::{Exponent, USUAL_LOWEST_TABLE_PRESSURE};
use model::vehicle::{AxleGroup, ChainState, LoadState};
use quantity::{ColdPressure, Length, Mass, Speed, Temperature};

use super::limit::{Basis, Impossible, Limit, MaximumKind, MinimumKind};
use super::minimum::{Case, GroupMinimum};
use super::site::{RungUse, Site};
use super::stack::dual_mismatch;
use super::{load_share, maximum};

/// What one axle group needs at one speed.
#[derive(Debug, Clone, PartialEq)]
pub struct Need {
    /// Index of the axle group.
    pub group: usize,
    /// The limit that governs, closing pressures of wheel valves left aside.
    pub governs: Limit<MinimumKind>,
    /// Lowest pressure with what unequal mates add.
    pub lowest: ColdPressure,
    /// Lowest pressure that the tire maker or a standards table stands behind.
    pub approved: Option<ColdPressure>,
    /// What load, speed and bead ask for, which service is judged by.
    pub service: ColdPressure,
    /// The ordinary table's pressure, where the tire maker counts that as recommended in service.
    pub recommended: Option<ColdPressure>,
    /// The limit from above that holds whatever the supply reaches.
    pub highest: Limit<MaximumKind>,
    /// Air in the warmest credible tire of the line at this speed.
    pub warmest_tire: Temperature,
    /// Load on the worst tire.
    pub load: Mass,
    /// Longest distance, where a maker's row limits it.
    pub hold: Option<Length>,
}

/// The conditions a need is asked for.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Asked<'a> {
    pub haul: &'a HaulCycle,
    pub site: &'a Site,
    pub used: RungUse,
    pub state: &'a LoadState,
    pub chains: &'a ChainState,
    pub speed: Speed,
    /// Speed the tires may have run at before they were gauged.
    pub ran_at: Speed,
}

/// One tire model of one group with its limits.
struct Fitted<'a> {
    index: usize,
    model: usize,
    group: &'a AxleGroup,
    found: GroupMinimum,
}

impl Fitted<'_> {
    fn tire(&self) -> &model::tire::Tire {
        self.group.tire_models().nth(self.model).unwrap_or(&self.group.tire)
    }

    fn by_maker(&self) -> bool {
        self.found.limits.iter().any(|limit| limit.kind == MinimumKind::MakerRow)
    }

    /// The highest of the limits of some kinds.
    fn highest_of(&self, counts: impl Fn(MinimumKind) -> bool) -> Option<&Limit<MinimumKind>> {
        let limits = self.found.limits.iter().filter(|limit| counts(limit.kind));
        limits.max_by(|a, b| a.pressure.total_cmp(&b.pressure))
    }

    /// What the load asks for when one mate is larger than the other.
    fn with_mismatch(&self) -> ColdPressure {
        let by_load =
            |basis: &Basis| matches!(basis, Basis::Load { .. } | Basis::Deflection { .. });
        let limits = self.found.limits.iter().filter(|limit| by_load(&limit.basis));
        let asked = limits.map(|limit| limit.pressure).fold(ColdPressure::ZERO, ColdPressure::max);
        let exponent = Exponent::for_tire(self.tire());
        self.found.law.deflection(self.found.worst.load, asked).map_or(asked, |deflection| {
            asked + dual_mismatch(self.group, asked, deflection.value, &exponent)
        })
    }

    /// The lowest pressure at which an ordinary table that was read stands behind the tire.
    fn by_table(&self) -> Option<ColdPressure> {
        let tire = self.tire();
        let row = tire.lowest_table_pressure.unwrap_or(USUAL_LOWEST_TABLE_PRESSURE);
        let within = self.found.full_speed?.max(row);
        let read = Exponent::for_tire(tire).citation().standing == Standing::Read;
        // At the rated pressure itself no exponent is needed.
        let rated = tire.rated(self.group.fitment)?.pressure;
        Some(if read { within } else { within.max(rated) })
    }
}

/// What the groups of one air channel that stand on the road need, worst tire model first.
///
/// # Errors
/// [`Impossible`] where no pressure will do at this speed.
pub(crate) fn of_channel(asked: Asked<'_>, channel: usize) -> Result<Vec<Need>, Impossible> {
    let combination = &asked.haul.combination;
    let groups: Vec<_> = combination.standing_groups_of(channel, asked.state).collect();
    of_line(asked, &groups)
}

/// What a group without an air channel needs.
///
/// # Errors
/// As [`of_channel`].
pub(crate) fn of_fixed(asked: Asked<'_>, index: usize) -> Result<Vec<Need>, Impossible> {
    of_line(asked, &[(index, &asked.haul.combination.groups[index])])
}

fn of_line(asked: Asked<'_>, groups: &[(usize, &AxleGroup)]) -> Result<Vec<Need>, Impossible> {
    let fitted = fitted(asked, groups)?;
    let all = |_: MinimumKind| true;
    let lowest_of_line = fitted
        .iter()
        .filter_map(|tire| Some(tire.highest_of(all)?.pressure))
        .fold(ColdPressure::ZERO, ColdPressure::max);
    let warmest_tire = fitted
        .iter()
        .map(|tire| {
            asked.site.warmest + tire.found.warm_up.rise(lowest_of_line, asked.ran_at).value
        })
        .fold(asked.site.warmest, Temperature::max);
    // A line is the maker's where every tire on it is, as a cell of the ladder is.
    let by_maker = fitted.iter().all(Fitted::by_maker);
    let mut needs: Vec<Need> = Vec::new();
    for tire in &fitted {
        let need = need(asked, tire, by_maker, warmest_tire)?;
        match needs.iter_mut().find(|known| known.group == need.group) {
            Some(known) => *known = known.clone().worse(&need),
            None => needs.push(need),
        }
    }
    Ok(needs)
}

fn fitted<'a>(
    asked: Asked<'_>,
    groups: &[(usize, &'a AxleGroup)],
) -> Result<Vec<Fitted<'a>>, Impossible> {
    let rungs = &asked.haul.combination.rungs;
    let top_cap = rungs.iter().map(|rung| rung.cap).fold(asked.speed, Speed::max);
    let mut fitted = Vec::new();
    for &(index, group) in groups {
        for (model, tire) in group.tire_models().enumerate() {
            let case = Case {
                index,
                group,
                model,
                tire,
                state: asked.state,
                chains: asked.chains,
                cap: asked.speed,
                top_cap,
                used: asked.used,
                site: asked.site,
            };
            fitted.push(Fitted { index, model, group, found: case.limits()? });
        }
    }
    Ok(fitted)
}

fn need(
    asked: Asked<'_>,
    tire: &Fitted<'_>,
    by_maker: bool,
    warmest_tire: Temperature,
) -> Result<Need, Impossible> {
    use MinimumKind::{
        Bead, Deflection, DualGap, Heat, LoadTable, LowestRow, MakerRow, RestrictedSpeed,
        WheelValve,
    };
    let missing = || Impossible::NotRated { group: tire.index };
    // A valve that closes at the coldest matters where a truck is parked, not on the road.
    let governs = tire.highest_of(|kind| kind != WheelValve).ok_or_else(missing)?;
    let lowest = governs.pressure.max(tire.with_mismatch());
    let service = tire.highest_of(|kind| {
        matches!(kind, LoadTable | RestrictedSpeed | MakerRow)
            || matches!(kind, Deflection | LowestRow | Bead | DualGap | Heat)
    });
    let approved =
        if by_maker { Some(lowest) } else { tire.by_table().map(|table| table.max(lowest)) };
    let supply = &asked.haul.combination.supply;
    let highest =
        maximum::limits(tire.index, tire.group, supply, &asked.used, warmest_tire, asked.site)
            .into_iter()
            .find(|limit| !matches!(limit.kind, MaximumKind::Supply | MaximumKind::Ground))
            .ok_or_else(missing)?;
    Ok(Need {
        group: tire.index,
        governs: governs.clone(),
        lowest,
        approved,
        service: service.ok_or_else(missing)?.pressure,
        recommended: tire.found.recommended(tire.tire(), tire.group.fitment),
        highest,
        warmest_tire,
        load: tire.found.worst.load,
        hold: tire.found.hold,
    })
}

impl Need {
    /// What holds for both of two needs of one group.
    #[must_use]
    pub(crate) fn worse(self, other: &Self) -> Self {
        let governs =
            if other.lowest > self.lowest { other.governs.clone() } else { self.governs.clone() };
        let lower = other.highest.pressure < self.highest.pressure;
        let highest = if lower { other.highest.clone() } else { self.highest.clone() };
        let hold = match (self.hold, other.hold) {
            (Some(a), Some(b)) => Some(a.min(b)),
            (a, b) => a.or(b),
        };
        Self {
            group: self.group,
            governs,
            lowest: self.lowest.max(other.lowest),
            approved: self.approved.zip(other.approved).map(|(a, b)| a.max(b)),
            service: self.service.max(other.service),
            recommended: higher(self.recommended, other.recommended),
            highest,
            warmest_tire: self.warmest_tire.max(other.warmest_tire),
            load: self.load.max(other.load),
            hold,
        }
    }
}

fn higher(a: Option<ColdPressure>, b: Option<ColdPressure>) -> Option<ColdPressure> {
    a.map_or(b, |a| Some(b.map_or(a, |b| a.max(b))))
}

/// More load on a group than its axles or its rims bear.
pub(crate) fn overload(index: usize, group: &AxleGroup, state: &LoadState) -> Option<(Mass, Mass)> {
    if state.is_lifted(index) {
        return None;
    }
    let axles = f64::from(state.axles_down[index]) / f64::from(group.axles.max(1));
    let (mass, bears) = (state.groups[index].mass, group.axle_rating * axles);
    if mass > bears {
        return Some((mass, bears));
    }
    let worst = load_share::worst_tire(index, group, state, 0.0).load;
    let rims = group.tire_models().map(|tire| tire.rim.maximum_load);
    let rim = rims.min_by(Mass::total_cmp)?;
    (worst > rim).then_some((worst, rim))
}
