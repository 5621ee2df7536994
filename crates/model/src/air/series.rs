//! Restrictions one after another.

use quantity::{AbsolutePressure, MassFlow, SonicConductance, Temperature};

use super::cubic_table::CubicTable;
use super::restriction::{BETA, FlowError, Restriction, mass_flow};
use crate::source::Key;

/// Combination of restrictions in series by one mass flow through all.
pub const SOURCE: Key = Key("iso-6358-3");

const CELLS: usize = 32;

/// No restriction was given, so there is nothing to combine.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("an air path needs at least one restriction")]
pub struct EmptyPath;

/// The flow through restrictions in series, tabulated once over the pressure ratio.
///
/// The same mass flow passes every restriction; the pressure is stepped downstream.
/// Against √(1 − p2/p1) the flow is smooth from its square-root start to the choke,
/// so a few cubics carry it: to about 10⁻⁶ for parts that choke far apart, within
/// 0.05 % for any.
///
/// # Validity
/// As [`Restriction`]; one temperature along the path. Above a pressure ratio of
/// 0.999 over the whole path the law is linear.
///
/// # Source
/// `iso-6358-3`
///
/// ```
/// use model::air::{Restriction, SeriesCurve};
/// use quantity::SonicConductance;
/// let valve = Restriction::new(SonicConductance::from_dm3_per_s_bar(2.0), 0.3)?;
/// let two = SeriesCurve::new(&[valve, valve])?;
/// assert!((two.sonic_conductance().as_dm3_per_s_bar() - 1.514).abs() < 5e-4);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct SeriesCurve {
    choked: f64,
    choke_ratio: f64,
    linear_slope: f64,
    table: CubicTable,
}

impl SeriesCurve {
    /// Tabulates restrictions in series, in the direction of flow.
    ///
    /// # Errors
    /// [`EmptyPath`] if there are none.
    pub fn new(path: &[Restriction]) -> Result<Self, EmptyPath> {
        let choke = choke(path).ok_or(EmptyPath)?;
        let from = (1.0 - BETA).sqrt();
        let to = (1.0 - choke.ratio).sqrt().max(from * 1.01);
        let width = (to - from) / CELLS as f64;
        let (mut theta, mut theta_slope) = (0.0, 1.0);
        let mut nodes = Vec::with_capacity(CELLS + 1);
        for node in 0..CELLS {
            let s = from + width * node as f64;
            let guess = theta + theta_slope * if node == 0 { from } else { width };
            theta = solve(path, choke.conductance, 1.0 - s * s, theta, guess);
            let (_, slope) = step_down(path, choke.conductance * theta.sin());
            theta_slope = -2.0 * s / (slope * choke.conductance * theta.cos());
            nodes.push((choke.conductance * theta.sin(), -2.0 * s / slope));
        }
        nodes.push((choke.conductance, 0.0));
        let linear_slope = -nodes[0].0 / (1.0 - BETA);
        Ok(Self {
            choked: choke.conductance,
            choke_ratio: choke.ratio,
            linear_slope,
            table: CubicTable::new(from, to, &nodes),
        })
    }

    /// The same path with every conductance times `factor`.
    #[must_use]
    pub fn scaled(&self, factor: f64) -> Self {
        Self {
            choked: self.choked * factor,
            choke_ratio: self.choke_ratio,
            linear_slope: self.linear_slope * factor,
            table: self.table.scaled(factor),
        }
    }

    /// Sonic conductance of the whole.
    pub fn sonic_conductance(&self) -> SonicConductance {
        SonicConductance::from_m3_per_s_pa(self.choked)
    }

    /// Pressure ratio over the whole at and under which the flow is choked.
    pub const fn critical_ratio(&self) -> f64 {
        self.choke_ratio
    }

    /// Mass flow from `p1` at temperature `t1` to `p2`.
    ///
    /// # Errors
    /// [`FlowError`] for pressures that make no flow in this direction.
    pub fn mass_flow(
        &self,
        p1: AbsolutePressure,
        t1: Temperature,
        p2: AbsolutePressure,
    ) -> Result<MassFlow, FlowError> {
        mass_flow(p1, t1, p2, |r| self.at(r).0)
    }

    /// Flow in reference volume over upstream pressure at ratio `r`, m³/(s Pa), and its slope.
    ///
    /// Nothing flows back: at ratios of 1 and above it is zero.
    #[inline]
    pub(super) fn at(&self, r: f64) -> (f64, f64) {
        if r <= self.choke_ratio {
            return (self.choked, 0.0);
        }
        if r > BETA {
            if r >= 1.0 {
                return (0.0, 0.0);
            }
            return (self.linear_slope * (r - 1.0), self.linear_slope);
        }
        let s = (1.0 - r).sqrt();
        let (value, slope) = self.table.at(s);
        (value, -0.5 * slope / s)
    }
}

/// Mass flow through restrictions in series, solved exactly for these two pressures.
///
/// # Errors
/// [`FlowError`] for pressures that make no flow in this direction.
///
/// # Validity
/// As [`SeriesCurve`], which is the same tabulated.
///
/// # Source
/// `iso-6358-3`
pub fn series_mass_flow(
    path: &[Restriction],
    p1: AbsolutePressure,
    t1: Temperature,
    p2: AbsolutePressure,
) -> Result<MassFlow, FlowError> {
    mass_flow(p1, t1, p2, |r| exact(path, r))
}

fn exact(path: &[Restriction], r: f64) -> f64 {
    let Some(choke) = choke(path) else { return 0.0 };
    if r <= choke.ratio && r <= BETA {
        choke.conductance
    } else if r > BETA {
        exact(path, BETA) * (1.0 - r) / (1.0 - BETA)
    } else {
        choke.conductance * solve(path, choke.conductance, r, 0.0, 1.0).sin()
    }
}

/// Largest flow the path can pass, and the pressure ratio at which it is reached.
struct Choke {
    conductance: f64,
    ratio: f64,
}

fn choke(path: &[Restriction]) -> Option<Choke> {
    let mut high = path.iter().map(|part| part.c().as_m3_per_s_pa()).min_by(f64::total_cmp)?;
    if passes(path, high) {
        return Some(Choke { conductance: high, ratio: step_down(path, high).0 });
    }
    let mut low = 0.0;
    loop {
        let middle = 0.5 * (low + high);
        if middle <= low || middle >= high {
            return Some(Choke { conductance: low, ratio: step_down(path, low).0 });
        }
        if passes(path, middle) {
            low = middle;
        } else {
            high = middle;
        }
    }
}

fn passes(path: &[Restriction], q: f64) -> bool {
    let mut p = 1.0;
    path.iter().all(|part| {
        let u = q / (part.c().as_m3_per_s_pa() * p);
        p *= part.b() + (1.0 - part.b()) * (1.0 - u * u).max(0.0).sqrt();
        u <= 1.0
    })
}

/// Pressure left of 1 upstream when `q` passes the path, and its slope against `q`.
fn step_down(path: &[Restriction], q: f64) -> (f64, f64) {
    let (mut p, mut slope) = (1.0, 0.0);
    for part in path {
        let (c, b) = (part.c().as_m3_per_s_pa(), part.b());
        let u = (q / (c * p)).min(1.0);
        let w = (1.0 - u * u).sqrt();
        let r = b + (1.0 - b) * w;
        let u_slope = (1.0 - q * slope / p) / (c * p);
        slope = slope * r - p * (1.0 - b) * u * u_slope / w;
        p *= r;
    }
    (p, slope)
}

/// The angle θ, above `low`, at which the flow choked·sin θ leaves the pressure ratio
/// `r`: against θ the ratio is smooth and falling all the way to the choke.
fn solve(path: &[Restriction], choked: f64, r: f64, low: f64, guess: f64) -> f64 {
    /// Newton's method doubles its digits, so a step this small is the last.
    const LAST_STEP: f64 = 1e-7;
    let (mut low, mut high) = (low, std::f64::consts::FRAC_PI_2);
    let mut theta = if guess > low && guess < high { guess } else { 0.5 * (low + high) };
    while high - low > 1e-14 {
        let (ratio, slope) = step_down(path, choked * theta.sin());
        if ratio > r {
            low = theta;
        } else {
            high = theta;
        }
        let newton = theta - (ratio - r) / (slope * choked * theta.cos());
        if (newton - theta).abs() < LAST_STEP {
            return newton;
        }
        theta = if newton > low && newton < high { newton } else { 0.5 * (low + high) };
    }
    theta
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;
    use quantity::Length;

    fn part(c: f64, b: f64) -> Restriction {
        Restriction::new(SonicConductance::from_dm3_per_s_bar(c), b).unwrap()
    }

    fn line() -> [Restriction; 4] {
        let tube = Restriction::tube(Length::from_mm(9.56), Length::from_m(8.0)).unwrap();
        [part(2.5, 0.3), tube, part(1.5, 0.25), part(3.0, 0.35)]
    }

    // Valve, 8 m of 9.56 mm tube, valve, valve at 8 bar upstream, stepped and bisected
    // independently.
    #[test]
    fn worked_four_restrictions_in_series() {
        let curve = SeriesCurve::new(&line()).unwrap();
        assert!((curve.sonic_conductance().as_dm3_per_s_bar() - 1.252).abs() < 6e-4);
        let (p1, t) = (AbsolutePressure::from_bar(8.0), Temperature::from_celsius(20.0));
        for (p2, q) in [(2.0, 0.011766), (4.0, 0.010760), (6.0, 0.008348), (7.0, 0.006147)] {
            let p2 = AbsolutePressure::from_bar(p2);
            let exact = series_mass_flow(&line(), p1, t, p2).unwrap().as_kg_per_s();
            assert!((exact - q).abs() < 6e-7, "{exact} at {p2}");
            let table = curve.mass_flow(p1, t, p2).unwrap().as_kg_per_s();
            assert!((table / exact - 1.0).abs() < 5e-6, "{table} at {p2}");
        }
    }

    #[test]
    fn one_restriction_is_itself() {
        let curve = SeriesCurve::new(&[part(1.5, 0.25)]).unwrap();
        assert!((curve.critical_ratio() - 0.25).abs() < 1e-12);
        for k in 0..1000 {
            let r = f64::from(k) / 1000.0;
            let own = 1.5e-8 * super::super::restriction::shape(0.25, r);
            assert!((curve.at(r).0 / own - 1.0).abs() < 1e-6, "at {r}");
        }
    }

    #[test]
    fn equal_wheel_ends_behind_a_path_carry_equal_shares() {
        let (path, end) = (part(2.0, 0.3), part(0.8, 0.2));
        let together = SeriesCurve::new(&[path, end.in_parallel(8).unwrap()]).unwrap();
        let share = part(2.0 / 8.0, 0.3);
        let alone = SeriesCurve::new(&[share, end]).unwrap();
        assert!((together.at(0.7).0 / (8.0 * alone.at(0.7).0) - 1.0).abs() < 1e-9);
    }

    #[test]
    fn a_path_of_nothing_is_refused() {
        assert_eq!(SeriesCurve::new(&[]), Err(EmptyPath));
    }

    proptest! {
        #[test]
        fn the_table_keeps_to_the_exact_flow(
            parts in prop::collection::vec((0.3..10.0f64, 0.0..0.6f64), 1..6),
            r in 0.0..1.0f64,
        ) {
            let path: Vec<_> = parts.into_iter().map(|(c, b)| part(c, b)).collect();
            let curve = SeriesCurve::new(&path).unwrap();
            let truth = exact(&path, r);
            prop_assert!((curve.at(r).0 / truth - 1.0).abs() < 5e-4, "{} {truth}", curve.at(r).0);
        }

        #[test]
        fn the_table_falls_with_the_pressure_ratio(
            parts in prop::collection::vec((0.3..10.0f64, 0.0..0.6f64), 1..6),
            r in 0.0..0.999f64,
        ) {
            let path: Vec<_> = parts.into_iter().map(|(c, b)| part(c, b)).collect();
            let curve = SeriesCurve::new(&path).unwrap();
            prop_assert!(curve.at(r).0 >= curve.at(r + 1e-3).0 * (1.0 - 1e-9));
        }
    }
}
