//! From a folder of files to checked hauls, with every problem on the way.

mod files;
mod parts;

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use model::date::Date;
use model::haul_cycle::HaulCycle;
use model::tire::Tire;
use quantity::Speed;

pub(crate) use self::files::is_toml;
use self::files::{SURVEY, catalog, path_of, read, unread_files};
use crate::approval::Approval;
use crate::convert::{Catalog, Loaded};
use crate::driven_by::driven_by;
use crate::file::{HaulFile, SurveyFile, UnitsWord, VehicleFile};
use crate::problem::{Problem, ProblemKind, Severity};
use crate::register::Unit;
use crate::{Folder, check};

/// Unit profile of screens and paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum UnitProfile {
    /// kPa, kg, km/h, °C.
    Si,
    /// psi, lb, mph, °F.
    Us,
    /// bar, kg, km/h, °C.
    MetricBar,
}

/// A maker's table that was read from a file through the mapping of its tire.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Imported {
    /// Name of the tire model.
    pub tire: String,
    /// The table, as the tire's file names it.
    pub table: String,
    /// How it was read, a sentence each.
    pub read_so: Vec<String>,
}

/// What a haul rests on.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct HaulBasis {
    /// Every file of the survey that it uses, by path.
    pub files: BTreeSet<String>,
    /// The vehicles of its combination, each a type or a fleet number, as the survey names them.
    pub members: Vec<String>,
}

impl HaulBasis {
    /// Whether a unit may take a place in the combination.
    pub fn has_place_for(&self, unit: &Unit) -> bool {
        self.members.iter().any(|member| *member == unit.number || *member == unit.vehicle)
    }
}

/// A survey whose values were checked.
#[derive(Debug, Clone, PartialEq)]
pub struct Survey {
    /// Name on documents.
    pub name: String,
    /// Person who answers for the numbers.
    pub responsible: String,
    /// Language tag of documents.
    pub language: String,
    /// Units on screens and paper.
    pub units: UnitProfile,
    /// Step between the speed caps the planner tries.
    pub speed_cap_step: Speed,
    /// Tire models without errors, by name.
    pub tires: BTreeMap<String, Arc<Tire>>,
    /// Rims as stamped, by the name of the tire model on them, where its file says.
    pub rims: BTreeMap<String, String>,
    /// Maker's tables that were read from files, with how.
    pub imports: Vec<Imported>,
    /// Approvals of tire makers, with whether they count today.
    pub approvals: Vec<Approval>,
    /// Units of the register, in its order.
    pub fleet: Vec<Unit>,
    /// Fleet numbers of the units it was narrowed to; empty where any unit may drive.
    pub driven_by: Vec<String>,
    /// Hauls without errors, in order of name.
    pub hauls: Vec<HaulCycle>,
    /// What each of them rests on, by its name.
    pub bases: BTreeMap<String, HaulBasis>,
    /// Names of all hauls that have a file, with or without errors.
    pub haul_names: Vec<String>,
}

/// Reads a survey: the sound hauls, and all problems at once, in order of file and line.
///
/// `today` decides which approvals and permits count.
///
/// A file with errors makes the hauls that use it unusable and leaves the others alone. `None`
/// means that `survey.toml` itself is missing or unusable.
///
/// ```
/// let today = model::date::Date::new(2027, 3, 1)?;
/// let (survey, problems) = survey::load(&survey::Folder::default(), today);
/// assert!(survey.is_none());
/// assert!(problems[0].message().contains("no survey"));
/// # Ok::<(), model::date::NoSuchDay>(())
/// ```
pub fn load(folder: &Folder, today: Date) -> (Option<Survey>, Vec<Problem>) {
    let mut problems = folder.refused().to_vec();
    let survey = read_all(folder, today, &mut problems);
    problems.sort_by(|first, second| {
        (&first.file, first.line, first.column).cmp(&(&second.file, second.line, second.column))
    });
    problems.dedup();
    (survey, problems)
}

fn read_all(folder: &Folder, today: Date, problems: &mut Vec<Problem>) -> Option<Survey> {
    if folder.files().all(|(path, _)| !is_toml(path)) {
        problems.push(Problem::in_file("", ProblemKind::EmptySurvey));
        return None;
    }
    unread_files(folder, problems);
    let survey = folder.bytes(SURVEY).map(|bytes| read::<SurveyFile>(SURVEY, bytes, problems));
    if survey.is_none() {
        problems.push(Problem::in_file(SURVEY, ProblemKind::NoSurveyFile));
    }
    let survey = survey.flatten();
    if let Some(survey) = &survey {
        check::survey(survey, problems);
    }
    let tires = parts::tires(folder, survey.as_ref(), today, problems);
    let vehicles: Catalog<Loaded<VehicleFile>> = catalog(folder, "vehicles", problems);
    for vehicle in vehicles.values().flatten() {
        check::vehicle(vehicle, &tires.models, problems);
    }
    let fleet = parts::fleet(folder, &vehicles, &tires.models, today, problems);
    let combinations = parts::combinations(folder, &vehicles, &tires, &fleet, problems);
    let routes = parts::routes(folder, today, problems);
    let hauls: Catalog<Loaded<HaulFile>> = catalog(folder, "hauls", problems);
    if hauls.is_empty() {
        problems.push(Problem::in_file("", ProblemKind::NoHauls));
    }
    let mut cycles = Vec::new();
    for (name, file) in &hauls {
        if let Some(file) = file {
            let survey = survey.as_ref();
            cycles.extend(parts::cycle(name, file, survey, &combinations, &routes, problems));
        }
    }
    let broken: BTreeSet<&str> = problems
        .iter()
        .filter(|problem| problem.severity == Severity::Error)
        .map(|problem| problem.file.as_str())
        .collect();
    cycles.retain(|(_, basis)| !basis.files.iter().any(|file| broken.contains(file.as_str())));
    let survey = survey?.data;
    let sound: BTreeMap<String, Arc<Tire>> = tires
        .models
        .into_iter()
        .filter(|(name, _)| !broken.contains(path_of("tires", name).as_str()))
        .filter_map(|(name, tire)| Some((name, tire?)))
        .collect();
    let hauls_sound = cycles
        .iter()
        .map(|(made, basis)| driven_by(made, basis, &fleet.units, &[], &sound))
        .collect();
    Some(Survey {
        name: survey.name,
        responsible: survey.responsible,
        language: survey.language,
        units: match survey.units {
            UnitsWord::Si => UnitProfile::Si,
            UnitsWord::Us => UnitProfile::Us,
            UnitsWord::MetricBar => UnitProfile::MetricBar,
        },
        speed_cap_step: Speed::from_kmh(survey.speed_cap_step_kmh),
        tires: sound,
        rims: tires.rims,
        imports: tires.imports,
        approvals: tires.approvals,
        fleet: fleet.units,
        driven_by: Vec::new(),
        bases: cycles.into_iter().map(|(made, basis)| (made.name, basis)).collect(),
        hauls: hauls_sound,
        haul_names: hauls.into_keys().collect(),
    })
}
