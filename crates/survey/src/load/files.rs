//! Files of a survey, read as far as they can be.

use crate::Folder;
use crate::convert::{Catalog, Loaded};
use crate::document::{Document, Validation, normalize, validate};
use crate::problem::{Problem, ProblemKind, nearest};
use crate::schema::SurveyFileKind;

pub(super) const SURVEY: &str = "survey.toml";
/// Registers of units, of which a survey has one.
pub(super) const REGISTERS: [&str; 3] = ["units.toml", "units.csv", "units.xlsx"];
/// Folders whose `.toml` files have a meaning, here or in later parts.
const FOLDERS: [&str; 8] =
    ["tires", "vehicles", "combinations", "routes", "hauls", "permits", "approvals", "plans"];

pub(crate) fn is_toml(path: &str) -> bool {
    path.rsplit_once('.').is_some_and(|(_, ending)| ending.eq_ignore_ascii_case("toml"))
}

pub(super) fn path_of(kind: &str, name: &str) -> String {
    format!("{kind}/{name}.toml")
}

/// Reports `.toml` files that stand where nothing reads them, such as in `tyres/`.
pub(super) fn unread_files(folder: &Folder, problems: &mut Vec<Problem>) {
    for (path, _) in folder.files().filter(|(path, _)| is_toml(path)) {
        let read = match path.split('/').collect::<Vec<_>>().as_slice() {
            [file] => *file == SURVEY || REGISTERS.contains(file),
            [top, file] => FOLDERS.contains(top) && file.rsplit('.').next() == Some("toml"),
            _ => false,
        };
        if !read {
            let top = path.split('/').next().unwrap_or(path);
            let kind = match path.split_once('/') {
                Some(_) => {
                    let nearest = nearest(top, &FOLDERS).filter(|nearest| nearest != top);
                    ProblemKind::UnreadFile { nearest }
                }
                None => ProblemKind::UnreadFile { nearest: nearest(path, &[SURVEY, REGISTERS[0]]) },
            };
            problems.push(Problem::in_file(path, kind));
        }
    }
}

/// Reads one file as far as it can be read.
pub(super) fn read<T: SurveyFileKind>(
    path: &str,
    bytes: &[u8],
    problems: &mut Vec<Problem>,
) -> Option<Loaded<T>> {
    let (mut document, mut value) = Document::read(path, bytes, problems)?;
    let schema = T::checked();
    normalize(&mut document, &mut value, &schema.canonical, problems);
    if validate(&document, &mut value, schema, problems) == Validation::Broken {
        return None;
    }
    match serde_json::from_value(value) {
        Ok(data) => Some(Loaded { document, data }),
        Err(error) => {
            let kind = ProblemKind::Unreadable { message: error.to_string() };
            problems.push(document.problem("", kind));
            None
        }
    }
}

/// Reads every file of a folder of the survey.
pub(super) fn catalog<T: SurveyFileKind>(
    folder: &Folder,
    kind: &str,
    problems: &mut Vec<Problem>,
) -> Catalog<Loaded<T>> {
    folder
        .files()
        .filter_map(|(path, bytes)| {
            let name = path.strip_prefix(kind)?.strip_prefix('/')?.strip_suffix(".toml")?;
            (!name.contains('/')).then(|| (name.to_owned(), read(path, bytes, problems)))
        })
        .collect()
}
