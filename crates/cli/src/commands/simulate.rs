//! `airtide simulate`

use plan::Detail;
use quantity::Time;
use study::{Opened, Planned, sample_cycles, simulate};
use view::{CycleSpreadView, RunView, run_view};

use super::opened::{driven_by, every, open, tell_problems};
use super::plan::{Ladder, planned};
use crate::args::{GlobalArgs, SimulateArgs};
use crate::outcome::{Failure, Outcome};
use crate::page::{csv_of, csv_of_cycles};
use crate::progress::step;
use crate::terminal::Terminal;
use crate::words::Words;

/// The call, checked.
struct Request {
    opened: Opened,
    haul: Option<String>,
    units: Vec<String>,
    every: Time,
    samples: Option<usize>,
}

impl Request {
    fn checked(args: SimulateArgs) -> Result<Self, Failure> {
        Ok(Self {
            every: every(args.every)?,
            samples: args.samples.map(|samples| samples as usize),
            opened: open(&args.survey)?,
            haul: args.haul,
            units: args.unit,
        })
    }
}

pub(super) fn run(
    args: SimulateArgs,
    global: &GlobalArgs,
    terminal: Terminal,
) -> Result<Outcome, Failure> {
    let Request { opened, haul, units, every, samples } = Request::checked(args)?;
    let words = Words::of_survey(global, opened.survey.as_ref(), terminal)?;
    tell_problems(&opened, &words, terminal)?;
    let detail = Detail::default();
    let survey = driven_by(&opened, &units, haul.as_deref())?;
    let planned =
        planned(survey.as_ref(), haul.as_deref(), Ladder::Surveyed, &detail, &words, terminal)?;
    if global.json && planned.len() > 1 {
        let names: Vec<&str> = planned.iter().map(|one| one.haul.name.as_str()).collect();
        return Err(Failure::call(anyhow::anyhow!(
            "one document holds one haul; choose with --haul: {}",
            names.join(", ")
        )));
    }
    if let Some(samples) = samples {
        return sampled(&planned, samples, &detail, global, &words, terminal);
    }
    let mut sound = !planned.is_empty() && opened.errors().next().is_none();
    let mut runs: Vec<RunView> = Vec::new();
    for one in &planned {
        sound &= !one.plan.breaks_a_limit();
        match step(&words.text("step-simulating"), || simulate(one, every, &detail)) {
            Ok(simulated) => runs.push(run_view(one, &simulated)),
            Err(error) => {
                sound = false;
                terminal.error(&anyhow::Error::new(error))?;
            }
        }
    }
    match (global.json, runs.first()) {
        (true, Some(run)) => terminal.document(run)?,
        (true, None) => {}
        (false, _) => terminal.data(&csv_of(&runs).map_err(Failure::input)?)?,
    }
    Ok(if sound { Outcome::Done } else { Outcome::Problems })
}

/// Whole cycles, one line each, with the tenths told beside.
fn sampled(
    planned: &[Planned],
    samples: usize,
    detail: &Detail,
    global: &GlobalArgs,
    words: &Words,
    terminal: Terminal,
) -> Result<Outcome, Failure> {
    let mut views = Vec::new();
    for one in planned {
        let spread = step(&words.text("step-simulating"), || sample_cycles(one, samples, detail))
            .map_err(|error| Failure::input(anyhow::Error::new(error)))?;
        let view = CycleSpreadView::new(&one.haul.name, &spread);
        let minutes = |seconds: f64| format!("{:.1}", seconds / 60.0);
        terminal.talk(&words.fill(
            "cycles-tenths",
            &[
                ("haul", &view.haul),
                ("p10", &minutes(view.time_s.p10)),
                ("p50", &minutes(view.time_s.p50)),
                ("p90", &minutes(view.time_s.p90)),
            ],
        ))?;
        views.push(view);
    }
    match (global.json, views.as_slice()) {
        (true, [one]) => terminal.document(one)?,
        (true, _) => {
            return Err(Failure::call(anyhow::anyhow!(
                "one document holds one haul; choose with --haul"
            )));
        }
        (false, _) => terminal.data(&csv_of_cycles(&views).map_err(Failure::input)?)?,
    }
    Ok(Outcome::Done)
}
