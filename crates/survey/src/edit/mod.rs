//! Single values of a TOML file changed in place: every byte that is not the value stays.

mod literal;
mod place;

use serde_json::Value;

use literal::{inline, key_text, table};
use place::{Parent, Tree};

/// One change to a file. Pointers are JSON pointers to the file as written: `/loading/time_min`.
#[derive(Debug, Clone, PartialEq)]
pub enum Edit {
    /// Gives a key a value, or an element of a list another one; the key may be new.
    Set {
        /// Where.
        pointer: String,
        /// The value: text, number, flag, or a list or object of them.
        value: Value,
    },
    /// Takes a key, or an element of a list, out.
    Remove {
        /// Where.
        pointer: String,
    },
    /// Puts an element at the end of a list.
    Append {
        /// The list.
        pointer: String,
        /// The element.
        value: Value,
    },
}

/// Why a file cannot be edited so.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum EditError {
    /// The file is no TOML, or not readable as it stands.
    #[error("this file cannot be edited value by value: {0}; edit its text")]
    NotEditable(String),
    /// Nothing is there, or nothing that could hold it.
    #[error("there is nothing at {0}; the file may have changed: read it again")]
    NoPlace(String),
    /// No TOML value.
    #[error(
        "the value for {0} cannot be written: give text, a finite number, yes or no, or a list"
    )]
    NoValue(String),
    /// A whole table in place of a value.
    #[error("{0} is a table of its own; change the values in it one by one")]
    WholeTable(String),
}

/// A file with edits carried out one after the other.
///
/// Comments, spacing, order and line ends stay as they are; so does the spelling of every
/// other value.
///
/// # Errors
/// [`EditError`], with nothing changed.
///
/// ```
/// use survey::Edit;
/// let file = b"# weighed in May\ngross_mass_kg = 47_500 # scale\n";
/// let edit = Edit::Set { pointer: "/gross_mass_kg".into(), value: 48200.into() };
/// let edited = survey::edited(file, &[edit])?;
/// assert_eq!(edited, b"# weighed in May\ngross_mass_kg = 48200 # scale\n");
/// # Ok::<(), survey::EditError>(())
/// ```
pub fn edited(bytes: &[u8], edits: &[Edit]) -> Result<Vec<u8>, EditError> {
    let text = std::str::from_utf8(bytes)
        .map_err(|_| EditError::NotEditable("it is not UTF-8 text".to_owned()))?;
    let mark = if text.starts_with('\u{feff}') { '\u{feff}'.len_utf8() } else { 0 };
    let mut body = text[mark..].to_owned();
    for edit in edits {
        body = one(&body, edit)?;
    }
    Tree::read(&body)?;
    Ok([&bytes[..mark], body.as_bytes()].concat())
}

/// JSON pointer to the innermost key, row or element around a byte of a TOML text, the byte order
/// mark left off; `None` where the text is no TOML or nothing is there.
///
/// ```
/// let text = "[loading]\ntime_min = 35\n";
/// assert_eq!(survey::pointer_at(text, 12).as_deref(), Some("/loading/time_min"));
/// assert_eq!(survey::pointer_at("a =", 0), None);
/// ```
pub fn pointer_at(text: &str, byte: usize) -> Option<String> {
    Tree::read(text).ok()?.around(byte)
}

fn one(text: &str, edit: &Edit) -> Result<String, EditError> {
    let tree = Tree::read(text)?;
    match edit {
        Edit::Set { pointer, value } => set(&tree, pointer, value),
        Edit::Remove { pointer } => remove(&tree, pointer),
        Edit::Append { pointer, value } => append(&tree, pointer, value),
    }
}

fn set(tree: &Tree<'_>, pointer: &str, value: &Value) -> Result<String, EditError> {
    let written = inline(value).ok_or_else(|| EditError::NoValue(pointer.to_owned()))?;
    if tree.is_table(pointer) {
        return Err(EditError::WholeTable(pointer.to_owned()));
    }
    if let Some(span) = tree.span(pointer) {
        return Ok(tree.spliced(span, &written));
    }
    let no_place = || EditError::NoPlace(pointer.to_owned());
    let (parent, key) = place::parted(pointer).ok_or_else(no_place)?;
    let line = format!("{} = {written}", key_text(&key));
    match tree.parent(&parent) {
        Some(Parent::Inline { end, empty }) => {
            let before = if empty { " " } else { ", " };
            Ok(tree.spliced(end..end, &format!("{before}{line}")))
        }
        Some(Parent::Table { after }) => Ok(tree.with_line(after, &line)),
        None => {
            // The table itself is new: it gets a heading behind the one that holds it.
            let heading = tree.new_heading(&parent).ok_or_else(no_place)?;
            let block = format!("\n[{}]\n{line}", heading.name);
            Ok(tree.with_line(heading.after, &block))
        }
    }
}

fn remove(tree: &Tree<'_>, pointer: &str) -> Result<String, EditError> {
    let span = tree.whole_span(pointer).ok_or_else(|| EditError::NoPlace(pointer.to_owned()))?;
    Ok(tree.spliced(span, ""))
}

fn append(tree: &Tree<'_>, pointer: &str, value: &Value) -> Result<String, EditError> {
    let no_value = || EditError::NoValue(pointer.to_owned());
    let no_place = || EditError::NoPlace(pointer.to_owned());
    if let Some((end, empty)) = tree.list_end(pointer) {
        let written = inline(value).ok_or_else(no_value)?;
        let before = if empty { "" } else { ", " };
        return Ok(tree.spliced(end..end, &format!("{before}{written}")));
    }
    let heading = tree.next_row(pointer).ok_or_else(no_place)?;
    let Value::Object(row) = value else { return Err(no_value()) };
    let block = table(&heading.name, row).ok_or_else(no_value)?;
    Ok(tree.with_line(heading.after, &format!("\n{block}")))
}
