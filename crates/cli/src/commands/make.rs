//! `airtide logs make`

use haul::DriverHabit;
use plan::Detail;
use quantity::{Length, Time};
use study::make::{FaultKind, FaultSpec, MadeLog, MakeOrder, make_logs};
use view::{MadeLogsDocument, TruthDocument};

use super::opened::{open, tell_problems};
use super::plan::{Ladder, planned};
use crate::args::{DriverFlag, GlobalArgs, MakeArgs};
use crate::outcome::{Failure, Outcome};
use crate::page::{fault_list, made_logs};
use crate::progress::shares;
use crate::terminal::Terminal;
use crate::words::Words;

/// How late a late driver calls where the call does not say.
const LATE_BY: Length = Length::from_km(1.5);
/// Share of changes a forgetful driver leaves out where the call does not say.
const FORGETS: f64 = 0.25;
/// Latest start of a shift.
const DAY: Time = Time::from_s(24.0 * 3600.0);

pub(super) fn run(
    args: &MakeArgs,
    global: &GlobalArgs,
    terminal: Terminal,
) -> Result<Outcome, Failure> {
    if args.list_faults {
        let words = Words::of_call(global)?;
        terminal.data(&fault_list(FaultKind::ALL, &words))?;
        return Ok(Outcome::Done);
    }
    let order = checked(args)?;
    let survey = args.survey.as_deref().unwrap_or_else(|| std::path::Path::new("."));
    let opened = open(survey)?;
    let words = Words::of_survey(global, opened.survey.as_ref(), terminal)?;
    tell_problems(&opened, &words, terminal)?;
    let detail = Detail { samples: 0, ..Detail::default() };
    let hauls = planned(
        opened.survey.as_ref(),
        args.haul.as_deref(),
        Ladder::Surveyed,
        &detail,
        &words,
        terminal,
    )?;
    let one = match hauls.as_slice() {
        [] => return Ok(Outcome::Problems),
        [one] => one,
        several => {
            let names: Vec<&str> = several.iter().map(|one| one.haul.name.as_str()).collect();
            return Err(Failure::call(anyhow::anyhow!(
                "logs are made of one haul; choose with --haul: {}",
                names.join(", ")
            )));
        }
    };
    let count = order.units.len().max(1) * order.days as usize;
    let made = shares(&words.text("step-making"), count, |progress| {
        make_logs(&opened, one, &order, progress)
    })
    .map_err(|error| {
        if error.is_wrong_call() { Failure::call(error) } else { Failure::input(error) }
    })?;
    for log in &made {
        write_truth(log)?;
    }
    let document = MadeLogsDocument::new(&made);
    if global.json {
        terminal.document(&document)?;
    } else {
        terminal.data(&made_logs(&document, &words))?;
    }
    Ok(Outcome::Done)
}

fn checked(args: &MakeArgs) -> Result<MakeOrder, Failure> {
    let wrong = |text: &str| Err(Failure::call(anyhow::anyhow!("{text}")));
    let driver = match (args.driver, args.late_by, args.forgets) {
        (DriverFlag::Late, by, None) => DriverHabit::Late { by: by.unwrap_or(LATE_BY) },
        (DriverFlag::Forgetful, None, forgets) => {
            let share = forgets.map_or(FORGETS, |percent| f64::from(percent) / 100.0);
            DriverHabit::Forgetful { share }
        }
        (DriverFlag::Good, None, None) => DriverHabit::Good,
        (_, Some(_), _) => return wrong("--late-by belongs to --driver late"),
        (_, _, Some(_)) => return wrong("--forgets belongs to --driver forgetful"),
    };
    if args.late_by.is_some_and(|by| by <= Length::ZERO) {
        return wrong("--late-by must be above zero");
    }
    if args.starts < Time::ZERO || args.starts >= DAY {
        return wrong("--starts must be a time of day, 0h to 23.99h");
    }
    let faults = args
        .faults
        .iter()
        .map(|text| text.parse::<FaultSpec>())
        .collect::<Result<_, _>>()
        .map_err(Failure::call)?;
    Ok(MakeOrder {
        folder: args.out.clone().unwrap_or_default(),
        units: args.unit.clone(),
        first_day: args.date,
        days: args.days,
        starts: args.starts,
        driver,
        cycles: args.cycles.map(usize::from),
        faults,
        seed: args.seed,
    })
}

fn write_truth(log: &MadeLog) -> Result<(), Failure> {
    let mut text = serde_json::to_vec(&TruthDocument::new(log)).map_err(Failure::input)?;
    text.push(b'\n');
    survey::create(&log.truth_file, &text).map_err(Failure::input)
}
