//! The files of the survey: listed, read, saved where nobody else saved meanwhile.
//!
//! A path is never put together with the disk before it was found among the files of the survey,
//! or is a plain new name in one of its folders.

use std::ffi::OsStr;
use std::path::Path;
use std::sync::Arc;

use axum::Json;
use axum::extract::rejection::{JsonRejection, QueryRejection};
use axum::extract::{Extension, Query, State};
use serde::Deserialize;
use survey::{Edit, Severity, edited, replace, written_values};
use view::{FileDocument, FileProblemView, FileSaveRequest, FileView, FilesDocument};

use super::work::reading;
use crate::failure::{Answer, Failure};
use crate::guard::Rights;
use crate::hash;
use crate::site::Site;
use crate::snapshot::Snapshot;

/// Folders of a survey with the schema of what lies in them.
const FOLDERS: [(&str, &str); 7] = [
    ("tires", "tire"),
    ("vehicles", "vehicle"),
    ("combinations", "combination"),
    ("routes", "route"),
    ("hauls", "haul"),
    ("permits", "permit"),
    ("approvals", "approval"),
];

/// The schema of a file, by its place.
fn kind(path: &str) -> Option<&'static str> {
    match path {
        "survey.toml" => return Some("survey"),
        "units.toml" => return Some("units"),
        _ => {}
    }
    let (folder, name) = path.split_once('/')?;
    let plain = !name.contains('/') && Path::new(name).extension() == Some(OsStr::new("toml"));
    FOLDERS.iter().find(|(known, _)| *known == folder && plain).map(|(_, kind)| *kind)
}

/// `GET /api/files`
pub async fn list(State(site): State<Arc<Site>>) -> Answer<Json<FilesDocument>> {
    reading(site, |_, snapshot| {
        let opened = &snapshot.opened;
        let count = |path: &str, severity| {
            let of_file = opened.problems.iter().filter(|problem| problem.file == path);
            of_file.filter(|problem| problem.severity == severity).count()
        };
        let files = opened.folder.files().map(|(path, bytes)| FileView {
            path: path.to_owned(),
            kind: kind(path).map(str::to_owned),
            bytes: bytes.len(),
            errors: count(path, Severity::Error),
            warnings: count(path, Severity::Warning),
        });
        Ok(Json(FilesDocument {
            schema: "airtide.files/1".to_owned(),
            hash: snapshot.hash.clone(),
            files: files.collect(),
        }))
    })
    .await
}

/// Which file.
#[derive(Debug, Deserialize)]
pub struct Wanted {
    path: String,
}

/// `GET /api/file`
pub async fn read(
    State(site): State<Arc<Site>>,
    wanted: Result<Query<Wanted>, QueryRejection>,
) -> Answer<Json<FileDocument>> {
    let Query(Wanted { path }) = wanted?;
    reading(site, move |_, snapshot| Ok(Json(document(snapshot, &path)?))).await
}

fn document(snapshot: &Snapshot, path: &str) -> Answer<FileDocument> {
    let opened = &snapshot.opened;
    let missing = || Failure::missing(format!("the survey has no file '{path}'"));
    let bytes = opened.folder.bytes(path).ok_or_else(missing)?;
    let text = opened.folder.text(path).ok_or_else(|| {
        Failure::survey(format!("'{path}' is not UTF-8 text; it can be read elsewhere, not here"))
    })?;
    let of_file = opened.problems.iter().filter(|problem| problem.file == path);
    Ok(FileDocument {
        schema: "airtide.file/1".to_owned(),
        path: path.to_owned(),
        kind: kind(path).map(str::to_owned),
        hash: hash::of(bytes),
        text: text.to_owned(),
        values: written_values(path, bytes),
        problems: of_file.map(|problem| FileProblemView::new(problem, text)).collect(),
    })
}

/// `PUT /api/file`
pub async fn save(
    State(site): State<Arc<Site>>,
    Extension(rights): Extension<Rights>,
    wanted: Result<Json<FileSaveRequest>, JsonRejection>,
) -> Answer<Json<FileDocument>> {
    let Json(wanted) = wanted?;
    if !rights.write {
        return Err(Failure::forbidden("read-only", "this window may only read"));
    }
    reading(site, move |site, _| {
        let path = wanted.path.clone();
        write(site, wanted)?;
        let snapshot = site.snapshots.renewed()?;
        Ok(Json(document(&snapshot, &path)?))
    })
    .await
}

fn write(site: &Site, wanted: FileSaveRequest) -> Answer<()> {
    let _alone = site.saving();
    // What stands on the disk now, not what a look a moment ago saw.
    let snapshot = site.snapshots.renewed()?;
    let path = wanted.path.as_str();
    let bytes = snapshot.opened.folder.bytes(path);
    let now = bytes.map(hash::of);
    if bytes.is_none() && !is_plain_new(path) {
        return Err(Failure::missing(format!(
            "'{path}' is not a file of the survey, and no name for a new one: small letters, \
             digits and dashes in one of its folders"
        )));
    }
    if bytes.is_some() && kind(path).is_none() {
        return Err(Failure::wrong(format!("'{path}' is not edited here; use its own program")));
    }
    if now != wanted.base {
        return Err(Failure::changed(format!(
            "'{path}' was changed in another window or program since it was read here; nothing \
             was saved. Look at it again, then make the change again"
        )));
    }
    let new = match wanted.text {
        Some(text) if wanted.edits.is_empty() => {
            // A byte order mark is the file's, not the text's.
            let mark = bytes.is_some_and(|bytes| bytes.starts_with("\u{feff}".as_bytes()));
            [if mark { "\u{feff}" } else { "" }, &text].concat().into_bytes()
        }
        Some(_) => return Err(Failure::wrong("give edits or the whole text, not both")),
        None => {
            let edits: Vec<Edit> = wanted.edits.into_iter().map(Edit::from).collect();
            edited(bytes.unwrap_or_default(), &edits).map_err(Failure::wrong)?
        }
    };
    replace(&site.survey().join(path), &new).map_err(Failure::broken)
}

/// A new file may only have a plain name in a folder that surveys have.
fn is_plain_new(path: &str) -> bool {
    let Some((_, name)) = path.split_once('/') else { return false };
    let Some(stem) = name.strip_suffix(".toml") else { return false };
    let plain = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-';
    kind(path).is_some() && !stem.is_empty() && stem.len() <= 60 && stem.chars().all(plain)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_new_file_has_a_plain_name_in_a_known_folder() {
        assert!(is_plain_new("tires/steer-11r22.toml"));
        for path in [
            "../x.toml",
            "tires/../x.toml",
            "tires/.toml",
            "tires/a/b.toml",
            "/etc/x.toml",
            "plans/x.toml",
            "survey.toml",
            "tires/x.exe",
            "tires/A b.toml",
            "tires\\x.toml",
        ] {
            assert!(!is_plain_new(path), "{path}");
        }
    }

    #[test]
    fn each_place_has_its_schema() {
        assert_eq!(kind("survey.toml"), Some("survey"));
        assert_eq!(kind("hauls/mill.toml"), Some("haul"));
        assert_eq!(kind("plans/mill-1.json"), None);
        assert_eq!(kind("README.md"), None);
    }
}
