//! Which haul a call from the road is about: by the unit's fleet number, or by its combination.

use model::haul_cycle::HaulCycle;
use survey::Survey;

/// What the caller named.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Named<'a> {
    /// Fleet number of a unit.
    pub unit: Option<&'a str>,
    /// Name of a combination.
    pub combination: Option<&'a str>,
    /// Name of a haul.
    pub haul: Option<&'a str>,
}

/// Why no haul can be chosen.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum NamedError {
    /// A register without units.
    #[error(
        "the survey has no register of units, so unit '{wanted}' is not known; give --combination: {}",
        known.join(", ")
    )]
    NoRegister {
        /// Fleet number asked for.
        wanted: String,
        /// Combinations there are.
        known: Vec<String>,
    },
    /// A fleet number that is not in the register.
    #[error("no unit has the number '{wanted}'; the register has: {}", known.join(", "))]
    NoSuchUnit {
        /// Fleet number asked for.
        wanted: String,
        /// Numbers there are.
        known: Vec<String>,
    },
    /// A unit of a type that no combination uses.
    #[error(
        "unit '{unit}' is a {vehicle}, and no haul that can be planned runs one; units that run: {}",
        known.join(", ")
    )]
    InNoCombination {
        /// Fleet number.
        unit: String,
        /// Its type.
        vehicle: String,
        /// Numbers of units that run on a haul.
        known: Vec<String>,
    },
    /// A combination that no haul runs.
    #[error("no haul that can be planned runs combination '{wanted}'; there are: {}", known.join(", "))]
    NoSuchCombination {
        /// Name asked for.
        wanted: String,
        /// Names there are.
        known: Vec<String>,
    },
    /// A haul that is not there, or that others than the unit run.
    #[error("haul '{wanted}' is not one of: {}", known.join(", "))]
    NoSuchHaul {
        /// Name asked for.
        wanted: String,
        /// Hauls that would do.
        known: Vec<String>,
    },
    /// Several hauls would do.
    #[error("several hauls fit; choose with --haul: {}", known.join(", "))]
    SeveralHauls {
        /// Hauls that would do.
        known: Vec<String>,
    },
    /// No haul is sound.
    #[error("no haul of this survey can be planned until its problems are mended")]
    NoneSound,
}

/// The one haul a call names.
///
/// # Errors
/// [`NamedError`] where nothing, or more than one, fits; it lists what would.
pub fn haul_of<'a>(survey: &'a Survey, named: Named<'_>) -> Result<&'a HaulCycle, NamedError> {
    if survey.hauls.is_empty() {
        return Err(NamedError::NoneSound);
    }
    let mut hauls: Vec<&HaulCycle> = survey.hauls.iter().collect();
    if let Some(wanted) = named.unit {
        hauls = of_unit(survey, wanted)?;
    }
    if let Some(wanted) = named.combination {
        let mut known = names(hauls.iter().map(|haul| &haul.combination.name));
        known.dedup();
        hauls.retain(|haul| haul.combination.name == wanted);
        if hauls.is_empty() {
            return Err(NamedError::NoSuchCombination { wanted: wanted.to_owned(), known });
        }
    }
    let known = names(hauls.iter().map(|haul| &haul.name));
    match named.haul {
        Some(wanted) => hauls
            .into_iter()
            .find(|haul| haul.name == wanted)
            .ok_or(NamedError::NoSuchHaul { wanted: wanted.to_owned(), known }),
        None if hauls.len() > 1 => Err(NamedError::SeveralHauls { known }),
        None => hauls.into_iter().next().ok_or(NamedError::NoneSound),
    }
}

/// Hauls whose combination has a unit in it, by its number or by its type.
fn of_unit<'a>(survey: &'a Survey, wanted: &str) -> Result<Vec<&'a HaulCycle>, NamedError> {
    let wanted_text = || wanted.to_owned();
    if survey.fleet.is_empty() {
        let mut known = names(survey.hauls.iter().map(|haul| &haul.combination.name));
        known.dedup();
        return Err(NamedError::NoRegister { wanted: wanted_text(), known });
    }
    let Some(unit) = survey.fleet.iter().find(|unit| unit.number == wanted) else {
        let known = names(survey.fleet.iter().map(|unit| &unit.number));
        return Err(NamedError::NoSuchUnit { wanted: wanted_text(), known });
    };
    let hauls: Vec<&HaulCycle> =
        survey.hauls.iter().filter(|haul| runs(haul, &unit.number, &unit.vehicle)).collect();
    if hauls.is_empty() {
        let running = survey
            .fleet
            .iter()
            .filter(|unit| survey.hauls.iter().any(|haul| runs(haul, &unit.number, &unit.vehicle)));
        return Err(NamedError::InNoCombination {
            unit: wanted_text(),
            vehicle: unit.vehicle.clone(),
            known: names(running.map(|unit| &unit.number)),
        });
    }
    Ok(hauls)
}

/// Whether a haul's combination names a unit or its type; the second of a name has a number behind.
fn runs(haul: &HaulCycle, number: &str, vehicle: &str) -> bool {
    haul.combination.vehicles.iter().any(|member| {
        [number, vehicle].into_iter().any(|name| {
            let rest = member.name.strip_prefix(name);
            rest.is_some_and(|rest| {
                rest.is_empty()
                    || rest.strip_prefix(' ').is_some_and(|count| count.parse::<u32>().is_ok())
            })
        })
    })
}

fn names<'a>(names: impl Iterator<Item = &'a String>) -> Vec<String> {
    names.cloned().collect()
}
