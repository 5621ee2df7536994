//! Which air supply would make a change fit.

use model::haul_cycle::HaulCycle;
use quantity::Volume;

use super::{InverseError, change_point, same_change};
use crate::change::{Action, ChangePoint};
use crate::{Detail, Plan, Workers};

/// Largest compressor a fleet would consider, as a multiple of today's.
pub const MOST_AIR: f64 = 8.0;
/// Largest reserve tank a fleet would add.
pub const MOST_RESERVE: Volume = Volume::from_l(1000.0);

/// How close a compressor multiple and a tank are found.
const CLOSE_AIR: f64 = 0.05;
const CLOSE_RESERVE: f64 = 5.0; // l

/// What "fits" was judged by.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Judged {
    /// Nine of ten changes are complete where they must be.
    NineOfTen,
    /// The nominal change is.
    Nominal,
}

/// Which supply is enough, each means alone.
#[derive(Debug, Clone, PartialEq)]
pub struct SupplyAnswer {
    /// The change as planned today.
    pub change: ChangePoint,
    /// What was asked of it.
    pub judged: Judged,
    /// Whether it fits as it is.
    pub fits_today: bool,
    /// Compressor delivery as a multiple of today's; `None` if [`MOST_AIR`] is not enough.
    pub compressor: Option<f64>,
    /// Volume to add to the reserve; `None` if [`MOST_RESERVE`] is not enough.
    pub reserve: Option<Volume>,
}

/// Whether a change of a plan fits, and by which measure.
fn fits(point: &ChangePoint) -> (bool, Judged) {
    match point.fits_p90 {
        Some(sure) => (point.fits && sure, Judged::NineOfTen),
        None => (point.fits, Judged::Nominal),
    }
}

/// The haul with a compressor that delivers a multiple of today's.
#[must_use]
pub(super) fn with_compressor(haul: &HaulCycle, times: f64) -> HaulCycle {
    let mut haul = haul.clone();
    let compressor = &mut haul.combination.supply.compressor;
    compressor.displacement = compressor.displacement * times;
    haul
}

/// The haul with a larger reserve, or with one where there was none.
#[must_use]
pub(super) fn with_reserve(haul: &HaulCycle, more: Volume) -> HaulCycle {
    let mut haul = haul.clone();
    let reserve = &mut haul.combination.supply.reserve_volume;
    *reserve = Some(reserve.unwrap_or(Volume::ZERO) + more);
    haul
}

/// Finds the least compressor, and the least reserve, with which a raise fits; everything else
/// as it is. The whole plan is worked out anew for each supply tried.
///
/// # Validity
/// More air never makes a change slower, which bisection rests on; what is given was planned
/// and found to fit, to within 0.05 of the compressor and 5 l of the reserve.
///
/// # Errors
/// [`InverseError`] for a haul that cannot be driven, and for a change that is not there or lowers.
pub fn enough_supply(
    haul: &HaulCycle,
    plan: &Plan,
    number: usize,
    detail: &Detail,
    workers: &dyn Workers,
) -> Result<SupplyAnswer, InverseError> {
    let change = change_point(plan, number)?;
    if change.action == Action::Lower {
        return Err(InverseError::Lowers { number });
    }
    let (mut fits_today, mut judged) = fits(change);
    if change.chosen.way != crate::Way::Rolling {
        fits_today = false;
        judged = if detail.samples > 0 { Judged::NineOfTen } else { Judged::Nominal };
    }
    let mut answer = SupplyAnswer {
        change: change.clone(),
        judged,
        fits_today,
        compressor: fits_today.then_some(1.0),
        reserve: fits_today.then_some(Volume::ZERO),
    };
    if fits_today {
        return Ok(answer);
    }
    let enough = |haul: &HaulCycle| -> Result<bool, InverseError> {
        let plan = Plan::with_workers(haul, detail, workers)?;
        Ok(same_change(&plan, change)
            .is_some_and(|point| point.chosen.way == crate::Way::Rolling && fits(point).0))
    };
    answer.compressor =
        least(1.0, MOST_AIR, CLOSE_AIR, &|times| enough(&with_compressor(haul, times)))?;
    let reserve = least(0.0, MOST_RESERVE.as_l(), CLOSE_RESERVE, &|liters| {
        enough(&with_reserve(haul, Volume::from_l(liters)))
    })?;
    answer.reserve = reserve.map(Volume::from_l);
    Ok(answer)
}

/// The least value that is enough, between one that is not and the most.
fn least(
    low: f64,
    most: f64,
    close: f64,
    enough: &dyn Fn(f64) -> Result<bool, InverseError>,
) -> Result<Option<f64>, InverseError> {
    if !enough(most)? {
        return Ok(None);
    }
    let (mut fails, mut holds) = (low, most);
    while holds - fails > close {
        let middle = f64::midpoint(fails, holds);
        if enough(middle)? {
            holds = middle;
        } else {
            fails = middle;
        }
    }
    Ok(Some(holds))
}
