//! From the files to the model: names become indices, numbers become quantities.

mod approval;
mod channel;
mod combination;
mod date;
mod elevation;
mod ground;
mod haul;
mod load_state;
mod money;
mod permit;
mod powertrain;
mod route;
mod tire;

use std::collections::BTreeMap;

use crate::Folder;
use crate::document::Document;
use crate::problem::{Problem, ProblemKind, Reference, nearest};

pub(crate) use approval::{Written, approval, approve};
pub(crate) use combination::{Assembly, assemble};
pub(crate) use date::day;
pub(crate) use haul::haul;
pub(crate) use permit::{Terms, overlaps, terms};
pub(crate) use route::{PlannedRoute, route};
pub(crate) use tire::tire;

/// A file that could be read.
#[derive(Debug, Clone)]
pub(crate) struct Loaded<T> {
    /// Where its values stand.
    pub document: Document,
    /// Its values.
    pub data: T,
}

impl<T> Loaded<T> {
    /// A problem with the value at a JSON pointer.
    pub fn problem(&self, pointer: &str, kind: ProblemKind) -> Problem {
        self.document.problem(pointer, kind)
    }
}

/// Files of one kind by name; `None` is a file that is there and cannot be used.
pub(crate) type Catalog<T> = BTreeMap<String, Option<T>>;

/// Looks up a name that a file refers to; an unknown one becomes a problem there.
pub(crate) fn refer<'a, T>(
    catalog: &'a Catalog<T>,
    name: &str,
    reference: Reference,
    from: &Document,
    pointer: &str,
    problems: &mut Vec<Problem>,
) -> Option<&'a T> {
    let found = catalog.get(name);
    if found.is_none() {
        let known: Vec<&String> = catalog.keys().collect();
        problems.push(from.problem(pointer, unknown_name(name, reference, &known)));
    }
    found?.as_ref()
}

/// Index of a name in a list; an unknown one becomes a problem.
pub(crate) fn index_of<S: AsRef<str>>(
    names: &[S],
    name: &str,
    reference: Reference,
    from: &Document,
    pointer: &str,
    problems: &mut Vec<Problem>,
) -> Option<usize> {
    let found = names.iter().position(|one| one.as_ref() == name);
    if found.is_none() {
        problems.push(from.problem(pointer, unknown_name(name, reference, names)));
    }
    found
}

/// Bytes of a file that another file of the survey names by its path from the top.
fn inside<'a>(
    folder: &'a Folder,
    path: &str,
    from: &Document,
    pointer: &str,
    problems: &mut Vec<Problem>,
) -> Option<&'a [u8]> {
    let steps: Vec<&str> = path.split(['/', '\\']).collect();
    if path.contains(':') || steps.iter().any(|step| step.is_empty() || *step == "..") {
        problems.push(from.problem(pointer, ProblemKind::PathLeaves));
        return None;
    }
    let found = folder.bytes(&steps.join("/"));
    if found.is_none() && folder.refused().iter().any(|problem| problem.file == path) {
        let message = format!("{path} is there and was not read");
        problems.push(from.problem(pointer, ProblemKind::ImportFailed { message }));
    } else if found.is_none() {
        let ending = path.rsplit('.').next();
        let known: Vec<&str> = folder
            .files()
            .map(|(known, _)| known)
            .filter(|known| known.rsplit('.').next() == ending)
            .collect();
        problems.push(from.problem(pointer, unknown_name(path, Reference::File, &known)));
    }
    found
}

pub(crate) fn unknown_name<S: AsRef<str>>(
    name: &str,
    reference: Reference,
    known: &[S],
) -> ProblemKind {
    ProblemKind::UnknownName {
        reference,
        nearest: nearest(name, known),
        known: known.iter().map(|one| one.as_ref().to_owned()).collect(),
    }
}
