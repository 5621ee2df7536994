//! Cells of the ladder by load state and chain state, and how many of them are named in a line.

use view::{CellView, PlanView};

use crate::words::Words;

/// The cells of one load state and chain state.
pub struct Block<'a> {
    /// Load state.
    pub load_state: &'a str,
    /// Chain state.
    pub chain_state: &'a str,
    /// Its cells, by rung and channel.
    pub cells: Vec<&'a CellView>,
}

/// The ladder in blocks, in the order of the plan.
pub fn blocks(plan: &PlanView) -> Vec<Block<'_>> {
    let mut blocks: Vec<Block<'_>> = Vec::new();
    for cell in &plan.ladder {
        match blocks.last_mut() {
            Some(last)
                if last.load_state == cell.load_state && last.chain_state == cell.chain_state =>
            {
                last.cells.push(cell);
            }
            _ => blocks.push(Block {
                load_state: &cell.load_state,
                chain_state: &cell.chain_state,
                cells: vec![cell],
            }),
        }
    }
    blocks
}

/// Names of the load states, in the order of the survey.
pub fn load_states(plan: &PlanView) -> Vec<&str> {
    let of_cells = plan.ladder.iter().map(|cell| cell.load_state.as_str());
    let of_groups = plan.fixed_groups.iter().map(|group| group.load_state.as_str());
    unique(of_cells.chain(of_groups))
}

/// Names of the chain states of a load state.
fn chain_states<'a>(plan: &'a PlanView, load_state: &str) -> Vec<&'a str> {
    let of_state = plan.ladder.iter().filter(|cell| cell.load_state == load_state);
    unique(of_state.map(|cell| cell.chain_state.as_str()))
}

fn unique<'a>(names: impl Iterator<Item = &'a str>) -> Vec<&'a str> {
    let mut found: Vec<&str> = Vec::new();
    for name in names {
        if !found.contains(&name) {
            found.push(name);
        }
    }
    found
}

/// Whether there is more than one chain state to tell apart.
pub fn has_chains(plan: &PlanView) -> bool {
    plan.ladder.iter().any(|cell| cell.chain_state != plan.ladder[0].chain_state)
}

/// The earlier block of the same load state that has the very same cells.
pub fn same_as<'b>(block: &Block<'_>, earlier: &'b [Block<'_>]) -> Option<&'b Block<'b>> {
    earlier.iter().find(|other| {
        other.load_state == block.load_state
            && other.cells.len() == block.cells.len()
            && other.cells.iter().zip(&block.cells).all(|(one, two)| alike(one, two))
    })
}

/// Whether a block before this one explains the very same cell.
pub fn explained_before(block: &Block<'_>, cell: &CellView, earlier: &[Block<'_>]) -> bool {
    earlier
        .iter()
        .filter(|other| other.load_state == block.load_state)
        .any(|other| other.cells.iter().any(|one| alike(one, cell)))
}

/// Whether two cells differ in their chain state at most.
fn alike(one: &CellView, two: &CellView) -> bool {
    *one == CellView { chain_state: one.chain_state.clone(), ..two.clone() }
}

/// A cell as a caution names it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct CellName<'a> {
    /// Channel.
    pub channel: &'a str,
    /// Load state.
    pub load_state: &'a str,
    /// Chain state.
    pub chain_state: &'a str,
    /// Rung.
    pub rung: &'a str,
}

/// Cells as one list: `drive: empty, laden (every rung); trailer: laden (pit)`.
pub fn list(plan: &PlanView, cells: &[CellName<'_>], words: &Words) -> String {
    let mut channels: Vec<(Vec<&str>, String)> = Vec::new();
    for channel in unique(cells.iter().map(|cell| cell.channel)) {
        let told = of_channel(plan, channel, cells, words);
        match channels.iter_mut().find(|(_, same)| *same == told) {
            Some((names, _)) => names.push(channel),
            None => channels.push((vec![channel], told)),
        }
    }
    let channels: Vec<String> =
        channels.iter().map(|(names, told)| format!("{}: {told}", names.join(", "))).collect();
    channels.join("; ")
}

/// The load states of one channel's cells, those on the same rungs together.
fn of_channel(plan: &PlanView, channel: &str, cells: &[CellName<'_>], words: &Words) -> String {
    let mut groups: Vec<(Vec<String>, Vec<&str>)> = Vec::new();
    let mut entries: Vec<(String, Vec<&str>)> = Vec::new();
    for load_state in load_states(plan) {
        let chains = chain_states(plan, load_state);
        let rungs: Vec<Vec<&str>> = chains
            .iter()
            .map(|chains| {
                let wanted = |cell: &&CellName<'_>| {
                    cell.channel == channel
                        && cell.load_state == load_state
                        && cell.chain_state == *chains
                };
                cells.iter().filter(wanted).map(|cell| cell.rung).collect()
            })
            .collect();
        if rungs.windows(2).all(|pair| pair[0] == pair[1]) {
            entries.extend(rungs.into_iter().next().map(|rungs| (load_state.to_owned(), rungs)));
        } else {
            let named = chains.iter().map(|chains| format!("{load_state} + {chains}"));
            entries.extend(named.zip(rungs));
        }
    }
    for (state, rungs) in entries.into_iter().filter(|(_, rungs)| !rungs.is_empty()) {
        match groups.iter_mut().find(|(_, same)| *same == rungs) {
            Some((states, _)) => states.push(state),
            None => groups.push((vec![state], rungs)),
        }
    }
    let told: Vec<String> = groups
        .into_iter()
        .map(|(states, rungs)| {
            let rungs = if rungs.len() == plan.rungs.len() && rungs.len() > 1 {
                words.text("cells-every-rung")
            } else {
                rungs.join(", ")
            };
            words.fill("cells-on", &[("states", &states.join(", ")), ("rungs", &rungs)])
        })
        .collect();
    told.join(", ")
}
