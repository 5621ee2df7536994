//! A combination's own lists: names, rungs and their surfaces.

use quantity::Speed;

use super::names;
use crate::convert::Loaded;
use crate::file::CombinationFile;
use crate::problem::{Problem, ProblemKind};

/// Checks what a combination's file says without its vehicles.
pub(crate) fn combination_file(file: &Loaded<CombinationFile>, problems: &mut Vec<Problem>) {
    let data = &file.data;
    let document = &file.document;
    let states = data.load_states.iter().map(|state| state.name.as_str());
    names::unique(document, states, |index| format!("/load_states/{index}/name"), problems);
    let rungs = data.rungs.iter().map(|rung| rung.name.as_str());
    names::unique(document, rungs, |index| format!("/rungs/{index}/name"), problems);
    let chains = data.chain_states.iter().map(|state| state.name.as_str());
    names::unique(document, chains, |index| format!("/chain_states/{index}/name"), problems);
    rising_caps(file, problems);
    surfaces(file, problems);
}

fn rising_caps(file: &Loaded<CombinationFile>, problems: &mut Vec<Problem>) {
    for (index, pair) in file.data.rungs.windows(2).enumerate() {
        if pair[1].speed_cap_kmh <= pair[0].speed_cap_kmh {
            let kind = ProblemKind::CapsNotRising {
                before: Speed::from_kmh(pair[0].speed_cap_kmh),
                cap: Speed::from_kmh(pair[1].speed_cap_kmh),
            };
            problems.push(file.problem(&format!("/rungs/{}/speed_cap_kmh", index + 1), kind));
        }
    }
}

/// A surface belongs to one rung, or a leg would not know which to take.
fn surfaces(file: &Loaded<CombinationFile>, problems: &mut Vec<Problem>) {
    let mut seen: Vec<(crate::file::SurfaceWord, &str)> = Vec::new();
    for (rung, entry) in file.data.rungs.iter().enumerate() {
        for (index, surface) in entry.surfaces.iter().enumerate() {
            if let Some((_, other)) = seen.iter().find(|(one, _)| one == surface) {
                let kind = ProblemKind::SurfaceTwice { other: (*other).to_owned() };
                problems.push(file.problem(&format!("/rungs/{rung}/surfaces/{index}"), kind));
            }
            seen.push((*surface, &entry.name));
        }
    }
}
