//! What a US roadside check or shop rule makes of a pressure.

use quantity::{ColdPressure, GaugePressure, Mass, PressureDifference, Speed};

use crate::source::Key;

/// Out-of-service criteria of the North American inspectors' alliance.
pub const CVSA: Key = Key("cvsa-out-of-service");
/// US operating rule for tires, with the allowance for a hot tire.
pub const CFR_393_75: Key = Key("cfr-49-393-75");
/// US workplace rule for servicing rim wheels.
pub const CFR_1910_177: Key = Key("cfr-29-1910-177");

/// Share of the molded maximum under which a tire counts as flat.
pub const FLAT_SHARE: f64 = 0.5;
/// Share of the recommended pressure at which a tire must be deflated before service.
pub const SERVICE_SHARE: f64 = 0.8;

/// Why a rule cannot be applied.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum RoadsideError {
    /// A reference pressure that is not above zero.
    #[error("a {what} of {pressure} is no pressure to compare with; it must be above zero")]
    Reference {
        /// What the pressure is, such as molded maximum.
        what: &'static str,
        /// The pressure.
        pressure: ColdPressure,
    },
}

/// The reading at or under which a tire counts as flat: half the molded maximum.
///
/// # Errors
/// [`RoadsideError`] for a molded maximum that is not above zero.
///
/// # Source
/// [`CVSA`], read in a trade article ("under 50 %", example 60 psi against 120); half itself is
/// counted as flat, which is the safe side.
pub fn flat_reading(molded_maximum: ColdPressure) -> Result<GaugePressure, RoadsideError> {
    above_zero("molded maximum", molded_maximum)?;
    Ok(molded_maximum.at_reference().scaled(FLAT_SHARE))
}

/// Whether a reading counts as flat at the roadside.
///
/// # Errors
/// As [`flat_reading`].
///
/// # Source
/// [`CVSA`].
///
/// ```
/// use model::tire::roadside::is_flat;
/// use quantity::{ColdPressure, GaugePressure};
/// assert!(is_flat(GaugePressure::from_psi(45.0), ColdPressure::from_psi(105.0))?);
/// # Ok::<(), model::tire::roadside::RoadsideError>(())
/// ```
pub fn is_flat(
    reading: GaugePressure,
    molded_maximum: ColdPressure,
) -> Result<bool, RoadsideError> {
    Ok(reading <= flat_reading(molded_maximum)?)
}

/// What the rule takes off a hot reading before it compares with the cold requirement;
/// `None` at average speeds of the last hour for which the rule has no row.
///
/// # Validity
/// The rule has one row, 41 to 55 mph: 5 psi up to a rated load of 4000 lb, 15 psi above. On a
/// tire run well under highway pressure 15 psi is more than it gains: judge that one by temperature.
///
/// # Source
/// [`CFR_393_75`], table read.
pub fn hot_allowance(rated_load: Mass, average_speed: Speed) -> Option<PressureDifference> {
    let mph = average_speed.as_mph();
    // A conversion there and back may leave the row's own ends by rounding.
    if !(41.0 - 1e-9..=55.0 + 1e-9).contains(&mph) {
        return None;
    }
    let psi = if rated_load <= Mass::from_lb(4000.0) { 5.0 } else { 15.0 };
    Some(PressureDifference::from_psi(psi))
}

/// The cold pressure an inspector takes a hot reading for; the reading itself where the rule
/// has no row.
///
/// # Source
/// [`CFR_393_75`].
pub fn inspected_cold(
    reading: GaugePressure,
    rated_load: Mass,
    average_speed: Speed,
) -> ColdPressure {
    let allowance = hot_allowance(rated_load, average_speed).unwrap_or(PressureDifference::ZERO);
    ColdPressure::read_at_reference(reading - allowance)
}

/// What the service rule asks for before a wheel is touched.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Service {
    /// Over 80 % of the recommended pressure: may be inflated on the vehicle with remote
    /// equipment and nobody in the trajectory.
    MayInflate,
    /// At 80 % or less, having been run so: deflate completely by removing the core before
    /// the wheel leaves the axle, then inspect.
    DeflateAndInspect,
}

/// Judges a cold pressure against the pressure recommended for the load and speed run.
///
/// # Validity
/// Truck, trailer and off-road rim wheels. That "recommended" means for the load and speed
/// actually run, and "pressure" the cold equivalent, is our reading of the rule.
///
/// # Errors
/// [`RoadsideError`] for a recommended pressure that is not above zero.
///
/// # Source
/// [`CFR_1910_177`], read in reprints.
pub fn service(cold: ColdPressure, recommended: ColdPressure) -> Result<Service, RoadsideError> {
    above_zero("recommended pressure", recommended)?;
    Ok(if cold <= recommended.scaled(SERVICE_SHARE) {
        Service::DeflateAndInspect
    } else {
        Service::MayInflate
    })
}

fn above_zero(what: &'static str, pressure: ColdPressure) -> Result<(), RoadsideError> {
    if pressure > ColdPressure::ZERO {
        Ok(())
    } else {
        Err(RoadsideError::Reference { what, pressure })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn cold(psi: f64) -> ColdPressure {
        ColdPressure::from_psi(psi)
    }

    fn gauge(psi: f64) -> GaugePressure {
        GaugePressure::from_psi(psi)
    }

    // Trade article on out-of-service criteria: 295/75R22.5, 60 psi against 120 molded.
    #[test]
    fn table_flat_at_half_the_molded_maximum() {
        assert!(is_flat(gauge(60.0), cold(120.0)).unwrap());
        assert!(is_flat(gauge(45.0), cold(105.0)).unwrap());
        assert!(!is_flat(gauge(61.0), cold(120.0)).unwrap());
        assert!(is_flat(gauge(61.0), cold(0.0)).is_err());
    }

    // 49 CFR 393.75, table 1: its one row.
    #[test]
    fn table_hot_allowance_has_one_row() {
        let heavy = Mass::from_lb(6175.0);
        let at = |load, mph| hot_allowance(load, Speed::from_mph(mph)).map(|d| d.as_psi().round());
        assert_eq!(at(heavy, 41.0), Some(15.0));
        assert_eq!(at(heavy, 55.0), Some(15.0));
        assert_eq!(at(Mass::from_lb(4000.0), 50.0), Some(5.0));
        assert_eq!(at(heavy, 40.0), None);
        assert_eq!(at(heavy, 60.0), None);
        let ours = inspected_cold(gauge(110.0), heavy, Speed::from_mph(50.0));
        assert!((ours.as_psi() - 95.0).abs() < 1e-9);
        let none = inspected_cold(gauge(110.0), heavy, Speed::from_mph(30.0));
        assert!((none.as_psi() - 110.0).abs() < 1e-9);
    }

    // 29 CFR 1910.177: 80 % or less.
    #[test]
    fn table_service_at_eighty_percent() {
        assert_eq!(service(cold(81.0), cold(100.0)), Ok(Service::MayInflate));
        assert_eq!(service(cold(80.0), cold(100.0)), Ok(Service::DeflateAndInspect));
        assert!(service(cold(80.0), cold(0.0)).is_err());
    }
}
