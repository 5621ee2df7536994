//! A track as a table of text: columns found by name, in any order.

use quantity::Length;

use crate::sheet::records;

use super::finding::{Format, TrackError, TrackFinding};
use super::raw::{Raw, RawPoint, number};

/// Title lines that may stand above the headings.
const LINES_ABOVE: usize = 20;

struct Columns {
    separator: u8,
    heading_row: usize,
    latitude: usize,
    longitude: usize,
    elevation: Option<(usize, bool)>,
}

/// Reads a table separated by commas, semicolons or tabs.
pub(super) fn read(text: &str, file: &str) -> Result<Raw, TrackError> {
    let mut raw = Raw::new(Format::Csv);
    let columns =
        [b',', b';', b'\t'].into_iter().find_map(|separator| find(text, separator, &mut raw));
    let Some(columns) = columns else {
        let first = text.lines().next().unwrap_or_default();
        let found = first.split([',', ';', '\t']).map(|cell| cell.trim().to_owned()).collect();
        return Err(TrackError::NoColumns { file: file.to_owned(), found });
    };
    for record in records(text, columns.separator).skip(columns.heading_row + 1) {
        let (line, record) = record.map_err(|cause| TrackError::Malformed {
            file: file.to_owned(),
            line: cause.position().and_then(|at| usize::try_from(at.line()).ok()),
            detail: cause.to_string(),
        })?;
        if record.iter().all(|cell| cell.trim().is_empty()) {
            continue;
        }
        let place = raw.next_place(Some(line));
        let read = |column: usize| read_number(record.get(column).unwrap_or_default());
        let Some((latitude, longitude)) = read(columns.latitude).zip(read(columns.longitude))
        else {
            raw.unreadable(place, &record.iter().collect::<Vec<_>>().join(" | "));
            continue;
        };
        let elevation = columns.elevation.and_then(|(column, feet)| {
            let value = read(column)?;
            if feet { Length::try_from_ft(value).ok().map(Length::as_m) } else { Some(value) }
        });
        raw.push(RawPoint { place, latitude, longitude, elevation });
    }
    Ok(raw)
}

fn find(text: &str, separator: u8, raw: &mut Raw) -> Option<Columns> {
    let rows = records(text, separator).take(LINES_ABOVE).map_while(Result::ok);
    for (heading_row, (_, row)) in rows.enumerate() {
        let column = |names: &[&str]| {
            row.iter().position(|cell| {
                words(cell).next().is_some_and(|word| names.contains(&word.as_str()))
            })
        };
        let latitude = column(&["lat", "latitude"]);
        let longitude = column(&["lon", "lng", "long", "longitude"]);
        let Some((latitude, longitude)) = latitude.zip(longitude) else { continue };
        let elevation = column(&["ele", "elev", "elevation", "alt", "altitude", "height"]);
        let elevation = elevation.map(|column| {
            let heading = row.get(column).unwrap_or_default();
            let named = |units: &[&str]| words(heading).any(|word| units.contains(&word.as_str()));
            let feet = named(&["ft", "feet", "foot"]);
            if !feet && !named(&["m", "meter", "meters", "metre", "metres"]) {
                let column = heading.trim().to_owned();
                raw.findings.push(TrackFinding::ElevationUnitAssumed { column });
            }
            (column, feet)
        });
        return Some(Columns { separator, heading_row, latitude, longitude, elevation });
    }
    None
}

fn words(heading: &str) -> impl Iterator<Item = String> + '_ {
    let split = heading.split(|c: char| !c.is_alphanumeric());
    split.filter(|word| !word.is_empty()).map(str::to_lowercase)
}

/// A comma inside a cell is a decimal comma: degrees have no thousands.
fn read_number(text: &str) -> Option<f64> {
    if text.contains('.') { number(text) } else { number(&text.replacen(',', ".", 1)) }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn columns_are_found_by_name_and_feet_are_converted() {
        let text = "Exported by hand\nid,Elevation (ft),Longitude,Latitude\n1,1000,13.5,52.25\n\n2,,13.6,52.25\n3,10,x,52\n";
        let raw = read(text, "t.csv").unwrap();
        let points = &raw.lines[0].points;
        assert_eq!((points[0].latitude, points[0].longitude), (52.25, 13.5));
        assert!((points[0].elevation.unwrap() - 304.8).abs() < 1e-9);
        assert_eq!(points[1].elevation, None);
        assert_eq!(points[1].place.line, Some(5));
        assert!(matches!(&raw.findings[..], [TrackFinding::Unreadable { count: 1, .. }]));
    }

    #[test]
    fn decimal_commas_go_with_semicolons() {
        let raw = read("lat;lng;alt_m\n52,25;13,5;100,5\n", "t.csv").unwrap();
        let point = raw.lines[0].points[0];
        assert_eq!((point.latitude, point.longitude, point.elevation), (52.25, 13.5, Some(100.5)));
    }

    #[test]
    fn a_table_without_places_lists_its_headings() {
        let error = read("time,speed\n1,2\n", "t.csv").unwrap_err();
        assert!(error.to_string().ends_with("among: time, speed"), "{error}");
    }

    #[test]
    fn an_elevation_without_unit_is_told() {
        let raw = read("lat,lon,ele\n1,2,3\n", "t.csv").unwrap();
        assert!(matches!(&raw.findings[..], [TrackFinding::ElevationUnitAssumed { .. }]));
    }
}
