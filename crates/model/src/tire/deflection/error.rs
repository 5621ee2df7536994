//! Why the deflection law gives no answer.

use quantity::{ColdPressure, Length, Mass};

use crate::tire::stiffness::StiffnessError;

/// Why there is no deflection.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum DeflectionError {
    /// The loaded radius does not fit the tire.
    #[error(
        "a static loaded radius of {radius} does not fit a tire of {diameter} over a rim of {rim_diameter}: \
         it must lie under half the diameter by at most 45 % of the section height"
    )]
    LoadedRadius {
        /// Radius offered.
        radius: Length,
        /// Overall diameter.
        diameter: Length,
        /// Rim diameter.
        rim_diameter: Length,
    },
    /// The rated point rates nothing.
    #[error("a rated point of {load} at {pressure} rates nothing; both must be above zero")]
    Rating {
        /// Rated load.
        load: Mass,
        /// Rated pressure.
        pressure: ColdPressure,
    },
    /// The load is negative.
    #[error("a tire cannot carry {load}; give a load of zero or more")]
    Load {
        /// Load offered.
        load: Mass,
    },
    /// The pressure is not above zero.
    #[error("a tire at {pressure} stands on its carcass; give a pressure above zero")]
    Pressure {
        /// Pressure offered.
        pressure: ColdPressure,
    },
    /// The tire would come near its rim.
    #[error(
        "{load} at {pressure} presses the tire to {share_pct:.0} % of its section height, near the \
         rim; the law ends at 45 %: raise the pressure or take load off"
    )]
    NearRim {
        /// Load offered.
        load: Mass,
        /// Pressure offered.
        pressure: ColdPressure,
        /// Share of the section height that the law would give, percent.
        share_pct: f64,
    },
    /// A share that is no deflection.
    #[error("a deflection of {share:.3} of the section height is outside 0 to 0.45")]
    Share {
        /// Share offered.
        share: f64,
    },
    /// Constants outside what any tire showed.
    #[error("n {n} and p0 {p0} are outside 1.0 to 1.3 and 0 to 150 kPa")]
    Constants {
        /// Exponent offered.
        n: f64,
        /// Carcass term offered.
        p0: ColdPressure,
    },
    /// The stiffness formula refused.
    #[error(transparent)]
    Stiffness(#[from] StiffnessError),
}
