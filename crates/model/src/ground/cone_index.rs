//! Whether a vehicle with all axles driven gets over soft soil: its vehicle cone index against the
//! soil's rating cone index.

use quantity::{Length, Mass, SpecificPower, Stress};

use crate::source::{Citation, Key, Standing};

/// Vehicle cone index for one pass, and its correction for deflection.
pub const ONE_PASS: Key = Key("priddy-willoughby-2004");
/// Factors of the mobility index, and the vehicle cone index for 50 passes.
pub const MOBILITY_INDEX: Key = Key("mobility-index-factors");
/// Limiting cone index of wheels.
pub const LIMITING: Key = Key("maclaurin-1997");
/// Which layer of soil counts under a wheel.
pub const CRITICAL_LAYER: Key = Key("erdc-sr-13-2");

/// Less power to weight than this counts against the vehicle.
const WELL_POWERED: SpecificPower = SpecificPower::from_hp_per_short_ton(10.0);

/// Why there is no cone index.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum ConeIndexError {
    /// Something about the vehicle is not above zero, or does not fit.
    #[error(
        "a vehicle of {gross} on {axles} axles and {tires} tires {tire_width} wide and {tire_diameter} high, with \
         {clearance} of clearance, is none; all must be above zero, with two tires or more an axle"
    )]
    Vehicle {
        /// Gross mass.
        gross: Mass,
        /// Axles.
        axles: u32,
        /// Tires.
        tires: u32,
        /// Tire width.
        tire_width: Length,
        /// Tire diameter.
        tire_diameter: Length,
        /// Clearance.
        clearance: Length,
    },
    /// Deflection outside what any tire runs at.
    #[error("a deflection of {ratio:.3} of the section height is outside 0.05 to 0.45")]
    Deflection {
        /// Ratio offered.
        ratio: f64,
    },
    /// Some axles are not driven.
    #[error(
        "only {driven} of {axles} axles are driven; the vehicle cone index holds for all axles driven: \
         sum pull and resistance of the wheels instead"
    )]
    FreeRolling {
        /// Driven axles.
        driven: u32,
        /// Axles.
        axles: u32,
    },
    /// The vehicle is outside the range of the mobility index.
    #[error(
        "a mobility index of {index:.1} is outside 5 to 300, where the vehicle cone index is known"
    )]
    Index {
        /// Mobility index.
        index: f64,
    },
}

/// A self-propelled wheeled vehicle, as the mobility index sees it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SoilVehicle {
    /// Gross mass.
    pub gross: Mass,
    /// Axles.
    pub axles: u32,
    /// Of these, driven.
    pub driven_axles: u32,
    /// Tires in all.
    pub tires: u32,
    /// Nominal tire width.
    pub tire_width: Length,
    /// Outside diameter of the tires.
    pub tire_diameter: Length,
    /// Least ground clearance.
    pub clearance: Length,
    /// Engine power over gross mass.
    pub power_to_weight: SpecificPower,
    /// Automatic or hydraulic transmission, instead of manual.
    pub automatic: bool,
    /// Chains are fitted.
    pub chains: bool,
}

/// The mobility index, a number without unit:
/// `MI = (CPF WF/(TF GF) + WLF - CF) EF TrF`.
///
/// # Validity
/// Self-propelled wheeled vehicles with all axles driven; fine-grained soil.
///
/// # Errors
/// [`ConeIndexError`]: a vehicle that is none, free-rolling axles, an index outside 5 to 300.
///
/// # Source
/// [`MOBILITY_INDEX`], from memory.
pub fn mobility_index(vehicle: &SoilVehicle) -> Result<f64, ConeIndexError> {
    let &SoilVehicle { gross, axles, tires, tire_width, tire_diameter, clearance, .. } = vehicle;
    let sizes = [tire_width, tire_diameter, clearance];
    if gross <= Mass::ZERO
        || axles == 0
        || tires < 2 * axles
        || sizes.into_iter().any(|l| l <= Length::ZERO)
    {
        return Err(ConeIndexError::Vehicle {
            gross,
            axles,
            tires,
            tire_width,
            tire_diameter,
            clearance,
        });
    }
    if vehicle.driven_axles != axles {
        return Err(ConeIndexError::FreeRolling { driven: vehicle.driven_axles, axles });
    }
    let (w, b, d) = (gross.as_lb(), tire_width.as_in(), tire_diameter.as_in());
    let tires = f64::from(tires);
    let cpf = w / (b * d / 2.0 * tires);
    let x = w / 1000.0 / f64::from(axles);
    let wf = if x < 2.0 {
        0.553 * x
    } else if x < 13.5 {
        0.033 * x + 1.050
    } else if x <= 20.0 {
        0.142 * x - 0.420
    } else {
        0.278 * x - 3.115
    };
    let tf = (10.0 + b) / 100.0;
    let gf = if vehicle.chains { 1.05 } else { 1.0 };
    let wlf = w / 1000.0 / tires;
    let cf = clearance.as_in() / 10.0;
    let ef = if vehicle.power_to_weight >= WELL_POWERED { 1.0 } else { 1.05 };
    let trf = if vehicle.automatic { 1.0 } else { 1.05 };
    let index = (cpf * wf / (tf * gf) + wlf - cf) * ef * trf;
    if (5.0..=300.0).contains(&index) { Ok(index) } else { Err(ConeIndexError::Index { index }) }
}

/// What a vehicle cone index is worth at another deflection: `DCF = (0.15/(δ/h))^0.25`.
///
/// # Validity
/// Tested near 15 to 35 % deflection; at most it lowers the strength needed by a fifth.
///
/// # Errors
/// [`ConeIndexError::Deflection`] outside 0.05 to 0.45.
///
/// # Source
/// [`ONE_PASS`], read.
pub fn deflection_correction(ratio: f64) -> Result<f64, ConeIndexError> {
    if (0.05..=0.45).contains(&ratio) {
        Ok((0.15 / ratio).powf(0.25))
    } else {
        Err(ConeIndexError::Deflection { ratio })
    }
}

/// Least rating cone index that a vehicle needs.
#[derive(Debug, Clone, PartialEq)]
pub struct VehicleConeIndex {
    /// The mobility index it comes from.
    pub mobility_index: f64,
    /// For one pass.
    pub one_pass: Stress,
    /// For fifty passes in the same track.
    pub fifty_passes: Stress,
    /// Whether the deflection lies outside the 10 to 35 % that was tested.
    pub extrapolated: bool,
    /// Source of the one-pass index; its mobility index is from memory.
    pub one_pass_citation: Citation,
    /// Source of the fifty-pass index, to which the deflection correction is our extension.
    pub fifty_passes_citation: Citation,
}

/// The vehicle cone index from a mobility index and a deflection.
///
/// # Validity
/// Level, straight, fine-grained soil, all axles driven; not slippery ground. The correction was
/// published for one pass; taking it for fifty is our extension.
///
/// # Errors
/// [`ConeIndexError`]: an index outside 5 to 300, a deflection outside 0.05 to 0.45.
///
/// # Source
/// [`ONE_PASS`], read; [`MOBILITY_INDEX`] for fifty passes, from memory.
///
/// ```
/// use model::ground::cone_index::vehicle_cone_index;
/// let needed = vehicle_cone_index(100.0, 0.15)?;
/// assert!((needed.one_pass.as_psi() - 31.10).abs() < 0.01);
/// # Ok::<(), model::ground::cone_index::ConeIndexError>(())
/// ```
pub fn vehicle_cone_index(
    mobility_index: f64,
    deflection_ratio: f64,
) -> Result<VehicleConeIndex, ConeIndexError> {
    let mi = mobility_index;
    if !(5.0..=300.0).contains(&mi) {
        return Err(ConeIndexError::Index { index: mi });
    }
    let dcf = deflection_correction(deflection_ratio)?;
    let vci_1 =
        if mi <= 115.0 { 11.48 + 0.2 * mi - 39.2 / (mi + 3.74) } else { 4.1 * mi.powf(0.446) };
    let vci_50 = 28.23 + 0.43 * mi - 92.67 / (mi + 3.67);
    Ok(VehicleConeIndex {
        mobility_index: mi,
        one_pass: Stress::from_psi(vci_1 * dcf),
        fifty_passes: Stress::from_psi(vci_50 * dcf),
        extrapolated: !(0.10..=0.35).contains(&deflection_ratio),
        one_pass_citation: Citation::of(ONE_PASS, Standing::Read),
        fifty_passes_citation: Citation::of(MOBILITY_INDEX, Standing::FromMemory)
            .at("deflection correction extended"),
    })
}

/// Go or no-go for one number of passes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Passage {
    /// The soil is stronger than needed, by this much.
    Go {
        /// Rating cone index over what is needed.
        excess: Stress,
    },
    /// The soil is weaker than needed, by this much.
    NoGo {
        /// What the rating cone index lacks.
        short_by: Stress,
    },
}

impl Passage {
    fn of(rating: Stress, needed: Stress) -> Self {
        if rating >= needed {
            Self::Go { excess: rating - needed }
        } else {
            Self::NoGo { short_by: needed - rating }
        }
    }
}

/// Go or no-go of one vehicle on one soil.
#[derive(Debug, Clone, PartialEq)]
pub struct Trafficability {
    /// What it needs.
    pub needed: VehicleConeIndex,
    /// One pass.
    pub one_pass: Passage,
    /// Fifty passes in the same track.
    pub fifty_passes: Passage,
}

/// Whether a vehicle gets over a soil, once and fifty times.
///
/// Give the rating cone index of the weaker of the [`critical_layers`], rounded down.
///
/// # Validity
/// As [`mobility_index`] and [`vehicle_cone_index`].
///
/// # Errors
/// As those two.
///
/// # Source
/// [`ONE_PASS`], [`MOBILITY_INDEX`].
pub fn trafficability(
    vehicle: &SoilVehicle,
    deflection_ratio: f64,
    rating: Stress,
) -> Result<Trafficability, ConeIndexError> {
    let needed = vehicle_cone_index(mobility_index(vehicle)?, deflection_ratio)?;
    Ok(Trafficability {
        one_pass: Passage::of(rating, needed.one_pass),
        fifty_passes: Passage::of(rating, needed.fifty_passes),
        needed,
    })
}

/// A layer of soil, from the surface down.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Layer {
    /// Upper end.
    pub from: Length,
    /// Lower end.
    pub to: Length,
}

/// The layers whose weaker rating cone index counts under a wheel, with the one below it if that is weaker.
///
/// # Validity
/// For more than 15 000 lb on a wheel two published layers differ, and both are given.
///
/// # Source
/// [`CRITICAL_LAYER`], read in a summary; 9 to 15 in from memory.
pub fn critical_layers(wheel_load: Mass) -> Vec<Layer> {
    let layer = |from, to| Layer { from: Length::from_in(from), to: Length::from_in(to) };
    let lb = wheel_load.as_lb();
    if lb < 2000.0 {
        vec![layer(3.0, 9.0)]
    } else if lb <= 15_000.0 {
        vec![layer(6.0, 12.0)]
    } else {
        vec![layer(0.0, 12.0), layer(9.0, 15.0)]
    }
}

/// A limiting cone index by another author, to hold beside the one-pass index:
/// `VLCI = 1.85 W / (2 m b^0.8 d^0.8 δ^0.4)`.
///
/// # Validity
/// As the vehicle cone index; it falls faster with deflection, so show the two as a band.
///
/// # Errors
/// [`ConeIndexError::Vehicle`] or [`ConeIndexError::FreeRolling`]; a deflection not above zero.
///
/// # Source
/// [`LIMITING`], from memory.
pub fn limiting_cone_index(
    vehicle: &SoilVehicle,
    deflection: Length,
) -> Result<Stress, ConeIndexError> {
    mobility_index(vehicle)?;
    if deflection <= Length::ZERO {
        return Err(ConeIndexError::Deflection { ratio: 0.0 });
    }
    let (w, m) = (vehicle.gross.weight().as_kn(), f64::from(vehicle.axles));
    let (b, d) = (vehicle.tire_width.as_m(), vehicle.tire_diameter.as_m());
    let delta = deflection.as_m();
    let vlci = 1.85 * w / (2.0 * m * b.powf(0.8) * d.powf(0.8) * delta.powf(0.4));
    Ok(Stress::from_kpa(vlci))
}

#[cfg(test)]
mod tests;
