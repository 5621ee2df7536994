//! Times of changes standing in the yard: predicted, accepted, and room for what was measured.

use language::Round;
use quantity::Time;
use view::{SetupView, YardChangeView, YardChannelView};

use crate::Words;
use crate::document::{Block, Cell, Column, Look, Row, Table};
use crate::paper::mechanic::{Shown, tick};
use crate::quantities::{temperature, to_set};

pub(super) fn blocks(setup: &SetupView, shown: &Shown<'_>, words: Words<'_>) -> Vec<Block> {
    if setup.yard_changes.is_empty() {
        return vec![Block::paragraph(words.text("commission-times-none"))];
    }
    let ambient = temperature(words.format, setup.yard_c);
    let how = words.fill("commission-times-how", &[("ambient", &ambient)]);
    let mut blocks = vec![Block::paragraph(how)];
    let mut states: Vec<&str> = Vec::new();
    for change in &setup.yard_changes {
        if !states.contains(&change.load_state.as_str()) {
            states.push(&change.load_state);
        }
    }
    for state in states {
        let mut table = empty(state, shown, words);
        let of_state = setup.yard_changes.iter().filter(|change| change.load_state == state);
        for change in of_state {
            for (index, channel) in change.channels.iter().enumerate() {
                table.rows.push(row(change, index, channel, shown, words));
            }
        }
        blocks.push(Block::Table(table));
    }
    blocks
}

fn empty(state: &str, shown: &Shown<'_>, words: Words<'_>) -> Table {
    let unit = shown.unit();
    let mut table = Table::new(vec![
        Column::words(words.text("plan-from-to"), 5),
        Column::words(words.text("plan-channel-brief"), 4),
        Column::figures(format!("{}, {unit}", words.text("plan-from-rung"))),
        Column::figures(format!("{}, {unit}", words.text("plan-to-rung"))),
        Column::figures(words.text("commission-predicted")),
        Column::figures(words.text("commission-at-least")),
        Column::figures(words.text("commission-at-most")),
        Column::words(words.text("commission-measured"), 3),
        Column::centered("☐", 1),
    ]);
    state.clone_into(&mut table.caption);
    table.look = Look::Small;
    table
}

fn row(
    change: &YardChangeView,
    index: usize,
    channel: &YardChannelView,
    shown: &Shown<'_>,
    words: Words<'_>,
) -> Row {
    let seconds = |s: Option<f64>, round: Round| {
        s.map_or_else(
            || Cell::text(words.text("unit-none")),
            |s| Cell::amount(&words.format.seconds(Time::from_s(s), round)),
        )
    };
    let arrow = if change.action == "raise" { "↑" } else { "↓" };
    let name = if index == 0 {
        format!("{arrow} {} → {}", change.from_rung, change.to_rung)
    } else {
        String::new()
    };
    Row {
        cells: vec![
            Cell::text(name),
            Cell::text(channel.channel.clone()),
            shown.stacked(|format| to_set(format, channel.from_kpa), ""),
            shown.stacked(|format| to_set(format, channel.to_kpa), ""),
            seconds(channel.time_s, Round::Nearest),
            seconds(channel.least_s, Round::Up),
            seconds(channel.most_s, Round::Down),
            Cell::default(),
            tick(),
        ],
        strong: false,
    }
}
