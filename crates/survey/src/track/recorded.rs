//! Recorded tracks that packages of the registry carry as their own fixtures, read where they lie.

use std::path::PathBuf;

use quantity::Length;

use super::{Track, TrackError, profile, read};

/// Folders where cargo unpacks packages of registries.
fn unpacked() -> Vec<PathBuf> {
    let home = std::env::var_os("CARGO_HOME").map(PathBuf::from).or_else(|| {
        let home = std::env::var_os("HOME").or_else(|| std::env::var_os("USERPROFILE"))?;
        Some(PathBuf::from(home).join(".cargo"))
    });
    let sources = std::fs::read_dir(home.unwrap().join("registry").join("src"));
    sources.into_iter().flatten().map(|entry| entry.unwrap().path()).collect()
}

/// Versions of a package in the lock file.
fn locked(package: &str) -> Vec<String> {
    let lock = concat!(env!("CARGO_MANIFEST_DIR"), "/../../Cargo.lock");
    let lock: toml_edit::DocumentMut = std::fs::read_to_string(lock).unwrap().parse().unwrap();
    let packages = lock["package"].as_array_of_tables().unwrap();
    let alike = packages.iter().filter(|found| found["name"].as_str() == Some(package));
    alike.map(|found| found["version"].as_str().unwrap().to_owned()).collect()
}

/// A file that a package carries, where cargo unpacked it to build these tests.
fn fixture(package: &str, file: &str) -> PathBuf {
    let within = PathBuf::from("tests").join("fixtures").join(file);
    let folders = locked(package).into_iter().flat_map(|version| {
        unpacked().into_iter().map(move |source| source.join(format!("{package}-{version}")))
    });
    let candidates: Vec<PathBuf> = folders.map(|folder| folder.join(&within)).collect();
    let found = candidates.iter().find(|path| path.is_file());
    found.unwrap_or_else(|| panic!("{file} of {package} is in none of {candidates:?}")).clone()
}

fn recorded(package: &str, file: &str) -> Result<Track, TrackError> {
    read(&std::fs::read(fixture(package, file)).unwrap(), file)
}

fn told(track: &Track) -> String {
    track.findings.iter().map(ToString::to_string).collect::<Vec<_>>().join("\n")
}

/// The same file through the `gpx` crate, which shares no code with our reader.
fn by_gpx_crate(file: &str) -> Vec<(f64, f64, Option<f64>)> {
    let bytes = std::fs::read(fixture("gpx", file)).unwrap();
    let parsed = gpx::read(&bytes[..]).unwrap();
    let segments = parsed.tracks.iter().flat_map(|track| &track.segments);
    let mut points: Vec<_> = segments.flat_map(|segment| &segment.points).collect();
    if points.is_empty() {
        points = parsed.routes.iter().flat_map(|route| &route.points).collect();
    }
    points.iter().map(|point| (point.point().y(), point.point().x(), point.elevation)).collect()
}

#[test]
fn measured_sound_recordings_agree_point_by_point_with_another_reader() {
    for (file, count) in [
        ("garmin-activity.gpx", 988),
        ("strava_route_example.gpx", 113),
        ("ecology-trail-and-lovers-lane-loop.gpx", 139),
        ("gpsies_example.gpx", 41),
        ("mousehole_to_paul.gpx", 111),
    ] {
        let track = recorded("gpx", file).unwrap();
        let ours = track.points.iter().map(|point| {
            let (latitude, longitude) =
                (point.position.latitude_deg(), point.position.longitude_deg());
            (latitude, longitude, point.elevation.map(Length::as_m))
        });
        let ours: Vec<_> = ours.collect();
        assert_eq!(ours, by_gpx_crate(file), "{file}");
        assert_eq!(ours.len(), count, "{file}");
    }
}

/// The file states its own length, 6998.29 m, and heights from 297 m to 317 m.
#[test]
fn measured_length_and_heights_agree_with_what_the_file_states() {
    let track = recorded("gpx", "gpsies_example.gpx").unwrap();
    assert!((track.length().as_m() / 6998.29 - 1.0).abs() < 0.002, "{}", track.length());
    let heights = || track.points.iter().filter_map(|point| point.elevation).map(Length::as_m);
    let (low, high) = heights().fold((f64::MAX, f64::MIN), |(a, b), z| (z.min(a), z.max(b)));
    assert!((low - 297.0).abs() < 1e-9 && (high - 317.0).abs() < 1e-9, "{low} to {high}");
    assert!(told(&track).contains("the track ends 3 m from its start"), "{}", told(&track));
}

#[test]
fn what_recordings_have_wrong_with_them_is_told() {
    let hike = recorded("gpx", "garmin_with_extensions.gpx").unwrap();
    assert_eq!(hike.points.len(), 3539);
    for part in
        ["1 points repeat the place before", "elevation steps", "steeper than haul roads are"]
    {
        assert!(told(&hike).contains(part), "{}", told(&hike));
    }
    let drawn = recorded("gpx", "mousehole_to_paul.gpx").unwrap();
    assert!(told(&drawn).contains("111 of 111 points have no elevation"), "{}", told(&drawn));
    assert!(profile(&drawn, Length::from_m(150.0)).is_err());
    let two_days = recorded("gpx", "caltopo-export.gpx").unwrap();
    assert!(
        told(&two_days).contains("do not meet: Day 02 (10.98 km) used, left out: Day 01 (0.01 km)")
    );
    let one_place = recorded("gpx", "wahoo_example.gpx").unwrap_err();
    assert!(matches!(one_place, TrackError::TooFewPoints { points: 3, usable: 1, .. }));
    let no_points = recorded("gpx", "empty_name_tag.gpx").unwrap_err();
    assert!(matches!(no_points, TrackError::NoLine { .. }));
}

#[test]
fn drawn_files_of_lines_and_areas_are_told_apart() {
    let lines = recorded("kml", "sample.kml").unwrap();
    assert!(told(&lines).contains("several tracks do not meet: Tessellated (1.87 km) used"));
    assert!(told(&lines).contains("all 2 elevations are zero; taken as missing"));
    for (package, file) in [("kml", "countries.kml"), ("geojson", "countries.geojson")] {
        let error = recorded(package, file).unwrap_err();
        assert!(matches!(error, TrackError::NoLine { points: 0, areas: 292, .. }), "{error}");
    }
    let packed = recorded("kml", "polygon.kmz").unwrap_err();
    assert!(matches!(packed, TrackError::Packed { .. }));
}

#[test]
fn grades_of_a_recording_stay_between_its_heights() {
    let track = recorded("gpx", "strava_route_example.gpx").unwrap();
    let profile = profile(&track, Length::from_m(150.0)).unwrap();
    let steepest =
        profile.points().windows(2).map(|pair| profile.grade(pair[0].0, pair[1].0).abs());
    assert!(steepest.fold(0.0, f64::max) < 0.05);
    let known = || track.points.iter().filter_map(|point| point.elevation);
    let (low, high) =
        known().fold((track.length(), -track.length()), |(low, high), z| (low.min(z), high.max(z)));
    let slack = Length::from_m(1.0);
    assert!(profile.points().iter().all(|point| low - slack <= point.1 && point.1 <= high + slack));
}
