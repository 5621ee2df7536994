//! Findings of the audit.

use audit::{Evidence, Finding, Rule, Severity};
use model::haul_cycle::HaulCycle;
use plan::CellId;
use quantity::Length;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use study::Planned;

use crate::plan::minimum_name;

/// The numbers behind a finding; keys that do not belong to its kind are `null`.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, Default)]
pub struct EvidenceView {
    /// Air channel.
    pub channel: Option<String>,
    /// Rung of the limit.
    pub rung: Option<String>,
    /// Pressure as a vented gauge reads it.
    pub reading_kpa: Option<f64>,
    /// Highest reading that counts as lowered.
    pub reading_limit_kpa: Option<f64>,
    /// Cold pressure.
    pub cold_kpa: Option<f64>,
    /// Lowest cold pressure.
    pub minimum_kpa: Option<f64>,
    /// What governs that lowest pressure.
    pub min_governed_by: Option<String>,
    /// Speed.
    pub speed_kmh: Option<f64>,
    /// Speed cap.
    pub cap_kmh: Option<f64>,
    /// Time on the rung.
    pub held_s: Option<f64>,
    /// Longest time on it.
    pub hold_limit_s: Option<f64>,
    /// Road on the rung.
    pub held_m: Option<f64>,
    /// Longest road on it.
    pub hold_limit_m: Option<f64>,
    /// Rise of the pressure within a minute.
    pub rise_kpa: Option<f64>,
    /// Rise from which it counts as filling.
    pub rise_limit_kpa: Option<f64>,
}

/// Something that was not as the plan has it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct FindingView {
    /// `lowered-late`, `raised-late`, `over-cap`, `under-minimum`, `held-too-long`,
    /// `moved-off-before-complete` or `raised-on-descent`.
    pub rule: String,
    /// `loss`, `limit` or `danger`.
    pub severity: String,
    /// When it began, from the start.
    pub start_s: f64,
    /// When it was last seen.
    pub end_s: f64,
    /// Seconds of it.
    pub lasted_s: f64,
    /// Chainage where it began.
    pub km: Option<f64>,
    /// Chainage where it was last seen.
    pub to_km: Option<f64>,
    /// Road run meanwhile.
    pub distance_m: f64,
    /// Load state.
    pub load_state: String,
    /// The numbers.
    pub evidence: EvidenceView,
}

fn severity(severity: Severity) -> &'static str {
    match severity {
        Severity::Loss => "loss",
        Severity::Limit => "limit",
        Severity::Danger => "danger",
    }
}

/// The view of a finding on a plan.
pub(crate) fn finding(planned: &Planned, finding: &Finding) -> FindingView {
    let combination = &planned.haul.combination;
    FindingView {
        rule: finding.rule.code().to_owned(),
        severity: severity(finding.severity).to_owned(),
        start_s: finding.start.as_s(),
        end_s: finding.end.as_s(),
        lasted_s: finding.lasted.as_s(),
        km: finding.from.map(Length::as_km),
        to_km: finding.to.map(Length::as_km),
        distance_m: finding.distance.as_m(),
        load_state: combination
            .load_states
            .get(finding.load_state)
            .map(|state| state.name.clone())
            .unwrap_or_default(),
        evidence: evidence(planned, finding),
    }
}

fn evidence(planned: &Planned, finding: &Finding) -> EvidenceView {
    let haul: &HaulCycle = &planned.haul;
    let channel = |at: usize| Some(haul.combination.channels.get(at)?.name.clone());
    let rung = |at: usize| Some(haul.combination.rungs.get(at)?.name.clone());
    let none = EvidenceView::default();
    match finding.evidence {
        Evidence::Above { channel: at, reading, limit, .. } => EvidenceView {
            channel: channel(at),
            reading_kpa: Some(reading.as_kpa()),
            reading_limit_kpa: Some(limit.as_kpa()),
            ..none
        },
        Evidence::Below { channel: at, rung: of, pressure, limit } => {
            let load_state = finding.load_state;
            let id = CellId { channel: at, load_state, chain_state: 0, rung: of };
            let window = planned.plan.ladder.cell(id).and_then(|cell| cell.window.as_ref());
            EvidenceView {
                channel: channel(at),
                rung: rung(of),
                cold_kpa: Some(pressure.as_kpa()),
                minimum_kpa: Some(limit.as_kpa()),
                min_governed_by: window
                    .map(|window| minimum_name(window.governing_minimum().kind).to_owned()),
                ..none
            }
        }
        Evidence::Over { rung: of, speed, cap } => EvidenceView {
            rung: rung(of),
            speed_kmh: Some(speed.as_kmh()),
            cap_kmh: Some(cap.as_kmh()),
            ..none
        },
        Evidence::Held { rung: of, time, distance, limit } => EvidenceView {
            rung: rung(of),
            held_s: Some(time.as_s()),
            hold_limit_s: limit.time.map(quantity::Time::as_s),
            held_m: Some(distance.as_m()),
            hold_limit_m: limit.distance.map(Length::as_m),
            ..none
        },
        Evidence::Rose { channel: at, reading, by, limit } => EvidenceView {
            channel: channel(at),
            reading_kpa: Some(reading.as_kpa()),
            rise_kpa: Some(by.as_kpa()),
            rise_limit_kpa: Some(limit.as_kpa()),
            ..none
        },
    }
}

/// What a rule could judge.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct RuleCoverageView {
    /// The rule.
    pub rule: String,
    /// Time it judged.
    pub known_s: f64,
    /// Time it could not judge.
    pub unknown_s: f64,
}

/// How much could be judged.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct CoverageView {
    /// Rows, one a second.
    pub rows: u64,
    /// Rows that hold a number which cannot be.
    pub bad_rows: u64,
    /// Time from the first to the last.
    pub span_s: f64,
    /// Time in which any rule that applied could not judge.
    pub unknown_s: f64,
    /// Rule by rule.
    pub rules: Vec<RuleCoverageView>,
}

/// The view of a coverage.
pub(crate) fn coverage(of: &audit::Coverage) -> CoverageView {
    CoverageView {
        rows: of.rows(),
        bad_rows: of.bad_rows(),
        span_s: of.rows() as f64,
        unknown_s: of.unknown().as_s(),
        rules: Rule::ALL
            .into_iter()
            .map(|rule| RuleCoverageView {
                rule: rule.code().to_owned(),
                known_s: of.of(rule).known().as_s(),
                unknown_s: of.of(rule).unknown().as_s(),
            })
            .collect(),
    }
}
