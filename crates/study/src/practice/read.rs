//! A drive on paper, read from a table: what a person writes in any editor or spreadsheet.
//!
//! Lines of `run, at, do, what`: run `empty` or `laden`; at `start`, a chainage such as `12.4km`, or a time after
//! moving off such as `35min`; do `raise`, `lower`, `speed`, `stop` or `go`. Empty lines and lines that
//! begin with `#` are passed over.

use haul::Target;
use haul::practice::SpeedChoice;
use model::haul_cycle::{HaulCycle, LadenDirection};
use quantity::{Length, Speed, Time, Unit};

use super::{Do, Script, ScriptItem, StopUntil, When};

/// What is wrong with a line.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("line {line}: {what}")]
pub struct ScriptProblem {
    /// Line, counted from 1.
    pub line: usize,
    /// What is wrong, with the value and what to do.
    pub what: String,
}

/// Reads a drive for a haul; every problem at once.
///
/// # Errors
/// Every [`ScriptProblem`], in order of lines.
pub fn read_script(text: &str, haul: &HaulCycle) -> Result<Script, Vec<ScriptProblem>> {
    let mut items: Vec<ScriptItem> = Vec::new();
    let mut problems = Vec::new();
    let mut before = Some(haul.shift_start.parked_rung);
    for (line, content) in (1..).zip(text.lines()) {
        let content = content.trim().trim_start_matches('\u{feff}');
        let is_heading = content.replace(' ', "").eq_ignore_ascii_case("run,at,do,what");
        if content.is_empty() || content.starts_with('#') || is_heading {
            continue;
        }
        match item(content, haul, &mut before, items.last()) {
            Ok(item) => items.push(item),
            Err(what) => problems.push(ScriptProblem { line, what }),
        }
    }
    if problems.is_empty() { Ok(Script::new(items)) } else { Err(problems) }
}

fn item(
    content: &str,
    haul: &HaulCycle,
    before: &mut Option<usize>,
    last: Option<&ScriptItem>,
) -> Result<ScriptItem, String> {
    let fields: Vec<&str> = content.split(',').map(str::trim).collect();
    let (run, at, verb, what) = match fields[..] {
        [run, at, verb, what] => (run, at, verb, what),
        [run, at, verb] => (run, at, verb, ""),
        _ => {
            return Err(format!(
                "'{content}' has {} fields; write four: run, at, do, what",
                fields.len()
            ));
        }
    };
    let laden = match run {
        "empty" => false,
        "laden" => true,
        _ => return Err(format!("run '{run}' is not known; write empty or laden")),
    };
    if laden && last.is_none_or(|last| !last.laden) {
        // The load changes between the runs, and with it what is up and what is down.
        *before = None;
    }
    if !laden && last.is_some_and(|last| last.laden) {
        return Err(
            "the empty run comes first; move this line before those of the laden run".into()
        );
    }
    let when = when(at, haul, laden)?;
    if let (Some(When::At(before)), When::At(place)) =
        (last.filter(|last| last.laden == laden).map(|last| last.when), when)
        && place < before
    {
        return Err(format!(
            "'{at}' lies before the place of the line above; lines come in the order they are driven"
        ));
    }
    let action = match verb {
        "raise" | "lower" => order(verb, what, haul, laden, before)?,
        "speed" => Do::Speed(speed(what)?),
        "stop" => Do::Stop(stop(what)?),
        "go" if when != When::Start => {
            return Err("'go' belongs to 'start': a stop on the road ends as it says itself".into());
        }
        "go" if what.is_empty() || what == "now" => Do::GoNow,
        "go" => {
            return Err(format!(
                "go '{what}' is not known; write now, or leave the line out to wait until complete"
            ));
        }
        _ => return Err(format!("'{verb}' is not known; write raise, lower, speed, stop or go")),
    };
    if matches!(action, Do::Stop(_)) && when == When::Start {
        return Err("the truck stands at the start already; leave the line out".into());
    }
    Ok(ScriptItem { laden, when, action })
}

fn when(at: &str, haul: &HaulCycle, laden: bool) -> Result<When, String> {
    if at == "start" {
        return Ok(When::Start);
    }
    if let Ok(time) = at.parse::<Time>() {
        return if time >= Time::ZERO {
            Ok(When::After(time))
        } else {
            Err(format!("at '{at}' lies before moving off"))
        };
    }
    let place: Length = at.parse().map_err(|_| {
        format!("at '{at}' is no place and no time; write start, 12.4km, 7.7mi or 35min")
    })?;
    let length = haul.route.length();
    if place < Length::ZERO || place > length {
        return Err(format!(
            "at '{at}' lies off the route, which is {:.1} km long",
            length.as_km()
        ));
    }
    let forward = laden == (haul.laden_direction == LadenDirection::Forward);
    Ok(When::At(if forward { place } else { length - place }))
}

fn order(
    verb: &str,
    what: &str,
    haul: &HaulCycle,
    laden: bool,
    before: &mut Option<usize>,
) -> Result<Do, String> {
    let rungs = &haul.combination.rungs;
    let Some(rung) = rungs.iter().position(|rung| rung.name == what) else {
        let known: Vec<&str> = rungs.iter().map(|rung| rung.name.as_str()).collect();
        return Err(format!("there is no rung '{what}'; there are: {}", known.join(", ")));
    };
    if let Some(from) = *before {
        let other = match (verb, rung.cmp(&from)) {
            ("raise", std::cmp::Ordering::Less) => Some("lower"),
            ("lower", std::cmp::Ordering::Greater) => Some("raise"),
            _ => None,
        };
        if let Some(other) = other {
            return Err(format!(
                "from '{}' to '{what}' the pressures go the other way; write {other}, or another rung",
                rungs[from].name
            ));
        }
    }
    *before = Some(rung);
    let load_state = if laden { haul.laden_state } else { haul.empty_state };
    Ok(Do::Order(Target { rung, load_state }))
}

fn speed(what: &str) -> Result<SpeedChoice, String> {
    match what {
        "cap" => Ok(SpeedChoice::KeepToCap),
        "road" => Ok(SpeedChoice::Road),
        _ => match what.parse::<Speed>() {
            Ok(speed) if speed > Speed::ZERO => Ok(SpeedChoice::At(speed)),
            Ok(_) => Err(format!("speed '{what}' is not driven; write one above zero, or stop")),
            Err(_) => Err(format!(
                "speed '{what}' is not known; write cap, road, or a speed such as 40{}",
                Speed::SYMBOLS.first().unwrap_or(&"km/h")
            )),
        },
    }
}

fn stop(what: &str) -> Result<StopUntil, String> {
    if what == "complete" {
        return Ok(StopUntil::Complete);
    }
    match what.parse::<Time>() {
        Ok(time) if time > Time::ZERO => Ok(StopUntil::For(time)),
        _ => Err(format!("stop '{what}' is not known; write complete, or a time such as 10min")),
    }
}
