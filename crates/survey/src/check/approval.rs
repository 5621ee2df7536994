//! An approval against its tire, and against the weather of the survey.

use model::tire::Tire;
use quantity::{ColdPressure, Speed, Temperature};

use super::tire::looks_like_psi;
use crate::convert::{Loaded, Written};
use crate::file::{ApprovalFile, SurveyFile};
use crate::problem::{ApprovalFault, Problem, ProblemKind};

/// Checks the rows of an approval against what the tire may hold and how fast it may run.
pub(crate) fn approval(file: &Loaded<ApprovalFile>, tire: &Tire, problems: &mut Vec<Problem>) {
    for (index, row) in file.data.rows.iter().enumerate() {
        let at = format!("/rows/{index}");
        let pressure = ColdPressure::from_kpa(row.pressure_kpa);
        let pointer = format!("{at}/pressure_kpa");
        let limits = [
            ("molded_maximum_kpa", tire.molded_maximum),
            ("rim.maximum_pressure_kpa", tire.rim.maximum_pressure),
        ];
        for (limit, maximum) in limits {
            if pressure > maximum {
                let kind = ProblemKind::OverMaximum { pressure, maximum, limit };
                problems.push(file.problem(&pointer, kind));
            }
        }
        if looks_like_psi(pressure, tire) {
            let kind = ProblemKind::PressureInPsi { given: pressure, rated: tire.single.pressure };
            problems.push(file.problem(&pointer, kind));
        }
        let speed = Speed::from_kmh(row.speed_kmh);
        if speed > tire.rated_speed {
            let kind = ProblemKind::AboveSpeedSymbol {
                speed,
                tire: tire.name.clone(),
                symbol: tire.speed_symbol.clone(),
                rated: tire.rated_speed,
                limit_of_road: false,
            };
            problems.push(file.problem(&format!("{at}/speed_kmh"), kind));
        }
    }
}

/// Whether the maker was asked about air as warm as the survey has.
pub(crate) fn warmest_day(
    written: &Written,
    survey: &Loaded<SurveyFile>,
    problems: &mut Vec<Problem>,
) {
    let warmest = Temperature::from_celsius(survey.data.temperature.warmest_c);
    let asked = written.approval.asked.warmest;
    if asked < warmest && written.approval.lapsed.is_none() {
        let fault = ApprovalFault::AskedForCooler { asked, warmest };
        problems.push(written.document.problem("/asked/warmest_c", fault.into()));
    }
}
