//! Load states with their chains, in the group order of the combination.

use model::vehicle::{ChainState, GroupLoad, LoadState, Weighing};
use quantity::{Length, Mass};

use super::combination::Origin;
use super::{Loaded, index_of};
use crate::document::join;
use crate::file::{CombinationFile, FitmentWord, LoadStateFile, WeighedWord};
use crate::problem::{Condition, Problem, ProblemKind, Reference};

/// Name of the only chain state where the survey names none.
const NO_CHAINS: &str = "no chains";

pub(super) fn load_states(
    file: &Loaded<CombinationFile>,
    origins: &[Origin],
    problems: &mut Vec<Problem>,
) -> Option<Vec<LoadState>> {
    let chains = chain_states(file, origins, problems);
    let states: Vec<Option<LoadState>> = file
        .data
        .load_states
        .iter()
        .enumerate()
        .map(|(index, state)| {
            let at = format!("/load_states/{index}");
            let groups = loads(file, state, &at, origins, problems);
            let chain_states = chains_of(file, state, &at, chains.as_deref(), problems);
            Some(LoadState {
                name: state.name.clone(),
                groups: groups?,
                axles_down: Vec::new(),
                body_raised: false,
                treat_as: None,
                center_height: state.center_height_m.map(Length::from_m),
                chain_states: chain_states?,
            })
        })
        .collect();
    states.into_iter().collect()
}

fn loads(
    file: &Loaded<CombinationFile>,
    state: &LoadStateFile,
    at: &str,
    origins: &[Origin],
    problems: &mut Vec<Problem>,
) -> Option<Vec<GroupLoad>> {
    let labels: Vec<&str> = origins.iter().map(|origin| origin.label.as_str()).collect();
    let table = join(at, "loads");
    for name in state.loads.keys() {
        let pointer = join(&table, name);
        index_of(&labels, name, Reference::Group, &file.document, &pointer, problems);
    }
    let groups: Vec<Option<GroupLoad>> = origins
        .iter()
        .map(|origin| {
            let pointer = join(&table, &origin.label);
            let Some(load) = state.loads.get(&origin.label) else {
                let kind = ProblemKind::LoadMissing { group: origin.label.clone() };
                problems.push(file.problem(&table, kind));
                return None;
            };
            let mut share = |own: Option<f64>, common: Option<f64>, key| {
                let share = own.or(common);
                if share.is_none() {
                    let kind = ProblemKind::Needed { key, because: Condition::NoDefaultShare };
                    problems.push(file.problem(&pointer, kind));
                }
                share
            };
            let side =
                share(load.heavier_side_share, state.heavier_side_share, "heavier_side_share");
            let mate = match origin.fitment {
                FitmentWord::Single => Some(0.5),
                FitmentWord::Dual => {
                    share(load.heavier_mate_share, state.heavier_mate_share, "heavier_mate_share")
                }
            };
            Some(GroupLoad {
                mass: Mass::from_kg(load.mass_kg),
                heavier_side_share: side?,
                heavier_mate_share: mate?,
                weighing: match load.weighed {
                    WeighedWord::Scale => Weighing::Scale,
                    WeighedWord::Portable => Weighing::Portable,
                    WeighedWord::Estimate => Weighing::Estimate,
                },
                uncertainty: load.uncertainty_pct / 100.0,
            })
        })
        .collect();
    groups.into_iter().collect()
}

fn chain_states(
    file: &Loaded<CombinationFile>,
    origins: &[Origin],
    problems: &mut Vec<Problem>,
) -> Option<Vec<ChainState>> {
    if file.data.chain_states.is_empty() {
        return Some(vec![ChainState { name: NO_CHAINS.to_owned(), chained_groups: Vec::new() }]);
    }
    let labels: Vec<&str> = origins.iter().map(|origin| origin.label.as_str()).collect();
    let states: Vec<Option<ChainState>> = file
        .data
        .chain_states
        .iter()
        .enumerate()
        .map(|(index, state)| {
            let found: Vec<Option<usize>> = state
                .groups
                .iter()
                .enumerate()
                .map(|(group, name)| {
                    let pointer = format!("/chain_states/{index}/groups/{group}");
                    index_of(&labels, name, Reference::Group, &file.document, &pointer, problems)
                })
                .collect();
            let chained_groups = found.into_iter().collect::<Option<Vec<usize>>>()?;
            Some(ChainState { name: state.name.clone(), chained_groups })
        })
        .collect();
    states.into_iter().collect()
}

fn chains_of(
    file: &Loaded<CombinationFile>,
    state: &LoadStateFile,
    at: &str,
    all: Option<&[ChainState]>,
    problems: &mut Vec<Problem>,
) -> Option<Vec<ChainState>> {
    let all = all?;
    let Some(wanted) = &state.chain_states else { return Some(all.to_vec()) };
    let names: Vec<&str> = all.iter().map(|chain| chain.name.as_str()).collect();
    let found: Vec<Option<ChainState>> = wanted
        .iter()
        .enumerate()
        .map(|(index, name)| {
            let pointer = format!("{at}/chain_states/{index}");
            index_of(&names, name, Reference::ChainState, &file.document, &pointer, problems)
                .map(|chain| all[chain].clone())
        })
        .collect();
    found.into_iter().collect()
}
