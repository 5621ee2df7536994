//! From a folder of files to checked hauls, with every problem on the way.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use model::haul_cycle::HaulCycle;
use model::tire::Tire;
use quantity::Speed;

use crate::convert::{Assembly, Catalog, Loaded, PlannedRoute, assemble, haul, refer, route, tire};
use crate::document::{Document, Validation, normalize, validate};
use crate::file::{
    CombinationFile, HaulFile, RouteFile, SurveyFile, TireFile, UnitsWord, VehicleFile,
};
use crate::problem::{Problem, ProblemKind, Reference, Severity, nearest};
use crate::schema::SurveyFileKind;
use crate::{Folder, check};

const SURVEY: &str = "survey.toml";
/// Folders whose `.toml` files have a meaning, here or in later parts.
const FOLDERS: [&str; 8] =
    ["tires", "vehicles", "combinations", "routes", "hauls", "permits", "approvals", "plans"];

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
    /// Hauls without errors, in order of name.
    pub hauls: Vec<HaulCycle>,
    /// Names of all hauls that have a file, with or without errors.
    pub haul_names: Vec<String>,
}

/// Reads a survey: the sound hauls, and all problems at once, in order of file and line.
///
/// A file with errors makes the hauls that use it unusable and leaves the others alone. `None`
/// means that `survey.toml` itself is missing or unusable.
///
/// ```
/// let (survey, problems) = survey::load(&survey::Folder::default());
/// assert!(survey.is_none());
/// assert!(problems[0].message().contains("no survey"));
/// ```
pub fn load(folder: &Folder) -> (Option<Survey>, Vec<Problem>) {
    let mut problems = folder.refused().to_vec();
    let survey = read_all(folder, &mut problems);
    problems.sort_by(|first, second| {
        (&first.file, first.line, first.column).cmp(&(&second.file, second.line, second.column))
    });
    problems.dedup();
    (survey, problems)
}

fn read_all(folder: &Folder, problems: &mut Vec<Problem>) -> Option<Survey> {
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
    let tires = tires(folder, problems);
    let vehicles: Catalog<Loaded<VehicleFile>> = catalog(folder, "vehicles", problems);
    for vehicle in vehicles.values().flatten() {
        check::vehicle(vehicle, &tires, problems);
    }
    let combinations = combinations(folder, &vehicles, &tires, problems);
    let routes = routes(folder, problems);
    let hauls: Catalog<Loaded<HaulFile>> = catalog(folder, "hauls", problems);
    if hauls.is_empty() {
        problems.push(Problem::in_file("", ProblemKind::NoHauls));
    }
    let mut cycles = Vec::new();
    for (name, file) in &hauls {
        if let Some(file) = file {
            cycles.extend(cycle(name, file, survey.as_ref(), &combinations, &routes, problems));
        }
    }
    let broken: BTreeSet<&str> = problems
        .iter()
        .filter(|problem| problem.severity == Severity::Error)
        .map(|problem| problem.file.as_str())
        .collect();
    cycles.retain(|(_, rests_on)| !rests_on.iter().any(|file| broken.contains(file.as_str())));
    let survey = survey?.data;
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
        tires: tires
            .into_iter()
            .filter(|(name, _)| !broken.contains(path_of("tires", name).as_str()))
            .filter_map(|(name, tire)| Some((name, tire?)))
            .collect(),
        hauls: cycles.into_iter().map(|(cycle, _)| cycle).collect(),
        haul_names: hauls.into_keys().collect(),
    })
}

fn is_toml(path: &str) -> bool {
    path.rsplit_once('.').is_some_and(|(_, ending)| ending.eq_ignore_ascii_case("toml"))
}

fn path_of(kind: &str, name: &str) -> String {
    format!("{kind}/{name}.toml")
}

/// Reports `.toml` files that stand where nothing reads them, such as in `tyres/`.
fn unread_files(folder: &Folder, problems: &mut Vec<Problem>) {
    for (path, _) in folder.files().filter(|(path, _)| is_toml(path)) {
        let read = match path.split('/').collect::<Vec<_>>().as_slice() {
            [file] => matches!(*file, SURVEY | "units.toml"),
            [top, file] => FOLDERS.contains(top) && file.rsplit('.').next() == Some("toml"),
            _ => false,
        };
        if !read {
            let top = path.split('/').next().unwrap_or(path);
            let kind = match path.split_once('/') {
                Some(_) => {
                    let nearest = nearest(top, &FOLDERS).filter(|nearest| nearest != top);
                    ProblemKind::UnreadFile { nearest }
                }
                None => ProblemKind::UnreadFile { nearest: nearest(path, &[SURVEY]) },
            };
            problems.push(Problem::in_file(path, kind));
        }
    }
}

/// Reads one file as far as it can be read.
fn read<T: SurveyFileKind>(
    path: &str,
    bytes: &[u8],
    problems: &mut Vec<Problem>,
) -> Option<Loaded<T>> {
    let (mut document, mut value) = Document::read(path, bytes, problems)?;
    let schema = T::checked();
    normalize(&mut document, &mut value, &schema.canonical, problems);
    if validate(&document, &mut value, schema, problems) == Validation::Broken {
        return None;
    }
    match serde_json::from_value(value) {
        Ok(data) => Some(Loaded { document, data }),
        Err(error) => {
            let kind = ProblemKind::Unreadable { message: error.to_string() };
            problems.push(document.problem("", kind));
            None
        }
    }
}

/// Reads every file of a folder of the survey.
fn catalog<T: SurveyFileKind>(
    folder: &Folder,
    kind: &str,
    problems: &mut Vec<Problem>,
) -> Catalog<Loaded<T>> {
    folder
        .files()
        .filter_map(|(path, bytes)| {
            let name = path.strip_prefix(kind)?.strip_prefix('/')?.strip_suffix(".toml")?;
            (!name.contains('/')).then(|| (name.to_owned(), read(path, bytes, problems)))
        })
        .collect()
}

fn tires(folder: &Folder, problems: &mut Vec<Problem>) -> Catalog<Arc<Tire>> {
    let files: Catalog<Loaded<TireFile>> = catalog(folder, "tires", problems);
    files
        .into_iter()
        .map(|(name, file)| {
            let made = file.and_then(|file| {
                let made = tire(&name, &file, folder, problems)?;
                check::tire(&file, &made, problems);
                Some(Arc::new(made))
            });
            (name, made)
        })
        .collect()
}

/// Something made from a file, with the files it rests on.
struct Resting<T> {
    made: T,
    rests_on: BTreeSet<String>,
}

fn combinations(
    folder: &Folder,
    vehicles: &Catalog<Loaded<VehicleFile>>,
    tires: &Catalog<Arc<Tire>>,
    problems: &mut Vec<Problem>,
) -> Catalog<Resting<Assembly>> {
    let files: Catalog<Loaded<CombinationFile>> = catalog(folder, "combinations", problems);
    files
        .into_iter()
        .map(|(name, file)| {
            let made = file.and_then(|file| {
                check::combination_file(&file, problems);
                let made = assemble(&name, &file, vehicles, tires, problems)?;
                check::assembly(&file, &made, problems);
                let mut rests_on = BTreeSet::from([path_of("combinations", &name)]);
                rests_on.extend(file.data.vehicles.iter().map(|one| path_of("vehicles", one)));
                for group in &made.combination.groups {
                    rests_on.insert(path_of("tires", &group.tire.name));
                }
                Some(Resting { made, rests_on })
            });
            (name, made)
        })
        .collect()
}

fn routes(folder: &Folder, problems: &mut Vec<Problem>) -> Catalog<Resting<PlannedRoute>> {
    let files: Catalog<Loaded<RouteFile>> = catalog(folder, "routes", problems);
    files
        .into_iter()
        .map(|(name, file)| {
            let made = file.and_then(|file| {
                check::route_file(&file, problems);
                let mut rests_on = BTreeSet::from([path_of("routes", &name)]);
                rests_on.extend(file.data.track.clone());
                Some(Resting { made: route(&name, &file, folder, problems)?, rests_on })
            });
            (name, made)
        })
        .collect()
}

/// The cycle of a haul file with the files it rests on.
fn cycle(
    name: &str,
    file: &Loaded<HaulFile>,
    survey: Option<&Loaded<SurveyFile>>,
    combinations: &Catalog<Resting<Assembly>>,
    routes: &Catalog<Resting<PlannedRoute>>,
    problems: &mut Vec<Problem>,
) -> Option<(HaulCycle, BTreeSet<String>)> {
    let (data, document) = (&file.data, &file.document);
    if let Some(survey) = survey {
        check::haul_file(file, survey, problems);
    }
    let wanted = &data.combination;
    let pointer = "/combination";
    let combination =
        refer(combinations, wanted, Reference::Combination, document, pointer, problems);
    let wanted = &data.route;
    let route = refer(routes, wanted, Reference::Route, document, "/route", problems);
    let (combination, route) = (combination?, route?);
    let cycle = haul(
        name,
        file,
        survey.map(|survey| &survey.data),
        &combination.made,
        &route.made,
        problems,
    )?;
    check::haul(file, &cycle, &combination.made, &route.made, problems);
    let mut rests_on = BTreeSet::from([SURVEY.to_owned(), path_of("hauls", name)]);
    rests_on.extend(combination.rests_on.iter().cloned());
    rests_on.extend(route.rests_on.iter().cloned());
    Some((cycle, rests_on))
}
