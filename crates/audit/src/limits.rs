//! What a drive is held to: the cells, caps, change points and descents of a plan in force.

use quantity::{
    AbsolutePressure, ColdPressure, GaugePressure, Length, PressureDifference, Speed, Temperature,
    Time,
};

use crate::places::Places;
use crate::{MAX_CHANNELS, MAX_RUNGS};

/// Why limits cannot be used.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum LimitsError {
    /// Too many or too few of something.
    #[error(
        "a plan of {channels} air channels, {rungs} rungs and {load_states} load states cannot be judged; at most {MAX_CHANNELS}, {MAX_RUNGS} and 250"
    )]
    Size {
        /// Air channels.
        channels: usize,
        /// Rungs.
        rungs: usize,
        /// Load states.
        load_states: usize,
    },
    /// A table that is not as long as the ladder.
    #[error("the limits of load state {load_state} do not have one cell for each rung and channel")]
    Cells {
        /// Index of the load state.
        load_state: usize,
    },
    /// Rungs out of order.
    #[error(
        "rungs come with rising speed caps; rung {rung} has a lower one than the rung before it"
    )]
    Order {
        /// Index of the rung.
        rung: usize,
    },
    /// A change that does not fit the ladder.
    #[error("change {change} does not name a rung of the ladder, or not every channel")]
    Change {
        /// Index of the change.
        change: usize,
    },
    /// A change or a closed stretch of a load state that is not there.
    #[error("a change or a closed stretch names load state {load_state}, which has no limits")]
    NoLoadState {
        /// Index of the load state.
        load_state: usize,
    },
    /// A route too long for the table of places.
    #[error("a route of {length} cannot be judged; 5000 km at most")]
    TooLong {
        /// Its length.
        length: Length,
    },
}

/// Conditions cold pressures are named at, and the coldest and warmest credible tire.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Site {
    /// Reference temperature.
    pub reference: Temperature,
    /// Ambient pressure.
    pub ambient: AbsolutePressure,
    /// Coldest credible tire air.
    pub coldest_tire: Temperature,
    /// Warmest credible tire air.
    pub warmest_tire: Temperature,
}

/// How far a logged drive may lie off before a rule speaks.
///
/// The values of [`Default`] are common practice, no source.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tolerance {
    /// Speed above a cap.
    pub speed: Speed,
    /// Time above it.
    pub over_cap: Time,
    /// Position at the ends of sections.
    pub place: Length,
    /// Quiet time after which a finding is over.
    pub gap: Time,
    /// Time off a rung that ends the stay on it.
    pub settle: Time,
    /// Standing time that ends a stay.
    pub rest: Time,
    /// Rise of a pressure in a minute from which it counts as filling; heat makes less.
    pub filling: PressureDifference,
}

impl Default for Tolerance {
    fn default() -> Self {
        Self {
            speed: Speed::from_kmh(3.0),
            over_cap: Time::from_s(10.0),
            place: Length::from_m(30.0),
            gap: Time::from_s(30.0),
            settle: Time::from_s(60.0),
            rest: Time::from_h(1.0),
            filling: PressureDifference::from_kpa(10.0),
        }
    }
}

/// Longest time and distance on a rung.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hold {
    /// Longest time, where one is set.
    pub time: Option<Time>,
    /// Longest distance, where one is set.
    pub distance: Option<Length>,
}

/// A rung.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RungLimit {
    /// Its speed cap.
    pub cap: Speed,
}

/// A cell of the ladder.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CellLimit {
    /// Lowest cold pressure; `None` for a cell that is not possible.
    pub minimum: Option<ColdPressure>,
}

/// What a load state asks for.
#[derive(Debug, Clone, PartialEq)]
pub struct LoadLimit {
    /// Cells by rung, then by channel.
    pub cells: Vec<Vec<CellLimit>>,
    /// Hold limit of each rung.
    pub holds: Vec<Option<Hold>>,
    /// Rung whose cells must be held before the truck moves off with this load newly on.
    pub start_rung: Option<usize>,
}

/// Pressures a change goes to on one channel.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum ChangeTo {
    /// Lowered once the reading is this or less.
    Lowered(GaugePressure),
    /// Raised once the cold pressure is this or more.
    Raised(ColdPressure),
    /// The change asks nothing of the channel.
    Stays,
}

/// A change with the stretch on which it must be complete.
#[derive(Debug, Clone, PartialEq)]
pub struct ChangeLimit {
    /// Index of the load state of the run.
    pub load_state: usize,
    /// Index of the rung it goes to.
    pub rung: usize,
    /// Chainage where it must be complete.
    pub reach_by: Length,
    /// Chainage where its section ends.
    pub until: Length,
    /// Channel by channel.
    pub to: Vec<ChangeTo>,
}

/// A stretch on which nothing may be filled: a sustained descent with its approach.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ClosedStretch {
    /// Index of the load state of the run that goes down it.
    pub load_state: usize,
    /// Chainage of one end.
    pub from: Length,
    /// Chainage of the other.
    pub to: Length,
}

/// Limits as they are given.
#[derive(Debug, Clone, PartialEq)]
pub struct LimitsGiven {
    /// Conditions.
    pub site: Site,
    /// Tolerances.
    pub tolerance: Tolerance,
    /// Length of the route.
    pub route: Length,
    /// Rungs, slowest first.
    pub rungs: Vec<RungLimit>,
    /// Load states.
    pub load_states: Vec<LoadLimit>,
    /// Changes.
    pub changes: Vec<ChangeLimit>,
    /// Closed stretches.
    pub closed: Vec<ClosedStretch>,
}

/// One load state, ready to be compared with numbers.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Load {
    /// Lowest cold pressure by channel, then rung, kPa; NaN where not possible, so that nothing holds it.
    pub minimum: Vec<[f64; MAX_RUNGS]>,
    pub holds: [Option<Hold>; MAX_RUNGS],
    pub start_rung: Option<usize>,
}

/// Limits made ready for judging.
#[derive(Debug, Clone, PartialEq)]
pub struct Limits {
    pub(crate) given: LimitsGiven,
    pub(crate) channels: usize,
    pub(crate) caps_kmh: [f64; MAX_RUNGS],
    pub(crate) loads: Vec<Load>,
    pub(crate) places: Places,
    pub(crate) tolerance: Tolerance,
}

impl Limits {
    /// Makes limits ready.
    ///
    /// # Errors
    /// [`LimitsError`] for tables that do not fit each other or what can be judged.
    pub fn new(given: LimitsGiven) -> Result<Self, LimitsError> {
        let rungs = given.rungs.len();
        let cells = given.load_states.first().and_then(|load| load.cells.first());
        let channels = cells.map_or(0, Vec::len);
        let load_states = given.load_states.len();
        let fits = (1..=MAX_CHANNELS).contains(&channels)
            && (1..=MAX_RUNGS).contains(&rungs)
            && (1..=250).contains(&load_states);
        if !fits {
            return Err(LimitsError::Size { channels, rungs, load_states });
        }
        for (index, load) in given.load_states.iter().enumerate() {
            let even = load.cells.len() == rungs
                && load.holds.len() == rungs
                && load.cells.iter().all(|row| row.len() == channels)
                && load.start_rung.is_none_or(|rung| rung < rungs);
            if !even {
                return Err(LimitsError::Cells { load_state: index });
            }
        }
        if let Some(rung) =
            (1..rungs).find(|&rung| given.rungs[rung].cap < given.rungs[rung - 1].cap)
        {
            return Err(LimitsError::Order { rung });
        }
        let named = given.changes.iter().map(|change| change.load_state);
        let named = named.chain(given.closed.iter().map(|closed| closed.load_state));
        if let Some(load_state) = named.into_iter().find(|&load_state| load_state >= load_states) {
            return Err(LimitsError::NoLoadState { load_state });
        }
        let unfit = |change: &ChangeLimit| change.to.len() != channels || change.rung >= rungs;
        if let Some(change) = given.changes.iter().position(unfit) {
            return Err(LimitsError::Change { change });
        }
        let places = Places::new(&given)?;
        let mut caps_kmh = [0.0; MAX_RUNGS];
        for (cap, rung) in caps_kmh.iter_mut().zip(&given.rungs) {
            *cap = rung.cap.as_kmh();
        }
        let loads = given.load_states.iter().map(|load| ready(load, channels)).collect();
        Ok(Self { channels, caps_kmh, loads, places, tolerance: given.tolerance, given })
    }

    /// The limits as they were given.
    pub fn given(&self) -> &LimitsGiven {
        &self.given
    }

    /// Number of air channels.
    pub fn channels(&self) -> usize {
        self.channels
    }
}

impl Load {
    /// The slowest rung that is possible on every channel.
    pub fn slowest_possible(&self, rungs: usize) -> Option<usize> {
        (0..rungs).find(|&rung| self.minimum.iter().all(|minimum| !minimum[rung].is_nan()))
    }
}

fn ready(load: &LoadLimit, channels: usize) -> Load {
    let minimum = (0..channels)
        .map(|channel| {
            let mut of_rungs = [f64::NAN; MAX_RUNGS];
            for (value, row) in of_rungs.iter_mut().zip(&load.cells) {
                *value = row[channel].minimum.map_or(f64::NAN, ColdPressure::as_kpa);
            }
            of_rungs
        })
        .collect();
    let mut holds = [None; MAX_RUNGS];
    holds[..load.holds.len()].copy_from_slice(&load.holds);
    Load { minimum, holds, start_rung: load.start_rung }
}
