//! Cells of the ladder by load state and chain state, and how they are named in a line.

use view::{CellView, PlanView};

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
    let mut names: Vec<&str> = Vec::new();
    for name in of_cells.chain(of_groups) {
        if !names.contains(&name) {
            names.push(name);
        }
    }
    names
}

/// Whether there is more than one chain state to tell apart.
pub fn has_chains(plan: &PlanView) -> bool {
    plan.ladder.iter().any(|cell| cell.chain_state != plan.ladder[0].chain_state)
}

/// The block of the same load state without chains that has the very same cells.
pub fn same_as<'b>(block: &Block<'_>, earlier: &'b [Block<'_>]) -> Option<&'b Block<'b>> {
    earlier.iter().find(|other| {
        other.load_state == block.load_state
            && other.cells.len() == block.cells.len()
            && other.cells.iter().zip(&block.cells).all(|(one, two)| {
                let named = CellView { chain_state: one.chain_state.clone(), ..(*two).clone() };
                **one == named
            })
    })
}

/// A cell as caution and decision lines name it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CellName {
    /// Load state.
    pub load_state: String,
    /// Chain state, where there is more than one.
    pub chain_state: Option<String>,
    /// Rung.
    pub rung: String,
    /// Channel.
    pub channel: String,
}

/// Cells as one list: by load state, then rung, with the channels where not all are meant.
pub fn list(cells: &[CellName], channels: &[String]) -> String {
    let mut states: Vec<(String, Vec<(&str, Vec<&str>)>)> = Vec::new();
    for cell in cells {
        let state = match &cell.chain_state {
            Some(chains) => format!("{} ({chains})", cell.load_state),
            None => cell.load_state.clone(),
        };
        let at = states.iter().position(|(name, _)| *name == state).unwrap_or_else(|| {
            states.push((state, Vec::new()));
            states.len() - 1
        });
        let rungs = &mut states[at].1;
        match rungs.iter_mut().find(|(rung, _)| *rung == cell.rung) {
            Some((_, of_rung)) => of_rung.push(&cell.channel),
            None => rungs.push((&cell.rung, vec![&cell.channel])),
        }
    }
    let state = |(name, rungs): &(String, Vec<(&str, Vec<&str>)>)| {
        let rungs: Vec<String> = rungs
            .iter()
            .map(|(rung, of_rung)| {
                if of_rung.len() == channels.len() {
                    (*rung).to_owned()
                } else {
                    format!("{rung} ({})", of_rung.join(", "))
                }
            })
            .collect();
        format!("{name} {}", rungs.join(", "))
    };
    states.iter().map(state).collect::<Vec<_>>().join("; ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_list_names_channels_only_where_not_all_are_meant() {
        let cell = |load_state: &str, rung: &str, channel: &str| CellName {
            load_state: load_state.to_owned(),
            chain_state: None,
            rung: rung.to_owned(),
            channel: channel.to_owned(),
        };
        let cells = [
            cell("empty", "pit", "drive"),
            cell("empty", "pit", "trailer"),
            cell("laden", "pit", "drive"),
        ];
        let channels = ["drive".to_owned(), "trailer".to_owned()];
        assert_eq!(list(&cells, &channels), "empty pit; laden pit (drive)");
    }
}
