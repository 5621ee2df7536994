//! What trials of reduced pressure reported, where no equation has a term for pressure.

use crate::source::{Citation, Key, Standing};

/// Summary of trials on aggregate roads.
pub const SUMMARY: Key = Key("steward-1994");
/// Sediment from a road under loaded log trucks over three winters.
pub const SEDIMENT_TRIAL: Key = Key("foltz-1995");

/// A published range of a reduction, as shares. Never a result of a model.
#[derive(Debug, Clone, PartialEq)]
pub struct PublishedReduction {
    /// Least reported.
    pub low: f64,
    /// Most reported.
    pub high: f64,
    /// Where it was reported.
    pub citation: Citation,
}

fn reported(low: f64, high: f64, key: Key, locator: &str) -> PublishedReduction {
    PublishedReduction { low, high, citation: Citation::of(key, Standing::Read).at(locator) }
}

/// Sediment that a road sheds, reduced pressure against highway pressure: 10 to 85 % less.
///
/// # Source
/// [`SUMMARY`], read in an abstract.
pub fn sediment() -> PublishedReduction {
    reported(0.10, 0.85, SUMMARY, "sediment")
}

/// Sediment in one trial: 45 % less at a constant reduced pressure, 80 % less at low pressure set for the road.
///
/// # Source
/// [`SEDIMENT_TRIAL`], read in abstracts.
pub fn sediment_trial() -> PublishedReduction {
    reported(0.45, 0.80, SEDIMENT_TRIAL, "three winters, marginal aggregate")
}

/// Maintenance of the surface: 50 to 90 % less.
///
/// # Source
/// [`SUMMARY`], read in an abstract.
pub fn surface_maintenance() -> PublishedReduction {
    reported(0.50, 0.90, SUMMARY, "surface maintenance")
}

/// Thickness of aggregate: 20 to 30 % less.
///
/// # Source
/// [`SUMMARY`], read in an abstract.
pub fn aggregate_thickness() -> PublishedReduction {
    reported(0.20, 0.30, SUMMARY, "aggregate thickness")
}

#[cfg(test)]
mod tests {
    use super::*;

    // Steward 1994 and Foltz 1995, abstracts.
    #[test]
    fn table_ranges() {
        assert!((sediment().high - 0.85).abs() < 1e-12);
        assert!((surface_maintenance().low - 0.50).abs() < 1e-12);
        assert!((aggregate_thickness().low - 0.20).abs() < 1e-12);
        let (trial, all) = (sediment_trial(), sediment());
        assert!(all.low <= trial.low && trial.high <= all.high);
        assert_eq!(trial.citation.standing, Standing::Read);
    }
}
