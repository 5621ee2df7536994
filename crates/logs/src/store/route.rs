//! Columns of the grid that say where on a surveyed route the unit was, and what its wheels made of the
//! way.

use std::collections::BTreeMap;
use std::sync::Arc;

use arrow_array::{ArrayRef, Float32Array, Float64Array, UInt8Array};
use arrow_schema::{DataType, Field};

use crate::series::Quality;

/// A stretch over which wheels and track are compared, km: errors of two positions are one in a hundred of it.
const STRETCH_KM: f64 = 0.5;
/// Longest wait between two positions of a stretch, s.
const LONGEST_WAIT_S: i64 = 10;
/// Seconds on either side over which the speed along the route is taken.
const SPEED_S: i64 = 2;

/// A position of one second.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fix {
    /// The second.
    pub second: i64,
    /// Degrees, north positive.
    pub latitude_deg: f64,
    /// Degrees, east positive.
    pub longitude_deg: f64,
}

/// A place on the route.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Place {
    /// Chainage.
    pub chainage_km: f64,
    /// How far the position lies beside the route.
    pub off_m: f64,
    /// Whether chainage rises along the drive.
    pub forward: bool,
}

/// Finds the positions of a day on a route; nothing for one that is off it.
pub type OnRoute<'a> = Box<dyn Fn(&[Fix]) -> Vec<Option<Place>> + Send + Sync + 'a>;

/// What a drive did on the route.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct RouteTold {
    /// Seconds with a position.
    pub positions: u64,
    /// Those of them that were off the route.
    pub off_route: u64,
    /// Way by wheel speed over way along the route, of each stretch that had both throughout.
    pub wheel_ratios: Vec<f64>,
}

impl RouteTold {
    /// Adds another day.
    pub(super) fn append(&mut self, day: &Self) {
        self.positions += day.positions;
        self.off_route += day.off_route;
        self.wheel_ratios.extend(&day.wheel_ratios);
    }
}

/// Places of the seconds of a day.
pub(super) struct Day {
    /// By second; nothing where the position was off the route.
    places: BTreeMap<i64, Option<Place>>,
    pub told: RouteTold,
}

impl Day {
    /// Finds positions on the route and compares the wheels, `wheel_kmh` by second.
    pub fn of(on_route: &OnRoute<'_>, fixes: &[Fix], wheel_kmh: &BTreeMap<i64, f64>) -> Self {
        let found = on_route(fixes);
        let seconds = fixes.iter().map(|fix| fix.second);
        let places: BTreeMap<i64, Option<Place>> = seconds.zip(found).collect();
        let told = RouteTold {
            positions: places.len() as u64,
            off_route: places.values().filter(|place| place.is_none()).count() as u64,
            wheel_ratios: ratios(&places, wheel_kmh),
        };
        Self { places, told }
    }

    /// The fields of the columns.
    pub fn fields() -> [Field; 5] {
        [
            Field::new("route_chainage", DataType::Float64, true),
            Field::new("route_chainage_q", DataType::UInt8, false),
            Field::new("route_off", DataType::Float32, true),
            Field::new("route_forward", DataType::UInt8, true),
            Field::new("route_speed", DataType::Float32, true),
        ]
    }

    /// What the columns hold, as the metadata says it.
    pub fn notes() -> [String; 4] {
        ["route_chainage=,km,", "route_off=,m,", "route_forward=,,", "route_speed=,km/h,"]
            .map(str::to_owned)
    }

    /// The columns of the seconds from `first` to `last`.
    #[allow(clippy::cast_possible_truncation, reason = "meters and speeds of a truck fit")]
    pub fn columns(&self, first: i64, last: i64) -> [ArrayRef; 5] {
        let all = || (first..=last).map(|second| self.place(second));
        let quality = (first..=last).map(|second| match self.places.get(&second) {
            Some(Some(_)) => Quality::Value.byte(),
            Some(None) => Quality::Error.byte(),
            None => Quality::Absent.byte(),
        });
        let speed = (first..=last).map(|second| self.speed(second).map(|speed| speed as f32));
        [
            Arc::new(all().map(|one| one.map(|one| one.chainage_km)).collect::<Float64Array>()),
            Arc::new(UInt8Array::from_iter_values(quality)),
            Arc::new(all().map(|one| one.map(|one| one.off_m as f32)).collect::<Float32Array>()),
            Arc::new(all().map(|one| one.map(|one| u8::from(one.forward))).collect::<UInt8Array>()),
            Arc::new(speed.collect::<Float32Array>()),
        ]
    }

    fn place(&self, second: i64) -> Option<Place> {
        self.places.get(&second).copied().flatten()
    }

    /// Speed along the route, km/h, where the places on both sides are known and of one direction.
    fn speed(&self, second: i64) -> Option<f64> {
        let here = self.place(second)?;
        let (from, to) = (self.place(second - SPEED_S)?, self.place(second + SPEED_S)?);
        let one_way = from.forward == here.forward && here.forward == to.forward;
        let hours = (2 * SPEED_S) as f64 / 3600.0;
        one_way.then(|| (to.chainage_km - from.chainage_km).abs() / hours)
    }
}

/// Way by wheel speed over way along the route, stretch by stretch.
fn ratios(places: &BTreeMap<i64, Option<Place>>, wheel_kmh: &BTreeMap<i64, f64>) -> Vec<f64> {
    let mut ratios = Vec::new();
    // Where the stretch began, where it is now, and its way by the wheels.
    let mut stretch: Option<(Place, i64, Place, f64)> = None;
    for (&second, place) in places {
        let Some(place) = *place else {
            stretch = None;
            continue;
        };
        let anew = (place, second, place, 0.0);
        let Some((began, before, last, way_km)) = stretch else {
            stretch = Some(anew);
            continue;
        };
        let step = if second - before > LONGEST_WAIT_S || last.forward != place.forward {
            None
        } else {
            (before..second)
                .map(|at| Some(f64::midpoint(*wheel_kmh.get(&at)?, *wheel_kmh.get(&(at + 1))?)))
                .sum::<Option<f64>>()
        };
        let Some(step_kmh_s) = step else {
            stretch = Some(anew);
            continue;
        };
        let way_km = way_km + step_kmh_s / 3600.0;
        let along = (place.chainage_km - began.chainage_km).abs();
        stretch = if along >= STRETCH_KM {
            ratios.push(way_km / along);
            Some(anew)
        } else {
            Some((began, second, place, way_km))
        };
    }
    ratios
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A drive at 36 km/h whose wheels read `scale` times as much, off the route in one second.
    fn day(scale: f64) -> Day {
        let fixes: Vec<Fix> = (0..300)
            .map(|second| Fix { second, latitude_deg: 0.0, longitude_deg: second as f64 })
            .collect();
        let on_route: OnRoute<'_> = Box::new(|fixes| {
            let place = |fix: &Fix| Place {
                chainage_km: fix.second as f64 * 0.01,
                off_m: 1.0,
                forward: true,
            };
            fixes.iter().map(|fix| (fix.second != 200).then(|| place(fix))).collect()
        });
        let wheels = (0..300).map(|second| (second, 36.0 * scale)).collect();
        Day::of(&on_route, &fixes, &wheels)
    }

    #[test]
    fn wheels_that_read_too_much_show_in_every_stretch() {
        for scale in [1.0, 1.08] {
            let told = day(scale).told;
            assert_eq!((told.positions, told.off_route), (300, 1));
            // 199 s before the second off the route hold three stretches of 50 s, 99 s after it one.
            assert_eq!(told.wheel_ratios.len(), 4);
            assert!(told.wheel_ratios.iter().all(|ratio| (ratio - scale).abs() < 1e-9));
        }
    }

    #[test]
    fn speed_along_the_route_is_unknown_beside_a_second_off_it() {
        let day = day(1.0);
        assert!((day.speed(100).unwrap() - 36.0).abs() < 1e-9);
        assert_eq!((day.speed(198), day.speed(1), day.speed(299)), (None, None, None));
    }
}
