//! Net pull and motion resistance of one tire on soft soil, by three models that agree on direction and
//! not on level.

use quantity::{Length, Mass, Stress};

use crate::source::Key;
use crate::tire::Construction;

/// Field tests of tractor tires.
pub const GEE_CLOUGH: Key = Key("gee-clough-1978");
/// Traction of bias tires, with deflection.
pub const BRIXIUS: Key = Key("brixius-1987");
/// Wheels on soft soil, with deflection.
pub const MACLAURIN: Key = Key("maclaurin-1990");
/// Clay numeric of wheels.
pub const CLAY_NUMERIC: Key = Key("turnage-clay-numeric");
/// Section height of inch sizes where it is not given.
pub const SECTION_HEIGHT: Key = Key("inch-size-aspect");

/// Slip at which one of the models gives its pull.
pub const MACLAURIN_SLIP: f64 = 0.2;
/// Below this numeric that model's pull would rise as soil softens.
const MACLAURIN_LEAST: f64 = 1.152;
/// Section height over width where it is not given.
const ASPECT: f64 = 0.86;

/// Why there is no pull.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum WheelPullError {
    /// The wheel or the soil is none.
    #[error(
        "a wheel {width} wide and {diameter} high under {load} on a cone index of {cone_index} is none; \
         all must be above zero"
    )]
    Wheel {
        /// Load.
        load: Mass,
        /// Cone index.
        cone_index: Stress,
        /// Width.
        width: Length,
        /// Diameter.
        diameter: Length,
    },
    /// Deflection outside what any tire runs at.
    #[error("a deflection of {ratio:.3} of the section height is outside 0.03 to 0.45")]
    Deflection {
        /// Ratio offered.
        ratio: f64,
    },
    /// Slip outside what is answered for.
    #[error("a slip of {slip} is outside 0.01 to 0.6; give it as a ratio, such as 0.2")]
    Slip {
        /// Slip offered.
        slip: f64,
    },
    /// The soil is so soft that the model has no pull.
    #[error(
        "the soil is too soft for this model: its wheel numeric is {numeric:.2}, and it gives a pull \
         from {least} only; the wheel sinks in"
    )]
    TooSoft {
        /// Numeric found.
        numeric: f64,
        /// Least that is answered for.
        least: f64,
    },
}

/// One tire on soft soil.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SoilWheel {
    load: Mass,
    cone_index: Stress,
    width: Length,
    diameter: Length,
    deflection_ratio: f64,
    section_height: Length,
}

impl SoilWheel {
    /// A tire under a load on soil of a cone index (rating cone index where soil remolds),
    /// pressed in on hard ground by a share of its section height, which is taken as 0.86 of the width.
    ///
    /// # Errors
    /// [`WheelPullError`]: something not above zero, a deflection outside 0.03 to 0.45.
    ///
    /// # Source
    /// [`SECTION_HEIGHT`] for the section height.
    pub fn new(
        load: Mass,
        cone_index: Stress,
        width: Length,
        diameter: Length,
        deflection_ratio: f64,
    ) -> Result<Self, WheelPullError> {
        let sizes = width > Length::ZERO && diameter > Length::ZERO;
        if load <= Mass::ZERO || cone_index <= Stress::ZERO || !sizes {
            return Err(WheelPullError::Wheel { load, cone_index, width, diameter });
        }
        if !(0.03..=0.45).contains(&deflection_ratio) {
            return Err(WheelPullError::Deflection { ratio: deflection_ratio });
        }
        let section_height = width * ASPECT;
        Ok(Self { load, cone_index, width, diameter, deflection_ratio, section_height })
    }

    /// The same with its own section height.
    ///
    /// # Errors
    /// [`WheelPullError::Wheel`] unless it is above zero and under half the diameter.
    pub fn with_section_height(self, height: Length) -> Result<Self, WheelPullError> {
        if height > Length::ZERO && height < self.diameter / 2.0 {
            Ok(Self { section_height: height, ..self })
        } else {
            let Self { load, cone_index, width, diameter, .. } = self;
            Err(WheelPullError::Wheel { load, cone_index, width, diameter })
        }
    }

    /// Load on the tire.
    pub fn load(&self) -> Mass {
        self.load
    }

    /// Outside diameter.
    pub fn diameter(&self) -> Length {
        self.diameter
    }

    /// Section height, as given or from the width.
    pub fn section_height(&self) -> Length {
        self.section_height
    }

    /// Clay numeric `N = (CI b d/W) √(δ/h) / (1 + b/(2d))`.
    ///
    /// # Source
    /// [`CLAY_NUMERIC`], from memory; it reproduces a published row.
    pub fn clay_numeric(&self) -> f64 {
        let (b, d) = (self.width.as_m(), self.diameter.as_m());
        self.cone_number() * self.deflection_ratio.sqrt() / (1.0 + b / (2.0 * d))
    }

    /// Mobility number `B_n = (CI b d/W) (1 + 5 δ/h)/(1 + 3 b/d)`.
    ///
    /// # Source
    /// [`BRIXIUS`], read second-hand.
    pub fn mobility_number(&self) -> f64 {
        let (b, d) = (self.width.as_m(), self.diameter.as_m());
        self.cone_number() * (1.0 + 5.0 * self.deflection_ratio) / (1.0 + 3.0 * b / d)
    }

    /// Wheel numeric `N_M = CI b^0.8 d^0.8 δ^0.4 / W`.
    ///
    /// # Source
    /// [`MACLAURIN`], from memory.
    pub fn maclaurin_numeric(&self) -> f64 {
        let (b, d) = (self.width.as_m(), self.diameter.as_m());
        let delta = self.deflection_ratio * self.section_height.as_m();
        let w = self.load.weight().as_kn();
        self.cone_index.as_kpa() * b.powf(0.8) * d.powf(0.8) * delta.powf(0.4) / w
    }

    /// `CI b d / W`.
    fn cone_number(&self) -> f64 {
        let (b, d) = (self.width.as_m(), self.diameter.as_m());
        self.cone_index.as_kpa() * b * d / self.load.weight().as_kn()
    }

    /// Load over width times diameter, kPa.
    fn area_load(&self) -> f64 {
        self.load.weight().as_kn() / (self.width.as_m() * self.diameter.as_m())
    }
}

/// What a tire pulls, as ratios of its load.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pull {
    /// Net pull of a driven tire; below zero it cannot move itself.
    pub net: f64,
    /// Motion resistance of a driven tire at this slip.
    pub resistance: f64,
    /// Motion resistance of a tire that rolls freely.
    pub towed_resistance: f64,
    /// Whether the wheel lies outside what the model was made from.
    pub extrapolated: bool,
}

/// Brixius 1987: `μ_g = 0.88 (1 - e^(-0.1 B_n)) (1 - e^(-7.5 s)) + 0.04`,
/// `ρ = 1/B_n + 0.04 + 0.5 s/√B_n`, net `μ_g - ρ`.
///
/// # Validity
/// Agricultural tires with b/d 0.1 to 0.7, deflection 0.10 to 0.40, load over width times diameter 15 to
/// 55 kPa, `B_n` 5 to 80. A laden truck tire lies over 55 kPa, so its answer is marked.
/// Radial constants are from memory only.
///
/// # Errors
/// [`WheelPullError::Slip`] outside 0.01 to 0.6.
///
/// # Source
/// [`BRIXIUS`], read second-hand in a script and two programs; its range and radial constants from memory.
///
/// ```
/// use model::ground::wheel_pull::{SoilWheel, brixius};
/// use model::tire::Construction;
/// use quantity::{Force, Length, Stress};
/// let m = Length::from_m;
/// let load = Force::from_kn(20.0).as_mass();
/// let wheel = SoilWheel::new(load, Stress::from_kpa(600.0), m(0.279), m(1.05), 0.2)?;
/// let pull = brixius(&wheel, 0.2, Construction::Bias)?;
/// assert!((pull.net - 0.2923).abs() < 1e-4);
/// # Ok::<(), model::ground::wheel_pull::WheelPullError>(())
/// ```
pub fn brixius(
    wheel: &SoilWheel,
    slip: f64,
    construction: Construction,
) -> Result<Pull, WheelPullError> {
    check_slip(slip)?;
    let b_n = wheel.mobility_number();
    let (rate, by_number, base) = match construction {
        Construction::Bias => (7.5, 1.0, 0.04),
        Construction::Radial => (9.5, 0.9, 0.0325),
    };
    let gross = 0.88 * (1.0 - (-0.1 * b_n).exp()) * (1.0 - (-rate * slip).exp()) + 0.04;
    let towed = by_number / b_n + base;
    let rho = towed + 0.5 * slip / b_n.sqrt();
    let shape = wheel.width / wheel.diameter;
    Ok(Pull {
        net: gross - rho,
        resistance: rho,
        towed_resistance: towed,
        extrapolated: !(0.1..=0.7).contains(&shape)
            || !(0.10..=0.40).contains(&wheel.deflection_ratio)
            || !(15.0..=55.0).contains(&wheel.area_load())
            || !(5.0..=80.0).contains(&b_n),
    })
}

/// Maclaurin 1990, at 20 % slip: net `0.817 - 3.2/(N_M + 1.91) + 0.453/N_M`, resistance `0.017 + 0.453/N_M`.
///
/// # Validity
/// Cross-country wheels on clay. Its range is not known to us, so every answer is marked.
///
/// # Errors
/// [`WheelPullError::TooSoft`] for `N_M` under 1.152, where the curve turns.
///
/// # Source
/// [`MACLAURIN`], from memory.
pub fn maclaurin(wheel: &SoilWheel) -> Result<Pull, WheelPullError> {
    let n_m = wheel.maclaurin_numeric();
    if n_m < MACLAURIN_LEAST {
        return Err(WheelPullError::TooSoft { numeric: n_m, least: MACLAURIN_LEAST });
    }
    let resistance = 0.017 + 0.453 / n_m;
    Ok(Pull {
        net: 0.817 - 3.2 / (n_m + 1.91) + 0.453 / n_m,
        resistance,
        towed_resistance: resistance,
        extrapolated: true,
    })
}

/// Gee-Clough and others 1978: `CT = CT_max (1 - e^(-k s))`, `CT_max = 0.796 - 0.92/N`,
/// `k CT_max = 4.838 + 0.061 N`, resistance `0.049 + 0.287/N`.
///
/// # Validity
/// Tractor tires on stubble, plowed and cultivated ground; not hard dry nor very slippery ground.
/// Marked for loads over width times diameter beyond a tractor's 55 kPa.
///
/// # Errors
/// [`WheelPullError::TooSoft`] for N under 1.156, where it has no pull; a slip outside 0.01 to 0.6.
///
/// # Source
/// [`GEE_CLOUGH`], read; two lines from memory that a published row confirms.
pub fn gee_clough(wheel: &SoilWheel, slip: f64) -> Result<Pull, WheelPullError> {
    const LEAST: f64 = 0.92 / 0.796;
    check_slip(slip)?;
    let n = wheel.clay_numeric();
    if n <= LEAST {
        return Err(WheelPullError::TooSoft { numeric: n, least: 1.156 });
    }
    let ct_max = 0.796 - 0.92 / n;
    let k = (4.838 + 0.061 * n) / ct_max;
    let resistance = 0.049 + 0.287 / n;
    Ok(Pull {
        net: ct_max * (1.0 - (-k * slip).exp()),
        resistance,
        towed_resistance: resistance,
        extrapolated: wheel.area_load() > 55.0,
    })
}

/// The three models side by side; where one has no answer it says why.
#[derive(Debug, Clone, PartialEq)]
pub struct Pulls {
    /// The lowest as a rule, and the one to plan by.
    pub brixius: Pull,
    /// Between the two as a rule.
    pub maclaurin: Result<Pull, WheelPullError>,
    /// The highest as a rule.
    pub gee_clough: Result<Pull, WheelPullError>,
}

impl Pulls {
    /// Least and most net pull of the models that answer.
    pub fn net_span(&self) -> (f64, f64) {
        let nets = [
            Some(self.brixius.net),
            self.maclaurin.as_ref().ok().map(|p| p.net),
            self.gee_clough.as_ref().ok().map(|p| p.net),
        ];
        nets.into_iter().flatten().fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), net| {
            (low.min(net), high.max(net))
        })
    }
}

/// Pull by all three models, with the bias constants of the first.
///
/// # Validity
/// As each; [`maclaurin`] is at 20 % slip whatever the slip asked for.
///
/// # Errors
/// [`WheelPullError::Slip`] outside 0.01 to 0.6.
///
/// # Source
/// [`BRIXIUS`], [`MACLAURIN`], [`GEE_CLOUGH`].
pub fn pulls(wheel: &SoilWheel, slip: f64) -> Result<Pulls, WheelPullError> {
    Ok(Pulls {
        brixius: brixius(wheel, slip, Construction::Bias)?,
        maclaurin: maclaurin(wheel),
        gee_clough: gee_clough(wheel, slip),
    })
}

fn check_slip(slip: f64) -> Result<(), WheelPullError> {
    if (0.01..=0.6).contains(&slip) { Ok(()) } else { Err(WheelPullError::Slip { slip }) }
}

#[cfg(test)]
mod tests;
