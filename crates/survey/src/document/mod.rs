//! One TOML file as data with the place of every value.

mod normalize;
pub(crate) mod units;
mod validate;

use std::collections::{BTreeMap, BTreeSet};
use std::ops::Range;
use std::sync::Arc;

use serde_json::{Map, Number, Value};
use toml_edit::{Item, TableLike};

use crate::problem::{Problem, ProblemKind};

pub(crate) use normalize::normalize;
pub(crate) use validate::{Validation, validate};

/// Where a value stands, and how its author wrote it.
#[derive(Debug, Clone)]
pub(crate) struct Place {
    /// Bytes of the value.
    pub value: Range<usize>,
    /// Bytes of its key.
    pub key: Option<Range<usize>>,
    /// The key as written, such as `rated_pressure_psi`.
    pub written_key: String,
    /// Unit symbol it was written in, where that is not the canonical one.
    pub unit: Option<&'static str>,
}

/// A TOML file read into JSON, with a place for every JSON pointer.
#[derive(Debug, Clone)]
pub(crate) struct Document {
    /// Path inside the survey.
    pub path: String,
    text: Arc<str>,
    places: BTreeMap<String, Place>,
    /// Pointers of values that were already refused.
    refused: BTreeSet<String>,
}

/// Joins a key to a JSON pointer.
pub(crate) fn join(pointer: &str, key: &str) -> String {
    format!("{pointer}/{}", key.replace('~', "~0").replace('/', "~1"))
}

impl Document {
    /// Reads bytes; problems go to `problems`, and `None` means that nothing could be read.
    pub fn read(path: &str, bytes: &[u8], problems: &mut Vec<Problem>) -> Option<(Self, Value)> {
        let text = match std::str::from_utf8(bytes) {
            Ok(text) => text.strip_prefix('\u{feff}').unwrap_or(text),
            Err(error) => {
                let offset = error.valid_up_to();
                let line = bytes[..offset].split(|byte| *byte == b'\n').count();
                problems.push(Problem::in_file(path, ProblemKind::NotText { offset, line }));
                return None;
            }
        };
        let mut document = Self {
            path: path.to_owned(),
            text: text.into(),
            places: BTreeMap::new(),
            refused: BTreeSet::new(),
        };
        match toml_edit::Document::parse(text) {
            Ok(toml) => {
                let whole = Place {
                    value: 0..text.lines().next().map_or(0, str::len),
                    key: None,
                    written_key: String::new(),
                    unit: None,
                };
                document.places.insert(String::new(), whole);
                let value = document.table(toml.as_table(), "", problems);
                Some((document, value))
            }
            Err(error) => {
                let span = error.span().unwrap_or(0..0);
                let kind = ProblemKind::Syntax { message: error.message().trim().to_owned() };
                problems.push(document.at(&span, kind));
                None
            }
        }
    }

    fn table(&mut self, table: &dyn TableLike, at: &str, problems: &mut Vec<Problem>) -> Value {
        let mut map = Map::new();
        for (name, item) in table.iter() {
            let pointer = join(at, name);
            let key = table.key(name).and_then(toml_edit::Key::span);
            let value = item.span().or_else(|| key.clone());
            let place = Place {
                value: value.unwrap_or_else(|| self.place(at).value.clone()),
                key,
                written_key: name.to_owned(),
                unit: None,
            };
            self.places.insert(pointer.clone(), place);
            map.insert(name.to_owned(), self.item(item, &pointer, problems));
        }
        Value::Object(map)
    }

    fn item(&mut self, item: &Item, at: &str, problems: &mut Vec<Problem>) -> Value {
        match item {
            Item::None => Value::Null,
            Item::Value(value) => self.value(value, at, problems),
            Item::Table(table) => self.table(table, at, problems),
            Item::ArrayOfTables(tables) => {
                let rows = tables.iter().enumerate();
                Value::Array(
                    rows.map(|(index, table)| {
                        let pointer = join(at, &index.to_string());
                        self.element(&pointer, at, table.span());
                        self.table(table, &pointer, problems)
                    })
                    .collect(),
                )
            }
        }
    }

    fn element(&mut self, pointer: &str, parent: &str, span: Option<Range<usize>>) {
        let parent = self.place(parent).clone();
        let place = Place { value: span.unwrap_or(parent.value), key: None, ..parent };
        self.places.insert(pointer.to_owned(), place);
    }

    fn value(&mut self, value: &toml_edit::Value, at: &str, problems: &mut Vec<Problem>) -> Value {
        match value {
            toml_edit::Value::String(text) => Value::String(text.value().clone()),
            toml_edit::Value::Integer(number) => Value::Number((*number.value()).into()),
            toml_edit::Value::Boolean(flag) => Value::Bool(*flag.value()),
            toml_edit::Value::Datetime(date) => Value::String(date.value().to_string()),
            toml_edit::Value::Float(number) => {
                if let Some(finite) = Number::from_f64(*number.value()) {
                    return Value::Number(finite);
                }
                self.refused.insert(at.to_owned());
                problems.push(self.problem(at, ProblemKind::NotFinite));
                Value::Null
            }
            toml_edit::Value::Array(array) => {
                let mut values = Vec::with_capacity(array.len());
                for (index, value) in array.iter().enumerate() {
                    let pointer = join(at, &index.to_string());
                    self.element(&pointer, at, value.span());
                    values.push(self.value(value, &pointer, problems));
                }
                Value::Array(values)
            }
            toml_edit::Value::InlineTable(table) => self.table(table, at, problems),
        }
    }

    /// The place of a pointer, or of the nearest one around it.
    pub fn place(&self, pointer: &str) -> &Place {
        let mut pointer = pointer;
        loop {
            if let Some(place) = self.places.get(pointer) {
                return place;
            }
            pointer = pointer.rfind('/').map_or("", |slash| &pointer[..slash]);
        }
    }

    /// Whether the author wrote something at this pointer.
    pub fn has(&self, pointer: &str) -> bool {
        self.places.contains_key(pointer)
    }

    /// Line, from 1, of what the author wrote at this pointer.
    pub fn line(&self, pointer: &str) -> Option<usize> {
        let start = self.places.get(pointer)?.value.start.min(self.text.len());
        Some(self.text.get(..start)?.split('\n').count())
    }

    /// A problem with the value at a pointer.
    pub fn problem(&self, pointer: &str, kind: ProblemKind) -> Problem {
        let place = self.place(pointer);
        let mut problem = self.at(&place.value, kind);
        if self.has(pointer) && !place.written_key.is_empty() {
            problem.key = Some(place.written_key.clone());
        }
        problem
    }

    /// A problem with the key at a pointer.
    pub fn problem_with_key(&self, pointer: &str, kind: ProblemKind) -> Problem {
        let place = self.place(pointer);
        let mut problem = self.at(place.key.as_ref().unwrap_or(&place.value), kind);
        problem.key = Some(place.written_key.clone());
        problem
    }

    fn at(&self, span: &Range<usize>, kind: ProblemKind) -> Problem {
        Problem::at(&self.path, &self.text, span, kind)
    }
}
