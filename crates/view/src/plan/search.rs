//! Why a ladder that was searched for is the best one: its cost, term by term.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use study::Searched;

/// What a cycle on the ladder found takes.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct TermsView {
    /// Driving and waiting.
    pub time_s: f64,
    /// Pressure above what the ground wants times road, mean of the channels.
    pub hard_kpa_km: f64,
    /// Number of changes.
    pub changes: f64,
    /// Loaded compressor.
    pub compressor_s: f64,
}

/// The prices of the survey.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct PricesView {
    /// For an hour of the truck.
    pub truck_hour: f64,
    /// For a kilometer one kilopascal above what the ground wants.
    pub hard_kpa_km: f64,
    /// For a change.
    pub change: f64,
    /// For an hour of loaded compressor.
    pub compressor_hour: f64,
}

/// What each term costs.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct TermCostsView {
    /// Driving and waiting.
    pub time: f64,
    /// Road harder than the ground wants.
    pub hard_road: f64,
    /// Changes.
    pub changes: f64,
    /// Loaded compressor.
    pub compressor: f64,
}

/// How the ladder was found, where the survey did not give it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct LadderSearchView {
    /// Rungs asked for at most.
    pub rungs_asked: usize,
    /// Rungs of the ladder found; more would bring nothing where it has fewer than asked for.
    pub rungs_found: usize,
    /// Speed caps chosen from.
    pub caps_tried_kmh: Vec<f64>,
    /// Speed caps that had to be among the rungs.
    pub caps_required_kmh: Vec<f64>,
    /// Terms of a cycle.
    pub terms: TermsView,
    /// Price of each term.
    pub prices: PricesView,
    /// Cost of each term.
    pub term_costs: TermCostsView,
    /// Cost of a cycle: the sum of the terms' costs.
    pub cost: f64,
    /// Name of the money.
    pub currency: String,
    /// How much less another choice on the same problem could cost at most; zero: none does.
    pub gap: f64,
    /// Cost with one rung fewer; `null` where none covers every leg.
    pub one_fewer_cost: Option<f64>,
    /// Cost with one rung more; `null` where there is no cap left.
    pub one_more_cost: Option<f64>,
    /// How often the ladder found was planned whole.
    pub rounds: usize,
}

pub(super) fn search(found: &Searched) -> LadderSearchView {
    let (best, terms, costs) = (&found.ladders.best, found.terms(), found.costs());
    let wish = &found.wish;
    LadderSearchView {
        rungs_asked: found.rungs,
        rungs_found: best.caps.len(),
        caps_tried_kmh: found.caps.iter().map(|cap| cap.as_kmh()).collect(),
        caps_required_kmh: wish.fixed_caps.iter().map(|cap| cap.as_kmh()).collect(),
        terms: TermsView {
            time_s: terms.time().as_s(),
            hard_kpa_km: terms.hard_kpa_km(),
            changes: terms.changes(),
            compressor_s: terms.compressor().as_s(),
        },
        prices: PricesView {
            truck_hour: wish.truck_hour,
            hard_kpa_km: wish.hard_kpa_km,
            change: wish.change,
            compressor_hour: wish.compressor_hour,
        },
        term_costs: TermCostsView {
            time: costs.time,
            hard_road: costs.hard_road,
            changes: costs.changes,
            compressor: costs.compressor,
        },
        cost: best.cost,
        currency: wish.currency.clone(),
        gap: best.gap,
        one_fewer_cost: found.ladders.one_fewer.as_ref().map(|fewer| fewer.cost),
        one_more_cost: found.ladders.one_more.as_ref().map(|more| more.cost),
        rounds: found.rounds,
    }
}
