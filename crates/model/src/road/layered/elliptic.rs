//! Complete elliptic integrals of all three kinds in one.

use std::f64::consts::FRAC_PI_2;

/// `∫ (a cos²θ + b sin²θ) / ((cos²θ + p sin²θ) √(cos²θ + kc² sin²θ)) dθ` over a quarter turn.
///
/// # Validity
/// `kc` and `p` above zero.
///
/// # Source
/// `bulirsch-1969`.
pub fn cel(kc: f64, p: f64, a: f64, b: f64) -> f64 {
    // The root of the machine's precision: the mean converges by squares.
    const NEAR: f64 = 1e-8;
    let (mut qc, mut p, mut a) = (kc, p.sqrt(), a);
    let mut b = b / p;
    let (mut e, mut em) = (qc, 1.0);
    loop {
        let f = a;
        a += b / p;
        let g = e / p;
        b = 2.0 * (b + f * g);
        p += g;
        let g = em;
        em += qc;
        if (g - qc).abs() <= g * NEAR {
            return FRAC_PI_2 * (b + a * em) / (em * (em + p));
        }
        qc = 2.0 * e.sqrt();
        e = qc * em;
    }
}

#[cfg(test)]
mod tests {
    use std::f64::consts::{FRAC_PI_2, FRAC_PI_4};

    use super::cel;

    #[test]
    fn a_circle_is_elementary() {
        assert!((cel(1.0, 1.0, 1.0, 1.0) - FRAC_PI_2).abs() < 1e-15);
        assert!((cel(1.0, 1.0, 1.0, 0.0) - FRAC_PI_4).abs() < 1e-15);
        assert!((cel(1.0, 0.25, 1.0, 1.0) - 2.0 * FRAC_PI_2).abs() < 1e-14);
    }

    // Legendre: E K' + E' K - K K' = π/2.
    #[test]
    fn legendre_relation_holds() {
        for k in [0.01, 0.3, 0.6, 0.999_f64] {
            let kc = (1.0 - k * k).sqrt();
            let first = |kc| cel(kc, 1.0, 1.0, 1.0);
            let second = |kc: f64| cel(kc, 1.0, 1.0, kc * kc);
            let sum = second(kc) * first(k) + second(k) * first(kc) - first(kc) * first(k);
            assert!((sum - FRAC_PI_2).abs() < 1e-13, "{k}: {sum}");
        }
    }

    // Third kind where the characteristic equals k²: E / (1 - k²).
    #[test]
    fn third_kind_with_characteristic_k_squared() {
        let kc = 0.35_f64;
        let third = cel(kc, kc * kc, 1.0, 1.0);
        assert!((third / (cel(kc, 1.0, 1.0, kc * kc) / (kc * kc)) - 1.0).abs() < 1e-13);
    }
}
