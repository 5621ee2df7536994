//! Results of the invented haul, for tests of documents.

use plan::yard::{YardChange, YardChannel};
use plan::{Action, Detail};
use quantity::{GaugePressure, Speed, Time};
use study::{ApprovalRequest, HaulLines};
use view::{
    FittedView, NowRowView, NowTableDocument, PlanDocument, PlanView, RequestView,
    RequestsDocument, RouteView, SensorView, SetupView, SubjectView, UnitView,
};

use super::Material;

/// Everything a document may need.
pub(in crate::paper) struct Sample {
    pub plan: PlanView,
    pub route: RouteView,
    pub gauge: NowTableDocument,
    pub setup: SetupView,
    pub requests: RequestsDocument,
}

impl Sample {
    pub fn new() -> Self {
        let haul = example::haul();
        let detail = Detail { samples: 0, ..Detail::default() };
        let plan = plan::Plan::of(&haul, &detail).unwrap();
        let mut setup = SetupView::new(&haul, &[], &changes());
        setup.units.push(unit());
        let requests = requests(&haul, &plan);
        let route = RouteView::from(&haul);
        let planned =
            study::Planned { haul, plan, search: None, planned_for: study::PlannedFor::default() };
        let plan = PlanDocument::new(std::slice::from_ref(&planned)).plans.remove(0);
        let gauge = gauge(&plan);
        Self { plan, route, gauge, setup, requests }
    }

    pub fn material(&self) -> Material<'_> {
        Material {
            plan: &self.plan,
            issue: None,
            responsible: "desk",
            route: &self.route,
            gauge: &self.gauge,
            setup: &self.setup,
            requests: Some(&self.requests),
        }
    }

    /// The same with the lowest rung of the driven channels approved by the maker.
    pub fn with_recovery(mut self) -> Self {
        let lowest = self.plan.rungs[0].name.clone();
        for cell in self.plan.ladder.iter_mut().filter(|cell| cell.rung == lowest) {
            if let Some(set) = cell.set_kpa {
                "maker".clone_into(&mut cell.approval);
                "set".clone_into(&mut cell.driver);
                cell.driver_set_kpa = Some(set);
                cell.hold_m = Some(1500.0);
            }
        }
        self
    }
}

/// A raise and a lowering of the first channel.
fn changes() -> Vec<YardChange> {
    let change = |from: usize, to: usize, action, psi: [f64; 2], time: Option<f64>| YardChange {
        load_state: 1,
        from,
        to,
        action,
        channels: vec![YardChannel {
            channel: 0,
            from: GaugePressure::from_psi(psi[0]),
            to: GaugePressure::from_psi(psi[1]),
            time: time.map(Time::from_s),
        }],
    };
    vec![
        change(0, 1, Action::Raise, [60.0, 72.0], Some(187.3)),
        change(1, 0, Action::Lower, [72.0, 60.0], Some(41.9)),
        change(1, 2, Action::Raise, [72.0, 140.0], None),
    ]
}

fn unit() -> UnitView {
    UnitView {
        number: "12".to_owned(),
        vehicle: "truck".to_owned(),
        sensors: vec![SensorView { place: "drive".to_owned(), verified: None }],
        fitted: vec![FittedView {
            what: "delivery".to_owned(),
            channel: None,
            share_pct: 91.0,
            date: "2026-05-13".to_owned(),
        }],
    }
}

fn requests(haul: &model::haul_cycle::HaulCycle, plan: &plan::Plan) -> RequestsDocument {
    let tire = haul.combination.groups.iter().find(|group| group.channel.is_some()).unwrap();
    let tire = std::sync::Arc::clone(&tire.tire);
    let lines = plan::request::lines(haul, plan, &tire);
    let request = ApprovalRequest {
        rim: None,
        document: None,
        document_counts: false,
        hauls: vec![HaulLines { haul: haul.clone(), lines }],
        tire,
    };
    RequestsDocument {
        schema: "airtide.requests/1".to_owned(),
        responsible: "desk".to_owned(),
        survey: "invented".to_owned(),
        requests: vec![RequestView::from(&request)],
    }
}

fn gauge(plan: &PlanView) -> NowTableDocument {
    let row = |channel: &String, psi: f64, speeds: [Option<f64>; 2]| NowRowView {
        channel: channel.clone(),
        reading_kpa: GaugePressure::from_psi(psi).as_kpa(),
        highest_speed_kmh: speeds.to_vec(),
    };
    let mph = |mph: f64| Some(Speed::from_mph(mph).as_kmh());
    let rows = plan.channels.iter().flat_map(|channel| {
        [
            row(channel, 30.0, [None, None]),
            row(channel, 35.0, [mph(15.0), None]),
            row(channel, 60.0, [mph(35.0), mph(15.0)]),
            row(channel, 90.0, [mph(200.0), mph(35.0)]),
            row(channel, 95.0, [None, mph(200.0)]),
            row(channel, 100.0, [None, None]),
        ]
    });
    NowTableDocument {
        schema: "airtide.now-table/1".to_owned(),
        subject: SubjectView {
            unit: None,
            haul: plan.haul.clone(),
            combination: plan.combination.clone(),
            chain_state: None,
            with_unapproved: false,
        },
        tires: "not-known".to_owned(),
        load_states: vec![plan.empty_state.clone(), plan.laden_state.clone()],
        rows: rows.collect(),
    }
}
