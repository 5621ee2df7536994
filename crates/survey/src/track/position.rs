//! A place on the earth, and the geodesic distance between two.

use std::sync::LazyLock;

use geographiclib_rs::{Geodesic, InverseGeodesic};
use quantity::Length;

static WGS_84: LazyLock<Geodesic> = LazyLock::new(Geodesic::wgs84);

/// A place on the WGS 84 ellipsoid.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Position {
    latitude: f64,
    longitude: f64,
}

impl Position {
    /// Makes it from degrees; `None` unless both are finite, latitude within ±90 and longitude within ±180.
    pub fn from_degrees(latitude: f64, longitude: f64) -> Option<Self> {
        let inside = latitude.abs() <= 90.0 && longitude.abs() <= 180.0;
        inside.then_some(Self { latitude, longitude })
    }

    /// Latitude in degrees, north positive.
    pub fn latitude_deg(self) -> f64 {
        self.latitude
    }

    /// Longitude in degrees, east positive.
    pub fn longitude_deg(self) -> f64 {
        self.longitude
    }

    /// The place that was meant if latitude and longitude were exchanged; `None` if that is no place.
    pub(super) fn exchanged(self) -> Option<Self> {
        Self::from_degrees(self.longitude, self.latitude)
    }

    /// Length of the shortest line on the ellipsoid.
    ///
    /// # Source
    /// `karney-geodesics`.
    ///
    /// ```
    /// use survey::track::Position;
    /// let (a, b) = (Position::from_degrees(0.0, 10.0), Position::from_degrees(0.0, 11.0));
    /// let degree = a.zip(b).map(|(a, b)| a.distance_to(b).as_m());
    /// assert!((degree.ok_or("not a place")? - 111_319.491).abs() < 1e-3);
    /// # Ok::<(), &str>(())
    /// ```
    pub fn distance_to(self, other: Self) -> Length {
        Length::from_m(WGS_84.inverse(
            self.latitude,
            self.longitude,
            other.latitude,
            other.longitude,
        ))
    }
}

impl std::fmt::Display for Position {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{:.6}, {:.6}", self.latitude, self.longitude)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    // WGS 84 (NIMA TR8350.2, table 3.1): a = 6 378 137 m; along the equator the geodesic is a circle.
    #[test]
    fn table_one_degree_of_the_equator_is_a_pi_over_180() {
        let at = |longitude| Position::from_degrees(0.0, longitude).unwrap();
        let degree = at(-3.0).distance_to(at(-2.0)).as_m();
        assert!((degree - 6_378_137.0 * std::f64::consts::PI / 180.0).abs() < 1e-6, "{degree}");
    }

    #[test]
    fn what_is_no_place_is_refused() {
        assert_eq!(Position::from_degrees(120.0, 40.0), None);
        assert_eq!(Position::from_degrees(f64::NAN, 40.0), None);
        assert_eq!(Position::from_degrees(40.0, f64::INFINITY), None);
    }
}
