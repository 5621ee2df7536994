//! Pressure for the load: maker's rows, restricted-speed table, or the ordinary table.

use model::source::{Citation, Key, Standing};
use model::tire::load_inflation::{Exponent, LoadInflationError, required_pressure};
use model::tire::low_speed::{
    LowSpeedError, RestrictedSpeed, restricted_speed_pressure, restricted_speed_pressure_for,
};
use model::tire::maker_table::{MakerTableError, maker_pressure};
use model::tire::r54::{R54Error, load_only_backwards, r54_allowance};
use model::tire::{Fitment, StandardsBody, Tire};
use quantity::{Length, Mass, PressureDifference, Speed};

use super::limit::{Basis, Impossible, Limit, MinimumKind};

/// A maker's own document as a source.
pub const MAKER: Key = Key("maker-document");

/// The pressure a load needs under a cap, with the hold distance of a maker's row.
pub(super) struct LoadLimit {
    pub limit: Limit<MinimumKind>,
    pub hold: Option<Length>,
}

pub(super) fn load_limit(
    tire: &Tire,
    fitment: Fitment,
    load: Mass,
    cap: Speed,
    group: usize,
) -> Result<LoadLimit, Impossible> {
    if cap > tire.rated_speed {
        return Err(Impossible::TooFast { group, cap, rated: tire.rated_speed });
    }
    if let Some(found) = approved_maker_row(tire, fitment, load, cap, group)? {
        return Ok(found);
    }
    match tire.body {
        StandardsBody::Tra => tra_limit(tire, fitment, load, cap, group),
        StandardsBody::Etrto => r54_limit(tire, fitment, load, cap, group),
    }
}

/// The full-speed table pressure, which roadside rules and chains ask for.
pub(super) fn full_speed_limit(
    tire: &Tire,
    fitment: Fitment,
    load: Mass,
    cap: Speed,
    group: usize,
) -> Result<Limit<MinimumKind>, Impossible> {
    let rated = tire.rated(fitment).ok_or(Impossible::NotRated { group })?;
    let exponent = Exponent::for_tire(tire);
    let required = required_pressure(rated, load, &exponent)
        .map_err(|_| Impossible::Overloaded { group, load, highest: rated.load, cap })?;
    Ok(Limit {
        kind: MinimumKind::LoadTable,
        pressure: required.pressure,
        group,
        tire: 0,
        basis: load_basis(load, tire.rated_speed, 0.0, PressureDifference::ZERO),
        citation: exponent.citation().clone(),
    })
}

fn approved_maker_row(
    tire: &Tire,
    fitment: Fitment,
    load: Mass,
    cap: Speed,
    group: usize,
) -> Result<Option<LoadLimit>, Impossible> {
    let Some(table) = tire.maker_table.as_ref().filter(|table| table.approved) else {
        return Ok(None);
    };
    match maker_pressure(table, fitment, load, cap) {
        Ok(found) => Ok(Some(LoadLimit {
            limit: Limit {
                kind: MinimumKind::MakerRow,
                pressure: found.pressure,
                group,
                tire: 0,
                basis: load_basis(load, found.speed, 0.0, PressureDifference::ZERO),
                citation: Citation::of(MAKER, Standing::Given).at(format!(
                    "{}, row {}",
                    table.document,
                    found.row + 1
                )),
            },
            hold: found.hold_distance,
        })),
        // Rows that do not reach this speed or fitment leave the ordinary table in force.
        Err(MakerTableError::TooFast { .. } | MakerTableError::NoRows { .. }) => Ok(None),
        Err(MakerTableError::TooHeavy { highest, .. }) => {
            Err(Impossible::Overloaded { group, load, highest, cap })
        }
        Err(other) => Err(Impossible::Refused { group, reason: other.to_string() }),
    }
}

fn tra_limit(
    tire: &Tire,
    fitment: Fitment,
    load: Mass,
    cap: Speed,
    group: usize,
) -> Result<LoadLimit, Impossible> {
    let found =
        restricted_speed_pressure_for(tire, fitment, load, cap).map_err(|error| match error {
            LowSpeedError::TooHeavy { load, highest, cap } => {
                Impossible::Overloaded { group, load, highest, cap }
            }
            LowSpeedError::NotRated { .. } => Impossible::NotRated { group },
            other => Impossible::Refused { group, reason: other.to_string() },
        })?;
    Ok(tra_load_limit(found, load, tire, group))
}

fn tra_load_limit(found: RestrictedSpeed, load: Mass, tire: &Tire, group: usize) -> LoadLimit {
    let plain =
        found.load_allowance_pct == 0.0 && found.pressure_addition == PressureDifference::ZERO;
    let kind = if plain { MinimumKind::LoadTable } else { MinimumKind::RestrictedSpeed };
    let speed = found.row.top.unwrap_or(tire.rated_speed);
    LoadLimit {
        limit: Limit {
            kind,
            pressure: found.pressure,
            group,
            tire: 0,
            basis: load_basis(load, speed, found.load_allowance_pct, found.pressure_addition),
            citation: found.citation,
        },
        hold: None,
    }
}

/// The load-only allowance used backwards, never granting more than the TRA column of the size.
fn r54_limit(
    tire: &Tire,
    fitment: Fitment,
    load: Mass,
    cap: Speed,
    group: usize,
) -> Result<LoadLimit, Impossible> {
    let rated = tire.rated(fitment).ok_or(Impossible::NotRated { group })?;
    let exponent = Exponent::for_tire(tire);
    let by_allowance =
        load_only_backwards(rated, load, &exponent, tire.load_index, &tire.speed_symbol, cap);
    let found = match by_allowance {
        Ok(found) if found.allowance.load_pct > 0.0 => found,
        Ok(_) | Err(R54Error::NoColumn { .. } | R54Error::TooFast { .. }) => {
            let limit = full_speed_limit(tire, fitment, load, cap, group)?;
            return Ok(LoadLimit { limit, hold: None });
        }
        Err(R54Error::Law(LoadInflationError::OverRated { .. })) => {
            let highest = r54_allowance(tire.load_index, &tire.speed_symbol, cap)
                .map_or(rated.load, |allowance| rated.load * (1.0 + allowance.load_pct / 100.0));
            return Err(Impossible::Overloaded { group, load, highest, cap });
        }
        Err(other) => return Err(Impossible::Refused { group, reason: other.to_string() }),
    };
    // The TRA column for metric and wide sizes grants less at low speed: the smaller grant holds.
    let metric = restricted_speed_pressure(rated, load, &exponent, tire.size_class, cap).ok();
    if let Some(metric) = metric.filter(|metric| metric.pressure > found.pressure) {
        return Ok(tra_load_limit(metric, load, tire, group));
    }
    let allowance = found.allowance;
    Ok(LoadLimit {
        limit: Limit {
            kind: MinimumKind::RestrictedSpeed,
            pressure: found.pressure,
            group,
            tire: 0,
            basis: load_basis(
                load,
                allowance.row_speed,
                allowance.load_pct,
                PressureDifference::ZERO,
            ),
            citation: allowance.citation,
        },
        hold: None,
    })
}

fn load_basis(load: Mass, speed: Speed, allowance_pct: f64, addition: PressureDifference) -> Basis {
    Basis::Load { load, speed, allowance_pct, addition }
}
