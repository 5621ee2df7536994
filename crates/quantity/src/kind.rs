//! The macro that makes one kind of quantity: a private finite number with named units.

/// A number that is not finite was offered as a quantity.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[error("{value} is not a finite number, so it cannot be a {kind}")]
pub struct NotFinite {
    /// The number offered.
    pub value: f64,
    /// The kind of quantity wanted.
    pub kind: &'static str,
}

/// Defines a quantity held in its base unit (the first, with factor 1).
macro_rules! kind {
    (
        $(#[$doc:meta])*
        $name:ident ($word:literal) {
            $( $symbol:literal = $from:ident, $try_from:ident, $as:ident, $factor:expr; )+
        }
    ) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
        pub struct $name(f64);

        impl $name {
            /// Nothing of it.
            pub const ZERO: Self = Self(0.0);

            $(
                #[doc = concat!("Makes it from a number of ", $symbol, ".")]
                ///
                /// # Panics
                /// If the number is not finite; use the `try_` form for foreign numbers.
                #[inline]
                pub const fn $from(value: f64) -> Self {
                    assert!(value.is_finite(), concat!("a ", $word, " must be finite"));
                    Self(value * $factor)
                }

                #[doc = concat!("Makes it from a number of ", $symbol, " that may be anything.")]
                ///
                /// # Errors
                /// [`NotFinite`](crate::NotFinite) for NaN, infinities and overflow.
                pub fn $try_from(value: f64) -> Result<Self, $crate::NotFinite> {
                    let base = value * $factor;
                    if base.is_finite() {
                        Ok(Self(base))
                    } else {
                        Err($crate::NotFinite { value, kind: $word })
                    }
                }

                #[doc = concat!("The number of ", $symbol, ".")]
                #[inline]
                pub const fn $as(self) -> f64 {
                    self.0 / $factor
                }
            )+

            /// The smaller of two.
            #[must_use]
            pub const fn min(self, other: Self) -> Self {
                Self(self.0.min(other.0))
            }

            /// The larger of two.
            #[must_use]
            pub const fn max(self, other: Self) -> Self {
                Self(self.0.max(other.0))
            }

            /// Its size without sign.
            #[must_use]
            pub const fn abs(self) -> Self {
                Self(self.0.abs())
            }

            /// Total order, for sorting and `max_by`.
            pub fn total_cmp(&self, other: &Self) -> std::cmp::Ordering {
                self.0.total_cmp(&other.0)
            }
        }

        impl $crate::parse::Unit for $name {
            const KIND: &'static str = $word;
            const SYMBOLS: &'static [&'static str] = &[$($symbol),+];

            fn from_unit(value: f64, symbol: &str) -> Option<Result<Self, $crate::NotFinite>> {
                match symbol {
                    $( $symbol => Some(Self::$try_from(value)), )+
                    _ => None,
                }
            }

            fn in_unit(self, symbol: &str) -> Option<f64> {
                match symbol {
                    $( $symbol => Some(self.$as()), )+
                    _ => None,
                }
            }
        }

        impl std::str::FromStr for $name {
            type Err = $crate::ParseError;
            fn from_str(text: &str) -> Result<Self, Self::Err> {
                $crate::parse::parse(text)
            }
        }

        impl std::fmt::Display for $name {
            /// Base unit, five digits or four decimals: for errors and logs, not for paper.
            fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                let symbol = <Self as $crate::parse::Unit>::SYMBOLS[0];
                let rounded = $crate::kind::rounded(self.0);
                write!(f, "{rounded} {symbol}")
            }
        }
    };
}

/// Five digits, but whole numbers stay whole and no more than four decimals are kept.
pub(crate) fn rounded(value: f64) -> f64 {
    let before = value.abs().max(1.0).log10().floor();
    let scale = 10_f64.powf((4.0 - before).clamp(0.0, 4.0));
    (value * scale).round() / scale
}

/// Adds the arithmetic of a quantity that can be added to itself and scaled.
macro_rules! linear {
    ($($name:ident),+) => { $(
        impl std::ops::Add for $name {
            type Output = Self;
            #[inline]
            fn add(self, other: Self) -> Self { Self(self.0 + other.0) }
        }
        impl std::ops::AddAssign for $name {
            #[inline]
            fn add_assign(&mut self, other: Self) { self.0 += other.0; }
        }
        impl std::ops::Sub for $name {
            type Output = Self;
            #[inline]
            fn sub(self, other: Self) -> Self { Self(self.0 - other.0) }
        }
        impl std::ops::Neg for $name {
            type Output = Self;
            fn neg(self) -> Self { Self(-self.0) }
        }
        impl std::ops::Mul<f64> for $name {
            type Output = Self;
            #[inline]
            fn mul(self, factor: f64) -> Self { Self(self.0 * factor) }
        }
        impl std::ops::Div<f64> for $name {
            type Output = Self;
            #[inline]
            fn div(self, divisor: f64) -> Self { Self(self.0 / divisor) }
        }
        impl std::ops::Div for $name {
            type Output = f64;
            #[inline]
            fn div(self, other: Self) -> f64 { self.0 / other.0 }
        }
        impl std::iter::Sum for $name {
            fn sum<I: Iterator<Item = Self>>(iter: I) -> Self {
                iter.fold(Self::ZERO, |total, value| total + value)
            }
        }
    )+ };
}

pub(crate) use {kind, linear};
