//! The quarry survey with single places changed, and what is then told about it.

#![allow(dead_code, reason = "every test file uses its own part")]

use std::path::Path;

use model::date::Date;
use survey::{Folder, Problem, Survey};

pub const SURVEY: &str = "survey.toml";
pub const STEER_TIRE: &str = "tires/steer-11r22-5-h.toml";
pub const TIRE: &str = "tires/drive-11r22-5-g.toml";
pub const TRUCK: &str = "vehicles/tractor.toml";
pub const TRAILER: &str = "vehicles/tipper.toml";
pub const COMBINATION: &str = "combinations/tractor-tipper.toml";
pub const ROUTE: &str = "routes/bench-to-plant.toml";
pub const HAUL: &str = "hauls/aggregate.toml";
pub const APPROVAL: &str = "approvals/letter-14.toml";
pub const PERMIT: &str = "permits/county.toml";
pub const REGISTER: &str = "units.csv";

/// The day on which tests read surveys.
pub fn today() -> Date {
    Date::new(2027, 3, 1).unwrap()
}

/// The survey of a folder with all its problems.
pub fn load(folder: &Folder) -> (Option<Survey>, Vec<Problem>) {
    survey::load(folder, today())
}

/// The survey as it is.
pub fn quarry() -> Folder {
    Folder::read(Path::new(concat!(env!("CARGO_MANIFEST_DIR"), "/tests/surveys/quarry"))).unwrap()
}

/// The survey with an approval, a permit and a register.
pub fn equipped() -> Folder {
    let mut folder = edited(TIRE, "[rim]\n", "[rim]\nsize = \"8.25x22.5\"\n");
    for (file, text) in [
        (
            APPROVAL,
            "tire = \"drive-11r22-5-g\"\nnumber = \"L-14\"\nanswered_by = \"the maker\"\ndate = 2026-05-04\nexpires = 2028-05-03\nrecommended_pressure = \"row\"\ngiven_for = { designation = \"11R22.5\", service_description = \"144/142 L\", rim = \"8.25x22.5\" }\nasked = { warmest_c = 38, loads = [{ fitment = \"dual\", load_kg = 2500, speed_kmh = 60 }] }\n\n[[rows]]\nfitment = \"dual\"\nload_kg = 2500\nspeed_kmh = 60\npressure_kpa = 480\n",
        ),
        (
            PERMIT,
            "number = \"88\"\nauthority = \"the county\"\nvalid_from = 2027-01-01\nexpires = 2027-12-31\npressures = \"as_read\"\n\n[[stretches]]\nroute = \"bench-to-plant\"\nfrom_km = 9.5\nto_km = 20\nminimum_pressure_kpa = 350\nspeed_kmh = 80\ngross_mass_t = 44\n",
        ),
        (
            REGISTER,
            "number,type,source addresses,tire drive.2.left.inner,sensor drive,fitted delivery,fitted date\nT-101,tractor,0x0B 27,steer-11r22-5-h,2027-01-15,91,2027-02-11\nP-7,tipper,,,,,\n",
        ),
    ] {
        folder.insert(file, text);
    }
    folder
}

/// The survey with the first `old` of a file replaced.
pub fn edited(file: &str, old: &str, new: &str) -> Folder {
    let mut folder = quarry();
    edit(&mut folder, file, old, new);
    folder
}

/// Replaces the first `old` of a file, which must be there.
pub fn edit(folder: &mut Folder, file: &str, old: &str, new: &str) {
    let text = folder.text(file).unwrap().to_owned();
    assert!(text.contains(old), "{file} does not hold '{old}'");
    folder.insert(file, text.replacen(old, new, 1));
}

/// All problems of a folder.
pub fn problems(folder: &Folder) -> Vec<Problem> {
    load(folder).1
}

/// Line, from 1, of the first `text` in a file.
pub fn line_of(folder: &Folder, file: &str, text: &str) -> usize {
    let content = folder.text(file).unwrap();
    let at = content.find(text).unwrap_or_else(|| panic!("{file} does not hold '{text}'"));
    content[..at].matches('\n').count() + 1
}

/// The edit gives exactly one problem, on the line of the new text, that says `message` and
/// hints at `hint`; an error takes the haul away, a warning does not.
#[track_caller]
pub fn one_problem(file: &str, old: &str, new: &str, message: &str, hint: &str) -> Problem {
    let folder = edited(file, old, new);
    let (survey, problems) = load(&folder);
    let told: Vec<String> = problems.iter().map(ToString::to_string).collect();
    assert_eq!(problems.len(), 1, "wanted one problem, got:\n{}", told.join("\n"));
    let problem = problems.into_iter().next().unwrap();
    assert_eq!(problem.file, file, "{}", told[0]);
    let wanted = new.trim_start().lines().next().unwrap();
    assert_eq!(problem.line, Some(line_of(&folder, file, wanted)), "{}", told[0]);
    assert!(problem.message().contains(message), "{}", told[0]);
    assert!(problem.hint().unwrap_or_default().contains(hint), "{}", told[0]);
    let hauls = survey.map_or(0, |survey| survey.hauls.len());
    let wanted = usize::from(problem.severity == survey::Severity::Warning);
    assert_eq!(hauls, wanted, "{}", told[0]);
    problem
}

/// Some problem of the folder is told in these words.
#[track_caller]
pub fn tells(folder: &Folder, words: &str) {
    let told: Vec<String> = problems(folder).iter().map(ToString::to_string).collect();
    assert!(told.iter().any(|line| line.contains(words)), "'{words}' not in\n{}", told.join("\n"));
}
