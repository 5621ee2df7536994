//! `survey.toml`: temperatures in order.

use quantity::Temperature;

use crate::convert::Loaded;
use crate::document::Document;
use crate::file::SurveyFile;
use crate::problem::{Problem, ProblemKind};

/// Checks `survey.toml`.
pub(crate) fn survey(file: &Loaded<SurveyFile>, problems: &mut Vec<Problem>) {
    let air = &file.data.temperature;
    temperatures(
        &file.document,
        "/temperature",
        [air.coldest_c, air.nominal_c, air.warmest_c],
        problems,
    );
}

/// Coldest below warmest, and the ordinary day between them.
pub(super) fn temperatures(
    document: &Document,
    table: &str,
    [coldest, nominal, warmest]: [f64; 3],
    problems: &mut Vec<Problem>,
) {
    if coldest >= warmest {
        let kind = ProblemKind::Temperatures {
            coldest: Temperature::from_celsius(coldest),
            warmest: Temperature::from_celsius(warmest),
        };
        problems.push(document.problem(&format!("{table}/coldest_c"), kind));
    } else if !(coldest..=warmest).contains(&nominal) {
        problems.push(document.problem(&format!("{table}/nominal_c"), ProblemKind::NominalOutside));
    }
}
