//! Recorded or drawn tracks: from the bytes of a file to places by chainage.
//!
//! A file is read by its contents, whatever its name says. A bad point costs itself, never the
//! file, and everything left out, joined or assumed is told as a [`TrackFinding`]. Chainage is the
//! sum of geodesic distances on the WGS 84 ellipsoid; the points are not thinned.

mod clean;
mod finding;
mod follow;
mod geo_json;
mod join;
mod line;
mod plane;
mod position;
mod raw;
mod smooth;
mod table;
mod xml;

#[cfg(test)]
mod recorded;

use quantity::Length;

pub use finding::{Format, Place, TrackError, TrackFinding, TrackPart, Unused};
pub use follow::{Fix, OnTrack};
pub use plane::MapPoint;
pub use position::Position;
pub use smooth::{NoProfile, RESAMPLING_STEP, profile};

/// A place on a track.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TrackPoint {
    /// Chainage from the first point.
    pub at: Length,
    /// Where it is.
    pub position: Position,
    /// Elevation as recorded, where it was.
    pub elevation: Option<Length>,
}

/// A track by chainage, with what has to be known about it.
#[derive(Debug, Clone, PartialEq)]
pub struct Track {
    /// Points with strictly rising chainage, at least two.
    pub points: Vec<TrackPoint>,
    /// What was left out, joined, assumed or looks wrong.
    pub findings: Vec<TrackFinding>,
}

impl Track {
    /// Length along the track.
    pub fn length(&self) -> Length {
        self.points.last().map_or(Length::ZERO, |point| point.at)
    }

    /// Chainage of the recorded point nearest to a place, and how far the place lies from it.
    pub fn nearest(&self, place: Position) -> Option<(Length, Length)> {
        let off = |point: &TrackPoint| (point.at, point.position.distance_to(place));
        self.points.iter().map(off).min_by(|a, b| a.1.total_cmp(&b.1))
    }

    /// Where on the track a drive was, position by position in order of time; `None` where none of the
    /// track is within `reach`. Where the track passes a place twice, the likeliest way through all
    /// positions decides.
    pub fn follow(&self, fixes: &[Fix], reach: Length) -> Vec<Option<OnTrack>> {
        line::Line::of(self)
            .map_or_else(|| vec![None; fixes.len()], |line| follow::follow(&line, fixes, reach))
    }
}

/// Reads a track from GPX 1.0 or 1.1, `GeoJSON`, KML, or a table of text.
///
/// A table needs headings: `lat` or `latitude`; `lon`, `lng` or `longitude`; and for elevation
/// `ele`, `elevation`, `alt` or `altitude`, with `m` or `ft` in the heading.
///
/// # Errors
/// [`TrackError`] if the file is no track, is cut off, breaks its format, or leaves fewer than two
/// different places.
///
/// ```
/// let text = "lat,lon,ele (m)\n61.50,-120.00,210\n61.51,-120.00,214\n";
/// let track = survey::track::read(text.as_bytes(), "spur.csv")?;
/// assert!((track.length().as_m() - 1114.6).abs() < 0.5);
/// # Ok::<(), survey::track::TrackError>(())
/// ```
pub fn read(bytes: &[u8], file_name: &str) -> Result<Track, TrackError> {
    let file = || file_name.to_owned();
    if bytes.starts_with(b"PK\x03\x04") {
        return Err(TrackError::Packed { file: file() });
    }
    let text = crate::sheet::decode(bytes);
    let start = text.trim_start();
    if start.is_empty() {
        return Err(TrackError::Empty { file: file() });
    }
    let mut raw = if start.contains('\0') {
        let found = "binary data".to_owned();
        return Err(TrackError::NotATrack { file: file(), found });
    } else if start.starts_with('<') {
        xml::read(&text, file_name)?
    } else if start.starts_with(['{', '[']) {
        geo_json::read(&text, file_name)?
    } else {
        table::read(&text, file_name)?
    };
    let found = raw.format;
    if let Some(named) = named_format(file_name).filter(|named| *named != found) {
        raw.findings.insert(0, TrackFinding::Misnamed { named, found });
    }
    join::assemble(raw, file_name)
}

fn named_format(file_name: &str) -> Option<Format> {
    let (_, extension) = file_name.rsplit_once('.')?;
    match extension.to_ascii_lowercase().as_str() {
        "gpx" => Some(Format::Gpx),
        "geojson" | "json" => Some(Format::GeoJson),
        "kml" => Some(Format::Kml),
        "csv" | "txt" | "tsv" => Some(Format::Csv),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    #[test]
    fn what_is_no_track_is_named() {
        let error = |bytes: &[u8], name| read(bytes, name).unwrap_err().to_string();
        assert!(error(b"  \n", "a.gpx").contains("a.gpx: the file is empty"));
        assert!(error(b"PK\x03\x04...", "a.kmz").contains("packed"));
        assert!(error(b"<html><body/></html>", "a.gpx").contains("outermost element <html>"));
        assert!(error(b"\x00\x01\x02", "a.gpx").contains("binary data"));
        assert!(
            error(b"{\"type\":\"Point\",\"coordinates\":[1,2]}", "a.geojson")
                .contains("1 single points")
        );
        assert!(error(b"{\"a\":1}", "a.geojson").contains("a.geojson"));
    }

    #[test]
    fn one_place_is_no_track_and_the_reason_is_told() {
        let error = read(b"lat,lon\n50,10\n50,10\n95,200\n", "a.csv").unwrap_err();
        let told = error.to_string();
        assert!(told.contains("1 of 3 points can be used"), "{told}");
        assert!(told.contains("no place on earth"), "{told}");
    }

    #[test]
    fn contents_win_over_the_name() {
        let track = read(b"lat,lon,ele m\n50,10,1\n50.001,10,2\n", "a.gpx").unwrap();
        let told = TrackFinding::Misnamed { named: Format::Gpx, found: Format::Csv };
        assert_eq!(track.findings, [told]);
    }

    #[test]
    fn the_nearest_point_gives_its_chainage() {
        let track = read(b"lat,lon,ele m\n50,10,1\n50.001,10,2\n50.002,10,2\n", "a.csv").unwrap();
        let (at, off) = track.nearest(Position::from_degrees(50.0011, 10.0).unwrap()).unwrap();
        assert_eq!(at, track.points[1].at);
        assert!((off.as_m() - 11.1).abs() < 0.1, "{off}");
    }

    proptest! {
        #[test]
        fn whatever_a_file_holds_reading_ends_with_rising_chainage_or_an_error(
            pieces in prop::collection::vec(
                prop::sample::select(vec![
                    "<gpx>", "<kml>", "<trk>", "<trkseg>", "<trkpt lat='1e3' lon='-1'>",
                    "<trkpt lat='50.1' lon='10'/>", "<ele>1e308</ele>", "</trkpt>", "</trkseg>",
                    "</trk>", "</gpx>", "<LineString>", "<coordinates>", "1,2,3 180,90,-9 ",
                    "</coordinates>", "</LineString>", "</kml>", "<!--", "&x;", "\u{e9}\n",
                    "lat,lon,ele\n", "50,10,1\n", "-50,190,x\n", "0;0\n", "\"", "]]>",
                    "{\"type\":\"LineString\",\"coordinates\":[[1,2],[3,4]]}",
                ]),
                0..25,
            ),
        ) {
            let text = pieces.concat();
            if let Ok(track) = read(text.as_bytes(), "any.gpx") {
                prop_assert!(track.points.len() > 1);
                prop_assert!(track.points.windows(2).all(|pair| pair[0].at < pair[1].at));
            }
        }
    }
}
