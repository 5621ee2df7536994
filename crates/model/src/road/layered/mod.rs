//! Layers of elastic ground under wheels: displacement, stress and strain anywhere in them.
//!
//! Full bond between the layers; each wheel is a circle of uniform vertical pressure. The load is
//! taken apart into wave numbers (Hankel transform); `wave` solves all layers for one of them,
//! once for every wheel and point; `quadrature` says which are needed; `half_space` gives the
//! part of the first layer that would converge slowly in closed form.

mod elliptic;
mod field;
mod half_space;
mod pavement;
mod quadrature;
mod response;
#[cfg(test)]
mod tests;
mod wave;

use quantity::{Force, Length, Stress};

use field::Field;
use quadrature::Panels;
use response::Sum;
use wave::{Kernel, Solver};

pub use pavement::{Layer, Pavement, PavementError};
pub use quadrature::Accuracy;
pub use response::{Response, Tensor};

use crate::source::Key;

/// The layered half-space under a surface load.
pub const LAYERED: Key = Key("burmister-1945");
/// The homogeneous half-space.
pub const HALF_SPACE: Key = Key("boussinesq-1885");

/// A circle of uniform vertical pressure on the surface.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wheel {
    /// Center, across the road.
    pub x: Length,
    /// Center, along the road.
    pub y: Length,
    /// Load on this tire.
    pub load: Force,
    /// Contact pressure.
    pub pressure: Stress,
}

impl Wheel {
    /// Radius of the circle: `a = √(W / (π q))`.
    #[must_use]
    pub fn radius(&self) -> Length {
        let area = self.load.as_kn() / self.pressure.as_kpa();
        Length::from_m((area / std::f64::consts::PI).sqrt())
    }
}

/// How deep a point lies.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Depth {
    /// Below the surface; on an interface, in the upper layer.
    At(Length),
    /// Just under the top of a layer, counted from 0.
    TopOf(usize),
    /// Just above the bottom of a layer, counted from 0.
    BottomOf(usize),
}

/// Where to look.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Point {
    /// Across the road.
    pub x: Length,
    /// Along the road.
    pub y: Length,
    /// Down.
    pub depth: Depth,
}

/// Why there is no response.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum LayeredError {
    /// A wheel that presses nothing.
    #[error("a load of {load} at {pressure} makes no contact circle; both must be above zero")]
    Wheel {
        /// Load given.
        load: Force,
        /// Pressure given.
        pressure: Stress,
    },
    /// A place outside the ground.
    #[error("a depth of {depth} lies above the surface")]
    Above {
        /// Depth given.
        depth: Length,
    },
    /// A layer that is not there.
    #[error("layer {layer} has no such face; there are {count} layers, the last without bottom")]
    NoSuchFace {
        /// Number from the top, from 1.
        layer: usize,
        /// Layers there are.
        count: usize,
    },
    /// Too far to be the same place on a road.
    #[error("a wheel {distance} from a point; up to 50 m was checked")]
    Far {
        /// Distance from a wheel to a point.
        distance: Length,
    },
}

/// What wheels do to a pavement at each of the points.
///
/// # Validity
/// Linear elastic layers, fully bonded, moduli of neighbors within 1e5 times; uniform circular
/// contact. Real tires at low pressure are longer and press more at the edges, so effects of
/// pressure near the surface are a best case.
///
/// # Errors
/// [`LayeredError`] for wheels without contact and points outside the ground.
///
/// # Source
/// [`LAYERED`], [`HALF_SPACE`].
///
/// ```
/// use model::road::layered::{Accuracy, Depth, Layer, Pavement, Point, Wheel, respond};
/// use quantity::{Force, Length, Stress};
/// let layer = |mpa, poisson, mm: Option<f64>| Layer {
///     modulus: Stress::from_mpa(mpa),
///     poisson,
///     thickness: mm.map(Length::from_mm),
/// };
/// let pavement = Pavement::new(vec![
///     layer(5000.0, 0.35, Some(260.0)),
///     layer(200.0, 0.40, Some(500.0)),
///     layer(50.0, 0.45, None),
/// ])?;
/// let at = Length::ZERO;
/// let wheel =
///     Wheel { x: at, y: at, load: Force::from_kn(50.0), pressure: Stress::from_mpa(0.7) };
/// let point = Point { x: at, y: at, depth: Depth::BottomOf(0) };
/// let found = respond(&pavement, &[wheel], &[point], Accuracy::Fine)?;
/// assert!((found[0].strain.xx.as_microstrain() - 100.5).abs() < 0.1);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn respond(
    pavement: &Pavement,
    wheels: &[Wheel],
    points: &[Point],
    accuracy: Accuracy,
) -> Result<Vec<Response>, LayeredError> {
    respond_with(pavement, wheels, points, accuracy.nodes(), accuracy.cut())
}

fn respond_with(
    pavement: &Pavement,
    wheels: &[Wheel],
    points: &[Point],
    nodes: usize,
    cut: f64,
) -> Result<Vec<Response>, LayeredError> {
    let plan = Plan::new(pavement, wheels, points)?;
    let fields = plan.fields(pavement, nodes, cut);
    let responses = points.iter().enumerate().map(|(p, point)| {
        let mut sum = Sum::default();
        for (w, wheel) in wheels.iter().enumerate() {
            let field = &fields[plan.used[p * wheels.len() + w]];
            let (dx, dy) = ((point.x - wheel.x).as_m(), (point.y - wheel.y).as_m());
            sum.add(field, wheel.pressure.as_kpa(), dx, dy);
        }
        sum.response(&pavement.layers()[plan.levels[plan.level_of[p]].layer])
    });
    Ok(responses.collect())
}

/// A depth that points share, in m.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Level {
    layer: usize,
    below_top: f64,
    depth: f64,
}

/// A field to integrate: level, distance and circle by their number.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Wanted {
    level: usize,
    distance: usize,
    circle: usize,
}

/// What is distinct among all wheels and points, so that nothing is computed twice.
struct Plan {
    levels: Vec<Level>,
    distances: Vec<f64>,
    circles: Vec<f64>,
    wanted: Vec<Wanted>,
    level_of: Vec<usize>,
    used: Vec<usize>,
}

impl Plan {
    fn new(pavement: &Pavement, wheels: &[Wheel], points: &[Point]) -> Result<Self, LayeredError> {
        let mut plan = Self {
            levels: Vec::new(),
            distances: Vec::new(),
            circles: Vec::new(),
            wanted: Vec::new(),
            level_of: Vec::new(),
            used: Vec::new(),
        };
        for point in points {
            let level = number_of(&mut plan.levels, level(pavement, point.depth)?, PartialEq::eq);
            plan.level_of.push(level);
            for wheel in wheels {
                if wheel.load <= Force::ZERO || wheel.pressure <= Stress::ZERO {
                    let Wheel { load, pressure, .. } = *wheel;
                    return Err(LayeredError::Wheel { load, pressure });
                }
                let r = (point.x - wheel.x).as_m().hypot((point.y - wheel.y).as_m());
                if r > 50.0 {
                    return Err(LayeredError::Far { distance: Length::from_m(r) });
                }
                let same = |one: &f64, other: &f64| (one - other).abs() < 1e-12;
                let circle = number_of(&mut plan.circles, wheel.radius().as_m(), same);
                let distance = number_of(&mut plan.distances, r, same);
                let wanted = Wanted { level, distance, circle };
                plan.used.push(number_of(&mut plan.wanted, wanted, PartialEq::eq));
            }
        }
        Ok(plan)
    }

    /// The field of each wanted circle, level and distance for a unit pressure.
    fn fields(&self, pavement: &Pavement, nodes: usize, cut: f64) -> Vec<Field> {
        let media = pavement.media();
        let mut fields: Vec<Field> = self.wanted.iter().map(|_| Field::default()).collect();
        if media.len() > 1 {
            self.integrate(&media, pavement.spread(), nodes, cut, &mut fields);
        }
        for (field, wanted) in fields.iter_mut().zip(&self.wanted) {
            let level = &self.levels[wanted.level];
            if level.layer == 0 {
                let (a, r) = (self.circles[wanted.circle], self.distances[wanted.distance]);
                field.add(&half_space::under_circle(&media[0], a, r, level.depth));
            }
        }
        fields
    }

    /// # Source
    /// `burmister-1945`.
    fn integrate(
        &self,
        media: &[wave::Medium],
        spread: f64,
        nodes: usize,
        cut: f64,
        fields: &mut [Field],
    ) {
        let largest = |of: &[f64]| of.iter().copied().fold(0.0, f64::max);
        // What the reflection of the first interface decays over, or the depth itself.
        let ends = self.levels.iter().map(|level| match level.layer {
            0 => cut / (2.0 * media[0].thickness - level.depth),
            _ => cut / level.depth,
        });
        let ends: Vec<f64> = ends.collect();
        let deepest = self.levels.iter().map(|level| level.depth).fold(0.0, f64::max);
        let reach = largest(&self.circles) + largest(&self.distances);
        let panels = Panels::new(nodes, spread.max(deepest), reach);
        let mut solver = Solver::new(media);
        let mut kernels: Vec<Option<Kernel>> = vec![None; self.levels.len()];
        let mut bessel = vec![(0.0, 0.0, 0.0); self.distances.len()];
        let mut loads = vec![0.0; self.circles.len()];
        panels.for_each(largest(&ends), |k, weight| {
            let amplitudes = solver.solve(k);
            for ((kernel, level), end) in kernels.iter_mut().zip(&self.levels).zip(&ends) {
                let medium = &media[level.layer];
                let layer = &amplitudes[level.layer];
                *kernel = (k < *end).then(|| layer.kernel(medium, k, level.below_top));
            }
            for (value, r) in bessel.iter_mut().zip(&self.distances) {
                let x = k * r;
                let j1 = libm::j1(x);
                *value = (libm::j0(x), j1, if x < 1e-8 { 0.5 } else { j1 / x });
            }
            for (load, a) in loads.iter_mut().zip(&self.circles) {
                *load = a * libm::j1(k * a) * weight;
            }
            for (field, wanted) in fields.iter_mut().zip(&self.wanted) {
                let Some(kernel) = &kernels[wanted.level] else { continue };
                let compliance = 1.0 / media[self.levels[wanted.level].layer].double_shear;
                let (j0, j1, j1_by_x) = bessel[wanted.distance];
                let load = loads[wanted.circle];
                field.vertical_stress += load * kernel.vertical_stress * j0;
                field.shear_stress += load * kernel.shear_stress * j1;
                field.settlement += load * compliance * kernel.settlement * j0 / k;
                field.horizontal_dilation += load * compliance * kernel.radial * j0;
                field.hoop_strain += load * compliance * kernel.radial * j1_by_x;
            }
        });
    }
}

/// The number of an item in the list, put there if it is new.
fn number_of<T>(list: &mut Vec<T>, item: T, same: impl Fn(&T, &T) -> bool) -> usize {
    list.iter().position(|known| same(known, &item)).unwrap_or_else(|| {
        list.push(item);
        list.len() - 1
    })
}

fn level(pavement: &Pavement, depth: Depth) -> Result<Level, LayeredError> {
    let layers = pavement.layers();
    let count = layers.len();
    let top = |layer: usize| pavement.top_of(layer).as_m();
    match depth {
        Depth::At(depth) if depth < Length::ZERO => Err(LayeredError::Above { depth }),
        Depth::At(depth) => {
            let depth = depth.as_m();
            // On an interface within rounding counts as on it.
            let layer = (1..count).rev().find(|i| depth > top(*i) * (1.0 + 1e-12)).unwrap_or(0);
            Ok(Level { layer, below_top: depth - top(layer), depth })
        }
        Depth::TopOf(layer) if layer < count => {
            Ok(Level { layer, below_top: 0.0, depth: top(layer) })
        }
        Depth::BottomOf(layer) if layer + 1 < count => {
            let depth = top(layer + 1);
            Ok(Level { layer, below_top: depth - top(layer), depth })
        }
        Depth::TopOf(layer) | Depth::BottomOf(layer) => {
            Err(LayeredError::NoSuchFace { layer: layer + 1, count })
        }
    }
}
