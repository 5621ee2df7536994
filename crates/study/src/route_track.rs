//! The recorded track that the file of a route names.

use serde_json::Value;
use survey::track::{self, Track, TrackError};
use survey::{Folder, written_values};

/// The track of a route; `None` where its file names none.
///
/// # Errors
/// [`TrackError`] where the file it names is no track.
pub fn route_track(folder: &Folder, route: &str) -> Result<Option<Track>, TrackError> {
    let file = format!("routes/{route}.toml");
    let values = folder.bytes(&file).and_then(|bytes| written_values(&file, bytes));
    let path = values.as_ref().and_then(|values| values.get("track")).and_then(Value::as_str);
    let Some((path, bytes)) = path.and_then(|path| Some((path, folder.bytes(path)?))) else {
        return Ok(None);
    };
    track::read(bytes, path).map(Some)
}

#[cfg(test)]
mod tests {
    use super::*;

    const ROUTE: &str = "track = \"routes/road.csv\"\n";
    const ROAD: &str = "lat,lon\n61.500,-120.000\n61.510,-119.980\n";

    fn folder(files: &[(&str, &str)]) -> Folder {
        let mut folder = Folder::default();
        for (path, text) in files {
            folder.insert(*path, *text);
        }
        folder
    }

    #[test]
    fn the_track_is_the_one_the_file_names_whatever_its_format() {
        let told = folder(&[("routes/a.toml", ROUTE), ("routes/road.csv", ROAD)]);
        assert!(route_track(&told, "a").unwrap().unwrap().length().as_m() > 1000.0);
        let bare = folder(&[("routes/a.toml", ""), ("routes/road.csv", ROAD)]);
        assert!(route_track(&bare, "a").unwrap().is_none());
        let broken = folder(&[("routes/a.toml", ROUTE), ("routes/road.csv", "lat,lon\n")]);
        assert!(route_track(&broken, "a").is_err());
    }
}
