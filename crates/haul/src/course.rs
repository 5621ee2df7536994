//! A route seen in the direction of travel, cut into cells.

use model::motion::curve_speed;
use model::route::{Leg, Route, Surface};
use quantity::{Length, Speed};

use crate::DrivingStyle;

/// Which way the chainage runs under the wheels.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Direction {
    /// Chainage rises.
    Forward,
    /// Chainage falls.
    Backward,
}

/// Why a route cannot be driven.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum CourseError {
    /// No legs.
    #[error("route '{route}' has no legs; add at least one")]
    NoLegs {
        /// The route.
        route: String,
    },
    /// Legs do not join.
    #[error(
        "leg '{leg}' of route '{route}' begins at {from} but the one before ends at {expected}"
    )]
    NotJoined {
        /// The route.
        route: String,
        /// The leg.
        leg: String,
        /// Where it begins.
        from: Length,
        /// Where it should.
        expected: Length,
    },
    /// A leg without length or with no speed.
    #[error("leg '{leg}' of route '{route}' needs a length and a speed limit above zero")]
    EmptyLeg {
        /// The route.
        route: String,
        /// The leg.
        leg: String,
    },
    /// More cells than memory should hold.
    #[error("route '{route}' would need {cells:.0} cells; take a longer cell than {cell}")]
    TooFine {
        /// The route.
        route: String,
        /// Cells it would need.
        cells: f64,
        /// Cell length asked for.
        cell: Length,
    },
}

/// A stretch with constant properties, at most one cell length long.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Cell {
    /// Travel distance where it begins and ends, m.
    pub from: f64,
    pub to: f64,
    /// Sine and rolling-resistance coefficient times cosine of the slope.
    pub sin: f64,
    pub rolling_cos: f64,
    /// Square of the speed limit, m²/s².
    pub limit_v2: f64,
    /// Rolling resistance depends on tire pressure here.
    pub hard: bool,
    /// Part of a sustained descent.
    pub descent: bool,
}

/// A sustained descent, in travel distance.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Descent {
    /// Where raising must have ended: the approach distance before the top.
    pub closed_from: Length,
    /// Its top.
    pub top: Length,
    /// Its foot.
    pub foot: Length,
}

/// A route cut into cells in the direction of travel.
#[derive(Debug, Clone, PartialEq)]
pub struct Course {
    pub(crate) cells: Vec<Cell>,
    direction: Direction,
    length: Length,
    descents: Vec<Descent>,
}

const MOST_CELLS: f64 = 2e6;

impl Course {
    /// Cuts a route into cells no longer than `cell`.
    ///
    /// Neighboring legs that differ only in name are one stretch, so cutting a leg in
    /// two changes nothing, to the last digit.
    ///
    /// # Errors
    /// [`CourseError`] for a route without legs, legs that do not join, and cells too many to hold.
    pub fn new(
        route: &Route,
        direction: Direction,
        cell: Length,
        style: &DrivingStyle,
    ) -> Result<Self, CourseError> {
        let stretches = joined(route)?;
        let total = route.length();
        let count = total / cell + stretches.len() as f64;
        if count.is_nan() || count > MOST_CELLS {
            return Err(CourseError::TooFine { route: route.name.clone(), cells: count, cell });
        }
        let mut cells = Vec::new();
        for (from, to, leg) in &stretches {
            let limit = leg.curve_radius.map_or(leg.speed_limit, |radius| {
                leg.speed_limit.min(curve_speed(radius, style.side_friction))
            });
            let mut height = route.profile.elevation(Length::from_m(*from));
            for (a, b) in cuts(*from, *to, cell.as_m()) {
                let next = route.profile.elevation(Length::from_m(b));
                let rise = (next - height).as_m() / (b - a);
                height = next;
                let grade = match direction {
                    Direction::Forward => rise,
                    Direction::Backward => -rise,
                };
                let cos = 1.0 / (1.0 + grade * grade).sqrt();
                let (s0, s1) = match direction {
                    Direction::Forward => (a, b),
                    Direction::Backward => (total.as_m() - b, total.as_m() - a),
                };
                cells.push(Cell {
                    from: s0,
                    to: s1,
                    sin: grade * cos,
                    rolling_cos: leg.rolling_resistance * cos,
                    limit_v2: limit.as_m_per_s().powi(2),
                    hard: matches!(leg.surface, Surface::Paved | Surface::Sealed),
                    descent: false,
                });
            }
        }
        if direction == Direction::Backward {
            cells.reverse();
        }
        let descents = mark_descents(&mut cells, route);
        Ok(Self { cells, direction, length: total, descents })
    }

    /// Length of the run.
    pub fn length(&self) -> Length {
        self.length
    }

    /// Direction of travel.
    pub fn direction(&self) -> Direction {
        self.direction
    }

    /// Chainage of a travel distance, and the other way round.
    pub fn chainage(&self, travelled: Length) -> Length {
        match self.direction {
            Direction::Forward => travelled,
            Direction::Backward => self.length - travelled,
        }
    }

    /// Sustained descents in the order they are met.
    pub fn descents(&self) -> &[Descent] {
        &self.descents
    }

    /// Speed limit at a travel distance.
    pub fn speed_limit(&self, travelled: Length) -> Speed {
        let cell = self.cells[self.cell_at(travelled.as_m())];
        Speed::from_m_per_s(cell.limit_v2.sqrt())
    }

    /// Index of the cell that contains a travel distance.
    pub(crate) fn cell_at(&self, s: f64) -> usize {
        self.cells.partition_point(|cell| cell.to <= s).min(self.cells.len() - 1)
    }
}

/// Stretches of equal properties as (from, to, leg), in order of chainage, m.
fn joined(route: &Route) -> Result<Vec<(f64, f64, &Leg)>, CourseError> {
    if route.legs.is_empty() {
        return Err(CourseError::NoLegs { route: route.name.clone() });
    }
    let mut stretches: Vec<(f64, f64, &Leg)> = Vec::new();
    let mut expected = Length::ZERO;
    for leg in &route.legs {
        if (leg.from - expected).abs() > Length::from_m(0.5) {
            return Err(CourseError::NotJoined {
                route: route.name.clone(),
                leg: leg.name.clone(),
                from: leg.from,
                expected,
            });
        }
        if leg.to <= leg.from || leg.speed_limit <= Speed::ZERO {
            return Err(CourseError::EmptyLeg { route: route.name.clone(), leg: leg.name.clone() });
        }
        match stretches.last_mut() {
            Some((_, to, before)) if drives_alike(before, leg) => *to = leg.to.as_m(),
            _ => stretches.push((expected.as_m(), leg.to.as_m(), leg)),
        }
        expected = leg.to;
    }
    Ok(stretches)
}

fn drives_alike(a: &Leg, b: &Leg) -> bool {
    a.surface == b.surface
        && a.rolling_resistance.to_bits() == b.rolling_resistance.to_bits()
        && a.speed_limit == b.speed_limit
        && a.curve_radius == b.curve_radius
}

/// Cuts [from, to] at multiples of the cell length, so that cells do not depend on leg bounds.
fn cuts(from: f64, to: f64, cell: f64) -> impl Iterator<Item = (f64, f64)> {
    let mut a = from;
    std::iter::from_fn(move || {
        if a >= to {
            return None;
        }
        // A sliver shorter than a thousandth of a cell joins its neighbor.
        let next = ((a / cell + 1e-3).floor() + 1.0) * cell;
        let b = if next >= to - 1e-3 * cell { to } else { next };
        let piece = (a, b);
        a = b;
        Some(piece)
    })
}

fn mark_descents(cells: &mut [Cell], route: &Route) -> Vec<Descent> {
    let steep = -route.descent_grade.atan().sin();
    let mut descents = Vec::new();
    let mut start = None;
    for i in 0..=cells.len() {
        let falls = cells.get(i).is_some_and(|cell| cell.sin <= steep);
        match (start, falls) {
            (None, true) => start = Some(i),
            (Some(first), false) => {
                let (top, foot) = (cells[first].from, cells[i - 1].to);
                if foot - top >= route.descent_length.as_m() {
                    cells[first..i].iter_mut().for_each(|cell| cell.descent = true);
                    descents.push(Descent {
                        closed_from: Length::from_m((top - route.descent_approach.as_m()).max(0.0)),
                        top: Length::from_m(top),
                        foot: Length::from_m(foot),
                    });
                }
                start = None;
            }
            _ => {}
        }
    }
    descents
}
