//! A drive judged by the audit, and priced against the plan's own drive.

use audit::{Coverage, Finding, Limits};
use haul::Sample;
use haul::practice::{Action, Practice, Stage, Surprise};
use model::haul_cycle::HaulCycle;
use model::tire::cold_warm::{Conditions, as_cold};
use plan::CellId;
use quantity::{GaugePressure, PressureDifference, Speed, Time, Volume};

use super::SurpriseKind;
use super::columns::DriveColumns;
use crate::Planned;

/// What a drive came to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tally {
    /// Whether it arrived.
    pub arrived: bool,
    /// Time from the first second to the last.
    pub time: Time,
    /// Time standing, loading left out.
    pub stood: Time,
    /// Fuel.
    pub fuel: Volume,
    /// Time the compressor delivered.
    pub compressor: Time,
    /// Changes ordered.
    pub changes: usize,
    /// Shortfall of the worst channel under the lowest for the load and the speed run, times minutes: kPa min.
    pub under_minimum_kpa_min: f64,
    /// Excess of the hardest channel over what the section wants, times kilometers: kPa km.
    pub hard_kpa_km: f64,
}

/// Something that has a price.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum PriceItem {
    /// Hours of the truck.
    Time,
    /// Liters of fuel.
    Fuel,
    /// Hours of the compressor.
    Compressor,
    /// Changes made.
    Changes,
    /// kPa km of tires harder than the road wants.
    Road,
    /// kPa min under the lowest pressure; nobody knows a price for it.
    Tires,
}

/// One line of the price, against the plan's own drive.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PriceLine {
    /// What for.
    pub item: PriceItem,
    /// More of it than the plan's own drive, in the unit of the item.
    pub more: f64,
    /// Money, where the survey knows a price.
    pub cost: Option<f64>,
}

/// What is said of a drive.
#[derive(Debug, Clone, PartialEq)]
pub struct Verdict {
    /// Findings, in order of time.
    pub findings: Vec<Finding>,
    /// How much could be judged.
    pub coverage: Coverage,
    /// What the drive came to.
    pub driven: Tally,
    /// What the plan's own drive comes to.
    pub planned: Tally,
    /// The difference in money.
    pub prices: Vec<PriceLine>,
    /// Name of the money, where the survey has one.
    pub currency: Option<String>,
    /// What went otherwise than planned.
    pub surprises: Vec<SurpriseKind>,
}

pub(super) fn judge(
    planned: &Planned,
    limits: &Limits,
    practice: &Practice,
    own: &Tally,
    surprises: &[Surprise],
) -> Result<Verdict, audit::ColumnsError> {
    let mut state = audit::State::default();
    let mut findings = Vec::new();
    DriveColumns::of(practice.samples(), practice.channels())
        .with(|columns| audit::feed(&mut state, columns, limits, &mut findings))?;
    audit::finish(&mut state, limits, &mut findings);
    findings.sort_by(|a, b| a.start.total_cmp(&b.start).then(a.rule.cmp(&b.rule)));
    let driven = Tally::of(planned, practice);
    let haul = &planned.haul;
    Ok(Verdict {
        findings,
        coverage: state.coverage().clone(),
        prices: prices(haul, &driven, own),
        currency: currency(haul),
        driven,
        planned: *own,
        surprises: surprises.iter().map(SurpriseKind::of).collect(),
    })
}

fn currency(haul: &HaulCycle) -> Option<String> {
    let money = haul.money.as_ref().map(|money| money.currency.clone());
    money.or_else(|| haul.ladder_wish.as_ref().map(|wish| wish.currency.clone()))
}

fn prices(haul: &HaulCycle, driven: &Tally, own: &Tally) -> Vec<PriceLine> {
    let money = haul.money.as_ref();
    // Two moneys are not added up.
    let wish = haul.ladder_wish.as_ref();
    let wish = wish.filter(|wish| money.is_none_or(|money| money.currency == wish.currency));
    let hour = money.map(|money| money.truck_hour).or(wish.map(|wish| wish.truck_hour));
    let positive = |price: f64| (price > 0.0).then_some(price);
    let line = |item, more: f64, price: Option<f64>| PriceLine {
        item,
        more,
        cost: price.map(|price| price * more),
    };
    vec![
        line(PriceItem::Time, (driven.time - own.time).as_h(), hour),
        line(
            PriceItem::Fuel,
            (driven.fuel - own.fuel).as_l(),
            money.and_then(|money| money.fuel_price_per_l),
        ),
        line(
            PriceItem::Compressor,
            (driven.compressor - own.compressor).as_h(),
            wish.map(|wish| wish.compressor_hour),
        ),
        line(
            PriceItem::Changes,
            driven.changes as f64 - own.changes as f64,
            wish.map(|wish| wish.change),
        ),
        line(
            PriceItem::Road,
            driven.hard_kpa_km - own.hard_kpa_km,
            wish.and_then(|wish| positive(wish.hard_kpa_km)),
        ),
        line(PriceItem::Tires, driven.under_minimum_kpa_min - own.under_minimum_kpa_min, None),
    ]
}

/// Speed over a cap that counts as at it.
const AT_THE_CAP: Speed = Speed::from_kmh(3.0);
/// Speed under which a truck stands.
const STANDING: Speed = Speed::from_kmh(1.0);

impl Tally {
    /// Sums a drive up.
    pub(super) fn of(planned: &Planned, practice: &Practice) -> Self {
        let samples = practice.samples();
        let count = |is: &dyn Fn(&Sample) -> bool| {
            Time::from_s(samples.iter().filter(|sample| is(sample)).count() as f64)
        };
        let loaded = (planned.haul.loading.time - practice.loading_left()).max(Time::ZERO);
        let orders = practice.acted().iter().filter(|one| matches!(one.action, Action::Order(_)));
        let places = Places::new(planned, practice.channels());
        let mut tally = Self {
            arrived: practice.stage() == Stage::Arrived,
            time: Time::from_s(f64::from(practice.second())),
            stood: (count(&|sample| sample.speed < STANDING) - loaded).max(Time::ZERO),
            fuel: samples.last().map_or(Volume::ZERO, |sample| sample.fuel),
            compressor: count(&|sample| sample.loading),
            changes: orders.count(),
            under_minimum_kpa_min: 0.0,
            hard_kpa_km: 0.0,
        };
        for sample in samples.iter().filter(|sample| sample.speed >= STANDING) {
            tally.under_minimum_kpa_min += places.shortfall(sample).as_kpa() / 60.0;
            let km = sample.speed.as_kmh() / 3600.0;
            tally.hard_kpa_km += places.excess(sample).as_kpa() * km;
        }
        tally
    }
}

/// What the plan wants where the truck is.
struct Places<'a> {
    planned: &'a Planned,
    channels: usize,
    reference: Option<Conditions>,
}

impl<'a> Places<'a> {
    fn new(planned: &'a Planned, channels: usize) -> Self {
        let weather = &planned.haul.weather;
        let reference = Conditions::new(weather.reference, weather.ambient_pressure).ok();
        Self { planned, channels, reference }
    }

    fn cell(&self, channel: usize, load_state: usize, rung: usize) -> Option<&plan::Cell> {
        self.planned.plan.ladder.cell(CellId { channel, load_state, chain_state: 0, rung })
    }

    /// How far the worst channel lies under the lowest for the speed run, cold.
    fn shortfall(&self, sample: &Sample) -> PressureDifference {
        let rungs = &self.planned.haul.combination.rungs;
        let slow = rungs.iter().position(|rung| rung.cap + AT_THE_CAP >= sample.speed);
        let rung = slow.unwrap_or(rungs.len().saturating_sub(1));
        let Some(reference) = self.reference else { return PressureDifference::ZERO };
        let short = (0..self.channels).filter_map(|channel| {
            let window = self.cell(channel, sample.load_state, rung)?.window.as_ref()?;
            let now = reference.with_temperature(sample.tire_temperatures[channel]).ok()?;
            let cold = as_cold(sample.tires[channel], now, reference);
            Some(window.governing_minimum().pressure - cold)
        });
        short.fold(PressureDifference::ZERO, PressureDifference::max)
    }

    /// How far the hardest channel lies over the value set for the rung the section wants.
    fn excess(&self, sample: &Sample) -> PressureDifference {
        let Ok(driven) = &self.planned.plan.driven else { return PressureDifference::ZERO };
        let run = usize::from(sample.load_state == self.planned.haul.laden_state);
        let here = sample.travelled;
        let wanted = driven.sections[run].iter().find(|section| here < section.to);
        let Some(section) = wanted else { return PressureDifference::ZERO };
        let over = |channel: usize| -> Option<PressureDifference> {
            let cell = self.cell(channel, sample.load_state, section.rung)?;
            let set: GaugePressure = cell.set.as_ref()?.vented;
            Some(sample.tires[channel] - set)
        };
        (0..self.channels).filter_map(over).fold(PressureDifference::ZERO, PressureDifference::max)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_tolerance_at_a_cap_is_that_of_the_audit() {
        assert!((AT_THE_CAP - audit::Tolerance::default().speed).abs() < Speed::from_kmh(1e-9));
    }
}
