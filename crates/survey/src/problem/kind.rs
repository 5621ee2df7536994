//! What can be wrong with a survey.

use quantity::{ColdPressure, GaugePressure, Length, Mass, Speed, Temperature};

use super::{
    ApprovalFault, Condition, DateFault, GroundFault, LadderFault, Ordered, PermitFault, Reference,
    SizeFault, SpacingBasis, StateFault, UnitFault, UnitSlip,
};

/// What is wrong, with what a message needs to say so.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub enum ProblemKind {
    /// The folder holds no survey file at all.
    EmptySurvey,
    /// `survey.toml` is not there.
    NoSurveyFile,
    /// There is no file in `hauls/`.
    NoHauls,
    /// A `.toml` file stands where nothing reads it.
    UnreadFile {
        /// The folder probably meant.
        nearest: Option<String>,
    },
    /// The file is not UTF-8 text.
    NotText {
        /// First byte that is not.
        offset: usize,
        /// Its line.
        line: usize,
    },
    /// The file is larger than a survey file may be.
    TooLarge {
        /// Its size.
        bytes: u64,
        /// What is read at most.
        limit: u64,
    },
    /// A link in the folder leads out of it.
    LinkLeaves,
    /// A path in a file leads out of the survey.
    PathLeaves,
    /// It could not be read from the disk.
    NotReadable {
        /// What the system says.
        message: String,
    },
    /// It is not TOML.
    Syntax {
        /// What the parser says.
        message: String,
    },
    /// nan or inf.
    NotFinite,
    /// A key that the file does not have.
    UnknownKey {
        /// As written.
        key: String,
        /// The key probably meant.
        nearest: Option<String>,
        /// Keys that would do.
        known: Vec<String>,
    },
    /// A required key is missing.
    MissingKey {
        /// The key.
        key: String,
        /// What it is.
        description: String,
        /// The same in other units.
        other_units: Vec<String>,
    },
    /// A key is missing that another entry asks for.
    Needed {
        /// The key.
        key: &'static str,
        /// Why.
        because: Condition,
    },
    /// A key stands where another entry leaves no place for it.
    OutOfPlace {
        /// The key.
        key: &'static str,
        /// Why.
        because: Condition,
    },
    /// Text where a number is wanted, and the like.
    WrongType {
        /// What is wanted, as JSON Schema says it.
        wanted: String,
        /// What was found.
        found: String,
    },
    /// Outside the range that makes sense.
    OutOfRange {
        /// Least, in the unit written.
        low: Option<f64>,
        /// Most, in the unit written.
        high: Option<f64>,
        /// The unit written.
        unit: String,
        /// The unit probably meant.
        slip: Option<UnitSlip>,
    },
    /// A word that is not one of the choices.
    NotOneOf {
        /// The choice probably meant.
        nearest: Option<String>,
        /// The choices.
        options: Vec<String>,
    },
    /// Too few entries.
    TooFew {
        /// Least number.
        least: u64,
    },
    /// Too many entries.
    TooMany {
        /// Greatest number.
        most: u64,
    },
    /// Text too short.
    TextTooShort {
        /// Least number of characters.
        least: u64,
    },
    /// Text too long.
    TextTooLong {
        /// Greatest number of characters.
        most: u64,
    },
    /// One quantity written twice in different units.
    TwoSpellings {
        /// One key.
        first: String,
        /// The other.
        second: String,
    },
    /// It does not fit for a reason the reader states itself.
    Unreadable {
        /// The reason.
        message: String,
    },
    /// A name that nothing in the survey has.
    UnknownName {
        /// What was looked for.
        reference: Reference,
        /// The name probably meant.
        nearest: Option<String>,
        /// Names that would do.
        known: Vec<String>,
    },
    /// A name used twice where it must be one thing.
    DuplicateName {
        /// The name.
        name: String,
    },
    /// The text cannot be read as what it should be.
    NotParsed {
        /// Why.
        message: String,
        /// One that would be.
        example: &'static str,
    },
    /// The combination has no truck, or more than one.
    Trucks {
        /// How many it has.
        count: usize,
    },
    /// Trailer tires fed from the brake supply line.
    BrakeSupplyLine,
    /// The truck does not have the channel a trailer adds to.
    ChannelNotOnTruck {
        /// The channel.
        channel: String,
    },
    /// Two vehicles give different wheel ends or exhausts for one channel.
    ChannelDiffers {
        /// The channel.
        channel: String,
        /// The key that differs.
        key: &'static str,
    },
    /// A channel that feeds no axle group of the combination.
    ChannelFeedsNothing {
        /// The channel.
        channel: String,
    },
    /// A load state says nothing of a group.
    LoadMissing {
        /// The group.
        group: String,
    },
    /// A group carries nothing.
    ZeroLoad {
        /// The group.
        group: String,
        /// Whether it can be lifted.
        liftable: bool,
    },
    /// Group masses do not add up to the gross mass.
    GrossMass {
        /// Sum of the groups.
        sum: Mass,
        /// As declared.
        declared: Mass,
    },
    /// A tire carries more than its rating.
    OverTireRating {
        /// The group.
        group: String,
        /// The load state.
        load_state: String,
        /// Load of the worst tire.
        load: Mass,
        /// Its rating for the fitment.
        rating: Mass,
        /// Whether it stands in a dual.
        dual: bool,
    },
    /// A rim carries more than its stamp.
    OverRimRating {
        /// The group.
        group: String,
        /// The load state.
        load_state: String,
        /// Load of the worst wheel.
        load: Mass,
        /// Its stamp.
        rating: Mass,
    },
    /// A group carries more than its axles may.
    OverAxleRating {
        /// The group.
        group: String,
        /// The load state.
        load_state: String,
        /// Load.
        load: Mass,
        /// Rating.
        rating: Mass,
    },
    /// Mass of a load looks like pounds.
    MassInPounds {
        /// As written.
        given: Mass,
        /// What the tire or group should be about.
        expected: Mass,
    },
    /// A molded or given rating contradicts the load index.
    RatingAgainstIndex {
        /// As written.
        given: Mass,
        /// From the load index.
        expected: Mass,
    },
    /// Duals on a tire that has no dual rating.
    NoDualRating {
        /// The tire.
        tire: String,
    },
    /// Duals stand too close.
    DualsTooClose {
        /// As written.
        spacing: Length,
        /// Least.
        least: Length,
        /// Where that comes from.
        basis: SpacingBasis,
    },
    /// Duals of too different diameter.
    DualsMismatched {
        /// As written.
        difference: Length,
        /// Most.
        most: Length,
    },
    /// A size that cannot be.
    Size(SizeFault),
    /// A pressure above what the tire or rim may hold.
    OverMaximum {
        /// The pressure.
        pressure: ColdPressure,
        /// The limit.
        maximum: ColdPressure,
        /// Key of the limit.
        limit: &'static str,
    },
    /// A pressure under the least the tire may have.
    UnderMinimum {
        /// The pressure.
        pressure: ColdPressure,
        /// The limit.
        minimum: ColdPressure,
        /// Key of the limit.
        limit: &'static str,
    },
    /// A tube-type tire on an air channel.
    TubeTypeOnChannel {
        /// The tire.
        tire: String,
    },
    /// A bias-ply tire on an air channel.
    BiasOnChannel {
        /// The tire.
        tire: String,
    },
    /// A speed above the tire's symbol.
    AboveSpeedSymbol {
        /// The speed.
        speed: Speed,
        /// The tire.
        tire: String,
        /// Its symbol.
        symbol: String,
        /// Speed of the symbol.
        rated: Speed,
        /// Whether it is the road's limit, which the rung's cap may keep the truck under.
        limit_of_road: bool,
    },
    /// A speed that looks like miles an hour.
    SpeedInMilesAnHour {
        /// As written.
        given: Speed,
        /// The key to write instead.
        key: String,
    },
    /// The governor stops below a pressure of the tires.
    GovernorTooLow {
        /// Cut-out.
        cut_out: GaugePressure,
        /// The pressure wanted, or the rated one.
        wanted: ColdPressure,
        /// The group or channel it is for.
        target: String,
        /// Whether it is only the pressure of the rated load, which may not be carried.
        rated: bool,
    },
    /// Two pressures in the wrong order.
    WrongOrder {
        /// Which.
        which: Ordered,
        /// The one that should be lower.
        low: GaugePressure,
        /// The one that should be higher.
        high: GaugePressure,
    },
    /// Temperatures in the wrong order.
    Temperatures {
        /// Coldest.
        coldest: Temperature,
        /// Warmest.
        warmest: Temperature,
    },
    /// The ordinary day's temperature is not between coldest and warmest.
    NominalOutside,
    /// A leg ends before it begins.
    LegBackwards,
    /// The first leg does not begin at zero.
    RouteStart {
        /// Where it begins.
        at: Length,
    },
    /// Legs leave a gap.
    LegGap {
        /// End of the leg before.
        from: Length,
        /// Begin of this one.
        to: Length,
    },
    /// Legs overlap.
    LegOverlap {
        /// Begin of this leg.
        from: Length,
        /// End of the leg before.
        to: Length,
    },
    /// A place beyond the ends of the route.
    OffRoute {
        /// The place.
        at: Length,
        /// Length of the route.
        length: Length,
    },
    /// No grade, no points, no track.
    NoElevation,
    /// Elevation from more than one of grades, points and track.
    TwoElevations,
    /// Chainage of points that does not rise.
    NotRising,
    /// A track much longer or shorter than the legs.
    TrackLength {
        /// The track.
        track: Length,
        /// The legs.
        legs: Length,
    },
    /// No rung is meant for a leg.
    NoRungForLeg {
        /// The leg.
        leg: String,
    },
    /// More than one rung is meant for a surface.
    SurfaceTwice {
        /// The other rung.
        other: String,
    },
    /// More rungs than the controller stores.
    RungsOverStored {
        /// Rungs.
        rungs: usize,
        /// Stored.
        stored: u32,
    },
    /// Speed caps that do not rise.
    CapsNotRising {
        /// The cap before.
        before: Speed,
        /// This one.
        cap: Speed,
    },
    /// Laden lighter than empty.
    LadenLighter {
        /// Empty.
        empty: Mass,
        /// Laden.
        laden: Mass,
    },
    /// More wheel ends shut than there are.
    WheelEndsShut {
        /// Shut.
        shut: u32,
        /// All.
        all: u32,
    },
    /// Cycles that do not fit into a day.
    CyclesInDay {
        /// Hours of standing alone.
        hours: f64,
    },
    /// Elevation points that do not reach from end to end.
    ElevationShort {
        /// First point.
        from: Length,
        /// Last point.
        to: Length,
        /// Length of the route.
        length: Length,
    },
    /// A pressure that looks like psi.
    PressureInPsi {
        /// As written.
        given: ColdPressure,
        /// Rated pressure of the tire.
        rated: ColdPressure,
    },
    /// A foreign file of the survey could not be read.
    ImportFailed {
        /// What the reader says.
        message: String,
    },
    /// Something to know about a foreign file that was read.
    ImportFinding {
        /// What the reader says.
        message: String,
        /// Line or row in that file.
        line: Option<usize>,
    },
    /// A table of maker's rows without a mapping.
    MappingMissing {
        /// A mapping that would read it, as far as one was recognized.
        proposal: Option<String>,
    },
    /// A day that cannot be.
    Date(DateFault),
    /// Something about a tire maker's approval.
    Approval(ApprovalFault),
    /// Something about an authority's permit.
    Permit(PermitFault),
    /// Something about a unit of the register.
    Unit(UnitFault),
    /// Something about a load state.
    State(StateFault),
    /// Something about a search for the best ladder.
    Ladder(LadderFault),
    /// Something about the ground of a leg, or the upkeep of the road.
    Ground(GroundFault),
}
