//! The recovery procedure: what a stuck driver does, on the lowest rung and only where the tire
//! maker approved it for the driven tires.

use language::{Kind, Round};
use quantity::Time;
use view::{CellView, PlanView, RungView, SetupView};

use super::card::events;
use super::driver::{Told, cell, chain_states, controller_format, figure, load_states, told};
use super::mechanic::who_decides;
use super::{Material, PaperError};
use crate::Words;
use crate::document::{Block, Caution, Cell, Column, Document, Group, Look, Row, Sheet, Table};
use crate::quantities::{cap, stretch};

/// What is done, in this order; common practice, no source.
const STEPS: [&str; 9] =
    ["stop", "look", "call", "air", "select", "drive", "limit", "raise", "write"];

/// What is never done.
const NEVER: [&str; 7] = ["again", "softer", "by-hand", "people", "tow", "slope", "ice"];

const fn channels_across(sheet: Sheet) -> usize {
    if sheet.is_card() { 5 } else { 8 }
}

/// Refuses a plan whose lowest rung no maker approved for the driven tires in any load state.
pub(super) fn check(material: &Material<'_>) -> Result<(), PaperError> {
    let (plan, setup) = (material.plan, material.setup);
    if load_states(plan).into_iter().any(|state| approved(plan, setup, state)) {
        return Ok(());
    }
    let rung = lowest_rung(plan).map(|rung| rung.name.clone()).unwrap_or_default();
    let missing = load_states(plan).into_iter().flat_map(|state| missing(plan, setup, state));
    Err(PaperError::RecoveryNotApproved {
        haul: plan.haul.clone(),
        rung,
        missing: missing.collect(),
    })
}

pub(super) fn fill(document: &mut Document, material: &Material<'_>, words: Words<'_>) {
    let (plan, setup, sheet) = (material.plan, material.setup, document.sheet);
    document.pages = Some(1);
    let blocks = &mut document.blocks;
    let Some(rung) = lowest_rung(plan) else { return };
    let (covered, others): (Vec<&str>, Vec<&str>) =
        load_states(plan).into_iter().partition(|state| approved(plan, setup, state));
    blocks.push(Block::strong(
        words.fill("recovery-what", &[("rung", &rung.name), ("states", &covered.join(", "))]),
    ));
    if !others.is_empty() {
        let states = others.join(", ");
        blocks.push(Block::Caution(Caution {
            title: words.fill("recovery-not-with", &[("states", &states)]),
            lines: Vec::new(),
            grave: true,
        }));
    }
    blocks.push(Block::section(words.text("recovery-steps")));
    blocks.push(Block::paragraph(words.text("recovery-steps-standing")));
    let limit = hold(plan, setup, rung, &covered, words);
    let told: [(&str, &dyn std::fmt::Display); 3] =
        [("rung", &rung.name), ("cap", &cap(words.format, rung.cap_kmh)), ("limit", &limit)];
    blocks.push(Block::Steps {
        lines: STEPS.map(|step| words.fill(&format!("recovery-step-{step}"), &told)).to_vec(),
    });
    for channels in plan.channels.chunks((channels_across(sheet) / covered.len().max(1)).max(1)) {
        blocks.push(Block::Table(pressures(plan, rung, &covered, channels, words)));
    }
    blocks.push(Block::paragraph(words.text("recovery-pressures-how")));
    blocks.push(Block::section(words.text("recovery-never")));
    let mut never = NEVER.map(|what| words.text(&format!("recovery-never-{what}"))).to_vec();
    never.push(words.text("caution-tipping"));
    blocks.push(Block::Caution(Caution { title: String::new(), lines: never, grave: true }));
    blocks.push(Block::section(words.text("recovery-afterwards")));
    blocks.push(events::fast_loss(words));
    blocks.push(Block::blanks(
        ["place", "date", "stood", "tires", "driver"]
            .map(|what| (words.text(&format!("recovery-write-{what}")), "")),
    ));
    blocks.push(who_decides(words));
}

/// The slowest rung.
fn lowest_rung(plan: &PlanView) -> Option<&RungView> {
    plan.rungs.first()
}

fn usual_cell<'a>(plan: &'a PlanView, channel: &str, state: &str) -> Option<&'a CellView> {
    let chains = chain_states(plan, state).first().copied()?;
    cell(plan, channel, state, chains, &lowest_rung(plan)?.name)
}

/// Channels that feed driven axles.
fn driven_channels(setup: &SetupView) -> Vec<&str> {
    let mut found: Vec<&str> = Vec::new();
    for channel in
        setup.wheel_ends.iter().filter(|end| end.driven).filter_map(|end| end.channel.as_deref())
    {
        if !found.contains(&channel) {
            found.push(channel);
        }
    }
    found
}

/// Whether the maker approved the lowest rung for every driven tire in a load state, and every
/// channel has something to store there.
fn approved(plan: &PlanView, setup: &SetupView, state: &str) -> bool {
    let driven = driven_channels(setup);
    let stored =
        plan.channels.iter().all(|channel| told(usual_cell(plan, channel, state)) != Told::Nothing);
    !driven.is_empty() && stored && driven.iter().all(|channel| by_maker(plan, channel, state))
}

fn by_maker(plan: &PlanView, channel: &str, state: &str) -> bool {
    usual_cell(plan, channel, state)
        .is_some_and(|cell| cell.approval == "maker" && matches!(told(Some(cell)), Told::Set(_)))
}

/// The cells that stand in the way, each with what it rests on today.
fn missing(plan: &PlanView, setup: &SetupView, state: &str) -> Vec<String> {
    let driven = driven_channels(setup);
    if driven.is_empty() {
        return vec![format!("{state}: no driven axle group has an air channel")];
    }
    let of = |channel: &str| usual_cell(plan, channel, state).map(|cell| cell.approval.clone());
    let not_by_maker =
        driven.iter().filter(|channel| !by_maker(plan, channel, state)).map(|name| {
            let today = of(name).unwrap_or_else(|| "no cell".to_owned());
            format!("the tire maker's answer for {name}, {state} (today: {today})")
        });
    let nothing = plan.channels.iter().filter(|channel| {
        !driven.contains(&channel.as_str())
            && told(usual_cell(plan, channel, state)) == Told::Nothing
    });
    let nothing = nothing.map(|name| format!("a pressure that may be stored for {name}, {state}"));
    not_by_maker.chain(nothing).collect()
}

fn pressures(
    plan: &PlanView,
    rung: &RungView,
    states: &[&str],
    channels: &[String],
    words: Words<'_>,
) -> Table {
    let format = words.format;
    let own = controller_format(plan, words);
    let mut columns = vec![
        Column::words(words.text("plan-rung"), 3),
        Column::centered(words.fill("card-up-to", &[("unit", &format.unit(Kind::Speed))]), 2),
    ];
    let mut cells = vec![Cell::text(rung.name.clone()), Cell::bare(&cap(format, rung.cap_kmh))];
    let mut groups = vec![Group { head: String::new(), span: 2 }];
    let (unit, controller) = (format.unit(Kind::Pressure), &plan.controller_unit);
    for state in states {
        columns.extend(channels.iter().map(|channel| Column::centered(channel.clone(), 2)));
        for channel in channels {
            cells.push(figure(&told(usual_cell(plan, channel, state)), own.as_ref(), words));
        }
        let head = match own {
            Some(_) => words.fill(
                "card-set-both",
                &[("load_state", state), ("unit", &unit), ("controller", controller)],
            ),
            None => words.fill("card-set", &[("load_state", state), ("unit", &unit)]),
        };
        groups.push(Group { head, span: channels.len() });
    }
    let mut table = Table::new(columns);
    table.look = Look::Big;
    table.groups = groups;
    table.rows.push(Row { cells, strong: false });
    table
}

/// The shortest time and road that rung and rows allow.
fn hold(
    plan: &PlanView,
    setup: &SetupView,
    rung: &RungView,
    states: &[&str],
    words: Words<'_>,
) -> String {
    let format = words.format;
    let of_rows = driven_channels(setup).into_iter().flat_map(|channel| {
        states.iter().filter_map(move |state| usual_cell(plan, channel, state)?.hold_m)
    });
    let road = of_rows.chain(rung.hold_limit_m).reduce(f64::min);
    let road = road.map(|m| stretch(format, m, Round::Down).to_string());
    let time =
        rung.hold_limit_min.map(|min| format.minutes(Time::from_min(min), Round::Down).to_string());
    match (time, road) {
        (Some(time), Some(road)) => {
            words.fill("plan-hold-limit-both", &[("time", &time), ("distance", &road)])
        }
        (Some(one), None) | (None, Some(one)) => words.fill("card-hold-one", &[("limit", &one)]),
        (None, None) => words.text("recovery-no-hold"),
    }
}
