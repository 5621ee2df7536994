//! Every limit that can set the highest pressure of one axle group.

use model::air::AirSupply;
use model::source::{Citation, Key, Standing};
use model::vehicle::AxleGroup;
use quantity::Temperature;

use super::limit::{Basis, Limit, MaximumKind};
use super::minimum::{PERMIT, SURVEY};
use super::site::{RungUse, Site};

/// Pressure the supply can be counted on to reach.
pub const SUPPLY: Key = Key("supply-reaches-cut-in");

/// Limits of one group, lowest first.
pub(super) fn limits(
    index: usize,
    group: &AxleGroup,
    supply: &AirSupply,
    used: &RungUse,
    warmest_tire: Temperature,
    site: &Site,
) -> Vec<Limit<MaximumKind>> {
    let stated = |kind, pressure, tire, place: &str| Limit {
        kind,
        pressure,
        group: index,
        tire,
        basis: Basis::Stated,
        citation: Citation::of(SURVEY, Standing::Given).at(place),
    };
    let mut found = Vec::new();
    for (model, tire) in group.tire_models().enumerate() {
        let molded = (MaximumKind::MoldedMaximum, tire.molded_maximum);
        found.push(stated(molded.0, molded.1, model, "molded maximum of the tire"));
        found.push(stated(MaximumKind::Rim, tire.rim.maximum_pressure, model, "rim stamp"));
    }
    if group.channel.is_some() {
        // Between loads the reservoir stands at cut-in: what lies above it is not to be counted on.
        let reading = supply.governor.cut_in;
        found.push(Limit {
            kind: MaximumKind::Supply,
            pressure: site.cold_of(reading, warmest_tire),
            group: index,
            tire: 0,
            basis: Basis::AsRead { reading, temperature: warmest_tire },
            citation: Citation::of(SUPPLY, Standing::CommonPractice),
        });
    }
    let permit = |pressure, basis, place: &str| Limit {
        kind: MaximumKind::Permit,
        pressure,
        group: index,
        tire: 0,
        basis,
        citation: Citation::of(PERMIT, Standing::Given).at(place),
    };
    if let Some(pressure) = used.permit_maximum {
        found.push(permit(pressure, Basis::Stated, "highest pressure of the permit"));
    }
    if let Some(reading) = used.permit_highest_reading {
        // Filled cold, it reads most when the tire is warmest.
        let basis = Basis::AsRead { reading, temperature: warmest_tire };
        let pressure = site.cold_of(reading, warmest_tire);
        found.push(permit(pressure, basis, "highest reading of the permit"));
    }
    if let Some(pressure) = used.ground_maximum {
        found.push(stated(MaximumKind::Ground, pressure, 0, "ground maximum of a leg"));
    }
    found.sort_by(|a, b| a.pressure.total_cmp(&b.pressure));
    found
}
