//! The call as a table that fits a card: readings down, load states across, speeds in the cells.

use model::haul_cycle::HaulCycle;
use quantity::{GaugePressure, PressureDifference, Speed};

use super::question::{Call, CallError, Gauged, Load, Reading, Warmth, Whose};
use super::{Curves, Subject, judge};

/// One row of the card.
#[derive(Debug, Clone, PartialEq)]
pub struct CardRow {
    /// Index of the air channel.
    pub channel: usize,
    /// What the gauge shows.
    pub reading: GaugePressure,
    /// Highest speed by load state, rounded down; `None` where it is not allowed.
    pub speeds: Vec<Option<Speed>>,
}

/// Highest reading a card goes to.
const HIGHEST: GaugePressure = GaugePressure::from_psi(150.0);

/// Highest speeds over readings for every air channel, in every load state.
///
/// Rows run from the last step that is not allowed in any state to the first from which nothing
/// more is gained. Load and readings of the call are not looked at.
///
/// # Errors
/// As [`super::answer`].
pub fn card(
    haul: &HaulCycle,
    call: &Call,
    warmth: Warmth,
    step: PressureDifference,
) -> Result<Vec<CardRow>, CallError> {
    let states = haul.combination.load_states.len();
    let mut columns = Vec::new();
    let steps: Vec<GaugePressure> =
        std::iter::successors(Some(GaugePressure::ZERO + step), |&reading| Some(reading + step))
            .take_while(|&reading| reading <= HIGHEST)
            .collect();
    for state in 0..states {
        let mut call = Call { load: Load::State(state), readings: Vec::new(), ..call.clone() };
        // A chain state that a load state does not have is not run in it.
        let Ok(subject) = Subject::of(haul, &call) else {
            columns.push(vec![vec![None; steps.len()]; haul.combination.channels.len()]);
            continue;
        };
        let curves = Curves::of(&subject, call.cap_step);
        let mut by_channel = vec![Vec::new(); haul.combination.channels.len()];
        for &reading in &steps {
            let gauged = Gauged::One(reading);
            let channels = 0..haul.combination.channels.len();
            call.readings = channels
                .map(|channel| Reading {
                    whose: Whose::Channel(channel),
                    gauged,
                    warmth,
                    typed_in: None,
                })
                .collect();
            let groups = judge::groups(&subject, &curves, &call);
            for (channel, column) in by_channel.iter_mut().enumerate() {
                column.push(slowest(&groups, channel));
            }
        }
        columns.push(by_channel);
    }
    let rows = |channel: usize| {
        let speeds = |row: usize| columns.iter().map(|by| by[channel][row]).collect();
        let all: Vec<CardRow> = (0..steps.len())
            .map(|row| CardRow { channel, reading: steps[row], speeds: speeds(row) })
            .collect();
        trimmed(all)
    };
    Ok((0..haul.combination.channels.len()).flat_map(rows).collect())
}

/// The slowest of a channel's groups; `None` if one of them must stop.
fn slowest(groups: &[super::GroupAnswer], channel: usize) -> Option<Speed> {
    let of_channel = groups.iter().filter(|group| group.channel == Some(channel));
    let speeds: Option<Vec<Speed>> = of_channel
        .map(|group| group.speed.filter(|_| group.verdict != super::Verdict::Stop))
        .collect();
    speeds?.into_iter().min_by(Speed::total_cmp)
}

/// Without the rows at both ends that say nothing new.
fn trimmed(rows: Vec<CardRow>) -> Vec<CardRow> {
    let allowed = |row: &CardRow| row.speeds.iter().any(Option::is_some);
    let first = rows.iter().position(allowed).unwrap_or(rows.len()).saturating_sub(1);
    let last = (1..rows.len())
        .rev()
        .find(|&row| rows[row].speeds != rows[row - 1].speeds)
        .unwrap_or(rows.len().saturating_sub(1));
    rows.into_iter().take(last + 1).skip(first).collect()
}
