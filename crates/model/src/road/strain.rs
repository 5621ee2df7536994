//! Strain.

/// Change of length per length; tension positive unless a name says otherwise.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Strain(f64);

impl Strain {
    /// None.
    pub const ZERO: Self = Self(0.0);

    /// Makes it from length per length.
    ///
    /// # Panics
    /// If the number is not finite.
    pub const fn from_ratio(value: f64) -> Self {
        assert!(value.is_finite(), "a strain must be finite");
        Self(value)
    }

    /// Makes it from millionths.
    ///
    /// # Panics
    /// If the number is not finite.
    pub const fn from_microstrain(value: f64) -> Self {
        Self::from_ratio(value * 1e-6)
    }

    /// Length per length.
    pub const fn as_ratio(self) -> f64 {
        self.0
    }

    /// Millionths.
    pub const fn as_microstrain(self) -> f64 {
        self.0 * 1e6
    }

    /// The larger of two.
    #[must_use]
    pub const fn max(self, other: Self) -> Self {
        Self(self.0.max(other.0))
    }
}

impl std::ops::Neg for Strain {
    type Output = Self;
    fn neg(self) -> Self {
        Self(-self.0)
    }
}

impl std::fmt::Display for Strain {
    /// Millionths to a tenth: for errors and logs, not for paper.
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{:.1} microstrain", self.as_microstrain())
    }
}
