//! Load states with their chains, in the group order of the combination.

use model::vehicle::{ChainState, GroupLoad, LoadState, Weighing};
use quantity::{Length, Mass};

use super::combination::Origin;
use super::{Loaded, index_of};
use crate::document::join;
use crate::file::{BodyPositionWord, CombinationFile, FitmentWord, LoadStateFile, WeighedWord};
use crate::problem::{Condition, Problem, ProblemKind, Reference, StateFault};

/// Name of the only chain state where the survey names none.
const NO_CHAINS: &str = "no chains";

pub(super) fn load_states(
    file: &Loaded<CombinationFile>,
    origins: &[Origin],
    problems: &mut Vec<Problem>,
) -> Option<Vec<LoadState>> {
    let chains = chain_states(file, origins, problems);
    let written = &file.data.load_states;
    let known: Vec<Option<Carried>> = written
        .iter()
        .enumerate()
        .map(|(index, state)| {
            let at = format!("/load_states/{index}");
            if state.unknown { None } else { carried(file, state, &at, origins, problems) }
        })
        .collect();
    let states: Vec<Option<LoadState>> = written
        .iter()
        .enumerate()
        .map(|(index, state)| {
            let at = format!("/load_states/{index}");
            let chain_states = chains_of(file, state, &at, chains.as_deref(), problems);
            let treat_as = stand_in(file, state, &at, problems);
            let carried = if state.unknown { &known[treat_as?] } else { &known[index] };
            let Carried { groups, axles_down } = carried.clone()?;
            Some(LoadState {
                name: state.name.clone(),
                groups,
                axles_down,
                body_raised: state.body == BodyPositionWord::Raised,
                treat_as,
                center_height: state
                    .center_height_m
                    .or(treat_as.and_then(|other| written[other].center_height_m))
                    .map(Length::from_m),
                chain_states: chain_states?,
            })
        })
        .collect();
    states.into_iter().collect()
}

/// What the groups carry, and on how many axles.
#[derive(Debug, Clone)]
struct Carried {
    groups: Vec<GroupLoad>,
    axles_down: Vec<u32>,
}

fn carried(
    file: &Loaded<CombinationFile>,
    state: &LoadStateFile,
    at: &str,
    origins: &[Origin],
    problems: &mut Vec<Problem>,
) -> Option<Carried> {
    if state.gross_mass_kg.is_none() {
        let kind = ProblemKind::Needed { key: "gross_mass_kg", because: Condition::LoadsKnown };
        problems.push(file.problem(at, kind));
    }
    let axles_down = axles_down(file, state, at, origins, problems);
    let groups = loads(file, state, at, origins, problems);
    state.gross_mass_kg?;
    Some(Carried { groups: groups?, axles_down: axles_down? })
}

/// Index of the state that stands in for one whose loads are not known.
fn stand_in(
    file: &Loaded<CombinationFile>,
    state: &LoadStateFile,
    at: &str,
    problems: &mut Vec<Problem>,
) -> Option<usize> {
    let because = if state.unknown { Condition::LoadsUnknown } else { Condition::LoadsKnown };
    let misplaced: [(&'static str, bool); 4] = [
        ("treat_as", !state.unknown && state.treat_as.is_some()),
        ("gross_mass_kg", state.unknown && state.gross_mass_kg.is_some()),
        ("loads", state.unknown && !state.loads.is_empty()),
        ("axles_down", state.unknown && !state.axles_down.is_empty()),
    ];
    for (key, _) in misplaced.into_iter().filter(|(_, misplaced)| *misplaced) {
        let kind = ProblemKind::OutOfPlace { key, because };
        problems.push(file.document.problem_with_key(&join(at, key), kind));
    }
    if !state.unknown {
        return None;
    }
    let Some(other) = &state.treat_as else {
        problems.push(file.problem(at, ProblemKind::Needed { key: "treat_as", because }));
        return None;
    };
    let names: Vec<&str> = file.data.load_states.iter().map(|one| one.name.as_str()).collect();
    let pointer = join(at, "treat_as");
    let found = index_of(&names, other, Reference::LoadState, &file.document, &pointer, problems)?;
    let states = &file.data.load_states;
    if states[found].unknown {
        let fault = StateFault::StandsForUnknown { other: other.clone() };
        problems.push(file.problem(&pointer, ProblemKind::State(fault)));
        return None;
    }
    let gross = |state: &LoadStateFile| state.gross_mass_kg.unwrap_or(0.0);
    let heaviest = states.iter().max_by(|a, b| gross(a).total_cmp(&gross(b)))?;
    if gross(heaviest) > gross(&states[found]) {
        let (other, heaviest) = (other.clone(), heaviest.name.clone());
        let fault = StateFault::HeavierThere { other, heaviest };
        problems.push(file.problem(&pointer, ProblemKind::State(fault)));
    }
    Some(found)
}

/// Axles of each group that stand on the road.
fn axles_down(
    file: &Loaded<CombinationFile>,
    state: &LoadStateFile,
    at: &str,
    origins: &[Origin],
    problems: &mut Vec<Problem>,
) -> Option<Vec<u32>> {
    let labels: Vec<&str> = origins.iter().map(|origin| origin.label.as_str()).collect();
    let mut down: Vec<u32> = origins.iter().map(|origin| origin.axles).collect();
    let mut whole = true;
    for (name, &wanted) in &state.axles_down {
        let pointer = join(&join(at, "axles_down"), name);
        let found = index_of(&labels, name, Reference::Group, &file.document, &pointer, problems);
        let Some(found) = found else {
            whole = false;
            continue;
        };
        let Origin { label, axles, liftable, .. } = &origins[found];
        let (group, axles) = (label.clone(), *axles);
        let fault = if wanted > axles {
            StateFault::AxlesDown { group, down: wanted, axles }
        } else if wanted < axles && !liftable {
            StateFault::NotLiftable { group, axles }
        } else {
            down[found] = wanted;
            continue;
        };
        problems.push(file.problem(&pointer, ProblemKind::State(fault)));
        whole = false;
    }
    whole.then_some(down)
}

/// Load of a group whose axles are all lifted.
const LIFTED: GroupLoad = GroupLoad {
    mass: Mass::ZERO,
    heavier_side_share: 0.5,
    heavier_mate_share: 0.5,
    weighing: Weighing::Scale,
    uncertainty: 0.0,
};

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
            let own = state.loads.get(&origin.label);
            if state.axles_down.get(&origin.label) == Some(&0) {
                if let Some(load) = own.filter(|load| load.mass_kg > 0.0) {
                    let group = origin.label.clone();
                    let fault =
                        StateFault::LiftedCarries { group, load: Mass::from_kg(load.mass_kg) };
                    let pointer = join(&pointer, "mass_kg");
                    problems.push(file.problem(&pointer, ProblemKind::State(fault)));
                }
                return Some(LIFTED);
            }
            let Some(load) = own else {
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
