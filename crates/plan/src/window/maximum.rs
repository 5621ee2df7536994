//! Every limit that can set the highest pressure of one axle group.

use model::air::AirSupply;
use model::source::{Citation, Key, Standing};
use model::vehicle::AxleGroup;
use quantity::{ColdPressure, Temperature};

use super::limit::{Basis, Limit, MaximumKind};
use super::minimum::SURVEY;
use super::site::Site;

/// Pressure the supply can be counted on to reach.
pub const SUPPLY: Key = Key("supply-reaches-cut-in");

/// Limits of one group, lowest first.
pub(super) fn limits(
    index: usize,
    group: &AxleGroup,
    supply: &AirSupply,
    ground: Option<ColdPressure>,
    warmest_tire: Temperature,
    site: &Site,
) -> Vec<Limit<MaximumKind>> {
    let stated = |kind, pressure, place: &str| Limit {
        kind,
        pressure,
        group: index,
        basis: Basis::Stated,
        citation: Citation::of(SURVEY, Standing::Given).at(place),
    };
    let mut found = vec![
        stated(MaximumKind::MoldedMaximum, group.tire.molded_maximum, "molded maximum of the tire"),
        stated(MaximumKind::Rim, group.tire.rim.maximum_pressure, "rim stamp"),
    ];
    if group.channel.is_some() {
        // Between loads the reservoir stands at cut-in: what lies above it is not to be counted on.
        let reading = supply.governor.cut_in;
        found.push(Limit {
            kind: MaximumKind::Supply,
            pressure: site.cold_of(reading, warmest_tire),
            group: index,
            basis: Basis::AsRead { reading, temperature: warmest_tire },
            citation: Citation::of(SUPPLY, Standing::CommonPractice),
        });
    }
    if let Some(pressure) = ground {
        found.push(stated(MaximumKind::Ground, pressure, "ground maximum of a leg"));
    }
    found.sort_by(|a, b| a.pressure.total_cmp(&b.pressure));
    found
}
