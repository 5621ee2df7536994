//! A practice under way.

use audit::Limits;
use haul::practice::{Action, ActionError, Practice, PracticeError, Surprise};
use plan::Detail;

use super::limits::{NoLimits, limits_of};
use super::verdict::{Tally, Verdict, judge};
use super::{Script, SurpriseWish};
use crate::Planned;

/// Why there is no practice.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum SessionError {
    /// The plan gives nothing to be judged by.
    #[error(transparent)]
    Limits(#[from] NoLimits),
    /// The haul cannot be driven.
    #[error(transparent)]
    Practice(#[from] PracticeError),
    /// An action of the plan's own drive cannot be done.
    #[error("the plan's own drive fails: {0}")]
    Plan(ActionError),
}

/// A planned haul under the wheels of a person.
#[derive(Debug, Clone)]
pub struct Session {
    planned: Planned,
    limits: Limits,
    practice: Practice,
    surprises: Vec<Surprise>,
    seed: u64,
    own: Tally,
}

impl Session {
    /// The truck standing at the start, with the surprises that the wish and the seed bring.
    ///
    /// # Errors
    /// [`SessionError`] for a plan that cannot be driven.
    pub fn start(
        planned: &Planned,
        detail: &Detail,
        wish: SurpriseWish,
        seed: u64,
    ) -> Result<Self, SessionError> {
        let limits = limits_of(planned, detail)?;
        let haul = &planned.haul;
        let begin = |surprises| {
            let set = planned.plan.ladder.set_pressures(haul);
            Practice::new(haul, set, surprises, detail.cell, detail.style)
        };
        let mut own = begin(Vec::new())?;
        if let Ok(driven) = &planned.plan.driven {
            Script::of_plan(driven).drive(&mut own).map_err(SessionError::Plan)?;
        }
        let surprises = wish.surprises(haul, seed);
        Ok(Self {
            own: Tally::of(planned, &own),
            practice: begin(surprises.clone())?,
            planned: planned.clone(),
            limits,
            surprises,
            seed,
        })
    }

    /// Does something now.
    ///
    /// # Errors
    /// [`ActionError`] for what cannot be done.
    pub fn act(&mut self, action: Action) -> Result<(), ActionError> {
        self.practice.act(action)
    }

    /// Lets so many seconds of the drive pass.
    pub fn advance(&mut self, seconds: u32) {
        self.practice.advance(seconds);
    }

    /// Has a driver on paper drive from here to the end.
    ///
    /// # Errors
    /// [`ActionError`] for a line that cannot be done.
    pub fn drive(&mut self, script: &Script) -> Result<(), ActionError> {
        script.drive(&mut self.practice)
    }

    /// The drive so far, judged and priced; the same at the end as in the middle.
    ///
    /// # Errors
    /// [`audit::ColumnsError`] never for a drive on the ladder it is judged by.
    pub fn verdict(&self) -> Result<Verdict, audit::ColumnsError> {
        judge(&self.planned, &self.limits, &self.practice, &self.own, &self.surprises)
    }

    /// The drive.
    pub fn practice(&self) -> &Practice {
        &self.practice
    }

    /// The plan it is judged by.
    pub fn planned(&self) -> &Planned {
        &self.planned
    }

    /// What the audit holds it to.
    pub fn limits(&self) -> &Limits {
        &self.limits
    }

    /// Seed of its surprises.
    pub fn seed(&self) -> u64 {
        self.seed
    }
}
