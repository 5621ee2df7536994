//! A tire against itself: sizes that can be, ratings that agree, limits that are not passed.

use std::ops::RangeInclusive;

use model::tire::Tire;
use model::tire::air_volume::estimated_for;
use model::tire::designation::Designation;
use model::tire::load_index::ServiceDescription;
use quantity::{ColdPressure, Length, Mass};

use crate::convert::Loaded;
use crate::file::TireFile;
use crate::problem::{Problem, ProblemKind, SizeFault};

/// Air volume over its estimate, beyond which it is a slip rather than another measurement.
const VOLUME_SHARE: RangeInclusive<f64> = 0.6..=1.5;
/// Section width over that of the designation: full-profile sizes run wide, narrow rims slim.
const WIDTH_SHARE: RangeInclusive<f64> = 0.92..=1.12;
/// What catalogs, wear and measuring add to the tolerance of the nominal diameter.
const DIAMETER_ALLOWANCE: f64 = 0.02;
/// Bead seats are made to a few tenths of a millimeter; tables round to whole ones.
const RIM_TOLERANCE: Length = Length::from_mm(3.0);
/// Largest difference of a molded load from that of the load index.
const RATING_TOLERANCE: f64 = 0.06;
/// Pounds in a kilogram, with the rating tolerance.
const POUNDS: RangeInclusive<f64> = 2.0..=2.4;

/// Checks a tire.
pub(crate) fn tire(file: &Loaded<TireFile>, tire: &Tire, problems: &mut Vec<Problem>) {
    sizes(file, tire, problems);
    designation(file, tire, problems);
    ratings(file, problems);
    psi(file, tire, problems);
    pressures(file, tire, problems);
}

fn sizes(file: &Loaded<TireFile>, tire: &Tire, problems: &mut Vec<Problem>) {
    let mut fault = |key: &str, fault| {
        problems.push(file.problem(&format!("/{key}"), ProblemKind::Size(fault)));
    };
    if tire.rim_diameter >= tire.diameter {
        let (rim, diameter) = (tire.rim_diameter, tire.diameter);
        fault("rim_diameter_mm", SizeFault::RimOverDiameter { rim, diameter });
        return;
    }
    if let Some(given) = tire.static_loaded_radius {
        let (free, rim) = (tire.diameter / 2.0, tire.rim_diameter / 2.0);
        if given >= free {
            fault("static_loaded_radius_mm", SizeFault::LoadedRadius { given, free });
        } else if given <= rim {
            fault("static_loaded_radius_mm", SizeFault::LoadedRadiusUnderRim { given, rim });
        }
    }
    if let Ok(estimate) = estimated_for(tire)
        && !VOLUME_SHARE.contains(&(tire.air_volume / estimate.value))
    {
        let (given, expected) = (tire.air_volume, estimate.value);
        fault("air_volume_l", SizeFault::AirVolume { given, expected });
    }
}

/// Dimensions against what the designation fixes.
fn designation(file: &Loaded<TireFile>, tire: &Tire, problems: &mut Vec<Problem>) {
    let Ok(size) = tire.size.parse::<Designation>() else { return };
    let mut fault = |key: &str, fault| {
        problems.push(file.problem(&format!("/{key}"), ProblemKind::Size(fault)));
    };
    if let Some(nominal) = size.nominal_diameter() {
        let (given, expected) = (tire.diameter, nominal.value);
        if (given / expected - 1.0).abs() > nominal.tolerance + DIAMETER_ALLOWANCE {
            fault("diameter_mm", SizeFault::Diameter { given, expected });
        }
    }
    let (given, expected) = (tire.rim_diameter, size.rim_diameter());
    if (given - expected).abs() > RIM_TOLERANCE {
        fault("rim_diameter_mm", SizeFault::RimDiameter { given, expected });
    }
    let (given, expected) = (tire.section_width, size.section());
    if !WIDTH_SHARE.contains(&(given / expected)) {
        fault("section_width_mm", SizeFault::SectionWidth { given, expected });
    }
    if size.construction() != tire.construction {
        fault("construction", SizeFault::Construction { molded: size.construction() });
    }
}

/// Molded loads against the load index; pounds typed as kilograms stand out.
fn ratings(file: &Loaded<TireFile>, problems: &mut Vec<Problem>) {
    let Ok(service) = file.data.service_description.parse::<ServiceDescription>() else { return };
    let pairs = [
        ("/rated_load_single_kg", file.data.rated_load_single_kg, Some(service.single)),
        ("/rated_load_dual_kg", file.data.rated_load_dual_kg, service.dual),
    ];
    for (pointer, given, index) in pairs {
        let (Some(given), Some(index)) = (given.map(Mass::from_kg), index) else { continue };
        let expected = index.load();
        let ratio = given / expected;
        if POUNDS.contains(&ratio) {
            problems.push(file.problem(pointer, ProblemKind::MassInPounds { given, expected }));
        } else if (ratio - 1.0).abs() > RATING_TOLERANCE {
            let kind = ProblemKind::RatingAgainstIndex { given, expected };
            problems.push(file.problem(pointer, kind));
        }
    }
}

/// Low pressures that would be ordinary ones in psi.
fn psi(file: &Loaded<TireFile>, tire: &Tire, problems: &mut Vec<Problem>) {
    let data = &file.data;
    let lowest = data.lowest_table_pressure_kpa;
    let lowest = lowest.map(|kpa| ("/lowest_table_pressure_kpa".to_owned(), kpa));
    let rows = data.maker_rows.iter().enumerate();
    let rows =
        rows.map(|(index, row)| (format!("/maker_rows/{index}/pressure_kpa"), row.pressure_kpa));
    for (pointer, kpa) in lowest.into_iter().chain(rows) {
        let given = ColdPressure::from_kpa(kpa);
        if looks_like_psi(given, tire) {
            let kind = ProblemKind::PressureInPsi { given, rated: tire.single.pressure };
            problems.push(file.problem(&pointer, kind));
        }
    }
}

/// Whether a pressure is far under the tire's rated one, and its number in psi is not above it.
pub(super) fn looks_like_psi(given: ColdPressure, tire: &Tire) -> bool {
    const FAR_UNDER: f64 = 0.2;
    let rated = tire.single.pressure;
    given.ratio_to(rated) < FAR_UNDER && ColdPressure::from_psi(given.as_kpa()) <= rated
}

fn pressures(file: &Loaded<TireFile>, tire: &Tire, problems: &mut Vec<Problem>) {
    let mut over =
        |pointer: &str, pressure: ColdPressure, limits: &[(&'static str, ColdPressure)]| {
            for (limit, maximum) in limits.iter().copied() {
                if pressure > maximum {
                    let kind = ProblemKind::OverMaximum { pressure, maximum, limit };
                    problems.push(file.problem(pointer, kind));
                }
            }
        };
    let rim = ("rim.maximum_pressure_kpa", tire.rim.maximum_pressure);
    let molded = ("molded_maximum_kpa", tire.molded_maximum);
    let rated = ("rated_pressure_kpa", tire.single.pressure);
    over("/rated_pressure_kpa", tire.single.pressure, &[molded, rim]);
    if let Some(dual) = tire.dual
        && file.data.rated_pressure_dual_kpa.is_some()
    {
        over("/rated_pressure_dual_kpa", dual.pressure, &[molded, rim]);
    }
    if let Some(lowest) = tire.lowest_table_pressure {
        over("/lowest_table_pressure_kpa", lowest, &[rated]);
    }
    if let Some(bead) = tire.bead_minimum {
        over("/bead_minimum_kpa", bead, &[rated]);
    }
    for (index, row) in file.data.maker_rows.iter().enumerate() {
        let pointer = format!("/maker_rows/{index}/pressure_kpa");
        over(&pointer, ColdPressure::from_kpa(row.pressure_kpa), &[molded, rim]);
    }
}
