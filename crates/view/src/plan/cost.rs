//! Cost and gain by payer.

use model::money::Payer;
use plan::cost::{Bar, Costs, Figure, Item, Line, PayerResult};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::effect::{BandView, Lacking, NotAssessedView, way_name};

/// What a plan costs and earns somebody in a year, against full pressure all the way.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct CostView {
    /// `haulier`, `road-owner`, `client`, or `all` together.
    pub payer: String,
    /// Name of the money.
    pub currency: String,
    /// Items; empty for all together.
    pub lines: Vec<CostLineView>,
    /// Money a year before the price of the system.
    pub net_per_year: BandView,
    /// The same less the even yearly share of the price.
    pub net_after_capital: BandView,
    /// Present value over the life of the system.
    pub present_value: BandView,
    /// Years until the price is back, interest left out; `null` where nothing is paid, or never.
    pub payback_years: Option<f64>,
    /// Minutes that a trip may lose until the present value is nothing; `null` for who does not pay
    /// for time.
    pub break_even_lost_min: Option<f64>,
    /// Items left out because they were not told.
    pub left_out: Vec<String>,
}

/// One item of a year: what is gained is above zero.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct CostLineView {
    /// Item, such as `fuel`.
    pub item: String,
    /// Money a year.
    pub per_year: Option<BandView>,
    /// Why it was not assessed.
    pub not_assessed: Option<NotAssessedView>,
}

/// How far one figure moves the present value of who buys the system.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct DecidesView {
    /// The figure, such as `lost-time`.
    pub figure: String,
    /// Present value with the figure at its low end.
    pub present_value_at_low: f64,
    /// And at its high end.
    pub present_value_at_high: f64,
    /// Whether the ends are the figure's own, and not a fifth either way.
    pub own_band: bool,
}

/// Another way to run, for the same load a year.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct RivalCostView {
    /// `constant-reduced` or `less-load`.
    pub way: String,
    /// Items, with who pays.
    pub lines: Vec<RivalLineView>,
}

/// One item of a rival.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct RivalLineView {
    /// Who pays or gains.
    pub payer: String,
    /// The item.
    #[serde(flatten)]
    pub line: CostLineView,
}

fn payer(payer: Payer) -> &'static str {
    match payer {
        Payer::Haulier => "haulier",
        Payer::RoadOwner => "road-owner",
        Payer::Client => "client",
    }
}

fn item(item: Item) -> &'static str {
    match item {
        Item::System => "system",
        Item::Service => "service",
        Item::Time => "time",
        Item::Fuel => "fuel",
        Item::Tires => "tires",
        Item::Repairs => "repairs",
        Item::Season => "season",
        Item::Payload => "payload",
        Item::Road => "road",
        Item::RoadPassedOn => "road-passed-on",
        Item::MoreTrips => "more-trips",
    }
}

fn figure(figure: Figure) -> &'static str {
    match figure {
        Figure::Capex => "price",
        Figure::Life => "life",
        Figure::Interest => "interest",
        Figure::Service => "service",
        Figure::Trips => "trips",
        Figure::LostTime => "lost-time",
        Figure::TruckHour => "truck-hour",
        Figure::FuelAdded => "fuel-added",
        Figure::FuelPrice => "fuel-price",
        Figure::TireSaving => "tire-saving",
        Figure::RepairSaving => "repair-saving",
        Figure::SeasonDays => "season-days",
        Figure::Margin => "margin",
        Figure::Payload => "payload",
        Figure::PayloadRate => "payload-rate",
        Figure::RoadCost => "road-cost",
        Figure::RoadSaving => "road-saving",
    }
}

fn money(band: &plan::effect::Band<f64>) -> BandView {
    BandView::of(band, |value| value)
}

fn line(of: &Line) -> CostLineView {
    let mut lacking = Lacking::default();
    let name = item(of.item);
    CostLineView {
        item: name.to_owned(),
        per_year: lacking.read(name, &of.per_year, money),
        not_assessed: lacking.list().into_iter().next(),
    }
}

fn result(costs: &Costs, of: &PayerResult) -> CostView {
    let lines = costs.lines.iter().filter(|line| Some(line.payer) == of.payer);
    CostView {
        payer: of.payer.map_or("all", payer).to_owned(),
        currency: costs.currency.clone(),
        lines: lines.map(line).collect(),
        net_per_year: money(&of.net_per_year),
        net_after_capital: money(&of.net_after_capital),
        present_value: money(&of.npv),
        payback_years: of.payback_years,
        break_even_lost_min: of.break_even.map(quantity::Time::as_min),
        left_out: of.left_out.iter().map(|one| item(*one).to_owned()).collect(),
    }
}

/// Costs by payer, all together last.
pub(super) fn results(costs: &Costs) -> Vec<CostView> {
    costs.results.iter().map(|one| result(costs, one)).collect()
}

/// Figures by how far they move the present value of the buyer.
pub(super) fn decides(costs: &Costs) -> Vec<DecidesView> {
    let one = |bar: &Bar| DecidesView {
        figure: figure(bar.figure).to_owned(),
        present_value_at_low: bar.npv[0],
        present_value_at_high: bar.npv[1],
        own_band: bar.own_band,
    };
    costs.tornado.iter().map(one).collect()
}

/// Rivals.
pub(super) fn rivals(costs: &Costs) -> Vec<RivalCostView> {
    let of = |one: &Line| RivalLineView { payer: payer(one.payer).to_owned(), line: line(one) };
    let rivals = costs.rivals.iter().map(|rival| RivalCostView {
        way: way_name(rival.way).to_owned(),
        lines: rival.lines.iter().map(of).collect(),
    });
    rivals.collect()
}
