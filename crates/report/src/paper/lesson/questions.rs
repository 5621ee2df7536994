//! Questions made from the plan: the wrong answers are the plan's own other numbers and places.

use language::Amount;
use view::{ChangePointView, PlanView};

use crate::Words;
use crate::changes::place;
use crate::paper::driver::{Told, cell, chain_states, load_states, rungs, told};
use crate::quantities::{cap, to_set};

/// A question with one right answer.
pub(super) struct Question {
    pub(super) asked: String,
    pub(super) right: String,
    wrong: Vec<String>,
}

impl Question {
    /// None where nothing wrong is left to choose from.
    fn new(asked: String, right: String, wrong: impl IntoIterator<Item = String>) -> Option<Self> {
        let mut kept: Vec<String> = Vec::new();
        for one in wrong {
            if one != right && !kept.contains(&one) {
                kept.push(one);
            }
        }
        kept.truncate(2);
        (!kept.is_empty()).then_some(Self { asked, right, wrong: kept })
    }

    /// The answers to tick; where the right one stands goes round with the number.
    pub(super) fn choices(&self, number: usize) -> Vec<String> {
        let mut choices = self.wrong.clone();
        choices.insert(number % (choices.len() + 1), self.right.clone());
        choices
    }
}

pub(super) fn questions(plan: &PlanView, words: Words<'_>) -> Vec<Question> {
    let mut found = Vec::new();
    found.extend(speed_caps(plan, words));
    found.extend(pressures(plan, words));
    found.extend(places(plan, words));
    for event in ["trailer", "brake-air", "loss", "late"] {
        let text = |part: &str| words.text(&format!("lesson-ask-{event}{part}"));
        found.extend(Question::new(text(""), text("-right"), [text("-wrong"), text("-worse")]));
    }
    found
}

fn speed_caps(plan: &PlanView, words: Words<'_>) -> Vec<Question> {
    let shown = |kmh: f64| cap(words.format, kmh).to_string();
    rungs(plan)
        .into_iter()
        .rev()
        .filter_map(|rung| {
            let others = rungs(plan).into_iter().filter(|other| other.name != rung.name);
            Question::new(
                words.fill("lesson-ask-cap", &[("rung", &rung.name)]),
                shown(rung.cap_kmh),
                others.map(|other| shown(other.cap_kmh)),
            )
        })
        .take(2)
        .collect()
}

/// The pressure of the first channel that has an approved one, laden on the fastest rung driven.
fn pressures(plan: &PlanView, words: Words<'_>) -> Option<Question> {
    let road = rungs(plan).into_iter().next()?;
    let shown = |kpa: f64| -> Amount { to_set(words.format, kpa) };
    let of = |channel: &str, state: &str, rung: &str| {
        let chains = chain_states(plan, state).first().copied()?;
        match told(cell(plan, channel, state, chains, rung)) {
            Told::Set(kpa) => Some(shown(kpa).to_string()),
            Told::Road(_) | Told::Nothing => None,
        }
    };
    let laden = &plan.laden_state;
    let (channel, right) = plan
        .channels
        .iter()
        .find_map(|channel| Some((channel, of(channel, laden, &road.name)?)))?;
    let states = load_states(plan);
    let others = states.iter().flat_map(|state| {
        rungs(plan).into_iter().filter_map(move |rung| of(channel, state, &rung.name))
    });
    Question::new(
        words.fill(
            "lesson-ask-pressure",
            &[("channel", channel), ("rung", &road.name), ("load_state", laden)],
        ),
        right,
        others.collect::<Vec<_>>(),
    )
}

/// Where each run's first change begins.
fn places(plan: &PlanView, words: Words<'_>) -> Vec<Question> {
    let states = load_states(plan);
    let first = |state: &&str| {
        let mut of_run = plan.change_points.iter().filter(|point| point.load_state == **state);
        of_run.next()
    };
    states
        .iter()
        .filter_map(first)
        .filter_map(|point: &ChangePointView| {
            let key = if point.action == "raise" { "lesson-ask-raise" } else { "lesson-ask-lower" };
            let others = plan.change_points.iter().filter(|other| *other != point);
            Question::new(
                words.fill(key, &[("load_state", &point.load_state), ("rung", &point.to_rung)]),
                place(point, words),
                others.map(|other| place(other, words)),
            )
        })
        .collect()
}
