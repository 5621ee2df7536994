//! Where the truck is on the earth, and where a receiver takes it to be.

use haul::chance::{normal, uniform};
use quantity::{Length, Time};
use survey::track::{Track, TrackPoint};

/// Error of a receiver to each side, m, one standard deviation: common practice, no source.
const WANDERS: f64 = 2.5;
/// Error of its height, m.
const HEIGHT_WANDERS: f64 = 5.0;
/// Time in which the error becomes another one, s.
const FORGETS: f64 = 150.0;
/// Meters of a degree of latitude, near enough for an error.
const DEGREE: f64 = 111_320.0;
/// Stretches of time of which some have an outage, s.
const STRETCH: f64 = 600.0;
/// Share of them that have.
const OUTAGES: f64 = 0.12;

/// Latitude and longitude in degrees.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Degrees {
    pub latitude: f64,
    pub longitude: f64,
}

/// The line of the route on the earth.
#[derive(Debug, Clone)]
pub(super) struct Line {
    points: Vec<TrackPoint>,
    /// Length of the track over the length of the route.
    stretch: f64,
}

impl Line {
    /// The recorded track of a route of this length, or a line at sea where it has none.
    pub fn of_route(track: Option<Track>, length: Length) -> Self {
        match track {
            Some(track) => {
                let stretch = track.length() / length;
                Self { points: track.points, stretch }
            }
            None => Self { points: Vec::new(), stretch: 1.0 },
        }
    }

    /// Whether it is the surveyed track.
    pub fn is_surveyed(&self) -> bool {
        !self.points.is_empty()
    }

    /// The place at a chainage.
    pub fn at(&self, chainage: Length) -> Degrees {
        if self.points.len() < 2 {
            // Invented: eastward from the middle of the Atlantic on the equator, so that it is no road.
            return Degrees { latitude: 0.0, longitude: -30.0 + chainage.as_m() / DEGREE };
        }
        let at = chainage * self.stretch;
        let after = self.points.partition_point(|point| point.at <= at);
        let after = after.clamp(1, self.points.len() - 1);
        let (a, b) = (&self.points[after - 1], &self.points[after]);
        let share = ((at - a.at) / (b.at - a.at)).clamp(0.0, 1.0);
        let between = |a: f64, b: f64| a + (b - a) * share;
        Degrees {
            latitude: between(a.position.latitude_deg(), b.position.latitude_deg()),
            longitude: between(a.position.longitude_deg(), b.position.longitude_deg()),
        }
    }

    /// Bearing of travel at a chainage, degrees from north.
    pub fn bearing(&self, chainage: Length, forward: bool) -> f64 {
        let ahead = Length::from_m(15.0);
        let (a, b) = (self.at(chainage - ahead), self.at(chainage + ahead));
        let east = (b.longitude - a.longitude) * a.latitude.to_radians().cos();
        let north = b.latitude - a.latitude;
        let along = east.atan2(north).to_degrees();
        (if forward { along } else { along + 180.0 }).rem_euclid(360.0)
    }
}

/// A receiver whose error wanders.
#[derive(Debug, Clone)]
pub(super) struct Receiver {
    seed: u64,
    fixes: usize,
    last: Option<Time>,
    /// East, north and up, m.
    off: [f64; 3],
}

impl Receiver {
    pub fn new(seed: u64) -> Self {
        let draw = |input| normal(seed, 0, input);
        let off = [
            WANDERS * draw("receiver: first east"),
            WANDERS * draw("receiver: first north"),
            HEIGHT_WANDERS * draw("receiver: first up"),
        ];
        Self { seed, fixes: 0, last: None, off }
    }

    /// Where it takes the truck to be, and how high; `None` in an outage.
    pub fn fix(
        &mut self,
        truth: Degrees,
        height: Length,
        clock: Time,
    ) -> Option<(Degrees, Length)> {
        // The jitter of two senders may put a fix a moment before the last one.
        let elapsed = self.last.map_or(0.0, |last| (clock - last).as_s().max(0.0));
        self.last = Some(self.last.map_or(clock, |last| last.max(clock)));
        self.fixes += 1;
        let keep = (-elapsed / FORGETS).exp();
        let fresh = (1.0 - keep * keep).sqrt();
        for (off, (input, size)) in self.off.iter_mut().zip([
            ("receiver: east", WANDERS),
            ("receiver: north", WANDERS),
            ("receiver: up", HEIGHT_WANDERS),
        ]) {
            *off = *off * keep + size * fresh * normal(self.seed, self.fixes, input);
        }
        if self.is_out(clock) {
            return None;
        }
        let [east, north, up] = self.off;
        let latitude = truth.latitude + north / DEGREE;
        let longitude = truth.longitude + east / (DEGREE * truth.latitude.to_radians().cos());
        Some((Degrees { latitude, longitude }, height + Length::from_m(up)))
    }

    fn is_out(&self, clock: Time) -> bool {
        let stretch = (clock.as_s() / STRETCH).floor();
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "small, positive"
        )]
        let number = stretch.max(0.0) as usize;
        if uniform(self.seed, number, "receiver: outage") > OUTAGES {
            return false;
        }
        let from = uniform(self.seed, number, "receiver: outage from") * (STRETCH - 60.0);
        let lasts = 8.0 + 40.0 * uniform(self.seed, number, "receiver: outage for");
        let within = clock.as_s() - stretch * STRETCH;
        within >= from && within < from + lasts
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_error_of_a_receiver_wanders_slowly_and_has_its_size() {
        let mut receiver = Receiver::new(3);
        let truth = Degrees { latitude: 0.0, longitude: -30.0 };
        let mut norths = Vec::new();
        for second in 0..40_000 {
            let fix = receiver.fix(truth, Length::ZERO, Time::from_s(f64::from(second)));
            norths.extend(fix.map(|(place, _)| place.latitude * DEGREE));
        }
        let share = norths.len() as f64 / 40_000.0;
        let spread = (norths.iter().map(|n| n * n).sum::<f64>() / norths.len() as f64).sqrt();
        let steps: Vec<f64> = norths.windows(2).map(|pair| pair[1] - pair[0]).collect();
        let step = (steps.iter().map(|s| s * s).sum::<f64>() / steps.len() as f64).sqrt();
        assert!((0.9..1.0).contains(&share), "{share}");
        assert!((spread - WANDERS).abs() < 0.5, "{spread} m");
        assert!(step < 0.4, "{step} m a second");
    }

    #[test]
    fn without_a_track_the_line_lies_at_sea() {
        let line = Line::of_route(None, Length::from_km(10.0));
        assert!(!line.is_surveyed());
        let (a, b) = (line.at(Length::ZERO), line.at(Length::from_m(DEGREE)));
        assert!((b.longitude - a.longitude - 1.0).abs() < 1e-12);
        assert!((line.bearing(Length::from_km(1.0), true) - 90.0).abs() < 1e-9);
        assert!((line.bearing(Length::from_km(1.0), false) - 270.0).abs() < 1e-9);
    }
}
