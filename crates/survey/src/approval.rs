//! Approvals as values: what the tire maker was asked, what was answered, whether it counts.

use model::date::Date;
use model::tire::{Fitment, Lapse, MakerRow, Recommended};
use quantity::{Length, Mass, Speed, Temperature, Time};

/// A load and a speed asked about.
#[derive(Debug, Clone, PartialEq)]
pub struct AskedLoad {
    /// Single or dual.
    pub fitment: Fitment,
    /// Load on one tire.
    pub load: Mass,
    /// Highest speed.
    pub speed: Speed,
    /// Distance at this load and speed in a cycle.
    pub distance: Option<Length>,
}

/// What the maker was asked.
#[derive(Debug, Clone, PartialEq)]
pub struct Asked {
    /// Warmest air.
    pub warmest: Temperature,
    /// Distance of a whole cycle.
    pub distance_per_cycle: Option<Length>,
    /// Longest time at a time on the lowest pressure.
    pub hold: Option<Time>,
    /// Loads and speeds.
    pub loads: Vec<AskedLoad>,
}

/// A tire maker's answer for one tire model, on the day the survey was read.
#[derive(Debug, Clone, PartialEq)]
pub struct Approval {
    /// File, relative to the survey.
    pub file: String,
    /// Tire model, by its name in the survey.
    pub tire: String,
    /// Number of the answer.
    pub number: String,
    /// Who answered.
    pub answered_by: String,
    /// Day of the answer.
    pub date: Date,
    /// Last day it counts, where the maker set one.
    pub expires: Option<Date>,
    /// What counts as the recommended pressure.
    pub recommended: Recommended,
    /// The rim it was given for, as stamped.
    pub rim: String,
    /// What was asked.
    pub asked: Asked,
    /// What was answered.
    pub rows: Vec<MakerRow>,
    /// Why it does not count, where it does not.
    pub lapsed: Option<Lapse>,
}

impl Approval {
    /// Number and date, as documents name it.
    pub fn document(&self) -> String {
        format!("{}, {}", self.number, self.date)
    }
}
