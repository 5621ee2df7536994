//! `airtide plan`

use std::path::{Path, PathBuf};

use plan::Detail;
use quantity::Time;
use study::{Opened, Planned, PlanningError, best_hauls, plan_hauls, simulate};
use survey::Survey;
use view::{PlanDocument, PlanView, run_view};

use super::opened::{driven_by, every, open, refuse_to_overwrite, tell_problems};
use crate::args::{GlobalArgs, PlanArgs};
use crate::outcome::{Failure, Outcome};
use crate::page::{self, Extent};
use crate::progress::step;
use crate::terminal::Terminal;
use crate::words::Words;

/// A chart asked for.
struct Chart {
    file: PathBuf,
    every: Time,
}

/// The call, checked.
struct Request {
    opened: Opened,
    haul: Option<String>,
    units: Vec<String>,
    chart: Option<Chart>,
    effects_chart: Option<PathBuf>,
    extent: Extent,
    ladder: Ladder,
}

/// Whose ladder is planned on.
#[derive(Debug, Clone, Copy)]
pub(super) enum Ladder {
    /// The survey's; the best one where it has none.
    Surveyed,
    /// The best one, of at most so many rungs.
    Best(Option<usize>),
}

impl Request {
    fn checked(args: PlanArgs) -> Result<Self, Failure> {
        let every = every(args.every)?;
        let charts = [("--chart", &args.chart), ("--effects-chart", &args.effects_chart)];
        for (flag, file) in charts {
            if let Some(file) = file {
                check_chart_file(flag, file, args.force)?;
            }
        }
        Ok(Self {
            opened: open(&args.survey)?,
            haul: args.haul,
            units: args.unit,
            chart: args.chart.map(|file| Chart { file, every }),
            effects_chart: args.effects_chart,
            extent: if args.full { Extent::Whole } else { Extent::Driven },
            ladder: if args.best_ladder {
                Ladder::Best(args.rungs.map(usize::from))
            } else {
                Ladder::Surveyed
            },
        })
    }
}

fn check_chart_file(flag: &str, file: &Path, force: bool) -> Result<(), Failure> {
    let svg = file.extension().is_some_and(|ending| ending.eq_ignore_ascii_case("svg"));
    if !svg {
        return Err(Failure::call(anyhow::anyhow!(
            "{flag} {} does not end in .svg; charts are drawn as SVG",
            file.display()
        )));
    }
    refuse_to_overwrite(file, force)
}

pub(super) fn run(
    args: PlanArgs,
    global: &GlobalArgs,
    terminal: Terminal,
) -> Result<Outcome, Failure> {
    let Request { opened, haul, units, chart, effects_chart, extent, ladder } =
        Request::checked(args)?;
    let words = Words::of_survey(global, opened.survey.as_ref(), terminal)?;
    tell_problems(&opened, &words, terminal)?;
    let detail = Detail::default();
    let survey = driven_by(&opened, &units, haul.as_deref())?;
    let planned = planned(survey.as_ref(), haul.as_deref(), ladder, &detail, &words, terminal)?;
    if (chart.is_some() || effects_chart.is_some()) && planned.len() > 1 {
        let names: Vec<&str> = planned.iter().map(|one| one.haul.name.as_str()).collect();
        return Err(Failure::call(anyhow::anyhow!(
            "one chart shows one haul; choose with --haul: {}",
            names.join(", ")
        )));
    }
    let document = PlanDocument::new(&planned);
    if global.json {
        terminal.document(&document)?;
    } else {
        let pages: Vec<String> =
            document.plans.iter().map(|plan| page::plan(plan, extent, &words)).collect();
        terminal.data(&pages.join("\n\n"))?;
    }
    if let (Some(chart), Some(one)) = (&chart, planned.first()) {
        draw(chart, one, &detail, &words, terminal)?;
    }
    if let (Some(file), Some(plan)) = (&effects_chart, document.plans.first()) {
        draw_effects(file, plan, &words, terminal)?;
    }
    let broken = document.plans.iter().any(|plan| plan.breaks_a_limit);
    let sound = !broken && opened.errors().next().is_none();
    Ok(if sound { Outcome::Done } else { Outcome::Problems })
}

/// Plans the hauls asked for; none where errors leave none to plan, and that is said.
pub(super) fn planned(
    survey: Option<&Survey>,
    haul: Option<&str>,
    ladder: Ladder,
    detail: &Detail,
    words: &Words,
    terminal: Terminal,
) -> Result<Vec<Planned>, Failure> {
    let Some(survey) = survey else {
        terminal.error(&anyhow::Error::new(PlanningError::NoneSound))?;
        return Ok(Vec::new());
    };
    let work = || match ladder {
        Ladder::Surveyed => plan_hauls(survey, haul, detail),
        Ladder::Best(rungs) => best_hauls(survey, haul, rungs, detail),
    };
    match step(&words.text("step-planning"), work) {
        Ok(planned) => Ok(planned),
        Err(error @ (PlanningError::NoSuchHaul { .. } | PlanningError::OverStored { .. })) => {
            Err(Failure::call(error))
        }
        Err(error @ (PlanningError::NoneSound | PlanningError::HasErrors { .. })) => {
            terminal.error(&anyhow::Error::new(error))?;
            Ok(Vec::new())
        }
        Err(error) => Err(Failure::input(error)),
    }
}

fn draw(
    chart: &Chart,
    planned: &Planned,
    detail: &Detail,
    words: &Words,
    terminal: Terminal,
) -> Result<(), Failure> {
    let simulated = step(&words.text("step-simulating"), || simulate(planned, chart.every, detail))
        .map_err(Failure::input)?;
    let strip = report::run_strip(&run_view(planned, &simulated), &words.texts, &words.format)
        .map_err(Failure::input)?;
    survey::replace(&chart.file, strip.as_bytes()).map_err(Failure::input)?;
    terminal.talk(&format!(
        "{}\n",
        words.fill("plan-chart-written", &[("file", &chart.file.display())])
    ))?;
    Ok(())
}

fn draw_effects(
    file: &Path,
    plan: &PlanView,
    words: &Words,
    terminal: Terminal,
) -> Result<(), Failure> {
    let chart = report::effects_chart(plan, &words.texts, &words.format).map_err(Failure::input)?;
    survey::replace(file, chart.as_bytes()).map_err(Failure::input)?;
    let written = words.fill("plan-chart-written", &[("file", &file.display())]);
    terminal.talk(&format!("{written}\n"))?;
    Ok(())
}
