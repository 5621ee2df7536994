//! Time to vent a volume to the ambient air, in closed form.

use quantity::{AbsolutePressure, Temperature, Time, Volume};

use super::Restriction;
use super::reference_air::{P0, T0};

/// Ratio of specific heats of air.
const KAPPA: f64 = 1.4;

/// Why there is no vent time.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum VentTimeError {
    /// No volume to vent.
    #[error("volume {0} must be above zero")]
    Volume(Volume),
    /// The ambient pressure is not above vacuum.
    #[error("ambient pressure {0} must be above zero")]
    Ambient(AbsolutePressure),
    /// The target lies above the start.
    #[error("venting goes down: from {from} to {to} does not")]
    NotDownward {
        /// Start.
        from: AbsolutePressure,
        /// Target.
        to: AbsolutePressure,
    },
    /// The ambient pressure stands above the target.
    #[error("target {to} lies under the ambient {ambient} and is never reached")]
    NeverReached {
        /// Target.
        to: AbsolutePressure,
        /// Ambient.
        ambient: AbsolutePressure,
    },
    /// The adiabatic form holds only while the flow is choked.
    #[error(
        "target {to} lies under {limit}, where the flow stops being choked and the adiabatic form ends"
    )]
    NotChoked {
        /// Target.
        to: AbsolutePressure,
        /// Ambient pressure over b.
        limit: AbsolutePressure,
    },
}

/// Time to vent `volume` through `restriction` into `ambient`.
///
/// # Validity
/// Air at 20 °C throughout (isothermal): exact for slow changes. A fast one cools the air,
/// and [`adiabatic_vent`] bounds it.
///
/// # Errors
/// [`VentTimeError`] for a target under ambient or above the start.
///
/// # Source
/// `closed-form-fill-vent`
///
/// ```
/// use model::air::{Restriction, vent_time};
/// use quantity::{AbsolutePressure, SonicConductance, Volume};
/// let line = Restriction::new(SonicConductance::from_dm3_per_s_bar(1.5), 0.25)?;
/// let bar = AbsolutePressure::from_bar;
/// let time = vent_time(Volume::from_l(110.0), line, bar(1.013), bar(8.2), bar(3.1))?;
/// assert!((time.as_s() - 71.3659).abs() < 1e-4);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn vent_time(
    volume: Volume,
    restriction: Restriction,
    ambient: AbsolutePressure,
    from: AbsolutePressure,
    to: AbsolutePressure,
) -> Result<Time, VentTimeError> {
    check(volume, ambient, from, to)?;
    let (v, c, b) = (volume.as_m3(), restriction.c().as_m3_per_s_pa(), restriction.b());
    let (p_a, p_i, p_f) = (ambient.as_pa(), from.as_pa(), to.as_pa());
    let choked_end = p_f.max(p_a / b).min(p_i);
    let choked = (p_i / choked_end).ln();
    let theta = |p: f64| ((p_a / p - b) / (1.0 - b)).clamp(0.0, 1.0).asin();
    let subsonic = (1.0 - b) * (integral(b, theta(p_f)) - integral(b, theta(choked_end)));
    Ok(Time::from_s(v / (c * P0) * (choked + subsonic)))
}

/// Antiderivative of 1/(b + (1 − b)·sin θ).
fn integral(b: f64, theta: f64) -> f64 {
    /// Nearer to b = 0.5 the two general forms lose their digits.
    const NEAR_HALF: f64 = 1e-9;
    let tan = (0.5 * theta).tan();
    let square = 1.0 - 2.0 * b;
    let u = b * tan + 1.0 - b;
    if square.abs() < NEAR_HALF {
        -2.0 / u
    } else if square > 0.0 {
        let s = square.sqrt();
        ((tan + b / (1.0 - b + s)) / (u + s)).ln() / s
    } else {
        let s = (-square).sqrt();
        2.0 / s * (u / s).atan()
    }
}

/// A vent without any heat from the walls.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AdiabaticVent {
    /// Time it takes.
    pub time: Time,
    /// Temperature of the air left, started at 20 °C.
    pub end: Temperature,
}

/// The vent without any heat from the walls: the shortest it can take, choked part.
///
/// # Validity
/// κ = 1.4, air at 20 °C at the start, target at or above the ambient pressure over b.
///
/// # Errors
/// [`VentTimeError`] outside that.
///
/// # Source
/// `closed-form-fill-vent`
pub fn adiabatic_vent(
    volume: Volume,
    restriction: Restriction,
    ambient: AbsolutePressure,
    from: AbsolutePressure,
    to: AbsolutePressure,
) -> Result<AdiabaticVent, VentTimeError> {
    check(volume, ambient, from, to)?;
    let (v, c, b) = (volume.as_m3(), restriction.c().as_m3_per_s_pa(), restriction.b());
    if to.as_pa() * b < ambient.as_pa() {
        // With b = 0 no pressure chokes the flow; the start is as good a limit as any.
        let limit = if b > 0.0 { ambient.scaled(1.0 / b) } else { from };
        return Err(VentTimeError::NotChoked { to, limit });
    }
    let ratio = to.ratio_to(from);
    let grown = ratio.powf(-(KAPPA - 1.0) / (2.0 * KAPPA)) - 1.0;
    Ok(AdiabaticVent {
        time: Time::from_s(v / (c * P0) * 2.0 / (KAPPA - 1.0) * grown),
        end: Temperature::from_kelvin(T0 * ratio.powf((KAPPA - 1.0) / KAPPA)),
    })
}

fn check(
    volume: Volume,
    ambient: AbsolutePressure,
    from: AbsolutePressure,
    to: AbsolutePressure,
) -> Result<(), VentTimeError> {
    if volume.as_m3() <= 0.0 {
        return Err(VentTimeError::Volume(volume));
    }
    if ambient.as_pa() <= 0.0 {
        return Err(VentTimeError::Ambient(ambient));
    }
    if to > from {
        return Err(VentTimeError::NotDownward { from, to });
    }
    if to < ambient {
        return Err(VentTimeError::NeverReached { to, ambient });
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;
    use quantity::SonicConductance;

    fn line(c: f64, b: f64) -> Restriction {
        Restriction::new(SonicConductance::from_dm3_per_s_bar(c), b).unwrap()
    }

    fn bar(value: f64) -> AbsolutePressure {
        AbsolutePressure::from_bar(value)
    }

    const V: Volume = Volume::from_l(110.0);

    fn vent(b: f64, from: f64, to: f64) -> f64 {
        vent_time(V, line(1.5, b), bar(1.013), bar(from), bar(to)).unwrap().as_s()
    }

    // 110 l through C 1.5 into 1.013 bar, each checked against numerical integration.
    #[test]
    fn worked_vent_times() {
        for (b, to, seconds) in [
            (0.25, 3.1, 71.3659),
            (0.25, 1.6, 122.4637),
            (0.25, 4.052, 51.6944),
            (0.6, 1.2, 142.6595),
        ] {
            assert!((vent(b, 8.2, to) - seconds).abs() < 6e-5, "to {to}: {}", vent(b, 8.2, to));
        }
        let adiabatic =
            adiabatic_vent(V, line(1.5, 0.25), bar(1.013), bar(8.2), bar(4.052)).unwrap();
        assert!((adiabatic.time.as_s() - 38.8478).abs() < 6e-5);
        assert!((adiabatic.end.as_kelvin() - 239.7).abs() < 0.05);
    }

    // With b = 0 the flow law integrates to an inverse hyperbolic cosine.
    #[test]
    fn worked_vent_without_choking() {
        let k = 0.110 / (1.5e-8 * P0);
        let exact = k * ((8.2f64 / 1.013).acosh() - (1.6f64 / 1.013).acosh());
        assert!((vent(0.0, 8.2, 1.6) - exact).abs() < 1e-9);
        assert!((vent(1e-7, 8.2, 1.6) - exact).abs() < 1e-3);
    }

    #[test]
    fn the_forms_meet_at_half() {
        let half = vent(0.5, 8.2, 1.3);
        for b in [0.5 - 1e-8, 0.5 + 1e-8] {
            assert!((vent(b, 8.2, 1.3) - half).abs() < 1e-4);
        }
    }

    #[test]
    fn what_cannot_be_vented_is_refused() {
        let vent = |from, to| vent_time(V, line(1.5, 0.25), bar(1.013), bar(from), bar(to));
        assert!(matches!(vent(8.0, 1.0), Err(VentTimeError::NeverReached { .. })));
        assert!(matches!(vent(3.0, 4.0), Err(VentTimeError::NotDownward { .. })));
        let adiabatic = adiabatic_vent(V, line(1.5, 0.25), bar(1.013), bar(8.2), bar(4.0));
        assert!(matches!(adiabatic, Err(VentTimeError::NotChoked { .. })));
    }

    proptest! {
        #[test]
        fn a_vent_is_the_sum_of_its_parts(
            b in 0.0..0.9f64, to in 1.1..3.0f64, half in 0.1..2.5f64, rest in 0.1..2.5f64,
        ) {
            let (middle, from) = (to + half, to + half + rest);
            let parts = vent(b, from, middle) + vent(b, middle, to);
            prop_assert!((parts / vent(b, from, to) - 1.0).abs() < 1e-6);
        }
    }
}
