//! Cost and gain by item and payer, their present value, and what decides it.

use model::money::Payer;
use quantity::Time;

use super::figure::{Figure, Figures};
use crate::effect::{Band, Finding, NotAssessed};

/// What money is spent on or earned by in a year.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Item {
    /// The system, as an even yearly share of its price.
    System,
    /// Its service, training and audit.
    Service,
    /// Truck time lost.
    Time,
    /// Fuel.
    Fuel,
    /// Tires.
    Tires,
    /// Repairs.
    Repairs,
    /// Season days gained.
    Season,
    /// Payload gained.
    Payload,
    /// Upkeep of the road saved, as far as its owner keeps it.
    Road,
    /// The part of it that is passed on.
    RoadPassedOn,
    /// Trips more for the same load.
    MoreTrips,
}

/// One line of a year: what is gained is above zero.
#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    /// What for.
    pub item: Item,
    /// Who pays or gains.
    pub payer: Payer,
    /// Money a year.
    pub per_year: Finding<Band<f64>>,
}

/// Even yearly payments that recover a sum: `i (1+i)^N / ((1+i)^N - 1)`.
///
/// # Source
/// `haul-cost-model`.
///
/// ```
/// assert!((plan::cost::capital_recovery(0.08, 8.0) - 0.1740).abs() < 5e-5);
/// assert!((plan::cost::capital_recovery(0.0, 8.0) - 0.125).abs() < 1e-12);
/// ```
pub fn capital_recovery(interest: f64, years: f64) -> f64 {
    if interest.abs() < 1e-9 {
        return 1.0 / years;
    }
    let growth = (1.0 + interest).powf(years);
    interest * growth / (growth - 1.0)
}

/// Even yearly share of the price, less what the system is worth at the end.
pub(super) fn capital_per_year(figures: &Figures) -> f64 {
    let (years, interest) = (figures.given(Figure::Life), figures.given(Figure::Interest));
    let residual = figures.salvage / (1.0 + interest).powf(years);
    (figures.given(Figure::Capex) - residual) * capital_recovery(interest, years)
}

/// The lines of a year.
pub(super) fn lines(figures: &Figures) -> Vec<Line> {
    let by = figures.paid_by;
    let trips = figures.given(Figure::Trips);
    let of = |figure| figures.get(figure);
    let product = |a: Finding<Band<f64>>, b: Finding<Band<f64>>, factor: f64| {
        let (a, b) = (a?, b?);
        let ends = [a.low, a.high].into_iter().flat_map(|a| [a * b.low, a * b.high]);
        let ends = ends.map(|end| end * factor);
        Ok::<_, NotAssessed>(Band::spanning(a.middle * b.middle * factor, ends))
    };
    let per_day = figures.trips_per_day;
    let road = product(of(Figure::RoadCost), of(Figure::RoadSaving), trips * figures.road_km);
    let shared = |share: f64| product(road.clone(), Ok(Band::exact(share)), 1.0);
    let line = |item, payer, per_year| Line { item, payer, per_year };
    let mut lines = vec![
        line(Item::System, by.system, Ok(Band::exact(-capital_per_year(figures)))),
        line(Item::Service, by.system, Ok(Band::exact(-figures.given(Figure::Service)))),
        line(Item::Time, by.time, product(of(Figure::LostTime), of(Figure::TruckHour), -trips)),
        line(Item::Fuel, by.fuel, product(of(Figure::FuelAdded), of(Figure::FuelPrice), -trips)),
        line(Item::Tires, by.truck, of(Figure::TireSaving)),
        line(Item::Repairs, by.truck, of(Figure::RepairSaving)),
        line(Item::Season, by.season, product(of(Figure::SeasonDays), of(Figure::Margin), per_day)),
        line(
            Item::Payload,
            by.season,
            product(of(Figure::Payload), of(Figure::PayloadRate), trips),
        ),
        line(Item::Road, by.road, shared(1.0 - figures.passed_on)),
    ];
    if figures.passed_on > 0.0 {
        lines.push(line(Item::RoadPassedOn, by.system, shared(figures.passed_on)));
    }
    lines
}

/// What it comes to for somebody, or for all together.
#[derive(Debug, Clone, PartialEq)]
pub struct Result {
    /// Who; `None` for all together.
    pub payer: Option<Payer>,
    /// Money a year before the price of the system.
    pub net_per_year: Band<f64>,
    /// The same less the even yearly share of the price.
    pub net_after_capital: Band<f64>,
    /// Present value over the life of the system.
    pub npv: Band<f64>,
    /// Years until the price is back, interest left out; `None` where nothing is paid or it never is.
    pub payback_years: Option<f64>,
    /// Time that may be lost on a trip until the present value is nothing; `None` for who does not
    /// pay for time.
    pub break_even: Option<Time>,
    /// Items left out of the sums because they were not assessed.
    pub left_out: Vec<Item>,
}

/// What it comes to for a payer, or for all together.
pub(super) fn result(figures: &Figures, lines: &[Line], payer: Option<Payer>) -> Result {
    let of_payer = |line: &&Line| payer.is_none_or(|payer| payer == line.payer);
    let mut net = Band::exact(0.0);
    let mut left_out = Vec::new();
    for line in lines.iter().filter(of_payer).filter(|line| line.item != Item::System) {
        match &line.per_year {
            Ok(band) => {
                net = Band {
                    low: net.low + band.low,
                    middle: net.middle + band.middle,
                    high: net.high + band.high,
                }
            }
            Err(_) => left_out.push(line.item),
        }
    }
    let buys = payer.is_none_or(|payer| payer == figures.paid_by.system);
    let capital = if buys { capital_per_year(figures) } else { 0.0 };
    let capex = if buys { figures.given(Figure::Capex) } else { 0.0 };
    let present =
        1.0 / capital_recovery(figures.given(Figure::Interest), figures.given(Figure::Life));
    let net_after_capital = net.map(|net| net - capital);
    let npv = net_after_capital.map(|net| net * present);
    let pays_time = payer.is_none_or(|payer| payer == figures.paid_by.time);
    let hour = figures.given(Figure::Trips) * figures.given(Figure::TruckHour);
    let lost = figures.get(Figure::LostTime).ok().filter(|_| pays_time && hour > 0.0);
    Result {
        payer,
        net_per_year: net,
        net_after_capital,
        npv,
        payback_years: (capex > 0.0 && net.middle > 0.0).then(|| capex / net.middle),
        break_even: lost.map(|lost| Time::from_h(lost.middle + net_after_capital.middle / hour)),
        left_out,
    }
}

/// How far one figure moves the present value.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bar {
    /// The figure.
    pub figure: Figure,
    /// Present value with the figure at its low end, and at its high end.
    pub npv: [f64; 2],
    /// Whether the ends are the figure's own band, and not a fifth either way.
    pub own_band: bool,
}

impl Bar {
    /// How far apart the two are.
    pub fn swing(&self) -> f64 {
        (self.npv[1] - self.npv[0]).abs()
    }
}

/// Each figure varied alone, the one that moves the present value most first.
pub(super) fn tornado(figures: &Figures, payer: Option<Payer>) -> Vec<Bar> {
    let npv = |figures: &Figures| result(figures, &lines(figures), payer).npv.middle;
    let mut bars: Vec<Bar> = Figure::ALL
        .into_iter()
        .filter_map(|figure| {
            let ends = figures.ends(figure)?;
            let own_band = figures.get(figure).is_ok_and(|band| band.low < band.high);
            Some(Bar { figure, npv: ends.map(|end| npv(&figures.with(figure, end))), own_band })
        })
        .filter(|bar| bar.swing() > 0.0)
        .collect();
    bars.sort_by(|a, b| b.swing().total_cmp(&a.swing()));
    bars
}
