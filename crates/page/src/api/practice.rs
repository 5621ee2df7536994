//! Practice: drives under way, each driven by one window.

use std::sync::{Arc, Mutex, PoisonError};

use axum::Json;
use axum::extract::State;
use axum::extract::rejection::JsonRejection;
use haul::Target;
use haul::practice::{Action, SpeedChoice};
use model::haul_cycle::HaulCycle;
use plan::Detail;
use quantity::Speed;
use study::practice::{Session, SurpriseWish};
use study::{Planned, PlannedFor};
use view::{
    ActionRequest, AgainRequest, DriveDocument, DriveRequest, JudgeRequest, PracticeDocument,
    StepRequest, VerdictDocument,
};

use super::trial;
use super::work::computing;
use crate::failure::{Answer, Failure};
use crate::site::{Site, random_text};

/// Drives kept at once; the one that rested longest gives way, and its window plays it again.
const KEPT: usize = 8;
/// Most seconds of one step.
const LONGEST_STEP: u32 = 600;
/// Most seconds of a drive: a day.
const LONGEST_DRIVE: u32 = 86_400;
/// Most actions of a drive played again.
const MOST_ACTED: usize = 10_000;

/// The drives under way, the one driven last at the end.
#[derive(Debug, Default)]
pub struct Drives(Mutex<Vec<(String, Arc<Mutex<Session>>)>>);

impl Drives {
    fn put(&self, id: String, session: Session) {
        let mut kept = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        if kept.len() >= KEPT {
            kept.remove(0);
        }
        kept.push((id, Arc::new(Mutex::new(session))));
    }

    fn take(&self, id: &str) -> Answer<Arc<Mutex<Session>>> {
        let mut kept = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        let at = kept.iter().position(|(known, _)| known == id);
        let at = at.ok_or_else(|| {
            Failure::missing("this drive is no longer known; begin it again with what was done")
        })?;
        let found = kept.remove(at);
        let session = Arc::clone(&found.1);
        kept.push(found);
        Ok(session)
    }
}

/// `POST /api/practice`
pub async fn begin(
    State(site): State<Arc<Site>>,
    wanted: Result<Json<DriveRequest>, JsonRejection>,
) -> Answer<Json<DriveDocument>> {
    let Json(wanted) = wanted?;
    let slots = Arc::clone(&site.workers);
    computing(&slots, move || {
        let wish: SurpriseWish = wanted.surprise.parse().map_err(Failure::wrong)?;
        let snapshot = site.snapshots.current()?;
        let survey = snapshot.opened.survey.as_ref();
        let survey = survey.ok_or_else(|| Failure::survey("survey.toml has errors"))?;
        let haul = trial::haul(survey, &wanted.haul)?;
        // The nominal change points are enough to practise on, and are there at once.
        let detail = Detail { samples: 0, ..Detail::default() };
        let plan = plan::Plan::of(&haul, &detail).map_err(Failure::survey)?;
        let planned = Planned { haul, plan, search: None, planned_for: PlannedFor::default() };
        let mut session =
            Session::start(&planned, &detail, wish, wanted.seed).map_err(Failure::survey)?;
        if let Some(again) = &wanted.again {
            play(&mut session, again)?;
        }
        let id = random_text(16).map_err(Failure::broken)?;
        let drive = PracticeDocument::new(&session);
        site.drives.put(id.clone(), session);
        Ok(Json(DriveDocument { schema: "airtide.drive/1".to_owned(), id, drive }))
    })
    .await
}

/// Drives as it was driven, to the same digit.
fn play(session: &mut Session, again: &AgainRequest) -> Answer<()> {
    if again.acted.len() > MOST_ACTED {
        return Err(Failure::wrong(format!("more than {MOST_ACTED} actions in one drive")));
    }
    let to = |session: &mut Session, time_s: f64| {
        let whole = (0.0..=f64::from(LONGEST_DRIVE)).contains(&time_s);
        if !whole || time_s < f64::from(session.practice().second()) {
            let wrong = format!("{time_s} s is before the action ahead of it, or over a day");
            return Err(Failure::wrong(wrong));
        }
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "within a day, as just seen"
        )]
        let second = time_s as u32;
        session.advance(second - session.practice().second());
        Ok(())
    };
    for acted in &again.acted {
        to(session, acted.time_s)?;
        let action = action(&session.planned().haul, &ActionRequest::from(acted))?;
        session.act(action).map_err(Failure::wrong)?;
    }
    to(session, again.time_s)
}

/// `POST /api/practice/step`
pub async fn step(
    State(site): State<Arc<Site>>,
    wanted: Result<Json<StepRequest>, JsonRejection>,
) -> Answer<Json<PracticeDocument>> {
    let Json(wanted) = wanted?;
    let slots = Arc::clone(&site.workers);
    computing(&slots, move || {
        if wanted.seconds > LONGEST_STEP {
            return Err(Failure::wrong(format!("a step has at most {LONGEST_STEP} s")));
        }
        let session = site.drives.take(&wanted.id)?;
        let mut session = session.lock().unwrap_or_else(PoisonError::into_inner);
        if let Some(done) = &wanted.action {
            let action = action(&session.planned().haul, done)?;
            session.act(action).map_err(Failure::wrong)?;
        }
        let left = LONGEST_DRIVE.saturating_sub(session.practice().second());
        if left < wanted.seconds {
            return Err(Failure::wrong("a drive lasts a day at most; begin another"));
        }
        session.advance(wanted.seconds);
        Ok(Json(PracticeDocument::new(&session)))
    })
    .await
}

/// `POST /api/practice/verdict`
pub async fn verdict(
    State(site): State<Arc<Site>>,
    wanted: Result<Json<JudgeRequest>, JsonRejection>,
) -> Answer<Json<VerdictDocument>> {
    let Json(wanted) = wanted?;
    let slots = Arc::clone(&site.workers);
    computing(&slots, move || {
        let session = site.drives.take(&wanted.id)?;
        let session = session.lock().unwrap_or_else(PoisonError::into_inner);
        let verdict = session.verdict().map_err(Failure::broken)?;
        Ok(Json(VerdictDocument::new(&session, &verdict)))
    })
    .await
}

fn action(haul: &HaulCycle, done: &ActionRequest) -> Answer<Action> {
    let lacks = |what: &str| Failure::wrong(format!("'{}' lacks its {what}", done.action));
    match done.action.as_str() {
        "stop" => Ok(Action::Stop),
        "go" => Ok(Action::Go),
        "order" => {
            let rung = done.rung.as_deref().ok_or_else(|| lacks("rung"))?;
            let state = done.load_state.as_deref().ok_or_else(|| lacks("load_state"))?;
            Ok(Action::Order(target(haul, rung, state)?))
        }
        "speed" => Ok(Action::Speed(match (done.speed.as_deref(), done.speed_kmh) {
            (Some("cap"), _) => SpeedChoice::KeepToCap,
            (Some("road"), _) => SpeedChoice::Road,
            (Some("chosen"), Some(kmh)) if (1.0..=200.0).contains(&kmh) => {
                SpeedChoice::At(Speed::from_kmh(kmh))
            }
            (Some("chosen"), _) => {
                return Err(Failure::wrong("speed_kmh must be from 1 to 200"));
            }
            _ => return Err(Failure::wrong("speed must be cap, road or chosen")),
        })),
        other => Err(Failure::wrong(format!("action '{other}' is none of order, speed, stop, go"))),
    }
}

fn target(haul: &HaulCycle, rung: &str, load_state: &str) -> Answer<Target> {
    let combination = &haul.combination;
    let missing = |what: &str, name: &str| Failure::missing(format!("there is no {what} '{name}'"));
    let rung_at = combination.rungs.iter().position(|one| one.name == rung);
    let state_at = combination.load_states.iter().position(|one| one.name == load_state);
    Ok(Target {
        rung: rung_at.ok_or_else(|| missing("rung", rung))?,
        load_state: state_at.ok_or_else(|| missing("load state", load_state))?,
    })
}
