//! A track laid flat, for a plain map.

use quantity::Length;

use super::{Position, Track};

/// A place of a track on a flat map.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MapPoint {
    /// Chainage.
    pub at: Length,
    /// East of the middle of the map.
    pub east: Length,
    /// North of it.
    pub north: Length,
}

impl Track {
    /// The track on a plane that touches the earth at its middle; a step of points is left out where
    /// there are more than `most`. Both ends stay.
    ///
    /// Lengths along the track stay those of the ellipsoid; on the map a route of 100 km is off by
    /// less than a thousandth of its length.
    pub fn on_a_plane(&self, most: usize) -> Vec<MapPoint> {
        let latitudes = self.points.iter().map(|point| point.position.latitude_deg());
        let longitudes = self.points.iter().map(|point| point.position.longitude_deg());
        let middle = middle(latitudes).zip(middle(longitudes));
        let middle = middle.and_then(|(north, east)| Position::from_degrees(north, east));
        let Some(middle) = middle else { return Vec::new() };
        let step = self.points.len().div_ceil(most.max(2)).max(1);
        let last = self.points.len() - 1;
        let kept = self.points.iter().enumerate();
        kept.filter(|(index, _)| index % step == 0 || *index == last)
            .filter_map(|(_, point)| {
                let to = point.position;
                let beside = Position::from_degrees(middle.latitude_deg(), to.longitude_deg())?;
                let above = Position::from_degrees(to.latitude_deg(), middle.longitude_deg())?;
                let east = to.longitude_deg() - middle.longitude_deg();
                let north = to.latitude_deg() - middle.latitude_deg();
                Some(MapPoint {
                    at: point.at,
                    east: middle.distance_to(beside) * east.signum(),
                    north: middle.distance_to(above) * north.signum(),
                })
            })
            .collect()
    }
}

fn middle(values: impl Iterator<Item = f64>) -> Option<f64> {
    let ends = values.fold(None, |ends: Option<(f64, f64)>, value| {
        let (low, high) = ends.unwrap_or((value, value));
        Some((low.min(value), high.max(value)))
    });
    ends.map(|(low, high)| f64::midpoint(low, high))
}

#[cfg(test)]
mod tests {
    use crate::track::read;

    #[test]
    fn steps_on_the_map_are_as_long_as_on_the_ellipsoid() {
        let text = "lat,lon\n61.50,-120.00\n61.50,-119.98\n61.52,-119.98\n61.53,-120.01\n";
        let track = read(text.as_bytes(), "spur.csv").unwrap();
        let flat = track.on_a_plane(100);
        assert_eq!(flat.len(), 4);
        for pair in flat.windows(2) {
            let (east, north) = (pair[1].east - pair[0].east, pair[1].north - pair[0].north);
            let step = (pair[1].at - pair[0].at).as_m();
            let drawn = east.as_m().hypot(north.as_m());
            assert!((drawn / step - 1.0).abs() < 1e-3, "{drawn} {step}");
        }
        assert!(flat[1].east > flat[0].east && flat[2].north > flat[1].north);
    }

    #[test]
    fn a_long_track_keeps_its_ends() {
        let lines = (0..5000).map(|index| format!("{},10\n", 50.0 + f64::from(index) * 1e-4));
        let text: String = std::iter::once("lat,lon\n".to_owned()).chain(lines).collect();
        let track = read(text.as_bytes(), "long.csv").unwrap();
        let flat = track.on_a_plane(300);
        assert!(flat.len() <= 302);
        assert_eq!(flat[0].at, track.points[0].at);
        assert_eq!(flat.last().unwrap().at, track.length());
    }
}
