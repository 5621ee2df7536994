//! Every limit that can set the lowest pressure of one axle group on one rung.

use model::source::{Citation, Key, Standing};
use model::tire::deflection::DeflectionLaw;
use model::tire::deflection_screen::highest_share_for;
use model::tire::duals::{BULGE, BULGE_USUAL, DualFit, lowest_pressure};
use model::tire::load_inflation::USUAL_LOWEST_TABLE_PRESSURE;
use model::tire::roadside::{CFR_393_75, CVSA, flat_reading, hot_allowance};
use model::tire::warm_up::{AIR_HEAT_LIMITS, WARN_AT, WarmUp};
use model::tire::{Fitment, Recommended, Tire};
use model::vehicle::{AxleGroup, ChainState, LoadState, WheelValve};
use quantity::{ColdPressure, Length, Speed};

use super::limit::{Basis, Impossible, Limit, MinimumKind};
use super::load_share::{WorstTire, worst_tire};
use super::site::{RungUse, Site};
use super::tire_load::{full_speed_limit, load_limit};

/// A number the survey states about its own truck.
pub const SURVEY: Key = Key("survey-statement");
/// Terms of the road authority.
pub const PERMIT: Key = Key("permit");
/// Bead floor where the maker says nothing.
pub const BEAD: Key = Key("bead-floor");
/// Closing pressure of self-closing wheel valves.
pub const WHEEL_VALVE: Key = Key("wheel-valve-closing");
/// Chains at full-speed pressure only.
pub const CHAINS: Key = Key("chains-at-road-pressure");

/// Lowest pressure in print for log trucks: 25 psi, empty, below 35 mph.
pub const LOWEST_PRACTICE: Key = Key("forest-service-1987");
/// Where published truck tables begin.
pub const LOWEST_ROW: Key = Key("truck-tables-begin");
/// Lowest pressure in print held constant by log trucks: 65 psi, up to 55 mph.
pub const CONSTANT_PRACTICE: Key = Key("watkins-1991");
const CONSTANT_PRACTICE_PRESSURE: ColdPressure = ColdPressure::from_psi(65.0);
const CONSTANT_PRACTICE_UNDER: Speed = Speed::from_mph(55.0);
const LOWEST_PRACTICE_PRESSURE: ColdPressure = ColdPressure::from_psi(25.0);
const LOWEST_PRACTICE_UNDER: Speed = Speed::from_mph(35.0);

/// Bead floor of road-type tubeless tires until the maker says otherwise (from memory).
const BEAD_FLOOR: ColdPressure = ColdPressure::from_kpa(100.0);
/// Speed at which the roadside allowance begins; the slowest credible warm tire ran at it.
const ALLOWANCE_FROM: Speed = Speed::from_mph(41.0);

/// One group in one state on one rung.
#[derive(Debug, Clone, Copy)]
pub(super) struct Case<'a> {
    pub index: usize,
    pub group: &'a AxleGroup,
    /// Which of the group's tire models.
    pub model: usize,
    pub tire: &'a Tire,
    pub state: &'a LoadState,
    pub chains: &'a ChainState,
    pub cap: Speed,
    /// Highest cap of the ladder.
    pub top_cap: Speed,
    pub used: RungUse,
    pub site: &'a Site,
}

/// The limits of one group, with what later steps need of it.
#[derive(Debug, Clone)]
pub(super) struct GroupMinimum {
    pub limits: Vec<Limit<MinimumKind>>,
    pub worst: WorstTire,
    pub law: DeflectionLaw,
    pub warm_up: WarmUp,
    /// Pressure of the ordinary table at full speed, if the load is within it.
    pub full_speed: Option<ColdPressure>,
    pub hold: Option<Length>,
}

impl GroupMinimum {
    /// Pressure that the maker counts as recommended in service, where it is the ordinary table's.
    ///
    /// A load that no table carries is judged by the rated pressure, the highest there is.
    pub fn recommended(&self, tire: &Tire, fitment: Fitment) -> Option<ColdPressure> {
        let table = tire.maker_table.as_ref().filter(|table| table.approved)?;
        match table.recommended {
            Recommended::Row => None,
            Recommended::Table => self.full_speed.or_else(|| Some(tire.rated(fitment)?.pressure)),
        }
    }
}

impl Case<'_> {
    pub fn limits(&self) -> Result<GroupMinimum, Impossible> {
        let tire = self.tire;
        let refused = |reason: String| Impossible::Refused { group: self.index, reason };
        let crossfall = self.used.crossfall;
        let worst = worst_tire(self.index, self.group, self.state, crossfall);
        let law = DeflectionLaw::of(tire).map_err(|error| refused(error.to_string()))?;
        let warm_up = WarmUp::new(tire, worst.load).map_err(|error| refused(error.to_string()))?;
        let full = full_speed_limit(tire, self.group.fitment, worst.load, self.cap, self.index);
        let mut by_load = load_limit(tire, self.group.fitment, worst.load, self.cap, self.index)?;
        by_load.limit.tire = self.model;
        let from_maker = by_load.limit.kind == MinimumKind::MakerRow;
        let mut limits = vec![by_load.limit];
        if !from_maker {
            limits.push(self.deflection(&law, &worst)?);
        }
        if !from_maker {
            limits.push(self.lowest_row());
        }
        limits.push(self.bead());
        limits.extend(self.wheel_valve());
        limits.extend(self.flat_rule()?);
        limits.extend(self.roadside_hot(full.as_ref().ok(), &warm_up));
        limits.extend(self.dual_gap(&law, &worst)?);
        limits.extend(self.chains()?);
        limits.extend(self.permit());
        limits.extend(self.permit_reading());
        limits.extend(self.scrub());
        limits.extend(self.heat(&warm_up)?);
        let full_speed = full.ok().map(|limit| limit.pressure);
        Ok(GroupMinimum { limits, worst, law, warm_up, full_speed, hold: by_load.hold })
    }

    fn limit(
        &self,
        kind: MinimumKind,
        pressure: ColdPressure,
        basis: Basis,
        citation: Citation,
    ) -> Limit<MinimumKind> {
        Limit { kind, pressure, group: self.index, tire: self.model, basis, citation }
    }

    fn deflection(
        &self,
        law: &DeflectionLaw,
        worst: &WorstTire,
    ) -> Result<Limit<MinimumKind>, Impossible> {
        let screen = highest_share_for(law, self.cap);
        let found = law
            .pressure_for(worst.load, screen.share)
            .map_err(|_| Impossible::NoDeflection { group: self.index, share: screen.share })?;
        let basis = Basis::Deflection { load: worst.load, share: screen.share };
        Ok(self.limit(MinimumKind::Deflection, found.pressure, basis, screen.citation))
    }

    /// A formula alone goes no lower than what somebody published: truck tables begin at about
    /// 70 psi; under 55 mph the lowest practice in print is 65 psi, and under 35 mph 25 psi.
    fn lowest_row(&self) -> Limit<MinimumKind> {
        let stated = self.tire.lowest_table_pressure;
        let row = stated.unwrap_or(USUAL_LOWEST_TABLE_PRESSURE);
        let (pressure, citation) = if self.cap <= LOWEST_PRACTICE_UNDER {
            let citation = Citation::of(LOWEST_PRACTICE, Standing::Read);
            (row.min(LOWEST_PRACTICE_PRESSURE), citation.at("empty, below 35 mph"))
        } else if self.cap <= CONSTANT_PRACTICE_UNDER {
            let citation = Citation::of(CONSTANT_PRACTICE, Standing::Read);
            (row.min(CONSTANT_PRACTICE_PRESSURE), citation.at("constant 65 psi, up to 55 mph"))
        } else if stated.is_some() {
            (row, Citation::of(SURVEY, Standing::Given).at("lowest table pressure of the tire"))
        } else {
            (row, Citation::of(LOWEST_ROW, Standing::Read).at("tables begin at about 70 psi"))
        };
        self.limit(MinimumKind::LowestRow, pressure, Basis::Stated, citation)
    }

    fn bead(&self) -> Limit<MinimumKind> {
        let stated = self.tire.bead_minimum;
        let citation = match stated {
            Some(_) => Citation::of(SURVEY, Standing::Given).at("bead minimum of the tire"),
            None => Citation::of(BEAD, Standing::FromMemory),
        };
        self.limit(MinimumKind::Bead, stated.unwrap_or(BEAD_FLOOR), Basis::Stated, citation)
    }

    /// A tire softer than the closing pressure on the coldest night cannot be reached any more.
    fn wheel_valve(&self) -> Option<Limit<MinimumKind>> {
        let Some(WheelValve::SelfClosing { closes_below }) = self.group.wheel_valve else {
            return None;
        };
        let pressure = self.site.cold_of(closes_below, self.site.coldest);
        let basis = Basis::AsRead { reading: closes_below, temperature: self.site.coldest };
        let citation = Citation::of(WHEEL_VALVE, Standing::CommonPractice);
        Some(self.limit(MinimumKind::WheelValve, pressure, basis, citation))
    }

    fn flat_rule(&self) -> Result<Option<Limit<MinimumKind>>, Impossible> {
        if !self.used.united_states {
            return Ok(None);
        }
        let molded = self.tire.molded_maximum;
        let reading = flat_reading(molded).map_err(|error| Impossible::Refused {
            group: self.index,
            reason: error.to_string(),
        })?;
        // The check may come on the coldest morning.
        let pressure = self.site.cold_of(reading, self.site.coldest);
        let basis = Basis::ShareOf { stated: molded, share: reading.as_kpa() / molded.as_kpa() };
        let citation = Citation::of(CVSA, Standing::Read).at("trade article quoting the criterion");
        Ok(Some(self.limit(MinimumKind::FlatRule, pressure, basis, citation)))
    }

    /// The pressure whose warm reading, less the allowance, still meets the table for the load.
    fn roadside_hot(
        &self,
        full: Option<&Limit<MinimumKind>>,
        warm_up: &WarmUp,
    ) -> Option<Limit<MinimumKind>> {
        if !self.used.united_states || self.cap < ALLOWANCE_FROM {
            return None;
        }
        let full = full?;
        let rated = self.tire.rated(self.group.fitment)?.load;
        let allowance = hot_allowance(rated, ALLOWANCE_FROM)?;
        let reference = self.site.reference.temperature();
        let passes = |p: ColdPressure| {
            let warm = reference + warm_up.rise(p, ALLOWANCE_FROM).value;
            let estimated = self.site.read_at(p, warm) - allowance;
            estimated >= full.pressure.at_reference()
        };
        let pressure = lowest_that(passes, full.pressure, full.pressure + allowance)?;
        let reading =
            self.site.read_at(pressure, reference + warm_up.rise(pressure, ALLOWANCE_FROM).value);
        let basis = Basis::AsRead {
            reading,
            temperature: reference + warm_up.rise(pressure, ALLOWANCE_FROM).value,
        };
        let citation = Citation::of(CFR_393_75, Standing::Read).at("Table 1, 41 to 55 mph");
        Some(self.limit(MinimumKind::RoadsideHot, pressure, basis, citation))
    }

    fn dual_gap(
        &self,
        law: &DeflectionLaw,
        worst: &WorstTire,
    ) -> Result<Option<Limit<MinimumKind>>, Impossible> {
        let Some(pair) = self.group.dual else { return Ok(None) };
        let fit = DualFit {
            spacing: pair.spacing,
            section_width: self.tire.section_width,
            least_gap: pair.least_gap,
            bulge: BULGE_USUAL,
        };
        let found = lowest_pressure(law, fit, worst.load)
            .map_err(|_| Impossible::DualsTouch { group: self.index, spacing: pair.spacing })?;
        let basis = Basis::Gap { least: pair.least_gap, spacing: pair.spacing };
        let citation = Citation::of(BULGE, Standing::FromMemory);
        Ok(Some(self.limit(MinimumKind::DualGap, found.pressure, basis, citation)))
    }

    /// Chains are run at road pressure: all that the highest cap of the ladder asks for.
    fn chains(&self) -> Result<Option<Limit<MinimumKind>>, Impossible> {
        if !self.chains.chained_groups.contains(&self.index) {
            return Ok(None);
        }
        let bare = ChainState { name: String::new(), chained_groups: Vec::new() };
        let on_the_road = Case { chains: &bare, cap: self.top_cap, ..*self };
        let limits = on_the_road.limits()?.limits;
        let by_speed = |kind| {
            use MinimumKind::{Deflection, Heat, LoadTable, MakerRow, RestrictedSpeed};
            matches!(kind, LoadTable | RestrictedSpeed | MakerRow | Deflection | Heat)
        };
        let highest = limits
            .into_iter()
            .filter(|limit| by_speed(limit.kind))
            .max_by(|a, b| a.pressure.total_cmp(&b.pressure));
        let citation = Citation::of(CHAINS, Standing::CommonPractice);
        Ok(highest
            .map(|limit| self.limit(MinimumKind::Chains, limit.pressure, limit.basis, citation)))
    }

    fn permit(&self) -> Option<Limit<MinimumKind>> {
        let pressure = self.used.permit_minimum?;
        let citation = Citation::of(PERMIT, Standing::Given).at("lowest pressure of the permit");
        Some(self.limit(MinimumKind::Permit, pressure, Basis::Stated, citation))
    }

    /// A reading that must be there on the road is there too on a tire at the coldest ambient.
    fn permit_reading(&self) -> Option<Limit<MinimumKind>> {
        let reading = self.used.permit_lowest_reading?;
        let temperature = self.site.coldest;
        let pressure = self.site.cold_of(reading, temperature);
        let citation = Citation::of(PERMIT, Standing::Given).at("lowest reading of the permit");
        let basis = Basis::AsRead { reading, temperature };
        Some(self.limit(MinimumKind::Permit, pressure, basis, citation))
    }

    fn scrub(&self) -> Option<Limit<MinimumKind>> {
        let pressure = self.group.scrub_minimum?;
        let citation = Citation::of(SURVEY, Standing::Given).at("turning minimum of the group");
        Some(self.limit(MinimumKind::TurningScrub, pressure, Basis::Stated, citation))
    }

    /// Contained air stays under the warning temperature at the cap on the warmest day.
    fn heat(&self, warm_up: &WarmUp) -> Result<Option<Limit<MinimumKind>>, Impossible> {
        let passes =
            |p: ColdPressure| self.site.warmest + warm_up.rise(p, self.cap).value <= WARN_AT;
        let molded = self.tire.molded_maximum;
        let Some(pressure) = lowest_that(passes, molded.scaled(0.1), molded) else {
            return Err(Impossible::TooHot { group: self.index, highest: WARN_AT });
        };
        let basis = Basis::AirTemperature { highest: WARN_AT, ambient: self.site.warmest };
        let citation = Citation::of(AIR_HEAT_LIMITS, Standing::CommonPractice);
        Ok(Some(self.limit(MinimumKind::Heat, pressure, basis, citation)))
    }
}

/// The lowest pressure between two that passes a test which, once passed, stays passed.
fn lowest_that(
    passes: impl Fn(ColdPressure) -> bool,
    low: ColdPressure,
    high: ColdPressure,
) -> Option<ColdPressure> {
    if passes(low) {
        return Some(low);
    }
    if !passes(high) {
        return None;
    }
    let (mut fails, mut holds) = (low, high);
    for _ in 0..60 {
        let middle = fails + (holds - fails) / 2.0;
        if passes(middle) {
            holds = middle;
        } else {
            fails = middle;
        }
    }
    Some(holds)
}
