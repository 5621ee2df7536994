//! What messages about problems distinguish.

use model::tire::Construction;
use quantity::{Length, Volume};

/// A value that fits its range in another unit.
#[derive(Debug, Clone, PartialEq)]
pub struct UnitSlip {
    /// Unit it was probably typed in.
    pub unit: String,
    /// The key to write instead.
    pub key: String,
    /// The number, as written.
    pub value: f64,
}

/// What a name refers to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Reference {
    /// A file in `tires/`.
    Tire,
    /// A file in `vehicles/`.
    Vehicle,
    /// A file in `vehicles/`, or a unit of the register.
    Member,
    /// A file in `combinations/`.
    Combination,
    /// A file in `routes/`.
    Route,
    /// An air channel of the vehicle.
    Channel,
    /// A load state of the combination.
    LoadState,
    /// A rung of the combination.
    Rung,
    /// A chain state of the combination.
    ChainState,
    /// An axle group of the combination, as `vehicle.group`.
    Group,
    /// A file of the survey.
    File,
}

/// When a key is needed or out of place.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Condition {
    /// The group is on an air channel.
    OnChannel,
    /// The group is on no air channel.
    WithoutChannel,
    /// The wheel valve closes itself.
    SelfClosing,
    /// The wheel valve is not self-closing.
    NotSelfClosing,
    /// Duals are fitted.
    Dual,
    /// Singles are fitted.
    Single,
    /// The vehicle is a truck.
    Truck,
    /// The vehicle is a trailer.
    Trailer,
    /// The trailer has air channels.
    TrailerWithChannels,
    /// The compressor breathes boost.
    Boosted,
    /// The compressor breathes ambient air.
    NotBoosted,
    /// The element is a tube.
    Tube,
    /// The element is a part.
    Part,
    /// Neither the load state nor the group gives it.
    NoDefaultShare,
    /// The combination's first vehicle with the channel must give it.
    ChannelNeedsIt,
    /// Maker's rows are given.
    RowsGiven,
    /// Maker's rows stand in the tire's own file.
    RowsInline,
    /// Maker's rows do not come from a file.
    NoRowsFile,
    /// No track is given.
    NoTrack,
    /// The loads of the state are known.
    LoadsKnown,
    /// The loads of the state are not known.
    LoadsUnknown,
    /// The combination has no rungs.
    WithoutRungs,
    /// The combination has rungs.
    WithRungs,
}

/// Two values whose order is fixed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Ordered {
    /// Governor cut-in below cut-out.
    GovernorCutIn,
    /// Protection valve shuts below the pressure at which it opens.
    ProtectionShuts,
    /// Brake threshold not above the pressure at which tire air is taken again.
    BrakeThreshold,
    /// The protection valve shuts at or below the brake threshold.
    ProtectionUnderBrakeThreshold,
    /// The protection valve opens at or below governor cut-in.
    ProtectionOpensUnderCutIn,
    /// Brake resume pressure not above governor cut-in.
    ResumeUnderCutIn,
}

/// How a size contradicts itself.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum SizeFault {
    /// Overall diameter against the designation.
    Diameter {
        /// As written.
        given: Length,
        /// From the designation.
        expected: Length,
    },
    /// Rim diameter against the designation.
    RimDiameter {
        /// As written.
        given: Length,
        /// From the designation.
        expected: Length,
    },
    /// Section width against the designation.
    SectionWidth {
        /// As written.
        given: Length,
        /// From the designation.
        expected: Length,
    },
    /// The loaded radius is not smaller than the free one.
    LoadedRadius {
        /// As written.
        given: Length,
        /// Half the diameter.
        free: Length,
    },
    /// The tire would stand on its rim.
    LoadedRadiusUnderRim {
        /// As written.
        given: Length,
        /// Half the rim diameter.
        rim: Length,
    },
    /// The rim is not smaller than the tire.
    RimOverDiameter {
        /// Rim diameter.
        rim: Length,
        /// Overall diameter.
        diameter: Length,
    },
    /// Air volume against an estimate from the dimensions.
    AirVolume {
        /// As written.
        given: Volume,
        /// From the dimensions.
        expected: Volume,
    },
    /// Construction against the designation.
    Construction {
        /// As the designation says.
        molded: Construction,
    },
}

/// Where a least dual spacing comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum SpacingBasis {
    /// A table row for the size.
    SizeTable,
    /// Section width and the gap wanted.
    SectionWidth,
}
