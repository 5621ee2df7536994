//! `GeoJSON`: lines of features, longitude before latitude (RFC 7946, section 3.1.1).

use geojson::{Error, Feature, GeoJson, Geometry, GeometryValue, Position};

use super::finding::{Format, TrackError};
use super::raw::{Line, Raw, RawPoint};

/// Reads every line of a `GeoJSON` text.
pub(super) fn read(text: &str, file: &str) -> Result<Raw, TrackError> {
    let mut raw = Raw::new(Format::GeoJson);
    match text.parse::<GeoJson>() {
        Ok(GeoJson::Geometry(geometry)) => add(&mut raw, &geometry, None),
        Ok(GeoJson::Feature(feature)) => add_feature(&mut raw, &feature),
        Ok(GeoJson::FeatureCollection(collection)) => {
            for feature in &collection.features {
                add_feature(&mut raw, feature);
            }
        }
        Err(Error::MalformedGeoJson(cause)) if cause.is_eof() => {
            let (file, line) = (file.to_owned(), cause.line());
            return Err(TrackError::Truncated { file, line, points: 0 });
        }
        Err(cause) => {
            let line = match &cause {
                Error::MalformedGeoJson(json) if json.line() > 0 => Some(json.line()),
                _ => None,
            };
            let (file, detail) = (file.to_owned(), cause.to_string());
            return Err(TrackError::Malformed { file, line, detail });
        }
    }
    Ok(raw)
}

fn add_feature(raw: &mut Raw, feature: &Feature) {
    let name = feature.property("name").and_then(|name| name.as_str()).map(str::to_owned);
    if let Some(geometry) = &feature.geometry {
        add(raw, geometry, name.as_deref());
    }
}

fn add(raw: &mut Raw, geometry: &Geometry, name: Option<&str>) {
    match &geometry.value {
        GeometryValue::LineString { coordinates } => add_line(raw, coordinates, name),
        GeometryValue::MultiLineString { coordinates } => {
            for line in coordinates {
                add_line(raw, line, name);
            }
        }
        GeometryValue::GeometryCollection { geometries } => {
            for geometry in geometries {
                add(raw, geometry, name);
            }
        }
        GeometryValue::Point { .. } => raw.single_points += 1,
        GeometryValue::MultiPoint { coordinates } => raw.single_points += coordinates.len(),
        GeometryValue::Polygon { .. } => raw.areas += 1,
        GeometryValue::MultiPolygon { coordinates } => raw.areas += coordinates.len(),
    }
}

fn add_line(raw: &mut Raw, positions: &[Position], name: Option<&str>) {
    let recording = raw.lines.len();
    raw.lines.push(Line { name: name.map(str::to_owned), recording, points: Vec::new() });
    for position in positions {
        let place = raw.next_place(None);
        match *position.as_slice() {
            [longitude, latitude, ref rest @ ..] => {
                let elevation = rest.first().copied();
                raw.push(RawPoint { place, latitude, longitude, elevation });
            }
            _ => raw.unreadable(place, "a position of fewer than two numbers"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn longitude_stands_first() {
        let text = r#"{"type":"FeatureCollection","features":[
 {"type":"Feature","properties":{"name":"spur"},"geometry":{"type":"LineString","coordinates":[[13.0,52.0,41.5],[13.1,52.0]]}},
 {"type":"Feature","properties":null,"geometry":{"type":"Point","coordinates":[1,2]}},
 {"type":"Feature","properties":null,"geometry":null}]}"#;
        let raw = read(text, "t.geojson").unwrap();
        assert_eq!((raw.lines.len(), raw.single_points), (1, 1));
        let first = raw.lines[0].points[0];
        assert_eq!((first.latitude, first.longitude, first.elevation), (52.0, 13.0, Some(41.5)));
        assert_eq!(raw.lines[0].name.as_deref(), Some("spur"));
    }

    #[test]
    fn a_cut_or_broken_file_names_its_line() {
        let cut = read("{\"type\":\"LineString\",\n\"coordinates\":[[1,2],", "t.geojson");
        assert!(matches!(cut, Err(TrackError::Truncated { line: 2, .. })), "{cut:?}");
        let broken = read("{\"type\":\"LineString\",\n\"coordinates\":[[1,NaN]]}", "t.geojson");
        assert!(matches!(broken, Err(TrackError::Malformed { line: Some(2), .. })), "{broken:?}");
    }
}
