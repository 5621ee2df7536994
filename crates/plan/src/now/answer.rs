//! The answer to a call, with its reasons.

use quantity::{
    ColdPressure, GaugePressure, Length, Mass, PressureDifference, Speed, Temperature, Time,
};

use super::slip::Slip;
use crate::window::{Impossible, MaximumKind, MinimumKind};

/// What the driver does.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Verdict {
    /// Goes, under the speed named; a rung of the ladder is held.
    Go,
    /// Goes under the speed named, to where it can be mended: something is not as planned.
    GoSlow,
    /// Stays where it stands, or stops where it is safe.
    Stop,
}

/// How far it may go.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum HowFar {
    /// Nowhere.
    Nowhere,
    /// Off the road, no further.
    OffTheRoad,
    /// Until a hold limit; then stop or raise.
    Hold {
        /// Longest distance.
        distance: Option<Length>,
        /// Longest time.
        time: Option<Time>,
    },
    /// To the next stop, and gauge again there.
    NextStop,
}

/// What a group's pressure is known from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Stance {
    /// A gauge.
    Gauged,
    /// The survey, which says what a group without an air channel is kept at.
    Kept,
    /// Nothing.
    NotGauged,
}

/// Why the answer is what it is; groups, states and channels by index.
#[derive(Debug, Clone, PartialEq)]
pub enum Reason {
    /// Nobody gauged this group, and unknown is never good.
    NotGauged {
        /// Axle group.
        group: usize,
    },
    /// Nobody gauged this group; the survey says what it is kept at, and that was used.
    KeptAsSurveyed {
        /// Axle group.
        group: usize,
        /// Pressure it is kept at.
        pressure: ColdPressure,
    },
    /// At or under 80 % of what its load needs at walking pace: not to be inflated.
    UnderServiceShare {
        /// Axle group.
        group: usize,
        /// Its cold pressure, on the careful side.
        cold: ColdPressure,
        /// What it needs.
        needed: ColdPressure,
    },
    /// Too soft for any speed that somebody stands behind.
    TooSoft {
        /// Axle group.
        group: usize,
        /// Its cold pressure, on the careful side.
        cold: ColdPressure,
        /// The least that would do.
        needed: Option<ColdPressure>,
        /// Whether a lower pressure would do that nobody has approved.
        unapproved: bool,
    },
    /// Not above the closing pressure of its wheel valves: no air reaches it from the cab.
    CannotBeReached {
        /// Axle group.
        group: usize,
        /// Reading.
        reading: GaugePressure,
        /// Closing pressure.
        closes_below: GaugePressure,
    },
    /// Above the highest: it is lowered before going on.
    AboveHighest {
        /// Axle group.
        group: usize,
        /// Its cold pressure, lower than which it cannot be.
        cold: ColdPressure,
        /// The highest.
        highest: ColdPressure,
        /// What sets it.
        by: MaximumKind,
    },
    /// The mates of a dual differ by more than 5 psi; the softer counts.
    MatesDiffer {
        /// Axle group.
        group: usize,
        /// By how much.
        difference: PressureDifference,
    },
    /// More load than axles, rims or tires bear on any rung.
    Overloaded {
        /// Axle group.
        group: usize,
        /// Load on the group, its axles or its worst tire.
        load: Mass,
        /// What is borne.
        highest: Mass,
    },
    /// No pressure will do on any rung.
    Impossible {
        /// Axle group.
        group: usize,
        /// Why.
        why: Impossible,
    },
    /// This group sets the speed.
    SetsTheSpeed {
        /// Axle group.
        group: usize,
        /// What governs its pressure at the next speed.
        governed_by: MinimumKind,
    },
    /// Nobody knows the load: every load state is stood, this one is the heaviest.
    LoadUnknown {
        /// Load state.
        heaviest: usize,
    },
    /// Readings were taken as those of warm tires, because nobody knows.
    WarmthUnknown,
    /// Readings said to be cold were taken as warm, because the truck ran in the last hour.
    RanLastHour,
    /// Nobody knows the trailer: it needs road pressure at every speed.
    TrailerUnknown,
    /// The trailer was left on low pressure: it is raised and checked before it moves.
    TrailerLeftLow,
    /// The trailer was left with its wheel ends shut: they are opened and checked before it moves.
    TrailerLeftShut,
    /// The trailer has other tires, which were judged.
    TrailerOtherTires,
    /// The controller holds the pressures of another load state.
    OtherLoadStateSelected {
        /// The state selected.
        selected: usize,
    },
    /// The speed is held for a time or a distance only.
    HeldShortly {
        /// Rung.
        rung: usize,
    },
    /// The reading looks like a number of another unit.
    UnitSlip {
        /// Axle group.
        group: usize,
        /// The reading.
        reading: GaugePressure,
        /// Which unit for which.
        slip: Slip,
    },
    /// Pressures nobody approved were counted.
    UnapprovedCounted,
}

impl Reason {
    /// Whether it alone keeps the truck from going as planned.
    pub fn decides(&self) -> bool {
        !matches!(
            self,
            Self::KeptAsSurveyed { .. }
                | Self::SetsTheSpeed { .. }
                | Self::LoadUnknown { .. }
                | Self::WarmthUnknown
                | Self::RanLastHour
                | Self::TrailerUnknown
                | Self::TrailerOtherTires
                | Self::HeldShortly { .. }
        )
    }
}

/// What to check or do next; groups and channels by index.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Check {
    /// Gauge every tire of this group by hand.
    Gauge {
        /// Axle group.
        group: usize,
    },
    /// Raise this channel to the value of a rung, standing, and gauge again.
    Raise {
        /// Channel.
        channel: usize,
        /// Rung.
        rung: usize,
        /// Value to set, as the controller reads it.
        to: GaugePressure,
    },
    /// Lower this group to its highest or under it.
    Lower {
        /// Axle group.
        group: usize,
        /// The highest.
        to: ColdPressure,
    },
    /// Do not put air in: trained people take the wheel off and look at it.
    LeaveToTrainedPeople {
        /// Axle group.
        group: usize,
    },
    /// It may run so, but the maker counts the table's pressure as recommended: before a wheel
    /// comes off, trained people deflate the tire completely and inspect it.
    DeflateBeforeService {
        /// Axle group.
        group: usize,
        /// The table's pressure.
        recommended: ColdPressure,
    },
    /// Find why one tire of the group is softer: leak, shut wheel end, blocked line.
    FindWhySofter {
        /// Axle group.
        group: usize,
    },
    /// Wheel ends shut by hand: their tires do not follow the channel, so each is gauged.
    WheelEndsShut {
        /// Axle group.
        group: usize,
        /// How many.
        count: u32,
    },
    /// At the coldest the wheel valves of this group close: raise before parking.
    RaiseBeforeParking {
        /// Axle group.
        group: usize,
    },
    /// Nothing that somebody stands behind can be set on this channel: the tire maker is asked.
    AskMaker {
        /// Channel.
        channel: usize,
    },
    /// Ask what is loaded, or weigh it.
    FindOutLoad,
    /// Take load off.
    TakeLoadOff {
        /// Axle group.
        group: usize,
    },
    /// Read size, load range and molded maximum on the sidewalls of the trailer.
    ReadSidewalls,
    /// Open the wheel ends of the trailer.
    OpenWheelEnds,
    /// Select the load state that is on the truck, and wait until complete.
    SelectLoadState {
        /// Load state.
        state: usize,
    },
    /// Read the gauge again with its unit.
    ReadUnitAgain {
        /// Axle group.
        group: usize,
    },
    /// Couple, raise and gauge the trailer, then ask again.
    AskAgain,
}

/// One axle group of the answer.
#[derive(Debug, Clone, PartialEq)]
pub struct GroupAnswer {
    /// Index of the axle group.
    pub group: usize,
    /// Index of its air channel; `None` for a fixed pressure.
    pub channel: Option<usize>,
    /// What its pressure is known from.
    pub stance: Stance,
    /// The softest reading.
    pub reading: Option<GaugePressure>,
    /// Its cold pressure as judged at the speed named, on the careful side.
    pub cold: Option<ColdPressure>,
    /// Temperature of the air in the tire that it was taken at.
    pub taken_at: Option<Temperature>,
    /// Highest speed the pressure allows, rounded down; `None` if none.
    pub speed: Option<Speed>,
    /// The same without rounding.
    pub exact: Option<Speed>,
    /// The highest rung held.
    pub rung: Option<usize>,
    /// What governs its pressure at the next speed; `None` at the top.
    pub next: Option<MinimumKind>,
    /// What it does to the truck.
    pub verdict: Verdict,
    /// Why.
    pub reasons: Vec<Reason>,
    /// What to check.
    pub checks: Vec<Check>,
}

/// What a channel was set to for another load state, against what it needs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SetFor {
    /// Channel.
    pub channel: usize,
    /// Rung.
    pub rung: usize,
    /// Value set for the state selected, as the controller reads it.
    pub was_set: Option<GaugePressure>,
    /// Value to set for the load there is.
    pub needed: Option<GaugePressure>,
}

/// The answer to a call.
#[derive(Debug, Clone, PartialEq)]
pub struct Answer {
    /// What the driver does.
    pub verdict: Verdict,
    /// Highest speed, rounded down; `None` for a stop.
    pub speed: Option<Speed>,
    /// The same without rounding.
    pub exact: Option<Speed>,
    /// How far.
    pub how_far: HowFar,
    /// The highest rung that every group holds.
    pub rung: Option<usize>,
    /// Load state judged; the heaviest where the load is not known.
    pub load_state: usize,
    /// Each group that stands on the road.
    pub groups: Vec<GroupAnswer>,
    /// Reasons that are not of one group.
    pub reasons: Vec<Reason>,
    /// Checks that are not of one group.
    pub checks: Vec<Check>,
    /// What was set against what is needed, where another load state is selected.
    pub set_for: Vec<SetFor>,
}

impl Answer {
    /// Every reason: those that stop or slow first, then those of the whole truck.
    pub fn all_reasons(&self) -> impl Iterator<Item = &Reason> {
        let all = || self.reasons.iter().chain(self.groups.iter().flat_map(|group| &group.reasons));
        all().filter(|one| one.decides()).chain(all().filter(|one| !one.decides()))
    }

    /// Every check, those of the whole truck first, each once.
    pub fn all_checks(&self) -> Vec<Check> {
        let mut found: Vec<Check> = Vec::new();
        for check in self.checks.iter().chain(self.groups.iter().flat_map(|group| &group.checks)) {
            if !found.contains(check) {
                found.push(*check);
            }
        }
        found
    }
}
