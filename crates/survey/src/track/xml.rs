//! GPX and KML: one walk over the elements, so that a bad point costs itself and not the file.
//!
//! Elements are known by their local name, whatever prefix the writer chose.

use quick_xml::errors::SyntaxError;
use quick_xml::escape::resolve_predefined_entity;
use quick_xml::events::{BytesStart, Event};
use quick_xml::{Error, Reader};

use super::finding::{Format, TrackError};
use super::raw::{Line, Raw, RawPoint, number};

/// Reads GPX or KML, told apart by the outermost element.
pub(super) fn read(text: &str, file: &str) -> Result<Raw, TrackError> {
    let mut reader = Reader::from_str(text);
    reader.config_mut().expand_empty_elements = true;
    let mut walk = Walk::new(text);
    loop {
        let start = offset(reader.buffer_position());
        match reader.read_event() {
            Ok(Event::Start(element)) => walk.open(&element, start, file)?,
            Ok(Event::End(_)) => walk.close(),
            Ok(Event::Text(content)) => walk.content(&content, start),
            Ok(Event::CData(content)) => walk.content(&content, start),
            Ok(Event::GeneralRef(entity)) => {
                if let Some(plain) = resolve_predefined_entity(&entity) {
                    walk.content(plain, start);
                }
            }
            Ok(Event::Eof) if walk.path.is_empty() => return walk.finish(file),
            Ok(Event::Eof) => return Err(walk.truncated(file)),
            Ok(_) => {}
            Err(Error::Syntax(cause)) if cause != SyntaxError::InvalidBangMarkup => {
                return Err(walk.truncated(file));
            }
            Err(cause) => {
                let line = Some(walk.lines.at(offset(reader.error_position())));
                let detail = cause.to_string();
                return Err(TrackError::Malformed { file: file.to_owned(), line, detail });
            }
        }
    }
}

fn offset(position: u64) -> usize {
    usize::try_from(position).unwrap_or(usize::MAX)
}

/// Line numbers of rising byte offsets.
struct LineNumbers<'a> {
    text: &'a str,
    offset: usize,
    line: usize,
}

impl LineNumbers<'_> {
    fn at(&mut self, offset: usize) -> usize {
        let end = offset.min(self.text.len());
        if end > self.offset {
            self.line +=
                self.text.get(self.offset..end).map_or(0, |part| part.matches('\n').count());
            self.offset = end;
        }
        self.line
    }
}

struct Walk<'a> {
    lines: LineNumbers<'a>,
    /// Local names of the elements open now.
    path: Vec<String>,
    /// Text of the innermost element so far, and the line it begins on.
    text: String,
    text_line: usize,
    raw: Option<Raw>,
    routes: Vec<Line>,
    name: Option<String>,
    recording: usize,
    point: Option<RawPoint>,
}

impl<'a> Walk<'a> {
    fn new(text: &'a str) -> Self {
        Self {
            lines: LineNumbers { text, offset: 0, line: 1 },
            path: Vec::new(),
            text: String::new(),
            text_line: 1,
            raw: None,
            routes: Vec::new(),
            name: None,
            recording: 0,
            point: None,
        }
    }

    fn parent(&self) -> &str {
        self.path.last().map_or("", String::as_str)
    }

    fn content(&mut self, text: &str, start: usize) {
        if self.text.is_empty() {
            self.text_line = self.lines.at(start);
        }
        self.text.push_str(text);
    }

    fn open(&mut self, element: &BytesStart, start: usize, file: &str) -> Result<(), TrackError> {
        let line = self.lines.at(start);
        let local = element.local_name();
        let name: &str = local.as_ref();
        self.text.clear();
        if self.raw.is_none() {
            let format = match name {
                "gpx" => Format::Gpx,
                "kml" => Format::Kml,
                _ => {
                    let found = format!("XML with the outermost element <{name}>");
                    return Err(TrackError::NotATrack { file: file.to_owned(), found });
                }
            };
            self.raw = Some(Raw::new(format));
        }
        match name {
            "trk" | "rte" | "MultiTrack" | "LineString" => self.recording += 1,
            "Placemark" => self.name = None,
            "Track" if self.parent() != "MultiTrack" => self.recording += 1,
            _ => {}
        }
        if matches!(name, "trk" | "rte") {
            self.name = None;
        }
        let fresh = Line { name: self.name.clone(), recording: self.recording, points: Vec::new() };
        let inside_boundary = self.parent().ends_with("BoundaryIs");
        if let Some(raw) = &mut self.raw {
            match name {
                "trkseg" | "LineString" | "Track" => raw.lines.push(fresh),
                "rte" => self.routes.push(fresh),
                "wpt" | "Point" => raw.single_points += 1,
                "Polygon" => raw.areas += 1,
                "LinearRing" if !inside_boundary => raw.areas += 1,
                "trkpt" | "rtept" => self.point = gpx_point(raw, element, line),
                _ => {}
            }
        }
        self.path.push(name.to_owned());
        Ok(())
    }

    fn close(&mut self) {
        let name = self.path.pop().unwrap_or_default();
        let parent = self.parent().to_owned();
        let text = std::mem::take(&mut self.text);
        match (name.as_str(), parent.as_str()) {
            ("ele", "trkpt" | "rtept") => {
                if let Some(point) = &mut self.point {
                    point.elevation = number(&text);
                }
            }
            ("name", "trk" | "rte" | "Placemark") => self.rename(text.trim()),
            _ => {}
        }
        let Some(raw) = &mut self.raw else { return };
        match (name.as_str(), parent.as_str()) {
            ("trkpt", _) => self.point.take().into_iter().for_each(|point| raw.push(point)),
            ("rtept", _) => {
                if let (Some(point), Some(route)) = (self.point.take(), self.routes.last_mut()) {
                    route.points.push(point);
                }
            }
            ("coordinates", "LineString") => {
                for (row, tuples) in text.lines().enumerate() {
                    for tuple in tuples.split_whitespace() {
                        kml_point(raw, tuple, ',', self.text_line + row);
                    }
                }
            }
            ("coord", "Track") => kml_point(raw, text.trim(), ' ', self.text_line),
            _ => {}
        }
    }

    /// A name may stand before or after the line it belongs to.
    fn rename(&mut self, name: &str) {
        self.name = Some(name.to_owned()).filter(|name| !name.is_empty());
        let lines = self.raw.iter_mut().flat_map(|raw| &mut raw.lines).chain(&mut self.routes);
        for line in lines.filter(|line| line.recording == self.recording && line.name.is_none()) {
            line.name.clone_from(&self.name);
        }
    }

    fn truncated(mut self, file: &str) -> TrackError {
        let line = self.lines.at(usize::MAX);
        let points = self.raw.map_or(0, |raw| raw.count);
        TrackError::Truncated { file: file.to_owned(), line, points }
    }

    fn finish(self, file: &str) -> Result<Raw, TrackError> {
        let Some(mut raw) = self.raw else {
            let found = "text without any element".to_owned();
            return Err(TrackError::NotATrack { file: file.to_owned(), found });
        };
        if raw.lines.iter().all(|line| line.points.is_empty()) {
            raw.lines = self.routes;
        } else {
            raw.planned_routes = self.routes.len();
        }
        Ok(raw)
    }
}

fn gpx_point(raw: &mut Raw, element: &BytesStart, line: usize) -> Option<RawPoint> {
    let place = raw.next_place(Some(line));
    let attribute = |name| {
        let found = element.try_get_attribute(name).ok().flatten();
        found.map(|attribute| attribute.value.into_owned())
    };
    let (latitude, longitude) = (attribute("lat"), attribute("lon"));
    let numbers = latitude.as_deref().and_then(number).zip(longitude.as_deref().and_then(number));
    if numbers.is_none() {
        let written = |text: Option<String>| text.unwrap_or_else(|| "nothing".to_owned());
        raw.unreadable(place, &format!("{}, {}", written(latitude), written(longitude)));
    }
    let (latitude, longitude) = numbers?;
    Some(RawPoint { place, latitude, longitude, elevation: None })
}

/// `longitude,latitude[,altitude]`, or the same with blanks in an extension track.
fn kml_point(raw: &mut Raw, tuple: &str, separator: char, line: usize) {
    let place = raw.next_place(Some(line));
    let mut parts = tuple.split(separator).filter(|part| separator != ' ' || !part.is_empty());
    let longitude = parts.next().and_then(number);
    match longitude.zip(parts.next().and_then(number)) {
        Some((longitude, latitude)) => {
            let elevation = parts.next().and_then(number);
            raw.push(RawPoint { place, latitude, longitude, elevation });
        }
        None => raw.unreadable(place, tuple),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn gpx_elements_outside_the_standard_do_no_harm() {
        let text = r#"<?xml version="1.0"?>
<x:gpx version="1.0" xmlns:x="http://www.topografix.com/GPX/1/0">
<x:trk><x:name>North &amp; back</x:name><x:trkseg>
<x:trkpt lat="61.5" lon="-120.25"><x:ele>212.5</x:ele><x:course>12</x:course><x:magvar>3</x:magvar>
  <x:extensions><x:ele>9</x:ele></x:extensions></x:trkpt>
<x:trkpt lon="-120.26" lat="61.5"/>
<x:trkpt lat="nan" lon="-120.26"/>
</x:trkseg></x:trk><x:wpt lat="1" lon="2"/></x:gpx>"#;
        let raw = read(text, "t.gpx").unwrap();
        assert_eq!(raw.lines.len(), 1);
        assert_eq!(raw.lines[0].name.as_deref(), Some("North & back"));
        let points = &raw.lines[0].points;
        assert_eq!(points.len(), 2);
        assert_eq!((points[0].latitude, points[0].longitude), (61.5, -120.25));
        assert_eq!((points[0].elevation, points[1].elevation), (Some(212.5), None));
        assert_eq!(points[1].place.line, Some(6));
        assert_eq!((raw.count, raw.single_points), (3, 1));
        assert_eq!(
            raw.findings[0].to_string(),
            "1 points left out: no readable number, first 'nan, -120.26' at point 3 (line 7)"
        );
    }

    #[test]
    fn kml_lines_and_extension_tracks_are_read() {
        let text = "<kml xmlns:gx='g'><Document><Placemark><name>haul</name><LineString><coordinates>
 13.1,52.1,40 13.2,52.1,41
 13.3,52.1
</coordinates></LineString></Placemark>
<Placemark><gx:Track><when>2020</when><gx:coord>13.3 52.1 7</gx:coord></gx:Track></Placemark>
<Placemark><Polygon><outerBoundaryIs><LinearRing><coordinates>1,1 2,2</coordinates></LinearRing></outerBoundaryIs></Polygon></Placemark>
</Document></kml>";
        let raw = read(text, "t.kml").unwrap();
        assert_eq!(raw.lines.len(), 2);
        let (drawn, recorded) = (&raw.lines[0], &raw.lines[1]);
        assert_eq!((drawn.points.len(), recorded.points.len(), raw.areas), (3, 1, 1));
        assert_eq!(drawn.points[2].place.line, Some(3));
        assert_eq!((drawn.points[0].latitude, drawn.points[1].elevation), (52.1, Some(41.0)));
        assert_eq!(recorded.points[0].elevation, Some(7.0));
        assert_eq!((drawn.name.as_deref(), recorded.name.as_deref()), (Some("haul"), None));
    }

    #[test]
    fn a_file_cut_anywhere_is_told_as_cut() {
        let whole = "<gpx><trk><trkseg>\n<trkpt lat='1' lon='2'><ele>3</ele></trkpt>\n<trkpt lat='1' lon='3'/></trkseg></trk></gpx>";
        assert!(read(whole, "t.gpx").is_ok());
        for end in 5..whole.len() {
            let error = read(&whole[..end], "t.gpx").unwrap_err();
            assert!(matches!(error, TrackError::Truncated { .. }), "{end}: {error}");
        }
    }

    #[test]
    fn a_crossed_element_names_its_line() {
        let error = read("<gpx>\n<trk>\n</gpx>\n</trk>", "t.gpx").unwrap_err();
        assert!(matches!(error, TrackError::Malformed { line: Some(3), .. }), "{error:?}");
    }
}
