//! What is told about a track that was read, and why one could not be.

use quantity::Length;

/// Where in the file a point stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Place {
    /// Number of the point in the file, from 1, counted over all its tracks.
    pub point: usize,
    /// Line of the file, from 1; JSON readers do not tell it.
    pub line: Option<usize>,
}

impl std::fmt::Display for Place {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "point {}", self.point)?;
        self.line.map_or(Ok(()), |line| write!(f, " (line {line})"))
    }
}

/// Form of a file that holds a track.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Format {
    /// GPS Exchange Format 1.0 or 1.1.
    Gpx,
    /// `GeoJSON` (RFC 7946).
    GeoJson,
    /// Keyhole Markup Language 2.
    Kml,
    /// A table of text with columns found by name.
    Csv,
}

impl std::fmt::Display for Format {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(match self {
            Self::Gpx => "GPX",
            Self::GeoJson => "GeoJSON",
            Self::Kml => "KML",
            Self::Csv => "CSV",
        })
    }
}

/// Parts of a file that are not a track and were not used.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unused {
    /// Single points: waypoints, placemarks.
    Points,
    /// Planned routes beside a recorded track.
    PlannedRoutes,
    /// Areas.
    Areas,
}

impl std::fmt::Display for Unused {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(match self {
            Self::Points => "single points",
            Self::PlannedRoutes => "planned routes",
            Self::Areas => "areas",
        })
    }
}

/// One of several tracks in a file.
#[derive(Debug, Clone, PartialEq)]
pub struct TrackPart {
    /// Its name, or its number in the file.
    pub name: String,
    /// Its length.
    pub length: Length,
}

impl std::fmt::Display for TrackPart {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{} ({:.2} km)", self.name, self.length.as_km())
    }
}

/// Something to know about a track that was read.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum TrackFinding {
    /// The name of the file promises another form than its contents have; the contents were read.
    #[error("the file name says {named}, the contents are {found} and were read as that")]
    Misnamed {
        /// The form by name.
        named: Format,
        /// The form by contents.
        found: Format,
    },
    /// Points with something that is no finite number, left out.
    #[error("{count} points left out: no readable number, first '{value}' at {first}")]
    Unreadable {
        /// The first of them.
        first: Place,
        /// What stands there.
        value: String,
        /// How many.
        count: usize,
    },
    /// Points outside ±90 degrees latitude or ±180 degrees longitude, left out.
    #[error("{count} points left out: no place on earth, first '{value}' at {first}")]
    OutOfRange {
        /// The first of them.
        first: Place,
        /// Latitude and longitude as written.
        value: String,
        /// How many.
        count: usize,
    },
    /// The whole file has latitude and longitude exchanged; they were put right.
    #[error("latitude and longitude are exchanged throughout ({points} points); put right")]
    ExchangedThroughout {
        /// Points of the file.
        points: usize,
    },
    /// Single points with latitude and longitude exchanged, put right.
    #[error("latitude and longitude exchanged at {count} points, first {first}; put right")]
    Exchanged {
        /// The first of them.
        first: Place,
        /// How many.
        count: usize,
    },
    /// Points far off from those before and after, left out.
    #[error("{count} jumping points left out, first {first}, {:.0} m off its neighbors", .off.as_m())]
    Jump {
        /// The first of them.
        first: Place,
        /// How far the first is from the point before it (the point after it at the start).
        off: Length,
        /// How many.
        count: usize,
    },
    /// Points that repeat the place before them, merged with it.
    #[error("{count} points repeat the place before them and were merged, first {first}")]
    Repeated {
        /// The first of them.
        first: Place,
        /// How many.
        count: usize,
    },
    /// A stretch without points; it counts as straight.
    #[error("no points for {:.0} m from km {:.3} (after {after}); taken as straight", .length.as_m(), .at.as_km())]
    Gap {
        /// The last point before it.
        after: Place,
        /// Chainage where it begins.
        at: Length,
        /// Its length.
        length: Length,
    },
    /// Points without elevation.
    #[error("{without} of {points} points have no elevation")]
    ElevationMissing {
        /// Points without.
        without: usize,
        /// All points of the track.
        points: usize,
    },
    /// Every elevation is zero, as drawing programs write it; taken as missing.
    #[error("all {points} elevations are zero; taken as missing")]
    ElevationAllZero {
        /// Points of the track.
        points: usize,
    },
    /// Elevations that no road has, taken as missing.
    #[error("{count} elevations taken as missing, first {:.0} m at {first}", .value.as_m())]
    ElevationImplausible {
        /// The first of them.
        first: Place,
        /// Its elevation.
        value: Length,
        /// How many.
        count: usize,
    },
    /// Rises or falls between neighbors that no road has; kept, smoothing spreads them.
    #[error("elevation steps {count} times as no road does, first by {:.1} m within {:.1} m at km {:.3} ({first}); kept", .rise.as_m(), .within.as_m(), .at.as_km())]
    ElevationStep {
        /// The point after the first step.
        first: Place,
        /// Its chainage.
        at: Length,
        /// The first step, rising positive.
        rise: Length,
        /// Its distance to the point before.
        within: Length,
        /// How many there are.
        count: usize,
    },
    /// A smoothed grade that hardly any haul road has: the elevations are doubtful.
    #[error("grade of {:.0} % at km {:.3}, steeper than haul roads are; check the elevations", .grade * 100.0, .at.as_km())]
    Steep {
        /// Chainage of the steepest place.
        at: Length,
        /// Its grade as rise over run.
        grade: f64,
    },
    /// The column of elevations names no unit; meters were assumed.
    #[error("column '{column}' names no unit; its elevations are taken as meters")]
    ElevationUnitAssumed {
        /// The column's heading.
        column: String,
    },
    /// Several tracks whose ends meet were joined.
    #[error("{parts} tracks whose ends meet were joined")]
    Joined {
        /// How many.
        parts: usize,
    },
    /// Several tracks that do not meet; the longest was used.
    #[error("several tracks do not meet: {used} used, left out: {}", list(.left_out))]
    SeveralTracks {
        /// The one used.
        used: TrackPart,
        /// The others.
        left_out: Vec<TrackPart>,
    },
    /// Things in the file that are no track, not used.
    #[error("not used: {count} {what}")]
    NotUsed {
        /// What they are.
        what: Unused,
        /// How many.
        count: usize,
    },
    /// The track ends where it began: perhaps a whole round trip was recorded.
    #[error(
        "the track ends {:.0} m from its start after {:.2} km; if it is a round trip, cut it at the turning place",
        .apart.as_m(), .length.as_km()
    )]
    EndsAtStart {
        /// Distance from the last point to the first.
        apart: Length,
        /// Length of the track.
        length: Length,
    },
}

fn list(parts: &[TrackPart]) -> String {
    parts.iter().map(ToString::to_string).collect::<Vec<_>>().join(", ")
}

/// Why a file gives no track.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum TrackError {
    /// Nothing in it.
    #[error("{file}: the file is empty; export the track again")]
    Empty {
        /// The file.
        file: String,
    },
    /// Not one of the forms read.
    #[error("{file}: this is {found}, not a track; give GPX, GeoJSON, KML or CSV")]
    NotATrack {
        /// The file.
        file: String,
        /// What it looks like.
        found: String,
    },
    /// A packed file.
    #[error("{file}: this is a packed (zip) file; unpack it and give the KML or CSV inside")]
    Packed {
        /// The file.
        file: String,
    },
    /// It ends in the middle.
    #[error(
        "{file}: ends in the middle at line {line}, after {points} points; export or copy it again"
    )]
    Truncated {
        /// The file.
        file: String,
        /// Its last line.
        line: usize,
        /// Points read up to there.
        points: usize,
    },
    /// It breaks the rules of its form.
    #[error("{file}{}: {detail}; export the track again", at_line(*.line))]
    Malformed {
        /// The file.
        file: String,
        /// The line, where it is known.
        line: Option<usize>,
        /// What the reader found.
        detail: String,
    },
    /// No row of the table names latitude and longitude.
    #[error("{file}: no columns for latitude and longitude (lat, latitude; lon, lng, longitude) among: {}", .found.join(", "))]
    NoColumns {
        /// The file.
        file: String,
        /// The headings of the first row.
        found: Vec<String>,
    },
    /// Well formed, but without a line.
    #[error("{file}: no track or line in it ({points} single points, {areas} areas)")]
    NoLine {
        /// The file.
        file: String,
        /// Single points in it.
        points: usize,
        /// Areas in it.
        areas: usize,
    },
    /// Fewer than two different places are left.
    #[error("{file}: {usable} of {points} points can be used; a track needs two different places{}", because(.findings))]
    TooFewPoints {
        /// The file.
        file: String,
        /// Points in it.
        points: usize,
        /// Points left.
        usable: usize,
        /// What happened to the others.
        findings: Vec<TrackFinding>,
    },
}

fn at_line(line: Option<usize>) -> String {
    line.map_or(String::new(), |line| format!(", line {line}"))
}

fn because(findings: &[TrackFinding]) -> String {
    findings.iter().fold(String::new(), |text, finding| text + "; " + &finding.to_string())
}
