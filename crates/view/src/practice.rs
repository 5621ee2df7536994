//! Practice: the drive under way, and what is said of it.

use haul::Target;
use haul::practice::{Action, Event, SpeedChoice, Stage};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use study::Planned;
use study::practice::{PriceItem, Session, Tally, Verdict};

use crate::finding::{CoverageView, FindingView, coverage, finding};

/// Something that happened.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct EventView {
    /// Since the start.
    pub time_s: f64,
    /// `stage`, `complete`, `must-stop`, `free-again` or `lay-by-closed`.
    pub event: String,
    /// The part of the haul that began.
    pub stage: Option<String>,
}

/// Something done, as it is played again.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ActedView {
    /// Since the start.
    pub time_s: f64,
    /// `order`, `speed`, `stop` or `go`.
    pub action: String,
    /// Rung ordered.
    pub rung: Option<String>,
    /// Load state whose pressures are ordered.
    pub load_state: Option<String>,
    /// `cap`, `road` or `chosen`.
    pub speed: Option<String>,
    /// Speed chosen.
    pub speed_kmh: Option<f64>,
}

/// The drive as whoever drives sees it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct PracticeDocument {
    /// `airtide.practice/1`.
    pub schema: String,
    /// Haul.
    pub haul: String,
    /// Seed of the surprises.
    pub seed: u64,
    /// `start`, `empty`, `loading`, `loaded`, `laden`, `arrived` or `stuck`.
    pub stage: String,
    /// Whether nothing more will happen.
    pub over: bool,
    /// Since the start.
    pub time_s: f64,
    /// Chainage.
    pub km: f64,
    /// Speed.
    pub speed_kmh: f64,
    /// Cap of the rung held, or of the lower one while a change is under way.
    pub cap_kmh: f64,
    /// Speed limit of the road here.
    pub limit_kmh: f64,
    /// `cap`, `road` or `chosen`.
    pub speed: String,
    /// Speed chosen, where it is a number.
    pub chosen_kmh: Option<f64>,
    /// Load state of the truck.
    pub load_state: String,
    /// Rung ordered.
    pub rung: String,
    /// Load state whose pressures are ordered: look at it after loading.
    pub rung_load_state: String,
    /// Whether a change is under way.
    pub changing: bool,
    /// Whether the driver has the truck stand, or something is in the way.
    pub held_up: bool,
    /// Loading time left.
    pub loading_left_s: f64,
    /// Service pressure.
    pub supply_kpa: f64,
    /// Tire pressure of each channel as a vented gauge reads it.
    pub tire_kpa: Vec<f64>,
    /// Fuel so far.
    pub fuel_l: f64,
    /// Everything that happened.
    pub events: Vec<EventView>,
    /// Everything done.
    pub acted: Vec<ActedView>,
}

/// What a drive came to.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct TallyView {
    /// Whether it arrived.
    pub arrived: bool,
    /// Time.
    pub time_s: f64,
    /// Time standing, loading left out.
    pub stood_s: f64,
    /// Fuel.
    pub fuel_l: f64,
    /// Time the compressor delivered.
    pub compressor_loaded_s: f64,
    /// Changes ordered.
    pub changes: usize,
    /// Shortfall of the worst channel under the lowest for load and speed, times minutes.
    pub under_minimum_kpa_min: f64,
    /// Excess over what the road wants, times kilometers.
    pub hard_kpa_km: f64,
}

/// One line of the price.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct PriceLineView {
    /// `time` (hours), `fuel` (liters), `compressor` (hours), `changes`, `road` (kPa km) or `tires` (kPa min).
    pub item: String,
    /// More of it than the plan's own drive.
    pub more: f64,
    /// Money; `null` where the survey knows no price.
    pub cost: Option<f64>,
}

/// A drive judged and priced.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct VerdictDocument {
    /// `airtide.verdict/1`.
    pub schema: String,
    /// Haul.
    pub haul: String,
    /// Seed of the surprises.
    pub seed: u64,
    /// What went otherwise than planned: `slow-compressor`, `leak`, `unexpected-stop`, `closed-lay-by`,
    /// `wrong-load-state` or `soft-leg`.
    pub surprises: Vec<String>,
    /// Findings, in order of time.
    pub findings: Vec<FindingView>,
    /// How much could be judged.
    pub coverage: CoverageView,
    /// The drive.
    pub driven: TallyView,
    /// The plan's own drive.
    pub planned: TallyView,
    /// The difference.
    pub prices: Vec<PriceLineView>,
    /// Name of the money.
    pub currency: Option<String>,
    /// Money of the lines that have a price.
    pub cost: Option<f64>,
    /// Everything done.
    pub acted: Vec<ActedView>,
}

fn stage(stage: Stage) -> &'static str {
    match stage {
        Stage::Start => "start",
        Stage::Empty => "empty",
        Stage::Loading => "loading",
        Stage::Loaded => "loaded",
        Stage::Laden => "laden",
        Stage::Arrived => "arrived",
        Stage::Stuck => "stuck",
    }
}

fn speed(choice: SpeedChoice) -> (&'static str, Option<f64>) {
    match choice {
        SpeedChoice::KeepToCap => ("cap", None),
        SpeedChoice::Road => ("road", None),
        SpeedChoice::At(speed) => ("chosen", Some(speed.as_kmh())),
    }
}

fn events(session: &Session) -> Vec<EventView> {
    let view = |happened: &haul::practice::Happened| EventView {
        time_s: f64::from(happened.second),
        event: match happened.event {
            Event::Stage(_) => "stage",
            Event::Complete => "complete",
            Event::MustStop => "must-stop",
            Event::FreeAgain => "free-again",
            Event::LayByClosed => "lay-by-closed",
        }
        .to_owned(),
        stage: match happened.event {
            Event::Stage(began) => Some(stage(began).to_owned()),
            _ => None,
        },
    };
    session.practice().happened().iter().map(view).collect()
}

fn names(planned: &Planned, target: Target) -> (String, String) {
    let combination = &planned.haul.combination;
    let rung = combination.rungs[target.rung].name.clone();
    (rung, combination.load_states[target.load_state].name.clone())
}

fn acted(session: &Session) -> Vec<ActedView> {
    let view = |acted: &haul::practice::Acted| {
        let mut view = ActedView {
            time_s: f64::from(acted.second),
            action: String::new(),
            rung: None,
            load_state: None,
            speed: None,
            speed_kmh: None,
        };
        let action = match acted.action {
            Action::Order(target) => {
                let (rung, load_state) = names(session.planned(), target);
                (view.rung, view.load_state) = (Some(rung), Some(load_state));
                "order"
            }
            Action::Speed(choice) => {
                let (word, kmh) = speed(choice);
                (view.speed, view.speed_kmh) = (Some(word.to_owned()), kmh);
                "speed"
            }
            Action::Stop => "stop",
            Action::Go => "go",
        };
        action.clone_into(&mut view.action);
        view
    };
    session.practice().acted().iter().map(view).collect()
}

impl PracticeDocument {
    /// The drive as it stands.
    pub fn new(session: &Session) -> Self {
        let practice = session.practice();
        let state = practice.state();
        let combination = &session.planned().haul.combination;
        let (word, chosen_kmh) = speed(practice.choice());
        let (rung, rung_load_state) = names(session.planned(), state.ordered());
        Self {
            schema: "airtide.practice/1".to_owned(),
            haul: session.planned().haul.name.clone(),
            seed: session.seed(),
            stage: stage(practice.stage()).to_owned(),
            over: practice.is_over(),
            time_s: f64::from(practice.second()),
            km: practice.chainage().as_km(),
            speed_kmh: state.speed().as_kmh(),
            cap_kmh: practice.cap().as_kmh(),
            limit_kmh: practice.course().speed_limit(state.travelled()).as_kmh(),
            speed: word.to_owned(),
            chosen_kmh,
            load_state: combination.load_states[state.load_state()].name.clone(),
            rung,
            rung_load_state,
            changing: state.is_changing(),
            held_up: practice.is_held_up(),
            loading_left_s: practice.loading_left().as_s().max(0.0),
            supply_kpa: practice.supply().as_kpa(),
            tire_kpa: (0..practice.channels())
                .map(|channel| practice.tire_pressure(channel).as_kpa())
                .collect(),
            fuel_l: state.totals().fuel().as_l(),
            events: events(session),
            acted: acted(session),
        }
    }
}

fn tally(of: &Tally) -> TallyView {
    TallyView {
        arrived: of.arrived,
        time_s: of.time.as_s(),
        stood_s: of.stood.as_s(),
        fuel_l: of.fuel.as_l(),
        compressor_loaded_s: of.compressor.as_s(),
        changes: of.changes,
        under_minimum_kpa_min: of.under_minimum_kpa_min,
        hard_kpa_km: of.hard_kpa_km,
    }
}

fn price_item(item: PriceItem) -> &'static str {
    match item {
        PriceItem::Time => "time",
        PriceItem::Fuel => "fuel",
        PriceItem::Compressor => "compressor",
        PriceItem::Changes => "changes",
        PriceItem::Road => "road",
        PriceItem::Tires => "tires",
    }
}

impl VerdictDocument {
    /// What is said of a drive.
    pub fn new(session: &Session, verdict: &Verdict) -> Self {
        let planned = session.planned();
        let costs: Vec<f64> = verdict.prices.iter().filter_map(|line| line.cost).collect();
        Self {
            schema: "airtide.verdict/1".to_owned(),
            haul: planned.haul.name.clone(),
            seed: session.seed(),
            surprises: verdict.surprises.iter().map(|kind| kind.name().to_owned()).collect(),
            findings: verdict.findings.iter().map(|one| finding(planned, one)).collect(),
            coverage: coverage(&verdict.coverage),
            driven: tally(&verdict.driven),
            planned: tally(&verdict.planned),
            prices: verdict
                .prices
                .iter()
                .map(|line| PriceLineView {
                    item: price_item(line.item).to_owned(),
                    more: line.more,
                    cost: line.cost,
                })
                .collect(),
            currency: verdict.currency.clone(),
            cost: (!costs.is_empty()).then(|| costs.iter().sum()),
            acted: acted(session),
        }
    }
}
