//! What a plan costs and earns, by payer, against other ways to run.

mod figure;
mod model;

use ::model::haul_cycle::HaulCycle;
use ::model::money::{Money, Payer};
use ::model::route::Surface;
use quantity::Length;

pub use figure::{Figure, Figures, SWING, Trip};
pub use model::{Bar, Item, Line, Result as PayerResult, capital_recovery};

use crate::effect::{Band, Effects, Finding, Input, NotAssessed, Total, Way};

/// A rival against full pressure.
#[derive(Debug, Clone, PartialEq)]
pub struct RivalCost {
    /// The way.
    pub way: Way,
    /// Its lines.
    pub lines: Vec<Line>,
}

/// What a plan costs and earns in a year, against full pressure all the way.
#[derive(Debug, Clone, PartialEq)]
pub struct Costs {
    /// Name of the money.
    pub currency: String,
    /// Lines of the plan.
    pub lines: Vec<Line>,
    /// What it comes to, by payer, and for all together last.
    pub results: Vec<PayerResult>,
    /// Whose present value [`Self::tornado`] is about: who buys the system.
    pub buyer: Payer,
    /// Figures by how far they move it, the one that moves it most first.
    pub tornado: Vec<Bar>,
    /// Rivals.
    pub rivals: Vec<RivalCost>,
}

impl Costs {
    /// Works out what the plan of a haul costs and earns.
    ///
    /// # Errors
    /// [`NotAssessed::Give`] the money of the haul.
    ///
    /// # Source
    /// `haul-cost-model`.
    pub fn of(haul: &HaulCycle, effects: &Effects) -> Finding<Self> {
        let money = haul.money.as_ref().ok_or(NotAssessed::Give(Input::Money))?;
        let figures = Figures::new(money, &trip(haul, effects));
        let mut costs = Self::from_figures(&money.currency, &figures);
        let rivals = [Way::ConstantReduced, Way::LessLoad];
        let rivals = rivals.into_iter().filter_map(|way| rival(money, effects, way));
        costs.rivals = rivals.collect();
        Ok(costs)
    }

    /// The cost of figures alone, without rivals.
    pub fn from_figures(currency: &str, figures: &Figures) -> Self {
        let lines = model::lines(figures);
        let everybody = Payer::ALL.into_iter().map(Some).chain([None]);
        let named = |payer: &Option<Payer>| {
            payer.is_none_or(|payer| lines.iter().any(|line| line.payer == payer))
        };
        let results = everybody.filter(named);
        let results = results.map(|payer| model::result(figures, &lines, payer)).collect();
        let buyer = figures.paid_by.system;
        Self {
            currency: currency.to_owned(),
            results,
            tornado: model::tornado(figures, Some(buyer)),
            buyer,
            lines,
            rivals: Vec::new(),
        }
    }

    /// What it comes to for a payer, or for all together.
    pub fn result(&self, payer: Option<Payer>) -> Option<&PayerResult> {
        self.results.iter().find(|result| result.payer == payer)
    }
}

/// What the plan brings into a trip, against full pressure.
fn trip(haul: &HaulCycle, effects: &Effects) -> Trip {
    let (plan, full) = (effects.total(Way::Plan), effects.total(Way::FullPressure));
    let both = plan.zip(full).ok_or(NotAssessed::NoSuchWay);
    let unpaved = haul.route.legs.iter();
    let unpaved = unpaved.filter(|leg| !matches!(leg.surface, Surface::Paved | Surface::Sealed));
    Trip {
        lost: both.clone().and_then(|(plan, full)| Ok(plan.time.clone()? - full.time.clone()?)),
        fuel_added: both.and_then(|(plan, full)| fuel_added(plan, full)),
        unpaved: unpaved.map(|leg| leg.to - leg.from).sum::<Length>() * 2.0,
        trips_per_day: haul.cycles_per_day,
    }
}

fn fuel_added(of: &Total, full: &Total) -> Finding<Band<quantity::Volume>> {
    let (of, full) = (of.fuel.clone()?, full.fuel.clone()?);
    Ok(Band {
        low: of.low - full.middle,
        middle: of.middle - full.middle,
        high: of.high - full.middle,
    })
}

/// A rival for the same load a year; it needs no system, and what it does to the road in money
/// nobody has told.
fn rival(money: &Money, effects: &Effects, way: Way) -> Option<RivalCost> {
    let (total, full) = (effects.total(way)?, effects.total(Way::FullPressure)?);
    let by = money.paid_by;
    let (trips, hour) = (money.trips_per_year, money.truck_hour);
    let more = trips * (total.trips_for_the_same - 1.0);
    let price = money.fuel_price_per_l.ok_or(NotAssessed::Give(Input::FuelPrice));
    let time = total.time.clone().and_then(|time| {
        let lost = time - full.time.clone()?;
        Ok(Band::exact(-trips * lost.as_h() * hour))
    });
    let fuel = fuel_added(total, full).and_then(|added| {
        let price = price.clone()?;
        let cost = |l: f64| -trips * l * price;
        Ok(Band::spanning(
            cost(added.middle.as_l()),
            [cost(added.low.as_l()), cost(added.high.as_l())],
        ))
    });
    let line = |item, payer, per_year| Line { item, payer, per_year };
    let mut lines = vec![line(Item::Time, by.time, time), line(Item::Fuel, by.fuel, fuel)];
    if more > 0.0 {
        let each = total.time.clone().and_then(|time| {
            let fuel = total.fuel.clone()?.middle.as_l() * price?;
            Ok(Band::exact(-more * (time.as_h() * hour + fuel)))
        });
        lines.push(line(Item::MoreTrips, by.time, each));
    }
    lines.push(line(Item::Road, by.road, Err(NotAssessed::Give(Input::RoadSaving))));
    Some(RivalCost { way, lines })
}
