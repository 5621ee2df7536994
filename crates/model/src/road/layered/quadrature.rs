//! Where the wave numbers lie and what each weighs.

use std::f64::consts::PI;

/// How fine the integral over wave numbers is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Accuracy {
    /// About 1 part in 10 000; for screens and searches.
    Screen,
    /// About 1 part in 10⁹; for checks.
    Fine,
}

impl Accuracy {
    /// Gauss-Legendre nodes a panel.
    pub(super) const fn nodes(self) -> usize {
        match self {
            Self::Screen => 16,
            Self::Fine => 22,
        }
    }

    /// The product of wave number and depth at which the integrand has decayed to nothing.
    pub(super) const fn cut(self) -> f64 {
        match self {
            Self::Screen => 14.0,
            Self::Fine => 30.0,
        }
    }
}

/// Gauss-Legendre panels over wave numbers from zero on.
///
/// The first panels grow fourfold, since a layered ground changes with the logarithm of the wave
/// number; from there on they are equal and hold eight half-waves (zero to zero) of the fastest
/// product of Bessel functions. No extrapolation: with the half-space taken out the integrand
/// decays as `e^(-kh)`, so the sum just ends.
#[derive(Debug)]
pub struct Panels {
    rule: Vec<(f64, f64)>,
    first: f64,
    widest: f64,
}

impl Panels {
    /// For a ground that changes over `scale` and Bessel functions that reach over `reach`.
    pub fn new(nodes: usize, scale: f64, reach: f64) -> Self {
        let widest = 8.0 * PI / reach;
        Self { rule: gauss_legendre(nodes), first: widest.min(0.5 / scale), widest }
    }

    /// Calls with each wave number and weight, in order, up to the panel that holds `end`.
    pub fn for_each(&self, end: f64, mut visit: impl FnMut(f64, f64)) {
        let mut from = 0.0;
        let mut width = self.first;
        while from < end {
            for (x, w) in &self.rule {
                visit(from + width * x, width * w);
            }
            from += width;
            width = (3.0 * from).min(self.widest);
        }
    }
}

/// Nodes and weights on 0 to 1: roots of the Legendre polynomial by Newton.
fn gauss_legendre(n: usize) -> Vec<(f64, f64)> {
    let count = n as f64;
    (0..n)
        .map(|i| {
            let mut x = -(PI * (i as f64 + 0.75) / (count + 0.5)).cos();
            loop {
                let (mut p, mut before) = (1.0, 0.0);
                for j in 0..n {
                    let j = j as f64;
                    let next = ((2.0 * j + 1.0) * x * p - j * before) / (j + 1.0);
                    before = p;
                    p = next;
                }
                let slope = count * (x * p - before) / (x * x - 1.0);
                let step = p / slope;
                x -= step;
                if step.abs() < 1e-15 {
                    return (0.5 * (1.0 + x), 1.0 / ((1.0 - x * x) * slope * slope));
                }
            }
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn polynomials_are_exact() {
        for n in [2, 16, 22, 44] {
            let rule = gauss_legendre(n);
            for degree in [0, 1, 3, 2 * n - 1] {
                let power = i32::try_from(degree).unwrap();
                let sum: f64 = rule.iter().map(|(x, w)| w * x.powi(power)).sum();
                assert!((sum * (degree as f64 + 1.0) - 1.0).abs() < 1e-12, "{n}, {degree}");
            }
        }
    }

    // Lipschitz: ∫ J₀(kr) e^(-kz) dk = 1 / √(r² + z²).
    #[test]
    fn worked_integral_of_lipschitz() {
        for (r, z) in [(0.1, 0.05), (1.5, 0.05), (0.0, 1.0), (0.2, 3.0)] {
            let panels = Panels::new(Accuracy::Fine.nodes(), z, r + 0.1);
            let mut sum = 0.0;
            panels.for_each(Accuracy::Fine.cut() / z, |k, w| {
                sum += w * libm::j0(k * r) * (-k * z).exp();
            });
            let hypot = f64::hypot(r, z);
            assert!((sum * hypot - 1.0).abs() < 1e-9, "{r}, {z}: {}", sum * hypot - 1.0);
        }
    }
}
