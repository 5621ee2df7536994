//! Parts of a survey, each made from its files, with the files it rests on.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use model::date::Date;
use model::haul_cycle::HaulCycle;
use model::tire::Tire;

use super::files::{REGISTERS, SURVEY, catalog, path_of, read};
use super::{HaulBasis, Imported};
use crate::approval::Approval;
use crate::convert::{
    Assembly, Catalog, Loaded, PlannedRoute, Terms, Written, approval, approve, assemble, haul,
    overlaps, refer, route, terms, tire,
};
use crate::file::{
    ApprovalFile, CombinationFile, HaulFile, PermitFile, RouteFile, SurveyFile, TireFile,
    UnitsFile, VehicleFile,
};
use crate::problem::{Problem, ProblemKind, Reference, UnitFault};
use crate::register::{Register, Unit, in_use, units};
use crate::{Folder, check};

/// Something made from a file, with the files it rests on.
pub(super) struct Resting<T> {
    pub made: T,
    pub rests_on: BTreeSet<String>,
}

/// Tires with the approvals that were given for them.
pub(super) struct Tires {
    pub models: Catalog<Arc<Tire>>,
    pub rims: BTreeMap<String, String>,
    pub tables: BTreeMap<String, String>,
    pub imports: Vec<Imported>,
    pub approvals: Vec<Approval>,
}

pub(super) fn tires(
    folder: &Folder,
    survey: Option<&Loaded<SurveyFile>>,
    today: Date,
    problems: &mut Vec<Problem>,
) -> Tires {
    let files: Catalog<Loaded<TireFile>> = catalog(folder, "tires", problems);
    let approval_files: Catalog<Loaded<ApprovalFile>> = catalog(folder, "approvals", problems);
    let mut made: Catalog<Tire> = Catalog::new();
    for (name, file) in &files {
        let tire = file.as_ref().and_then(|file| {
            let made = tire(name, file, folder, problems)?;
            check::tire(file, &made, problems);
            Some(made)
        });
        made.insert(name.clone(), tire);
    }
    let mut written: Vec<Written> = Vec::new();
    for file in approval_files.values().flatten() {
        let Some(one) = approval(file, &files, today, problems) else { continue };
        if let Some(tire) = made.get(&one.approval.tire).and_then(Option::as_ref) {
            check::approval(file, tire, problems);
        }
        if let Some(survey) = survey {
            check::warmest_day(&one, survey, problems);
        }
        written.push(one);
    }
    for (name, tire) in &mut made {
        let of_tire: Vec<&Written> =
            written.iter().filter(|one| one.approval.tire == *name).collect();
        let file = files.get(name).and_then(Option::as_ref);
        if let (Some(tire), Some(file)) = (tire, file)
            && !of_tire.is_empty()
        {
            approve(tire, file, &of_tire, problems);
        }
    }
    let imports = files
        .iter()
        .filter_map(|(name, file)| {
            let data = &file.as_ref()?.data;
            let (table, mapping) = (&data.maker_rows_file, &data.maker_rows_mapping);
            Some(Imported {
                tire: name.clone(),
                table: table.clone()?,
                read_so: mapping.as_ref()?.describe(),
            })
        })
        .collect();
    let rims = files
        .iter()
        .filter_map(|(name, file)| Some((name.clone(), file.as_ref()?.data.rim.size.clone()?)))
        .collect();
    let tables = files
        .iter()
        .filter_map(|(name, file)| {
            Some((name.clone(), file.as_ref()?.data.maker_rows_file.clone()?))
        })
        .collect();
    Tires {
        rims,
        tables,
        imports,
        models: made.into_iter().map(|(name, tire)| (name, tire.map(Arc::new))).collect(),
        approvals: written.into_iter().map(|one| one.approval).collect(),
    }
}

/// The path of a file as the folder knows it.
fn inside_path(written: &str) -> String {
    written.replace('\\', "/")
}

/// The register of units, with the file it was read from.
pub(super) struct Fleet {
    pub units: Vec<Unit>,
    register: Option<Register>,
    file: Option<&'static str>,
}

pub(super) fn fleet(
    folder: &Folder,
    vehicles: &Catalog<Loaded<VehicleFile>>,
    tires: &Catalog<Arc<Tire>>,
    today: Date,
    problems: &mut Vec<Problem>,
) -> Fleet {
    let mut there = REGISTERS.into_iter().filter(|file| folder.bytes(file).is_some());
    let file = there.next();
    for second in there {
        let other = file.unwrap_or_default().to_owned();
        let kind = ProblemKind::Unit(UnitFault::TwoRegisters { other });
        problems.push(Problem::in_file(second, kind));
    }
    let register = file.and_then(|file| {
        let bytes = folder.bytes(file)?;
        if file == REGISTERS[0] {
            return Some(Register::of_toml(&read::<UnitsFile>(file, bytes, problems)?));
        }
        Register::read_sheet(file, bytes, problems)
    });
    let units = register
        .as_ref()
        .map_or_else(Vec::new, |register| units(register, vehicles, tires, today, problems));
    Fleet { units, register, file }
}

pub(super) fn combinations(
    folder: &Folder,
    vehicles: &Catalog<Loaded<VehicleFile>>,
    tires: &Tires,
    fleet: &Fleet,
    problems: &mut Vec<Problem>,
) -> Catalog<Resting<Assembly>> {
    let files: Catalog<Loaded<CombinationFile>> = catalog(folder, "combinations", problems);
    if let Some(register) = &fleet.register {
        let readable = files.values().flatten();
        let used = readable.flat_map(|file| file.data.vehicles.iter().map(String::as_str));
        // A combination that cannot be read may use anything.
        if files.values().all(Option::is_some) {
            in_use(register, &fleet.units, &used.collect(), problems);
        }
    }
    files
        .into_iter()
        .map(|(name, file)| {
            let made = file.and_then(|file| {
                check::combination_file(&file, problems);
                let made = assemble(&name, &file, vehicles, &tires.models, &fleet.units, problems)?;
                check::assembly(&file, &made, problems);
                let mut rests_on = BTreeSet::from([path_of("combinations", &name)]);
                rests_on.extend(made.types.iter().map(|one| path_of("vehicles", one)));
                rests_on.extend(fleet.file.map(str::to_owned));
                let groups = made.combination.groups.iter();
                for tire in groups.flat_map(model::vehicle::AxleGroup::tire_models) {
                    rests_on.insert(path_of("tires", &tire.name));
                    rests_on.extend(tires.tables.get(&tire.name).map(|path| inside_path(path)));
                    let given = tires.approvals.iter().filter(|one| one.tire == tire.name);
                    rests_on.extend(given.map(|one| one.file.clone()));
                }
                Some(Resting { made, rests_on })
            });
            (name, made)
        })
        .collect()
}

pub(super) fn routes(
    folder: &Folder,
    today: Date,
    problems: &mut Vec<Problem>,
) -> Catalog<Resting<PlannedRoute>> {
    let files: Catalog<Loaded<RouteFile>> = catalog(folder, "routes", problems);
    let permits: Catalog<Loaded<PermitFile>> = catalog(folder, "permits", problems);
    let mut all: Vec<Terms> = Vec::new();
    // Nobody knows which stretches an unusable permit covers, so every route rests on it.
    let mut unclear: BTreeSet<String> = BTreeSet::new();
    for (name, file) in &permits {
        let found = match file {
            Some(file) => terms(file, &files, today, problems),
            None => Vec::new(),
        };
        let stretches = file.as_ref().map_or(1, |file| file.data.stretches.len());
        if found.len() < stretches {
            unclear.insert(path_of("permits", name));
        }
        all.extend(found);
    }
    overlaps(&all, problems);
    files
        .into_iter()
        .map(|(name, file)| {
            let made = file.and_then(|file| {
                check::route_file(&file, problems);
                let over: Vec<&Terms> = all.iter().filter(|terms| terms.route == name).collect();
                let mut rests_on = unclear.clone();
                rests_on.insert(path_of("routes", &name));
                rests_on.extend(file.data.track.as_deref().map(inside_path));
                rests_on.extend(over.iter().map(|terms| terms.file().to_owned()));
                let made = route(&name, &file, folder, &over, problems)?;
                Some(Resting { made, rests_on })
            });
            (name, made)
        })
        .collect()
}

/// The cycle of a haul file with what it rests on.
pub(super) fn cycle(
    name: &str,
    file: &Loaded<HaulFile>,
    survey: Option<&Loaded<SurveyFile>>,
    combinations: &Catalog<Resting<Assembly>>,
    routes: &Catalog<Resting<PlannedRoute>>,
    problems: &mut Vec<Problem>,
) -> Option<(HaulCycle, HaulBasis)> {
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
    let made = haul(
        name,
        file,
        survey.map(|survey| &survey.data),
        &combination.made,
        &route.made,
        problems,
    )?;
    check::haul(file, &made, &combination.made, &route.made, problems);
    let mut rests_on = BTreeSet::from([SURVEY.to_owned(), path_of("hauls", name)]);
    rests_on.extend(combination.rests_on.iter().cloned());
    rests_on.extend(route.rests_on.iter().cloned());
    let basis = HaulBasis { files: rests_on, members: combination.made.members.clone() };
    Some((made, basis))
}
