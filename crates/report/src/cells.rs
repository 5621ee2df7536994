//! Cells of the ladder: which are shown, by load state and chain state, and how they are named in a line.

use view::{CellView, PlanView};

use crate::Words;

/// The cells of one load state and chain state.
pub struct Block<'a> {
    /// Load state.
    pub load_state: &'a str,
    /// Chain state.
    pub chain_state: &'a str,
    /// Its cells, by rung and channel.
    pub cells: Vec<&'a CellView>,
}

/// How much of a plan is shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Extent {
    /// What the haul drives in the usual chain state.
    Driven,
    /// Everything.
    Whole,
}

/// The cells that are shown, in blocks: those that the haul drives first, and rungs it uses first.
pub fn blocks(plan: &PlanView, extent: Extent) -> Vec<Block<'_>> {
    let mut blocks: Vec<Block<'_>> = Vec::new();
    for cell in plan.ladder.iter().filter(|cell| shown(plan, cell, extent)) {
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
    for block in &mut blocks {
        block.cells.sort_by_key(|cell| !uses_rung(plan, &cell.rung));
    }
    blocks.sort_by_key(|block| !drives_in(plan, block.load_state, block.chain_state));
    blocks
}

/// The cells that are left out.
pub fn left_out(plan: &PlanView, extent: Extent) -> Vec<&CellView> {
    plan.ladder.iter().filter(|cell| !shown(plan, cell, extent)).collect()
}

/// Whether a cell is shown.
pub fn shown(plan: &PlanView, cell: &CellView, extent: Extent) -> bool {
    let driven =
        drives_in(plan, &cell.load_state, &cell.chain_state) && uses_rung(plan, &cell.rung);
    extent == Extent::Whole || driven
}

/// Whether the haul is driven in a load state.
pub fn drives_loaded(plan: &PlanView, load_state: &str) -> bool {
    load_state == plan.empty_state || load_state == plan.laden_state
}

/// Whether the haul is driven in a load state, and its usual chain state is this one.
fn drives_in(plan: &PlanView, load_state: &str, chain_state: &str) -> bool {
    drives_loaded(plan, load_state)
        && chain_states(plan, load_state).first().is_some_and(|usual| *usual == chain_state)
}

/// Whether the haul wants a rung, or comes to it because another is not possible.
pub fn uses_rung(plan: &PlanView, rung: &str) -> bool {
    plan.ladder.iter().any(|cell| cell.used && cell.rung == rung)
        || plan.change_points.iter().any(|point| point.from_rung == rung || point.to_rung == rung)
        || plan.cautions.iter().any(|caution| {
            caution.caution == "slower-rung-used"
                && caution.names.get("rung").is_some_and(|used| used == rung)
        })
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

/// A cell as a line names it.
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

impl<'a> From<&'a CellView> for CellName<'a> {
    fn from(cell: &'a CellView) -> Self {
        Self {
            channel: &cell.channel,
            load_state: &cell.load_state,
            chain_state: &cell.chain_state,
            rung: &cell.rung,
        }
    }
}

/// Cells as one list: `drive: empty, laden (every rung); trailer: laden (pit)`.
pub fn list(plan: &PlanView, cells: &[CellName<'_>], words: Words<'_>) -> String {
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
fn of_channel(plan: &PlanView, channel: &str, cells: &[CellName<'_>], words: Words<'_>) -> String {
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
