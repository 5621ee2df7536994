//! Time to fill a volume from a steady supply, in closed form.

use quantity::{AbsolutePressure, Time, Volume};

use super::Restriction;
use super::reference_air::P0;
use crate::source::Key;

/// Closed forms, derived from the flow law and the ideal gas.
pub const SOURCE: Key = Key("closed-form-fill-vent");

/// Ratio of specific heats of air.
const KAPPA: f64 = 1.4;

/// Why there is no fill time.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum FillTimeError {
    /// No volume to fill.
    #[error("volume {0} must be above zero")]
    Volume(Volume),
    /// The starting pressure is below vacuum, or above the target.
    #[error("filling goes up: from {from} to {to} does not, counted from vacuum")]
    NotUpward {
        /// Start.
        from: AbsolutePressure,
        /// Target.
        to: AbsolutePressure,
    },
    /// The supply cannot reach the target.
    #[error("target {to} lies above the supply's {supply} and is never reached")]
    NeverReached {
        /// Target.
        to: AbsolutePressure,
        /// Supply.
        supply: AbsolutePressure,
    },
    /// The adiabatic form holds only while the flow is choked.
    #[error(
        "target {to} lies above {limit}, where the flow stops being choked and the adiabatic form ends"
    )]
    NotChoked {
        /// Target.
        to: AbsolutePressure,
        /// b times the supply pressure.
        limit: AbsolutePressure,
    },
}

/// Time to fill `volume` through `restriction` from a steady `supply`.
///
/// The supply pressure itself is reached in finite time.
///
/// # Validity
/// Supply and volume at 20 °C throughout (isothermal): exact for slow changes, a few
/// per cent long for minutes-long ones. [`adiabatic_fill_time`] bounds it from below.
///
/// # Errors
/// [`FillTimeError`] for a target above the supply or under the start.
///
/// # Source
/// `closed-form-fill-vent`
///
/// ```
/// use model::air::{Restriction, fill_time};
/// use quantity::{AbsolutePressure, SonicConductance, Volume};
/// let line = Restriction::new(SonicConductance::from_dm3_per_s_bar(1.5), 0.25)?;
/// let bar = AbsolutePressure::from_bar;
/// let time = fill_time(Volume::from_l(110.0), line, bar(9.3), bar(4.0), bar(7.5))?;
/// assert!((time.as_s() - 32.6391).abs() < 1e-4);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn fill_time(
    volume: Volume,
    restriction: Restriction,
    supply: AbsolutePressure,
    from: AbsolutePressure,
    to: AbsolutePressure,
) -> Result<Time, FillTimeError> {
    check(volume, supply, from, to)?;
    let (v, c, b) = (volume.as_m3(), restriction.c().as_m3_per_s_pa(), restriction.b());
    let (p_s, p_i, p_f) = (supply.as_pa(), from.as_pa(), to.as_pa());
    let choked_end = p_f.min(b * p_s).max(p_i);
    let choked = (choked_end - p_i) / p_s;
    let angle = |p: f64| ((p / p_s - b) / (1.0 - b)).clamp(0.0, 1.0).asin();
    let subsonic = (1.0 - b) * (angle(p_f) - angle(choked_end));
    Ok(Time::from_s(v / (c * P0) * (choked + subsonic)))
}

/// The same without any heat lost through the walls: the shortest it can take, choked part.
///
/// # Validity
/// κ = 1.4, supply at 20 °C, target at or under b times the supply pressure.
///
/// # Errors
/// [`FillTimeError`] outside that.
///
/// # Source
/// `closed-form-fill-vent`
pub fn adiabatic_fill_time(
    volume: Volume,
    restriction: Restriction,
    supply: AbsolutePressure,
    from: AbsolutePressure,
    to: AbsolutePressure,
) -> Result<Time, FillTimeError> {
    let limit = supply.scaled(restriction.b());
    check(volume, supply, from, to)?;
    if to > limit {
        return Err(FillTimeError::NotChoked { to, limit });
    }
    Ok(fill_time(volume, restriction, supply, from, to)? / KAPPA)
}

fn check(
    volume: Volume,
    supply: AbsolutePressure,
    from: AbsolutePressure,
    to: AbsolutePressure,
) -> Result<(), FillTimeError> {
    if volume.as_m3() <= 0.0 {
        return Err(FillTimeError::Volume(volume));
    }
    if from.as_pa() < 0.0 || to < from || to.as_pa() <= 0.0 {
        return Err(FillTimeError::NotUpward { from, to });
    }
    if to > supply {
        return Err(FillTimeError::NeverReached { to, supply });
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

    // 110 l through C 1.5, b 0.25 from 9.3 bar, each checked against numerical integration.
    #[test]
    fn worked_fill_times() {
        for (from, to, seconds) in
            [(4.0, 7.5, 32.6391), (1.0, 2.325, 10.4480), (1.0, 7.5, 56.4254), (4.0, 9.3, 73.0556)]
        {
            let t = fill_time(V, line(1.5, 0.25), bar(9.3), bar(from), bar(to)).unwrap().as_s();
            assert!((t - seconds).abs() < 6e-5, "{from} to {to}: {t}");
        }
        let t = adiabatic_fill_time(V, line(1.5, 0.25), bar(9.3), bar(1.0), bar(2.325)).unwrap();
        assert!((t.as_s() - 7.4629).abs() < 6e-5);
    }

    #[test]
    fn what_cannot_be_filled_is_refused() {
        let fill = |v, from, to| fill_time(v, line(1.5, 0.25), bar(9.3), bar(from), bar(to));
        assert!(matches!(fill(V, 4.0, 9.4), Err(FillTimeError::NeverReached { .. })));
        assert!(matches!(fill(V, 4.0, 3.0), Err(FillTimeError::NotUpward { .. })));
        assert!(matches!(fill(Volume::ZERO, 4.0, 5.0), Err(FillTimeError::Volume(_))));
        let adiabatic = adiabatic_fill_time(V, line(1.5, 0.25), bar(9.3), bar(1.0), bar(3.0));
        assert!(matches!(adiabatic, Err(FillTimeError::NotChoked { .. })));
    }

    proptest! {
        #[test]
        fn more_conductance_fills_faster(
            c in 0.2..10.0f64, more in 1.001..3.0f64, b in 0.0..0.9f64,
            from in 1.0..8.0f64, rise in 0.1..1.0f64,
        ) {
            let time = |c| fill_time(V, line(c, b), bar(9.3), bar(from), bar(from + rise)).unwrap();
            prop_assert!(time(c * more) < time(c));
        }

        #[test]
        fn a_fill_is_the_sum_of_its_parts(
            b in 0.0..0.9f64, from in 1.0..4.0f64, half in 0.1..2.5f64, rest in 0.1..2.5f64,
        ) {
            let time = |from, to| {
                fill_time(V, line(1.5, b), bar(9.3), bar(from), bar(to)).unwrap().as_s()
            };
            let (middle, end) = (from + half, from + half + rest);
            prop_assert!((time(from, middle) + time(middle, end) - time(from, end)).abs() < 1e-9);
        }
    }
}
