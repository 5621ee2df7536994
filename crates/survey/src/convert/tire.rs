//! A tire model with its ratings and the maker's rows.

use std::fmt::Display;
use std::str::FromStr;

use model::tire::designation::Designation;
use model::tire::load_index::{LoadIndex, ServiceDescription};
use model::tire::{
    AirRetention, Construction, Fitment, MakerRow, MakerTable, RatedPoint, Recommended, Rim,
    SizeClass, StandardsBody, Tire,
};
use quantity::{ColdPressure, Length, Mass, Speed, Volume};

use super::{Loaded, inside};
use crate::file::{
    AirRetentionWord, BodyWord, ConstructionWord, FitmentWord, MakerRowFile, SizeClassWord,
    TireFile,
};
use crate::problem::{Condition, Problem, ProblemKind};
use crate::{Folder, sheet};

/// The tire of a file; `None` if its designation or service description cannot be read.
pub(crate) fn tire(
    name: &str,
    file: &Loaded<TireFile>,
    folder: &Folder,
    problems: &mut Vec<Problem>,
) -> Option<Tire> {
    let data = &file.data;
    let maker_table = maker_table(file, folder, problems);
    let size = parsed::<Designation>(file, "/designation", &data.designation, "11R22.5", problems);
    let text = &data.service_description;
    let service =
        parsed::<ServiceDescription>(file, "/service_description", text, "146/143 L", problems);
    let (size, service) = (size?, service?);
    let pressure = ColdPressure::from_kpa(data.rated_pressure_kpa);
    let dual_pressure = data.rated_pressure_dual_kpa.map_or(pressure, ColdPressure::from_kpa);
    let single_load =
        data.rated_load_single_kg.map_or_else(|| service.single.load(), Mass::from_kg);
    let dual_load =
        data.rated_load_dual_kg.map(Mass::from_kg).or(service.dual.map(LoadIndex::load));
    Some(Tire {
        name: name.to_owned(),
        size: data.designation.trim().to_owned(),
        body: match data.body {
            BodyWord::Tra => StandardsBody::Tra,
            BodyWord::Etrto => StandardsBody::Etrto,
        },
        size_class: match data.size_class {
            Some(SizeClassWord::Conventional) => SizeClass::Conventional,
            Some(SizeClassWord::MetricOrWide) => SizeClass::MetricOrWide,
            None => size.size_class(),
        },
        construction: match data.construction {
            ConstructionWord::Radial => Construction::Radial,
            ConstructionWord::Bias => Construction::Bias,
        },
        air_retention: match data.air_retention {
            AirRetentionWord::Tubeless => AirRetention::Tubeless,
            AirRetentionWord::TubeType => AirRetention::TubeType,
        },
        single: RatedPoint { load: single_load, pressure },
        dual: dual_load.map(|load| RatedPoint { load, pressure: dual_pressure }),
        load_index: service.single.number(),
        rated_speed: service.symbol.speed(),
        speed_symbol: service.symbol.letters().to_owned(),
        diameter: Length::from_mm(data.diameter_mm),
        section_width: Length::from_mm(data.section_width_mm),
        rim_diameter: data.rim_diameter_mm.map_or_else(|| size.rim_diameter(), Length::from_mm),
        static_loaded_radius: data.static_loaded_radius_mm.map(Length::from_mm),
        molded_maximum: ColdPressure::from_kpa(data.molded_maximum_kpa),
        rim: Rim {
            maximum_pressure: ColdPressure::from_kpa(data.rim.maximum_pressure_kpa),
            maximum_load: Mass::from_kg(data.rim.maximum_load_kg),
        },
        air_volume: Volume::from_l(data.air_volume_l),
        lowest_table_pressure: data.lowest_table_pressure_kpa.map(ColdPressure::from_kpa),
        bead_minimum: data.bead_minimum_kpa.map(ColdPressure::from_kpa),
        maker_table,
        rolling_resistance: data.rolling_resistance,
    })
}

/// Reads a text by the rules of the model.
fn parsed<T: FromStr>(
    file: &Loaded<TireFile>,
    pointer: &str,
    text: &str,
    example: &'static str,
    problems: &mut Vec<Problem>,
) -> Option<T>
where
    T::Err: Display,
{
    match text.parse() {
        Ok(value) => Some(value),
        Err(error) => {
            let kind = ProblemKind::NotParsed { message: error.to_string(), example };
            problems.push(file.problem(pointer, kind));
            None
        }
    }
}

/// The maker's document, from the file's own rows or the table it names.
fn maker_table(
    file: &Loaded<TireFile>,
    folder: &Folder,
    problems: &mut Vec<Problem>,
) -> Option<MakerTable> {
    let data = &file.data;
    if data.maker_rows_file.is_none() && data.maker_rows_mapping.is_some() {
        let key = "maker_rows_mapping";
        let kind = ProblemKind::OutOfPlace { key, because: Condition::NoRowsFile };
        problems.push(file.document.problem_with_key("/maker_rows_mapping", kind));
    }
    let rows = match &data.maker_rows_file {
        Some(path) => imported_rows(file, path, folder, problems)?,
        None => data.maker_rows.iter().map(row).collect(),
    };
    if rows.is_empty() {
        return None;
    }
    let Some(approval) = &data.approved else {
        let kind = ProblemKind::Needed { key: "approved", because: Condition::RowsGiven };
        problems.push(file.problem("", kind));
        return None;
    };
    Some(MakerTable {
        document: approval.document.clone(),
        approved: approval.for_this_fleet,
        lapsed: None,
        recommended: Recommended::Row,
        rows,
    })
}

/// Rows of the table that the file names, read as its mapping says.
fn imported_rows(
    file: &Loaded<TireFile>,
    path: &str,
    folder: &Folder,
    problems: &mut Vec<Problem>,
) -> Option<Vec<MakerRow>> {
    let data = &file.data;
    if !data.maker_rows.is_empty() {
        let kind =
            ProblemKind::OutOfPlace { key: "maker_rows_file", because: Condition::RowsInline };
        problems.push(file.document.problem_with_key("/maker_rows_file", kind));
        return None;
    }
    let pointer = "/maker_rows_file";
    let bytes = inside(folder, path, &file.document, pointer, problems)?;
    let Some(mapping) = &data.maker_rows_mapping else {
        let proposal = proposal(bytes, path);
        problems.push(file.problem(pointer, ProblemKind::MappingMissing { proposal }));
        return None;
    };
    match sheet::import(bytes, path, mapping) {
        Ok((rows, findings)) => {
            problems.extend(findings.into_iter().map(|finding| {
                let message = finding.to_string();
                let line = Some(finding.place.row());
                Problem::in_file(path, ProblemKind::ImportFinding { message, line })
            }));
            if rows.is_empty() {
                let message = "no row of the table could be used".to_owned();
                problems.push(file.problem(pointer, ProblemKind::ImportFailed { message }));
            }
            Some(rows)
        }
        Err(error) => {
            let message = error.to_string();
            problems.push(file.problem(pointer, ProblemKind::ImportFailed { message }));
            None
        }
    }
}

/// The mapping recognized in a table, in the words of the tire's file.
fn proposal(bytes: &[u8], path: &str) -> Option<String> {
    let sheets = sheet::read_sheets(bytes, path).ok()?;
    let best = sheets.iter().find_map(|sheet| sheet::propose(sheet).into_iter().next())?;
    let json = serde_json::to_value(&best.mapping).ok()?;
    // Words, whole numbers and true or false are written alike in JSON and TOML.
    let entries = json.as_object()?.iter().map(|(key, value)| format!("{key} = {value}"));
    Some(entries.collect::<Vec<_>>().join(", "))
}

pub(super) fn fitment(word: FitmentWord) -> Fitment {
    match word {
        FitmentWord::Single => Fitment::Single,
        FitmentWord::Dual => Fitment::Dual,
    }
}

pub(super) fn row(file: &MakerRowFile) -> MakerRow {
    MakerRow {
        fitment: fitment(file.fitment),
        load: Mass::from_kg(file.load_kg),
        speed: Speed::from_kmh(file.speed_kmh),
        pressure: ColdPressure::from_kpa(file.pressure_kpa),
        hold_distance: file.hold_distance_km.map(Length::from_km),
    }
}
