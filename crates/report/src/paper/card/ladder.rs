//! The ladder in big figures, with its speed caps; what holds where the ladder does not.

use language::{Format, Kind, Round};
use quantity::Time;
use view::{PlanView, RungView};

use crate::Words;
use crate::document::{Block, Caution, Cell, Column, Group, Look, Row, Sheet, Table};
use crate::paper::driver::{
    Told, cell, chain_states, controller_format, figure, load_states, road_rung, rungs, told,
};
use crate::quantities::{cap, lowest, stretch};

/// Air channels that fit beside rung and cap in figures that are read at arm's length.
const fn channels_across(sheet: Sheet) -> usize {
    if sheet.is_card() { 5 } else { 8 }
}

/// The ladder of a load state, and of a chain state.
struct Side<'a> {
    load_state: &'a str,
    chain_state: &'a str,
}

pub(in crate::paper) fn blocks(plan: &PlanView, sheet: Sheet, words: Words<'_>) -> Vec<Block> {
    let across = channels_across(sheet);
    let own = controller_format(plan, words);
    let usual: Vec<Side<'_>> = load_states(plan)
        .into_iter()
        .filter_map(|load_state| {
            let chain_state = chain_states(plan, load_state).first().copied()?;
            Some(Side { load_state, chain_state })
        })
        .collect();
    let mut blocks = Vec::new();
    let together = usual.len() * plan.channels.len() <= across;
    let groups: Vec<Vec<Side<'_>>> =
        if together { vec![usual] } else { usual.into_iter().map(|one| vec![one]).collect() };
    for group in &groups {
        for channels in plan.channels.chunks((across / group.len()).max(1)) {
            blocks.push(Block::Table(table(plan, group, channels, own.as_ref(), words)));
        }
    }
    blocks.extend(notes(plan, own.as_ref(), words));
    blocks
}

fn table(
    plan: &PlanView,
    group: &[Side<'_>],
    channels: &[String],
    own: Option<&Format>,
    words: Words<'_>,
) -> Table {
    let format = words.format;
    let mut columns = vec![
        Column::words(words.text("plan-rung"), 3),
        Column::centered(words.fill("card-up-to", &[("unit", &format.unit(Kind::Speed))]), 2),
    ];
    for _ in group {
        columns.extend(channels.iter().map(|channel| Column::centered(channel.clone(), 2)));
    }
    let mut table = Table::new(columns);
    table.look = Look::Big;
    let (unit, controller) = (format.unit(Kind::Pressure), &plan.controller_unit);
    table.groups.push(Group { head: String::new(), span: 2 });
    for one in group {
        let head = match own {
            Some(_) => words.fill(
                "card-set-both",
                &[("load_state", &one.load_state), ("unit", &unit), ("controller", controller)],
            ),
            None => words.fill("card-set", &[("load_state", &one.load_state), ("unit", &unit)]),
        };
        table.groups.push(Group { head, span: channels.len() });
    }
    for rung in rungs(plan) {
        let mut cells = vec![Cell::text(rung.name.clone()), Cell::bare(&cap(format, rung.cap_kmh))];
        for one in group {
            cells.extend(channels.iter().map(|channel| {
                let cell = cell(plan, channel, one.load_state, one.chain_state, &rung.name);
                figure(&told(cell), own, words)
            }));
        }
        table.rows.push(Row { cells, strong: false });
    }
    table
}

fn notes(plan: &PlanView, own: Option<&Format>, words: Words<'_>) -> Vec<Block> {
    let all = || {
        load_states(plan).into_iter().flat_map(|state| {
            let chains = chain_states(plan, state).first().copied();
            chains.into_iter().flat_map(move |chains| {
                rungs(plan).into_iter().flat_map(move |rung| {
                    let of = move |channel: &String| cell(plan, channel, state, chains, &rung.name);
                    plan.channels.iter().map(move |channel| told(of(channel)))
                })
            })
        })
    };
    let mut lines = Vec::new();
    if all().any(|told| matches!(told, Told::Road(_))) {
        lines.push(words.text("card-road-mark"));
    }
    if all().any(|told| told == Told::Nothing) {
        lines.push(words.text("card-dash-mark"));
    }
    lines.extend(fixed(plan, words));
    lines.extend(rungs(plan).into_iter().filter_map(|rung| hold(rung, words)));
    lines.extend(chains(plan, own, words));
    let mut blocks = Vec::new();
    if !lines.is_empty() {
        blocks.push(Block::Points { lines });
    }
    blocks.push(Block::Caution(Caution {
        title: words.text("card-elsewhere"),
        lines: road_pressure(plan, own, words),
        grave: true,
    }));
    blocks
}

/// Groups without an air channel: what they hold, cold.
fn fixed(plan: &PlanView, words: Words<'_>) -> Option<String> {
    let mut groups: Vec<String> = Vec::new();
    for group in &plan.fixed_groups {
        let told = format!("{} {}", group.axle_group, lowest(words.format, group.pressure_kpa));
        if !groups.contains(&told) {
            groups.push(told);
        }
    }
    (!groups.is_empty()).then(|| words.fill("card-fixed", &[("groups", &groups.join(", "))]))
}

fn hold(rung: &RungView, words: Words<'_>) -> Option<String> {
    let format = words.format;
    let road = rung.hold_limit_m.map(|m| stretch(format, m, Round::Down).to_string());
    let time =
        rung.hold_limit_min.map(|min| format.minutes(Time::from_min(min), Round::Down).to_string());
    let limit = match (time, road) {
        (Some(time), Some(road)) => {
            words.fill("plan-hold-limit-both", &[("time", &time), ("distance", &road)])
        }
        (Some(one), None) | (None, Some(one)) => words.fill("card-hold-one", &[("limit", &one)]),
        (None, None) => return None,
    };
    Some(words.fill("card-hold", &[("rung", &rung.name), ("limit", &limit)]))
}

/// With chains: what is not as without them, channel by channel.
fn chains(plan: &PlanView, own: Option<&Format>, words: Words<'_>) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for state in load_states(plan) {
        let chains = chain_states(plan, state);
        let Some((usual, others)) = chains.split_first() else { continue };
        for other in others {
            let mut differ = Vec::new();
            for channel in &plan.channels {
                let of = |chains: &str, rung: &str| told(cell(plan, channel, state, chains, rung));
                let told: Vec<(String, Told)> = rungs(plan)
                    .into_iter()
                    .filter(|rung| of(usual, &rung.name) != of(other, &rung.name))
                    .map(|rung| (rung.name.clone(), of(other, &rung.name)))
                    .collect();
                differ.extend(told.into_iter().map(|(rung, told)| {
                    let figure = figure(&told, own, words).text.replace('\n', " ");
                    format!("{channel} {rung} {figure}")
                }));
            }
            if !differ.is_empty() {
                let told = [
                    ("chains", other as &dyn std::fmt::Display),
                    ("load_state", &state),
                    ("cells", &differ.join(", ")),
                ];
                lines.push(words.fill("card-chains", &told));
            }
        }
    }
    lines
}

/// Road pressure, laden: what holds where nothing else is known.
fn road_pressure(plan: &PlanView, own: Option<&Format>, words: Words<'_>) -> Vec<String> {
    let Some(road) = road_rung(plan) else { return vec![words.text("card-elsewhere-stand")] };
    let chains = chain_states(plan, &plan.laden_state).first().copied().unwrap_or_default();
    let of = |channel: &String| told(cell(plan, channel, &plan.laden_state, chains, &road.name));
    if plan.channels.iter().any(|channel| of(channel) == Told::Nothing) {
        return vec![words.text("card-elsewhere-stand")];
    }
    let figures: Vec<String> = plan
        .channels
        .iter()
        .map(|channel| {
            let figure = figure(&of(channel), own, words).text.replace('\n', " ");
            format!("{channel} {figure}")
        })
        .collect();
    let unit = words.format.unit(Kind::Pressure);
    vec![words.fill(
        "card-elsewhere-road",
        &[("rung", &road.name), ("figures", &figures.join(", ")), ("unit", &unit)],
    )]
}
