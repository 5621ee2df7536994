//! One wave number through all layers: amplitudes that only ever decay.
//!
//! In a layer every field is made of four waves: two that decay downward from its top and two
//! that decay upward from its bottom. Each is written from the face where it is largest, so
//! nothing grows, whatever the wave number. From the half-space upward, each interface becomes a
//! reflection (up-going per down-going); then the surface load is sent down.

/// A layer as the waves see it.
#[derive(Debug, Clone, Copy)]
pub struct Medium {
    /// Twice the shear modulus.
    pub double_shear: f64,
    /// Poisson's ratio.
    pub poisson: f64,
    /// Thickness; infinite for the last.
    pub thickness: f64,
}

/// Amplitudes in one layer: down-going at its top, up-going at its bottom.
#[derive(Debug, Clone, Copy, Default)]
pub struct Amplitudes {
    down: Pair,
    up: Pair,
}

/// Hankel transforms at one depth for a unit vertical pressure: σz and τrz, and the
/// displacements w and u times `2 G k`.
#[derive(Debug, Clone, Copy)]
pub struct Kernel {
    /// Of σz, goes with J₀.
    pub vertical_stress: f64,
    /// Of τrz, goes with J₁.
    pub shear_stress: f64,
    /// Of `2 G k w`, goes with J₀.
    pub settlement: f64,
    /// Of `2 G k u`, goes with J₁.
    pub radial: f64,
}

type Pair = [f64; 2];
type Matrix = [Pair; 2];

/// Stresses (σz, τrz) of the two down-going waves at their top, by columns.
const T_DOWN: Matrix = [[1.0, -1.0], [1.0, 0.0]];
const T_DOWN_INVERSE: Matrix = [[0.0, 1.0], [-1.0, 1.0]];
/// Stresses of the two up-going waves at their bottom.
const T_UP: Matrix = [[1.0, -1.0], [-1.0, 0.0]];
/// A unit pressure on the surface.
const SURFACE: Pair = [-1.0, 0.0];

impl Medium {
    /// Displacements (w, u) times k of the down-going waves at their top.
    fn v_down(&self) -> Matrix {
        let (c, nu) = (1.0 / self.double_shear, self.poisson);
        [[-c, 2.0 * (1.0 - nu) * c], [-c, -(1.0 - 2.0 * nu) * c]]
    }

    /// Displacements times k of the up-going waves at their bottom.
    fn v_up(&self) -> Matrix {
        let (c, nu) = (1.0 / self.double_shear, self.poisson);
        [[c, -2.0 * (1.0 - nu) * c], [-c, -(1.0 - 2.0 * nu) * c]]
    }
}

/// Room for one wave number; made once, used for all.
#[derive(Debug)]
pub struct Solver<'a> {
    media: &'a [Medium],
    reflection: Vec<Matrix>,
    top_stress: Vec<Matrix>,
    amplitudes: Vec<Amplitudes>,
}

impl<'a> Solver<'a> {
    /// For these layers, the last without end.
    pub fn new(media: &'a [Medium]) -> Self {
        Self {
            media,
            reflection: vec![Matrix::default(); media.len()],
            top_stress: vec![T_DOWN; media.len()],
            amplitudes: vec![Amplitudes::default(); media.len()],
        }
    }

    /// The amplitudes for wave number `k` under a unit pressure; in the first layer what is left
    /// after the half-space of the same material is taken out.
    ///
    /// # Source
    /// `burmister-1945`.
    pub fn solve(&mut self, k: f64) -> &[Amplitudes] {
        let last = self.media.len() - 1;
        let mut flexibility = times(&self.media[last].v_down(), &T_DOWN_INVERSE);
        for i in (0..last).rev() {
            let medium = &self.media[i];
            let (v_down, v_up) = (medium.v_down(), medium.v_up());
            let unmet = minus(&v_up, &times(&flexibility, &T_UP));
            let sent = minus(&times(&flexibility, &T_DOWN), &v_down);
            let reflection = times(&inverse(&unmet), &sent);
            let shift = shift(k * medium.thickness);
            let at_top = times(&shift, &times(&reflection, &shift));
            let stress = plus(&T_DOWN, &times(&T_UP, &at_top));
            let displacement = plus(&v_down, &times(&v_up, &at_top));
            flexibility = times(&displacement, &inverse(&stress));
            self.reflection[i] = reflection;
            self.top_stress[i] = stress;
        }
        let mut stress = SURFACE;
        for i in 0..=last {
            let down = apply(&inverse(&self.top_stress[i]), stress);
            self.amplitudes[i].down = down;
            if i < last {
                let at_bottom = apply(&shift(k * self.media[i].thickness), down);
                let up = apply(&self.reflection[i], at_bottom);
                self.amplitudes[i].up = up;
                let (from_above, back) = (apply(&T_DOWN, at_bottom), apply(&T_UP, up));
                stress = [from_above[0] + back[0], from_above[1] + back[1]];
            }
        }
        // What comes back to the surface must be undone there: the excess over the half-space,
        // without the cancellation of a difference.
        let first = &mut self.amplitudes[0];
        let back = apply(&shift(k * self.media[0].thickness), first.up);
        let undone = apply(&T_DOWN_INVERSE, apply(&T_UP, back));
        first.down = [-undone[0], -undone[1]];
        &self.amplitudes
    }
}

impl Amplitudes {
    /// The transforms at a depth below the layer's top.
    pub fn kernel(&self, medium: &Medium, k: f64, below_top: f64) -> Kernel {
        let nu = medium.poisson;
        let (first, second) = (2.0 * (1.0 - nu), 1.0 - 2.0 * nu);
        let x = k * below_top;
        let decay = (-x).exp();
        let [d1, d2] = [self.down[0] * decay, self.down[1] * decay];
        let mut kernel = Kernel {
            vertical_stress: d1 - d2 * (1.0 + x),
            shear_stress: d1 - d2 * x,
            settlement: d2 * (first + x) - d1,
            radial: d2 * (x - second) - d1,
        };
        if medium.thickness.is_finite() {
            let y = k * (medium.thickness - below_top);
            let decay = (-y).exp();
            let [u1, u2] = [self.up[0] * decay, self.up[1] * decay];
            kernel.vertical_stress += u1 - u2 * (1.0 + y);
            kernel.shear_stress += u2 * y - u1;
            kernel.settlement += u1 - u2 * (first + y);
            kernel.radial += u2 * (y - second) - u1;
        }
        kernel
    }
}

/// A pair of waves told from the other face of a layer `x = k h` thick.
fn shift(x: f64) -> Matrix {
    // No end: nothing arrives.
    if x.is_infinite() {
        return Matrix::default();
    }
    let decay = (-x).exp();
    [[decay, -x * decay], [0.0, decay]]
}

fn times(a: &Matrix, b: &Matrix) -> Matrix {
    [
        [a[0][0] * b[0][0] + a[0][1] * b[1][0], a[0][0] * b[0][1] + a[0][1] * b[1][1]],
        [a[1][0] * b[0][0] + a[1][1] * b[1][0], a[1][0] * b[0][1] + a[1][1] * b[1][1]],
    ]
}

fn plus(a: &Matrix, b: &Matrix) -> Matrix {
    [[a[0][0] + b[0][0], a[0][1] + b[0][1]], [a[1][0] + b[1][0], a[1][1] + b[1][1]]]
}

fn minus(a: &Matrix, b: &Matrix) -> Matrix {
    [[a[0][0] - b[0][0], a[0][1] - b[0][1]], [a[1][0] - b[1][0], a[1][1] - b[1][1]]]
}

fn inverse(a: &Matrix) -> Matrix {
    let over = 1.0 / (a[0][0] * a[1][1] - a[0][1] * a[1][0]);
    [[a[1][1] * over, -a[0][1] * over], [-a[1][0] * over, a[0][0] * over]]
}

fn apply(a: &Matrix, v: Pair) -> Pair {
    [a[0][0] * v[0] + a[0][1] * v[1], a[1][0] * v[0] + a[1][1] * v[1]]
}

#[cfg(test)]
mod tests {
    use super::*;

    const STIFF_ON_SOFT: [Medium; 3] = [
        Medium { double_shear: 8e6, poisson: 0.35, thickness: 0.1 },
        Medium { double_shear: 3e5, poisson: 0.35, thickness: 0.3 },
        Medium { double_shear: 8e2, poisson: 0.45, thickness: f64::INFINITY },
    ];

    #[test]
    fn no_wave_number_overflows() {
        let mut solver = Solver::new(&STIFF_ON_SOFT);
        for k in [1e-9, 1e-3, 1.0, 1e3, 1e6, 1e12, 1e200] {
            for (layer, medium) in solver.solve(k).iter().zip(&STIFF_ON_SOFT) {
                let kernel = layer.kernel(medium, k, 0.0);
                assert!(kernel.vertical_stress.is_finite() && kernel.settlement.is_finite(), "{k}");
            }
        }
    }

    #[test]
    fn the_excess_leaves_the_surface_free() {
        let mut solver = Solver::new(&STIFF_ON_SOFT);
        for k in [0.01, 1.0, 30.0] {
            let kernel = solver.solve(k)[0].kernel(&STIFF_ON_SOFT[0], k, 0.0);
            assert!(kernel.vertical_stress.abs() < 1e-10, "{k}: {kernel:?}");
            assert!(kernel.shear_stress.abs() < 1e-10, "{k}: {kernel:?}");
        }
    }

    #[test]
    fn an_endless_wave_number_is_the_half_space_alone() {
        let mut solver = Solver::new(&STIFF_ON_SOFT);
        let kernel = solver.solve(1e5)[0].kernel(&STIFF_ON_SOFT[0], 1e5, 0.0);
        assert!(kernel.settlement.abs() < 1e-12);
    }
}
