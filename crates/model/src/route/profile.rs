//! Elevation along a route, piecewise linear in chainage.

use quantity::Length;

/// Points of elevation against chainage.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Profile {
    points: Vec<(Length, Length)>,
}

/// Why points do not make a profile.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum ProfileError {
    /// Chainage must rise from point to point.
    #[error("chainage must rise: {next} follows {before}")]
    NotRising {
        /// The chainage before.
        before: Length,
        /// The one that does not lie beyond it.
        next: Length,
    },
}

impl Profile {
    /// A level route.
    pub fn level() -> Self {
        Self::default()
    }

    /// Joins (chainage, elevation) points.
    ///
    /// # Errors
    /// [`ProfileError::NotRising`] if chainage does not rise strictly.
    pub fn new(points: Vec<(Length, Length)>) -> Result<Self, ProfileError> {
        for pair in points.windows(2) {
            if pair[1].0 <= pair[0].0 {
                return Err(ProfileError::NotRising { before: pair[0].0, next: pair[1].0 });
            }
        }
        Ok(Self { points })
    }

    /// The points.
    pub fn points(&self) -> &[(Length, Length)] {
        &self.points
    }

    /// Elevation at a chainage; held level beyond the ends.
    pub fn elevation(&self, at: Length) -> Length {
        match self.points.partition_point(|point| point.0 <= at) {
            0 => self.points.first().map_or(Length::ZERO, |point| point.1),
            n if n == self.points.len() => self.points[n - 1].1,
            n => {
                let ((x0, z0), (x1, z1)) = (self.points[n - 1], self.points[n]);
                z0 + (z1 - z0) * ((at - x0) / (x1 - x0))
            }
        }
    }

    /// Mean grade between two chainages, rising positive in the direction of chainage.
    pub fn grade(&self, from: Length, to: Length) -> f64 {
        if to == from { 0.0 } else { (self.elevation(to) - self.elevation(from)) / (to - from) }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn grade_is_rise_over_run() {
        let m = Length::from_m;
        let p = Profile::new(vec![(m(0.0), m(100.0)), (m(1000.0), m(150.0))]).unwrap();
        assert!((p.grade(m(200.0), m(400.0)) - 0.05).abs() < 1e-12);
        assert!((p.elevation(m(2000.0)).as_m() - 150.0).abs() < 1e-12);
        assert!(Profile::new(vec![(m(1.0), m(0.0)), (m(1.0), m(0.0))]).is_err());
    }
}
