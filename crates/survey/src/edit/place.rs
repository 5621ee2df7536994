//! Where in the bytes of a file things stand, and where new ones go.

use std::collections::BTreeMap;
use std::ops::Range;

use toml_edit::{Item, TableLike, Value};

use super::EditError;
use super::literal::key_text;
use crate::document::join;

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Form {
    Value,
    List,
    Inline,
    /// A table with a heading, or the file itself.
    Table,
    /// A table that only its inner headings name.
    Implied,
    /// A list of tables with headings.
    Rows,
}

#[derive(Debug, Clone)]
struct Node {
    form: Form,
    key: Option<Range<usize>>,
    span: Option<Range<usize>>,
    empty: bool,
}

/// What holds a new key.
pub(super) enum Parent {
    /// A table on one line: the key goes before this byte.
    Inline { end: usize, empty: bool },
    /// A table with a heading: the key goes on a line behind the line of this byte.
    Table { after: usize },
}

/// A heading that is to be written.
pub(super) struct Heading {
    pub name: String,
    /// Behind the line of this byte.
    pub after: usize,
}

/// A file with the place of everything in it.
pub(super) struct Tree<'a> {
    text: &'a str,
    nodes: BTreeMap<String, Node>,
}

/// The last key of a pointer and what holds it.
pub(super) fn parted(pointer: &str) -> Option<(String, String)> {
    let (parent, key) = pointer.rsplit_once('/')?;
    Some((parent.to_owned(), key.replace("~1", "/").replace("~0", "~")))
}

impl<'a> Tree<'a> {
    pub fn read(text: &'a str) -> Result<Self, EditError> {
        let document = toml_edit::Document::parse(text)
            .map_err(|error| EditError::NotEditable(error.message().trim().to_owned()))?;
        let mut tree = Self { text, nodes: BTreeMap::new() };
        let root = Node { form: Form::Table, key: None, span: Some(0..0), empty: false };
        tree.nodes.insert(String::new(), root);
        tree.table(document.as_table(), "");
        Ok(tree)
    }

    fn table(&mut self, table: &dyn TableLike, at: &str) {
        for (name, item) in table.iter() {
            let key = table.key(name).and_then(toml_edit::Key::span);
            self.item(item, &join(at, name), key);
        }
    }

    fn node(&mut self, at: &str, node: Node) {
        self.nodes.insert(at.to_owned(), node);
    }

    fn item(&mut self, item: &Item, at: &str, key: Option<Range<usize>>) {
        match item {
            Item::None => {}
            Item::Value(value) => self.value(value, at, key),
            Item::Table(table) => {
                let form = if table.is_implicit() || table.is_dotted() {
                    Form::Implied
                } else {
                    Form::Table
                };
                self.node(at, Node { form, key, span: table.span(), empty: table.is_empty() });
                self.table(table, at);
            }
            Item::ArrayOfTables(rows) => {
                let empty = rows.is_empty();
                self.node(at, Node { form: Form::Rows, key, span: rows.span(), empty });
                for (index, row) in rows.iter().enumerate() {
                    let at = join(at, &index.to_string());
                    let node = Node {
                        form: Form::Table,
                        key: None,
                        span: row.span(),
                        empty: row.is_empty(),
                    };
                    self.node(&at, node);
                    self.table(row, &at);
                }
            }
        }
    }

    fn value(&mut self, value: &Value, at: &str, key: Option<Range<usize>>) {
        let span = value.span();
        match value {
            Value::Array(array) => {
                self.node(at, Node { form: Form::List, key, span, empty: array.is_empty() });
                for (index, value) in array.iter().enumerate() {
                    self.value(value, &join(at, &index.to_string()), None);
                }
            }
            Value::InlineTable(table) => {
                let form = if table.is_dotted() { Form::Implied } else { Form::Inline };
                self.node(at, Node { form, key, span, empty: table.is_empty() });
                self.table(table, at);
            }
            _ => self.node(at, Node { form: Form::Value, key, span, empty: false }),
        }
    }

    /// The innermost pointer around a byte.
    pub fn around(&self, byte: usize) -> Option<String> {
        let holds = |node: &Node| {
            let span = node.span.clone()?;
            let start = node.key.as_ref().map_or(span.start, |key| key.start.min(span.start));
            (start..=span.end).contains(&byte).then_some(span.end - start)
        };
        let around = self.nodes.iter().filter(|(at, _)| !at.is_empty());
        around
            .filter_map(|(at, node)| Some((holds(node)?, at)))
            .min_by_key(|(width, at)| (*width, std::cmp::Reverse(at.len())))
            .map(|(_, at)| at.clone())
    }

    /// Whether a table with a heading, or a list of them, stands there.
    pub fn is_table(&self, pointer: &str) -> bool {
        self.nodes
            .get(pointer)
            .is_some_and(|node| matches!(node.form, Form::Table | Form::Implied | Form::Rows))
    }

    /// Bytes of a value.
    pub fn span(&self, pointer: &str) -> Option<Range<usize>> {
        self.nodes.get(pointer)?.span.clone()
    }

    /// The file with some bytes replaced.
    pub fn spliced(&self, span: Range<usize>, with: &str) -> String {
        [&self.text[..span.start], with, &self.text[span.end..]].concat()
    }

    /// The file with a line put behind the line of a byte, with the line ends of the file.
    pub fn with_line(&self, after: usize, line: &str) -> String {
        let end = if self.text.contains("\r\n") { "\r\n" } else { "\n" };
        let line = line.replace('\n', end);
        if after == 0 {
            return [&line, end, self.text].concat();
        }
        match self.text[after..].find('\n') {
            Some(newline) => {
                let at = after + newline + 1;
                self.spliced(at..at, &format!("{line}{end}"))
            }
            None => [self.text, end, &line, end].concat(),
        }
    }

    /// What holds new keys of a table; `None` where there is no such table.
    pub fn parent(&self, pointer: &str) -> Option<Parent> {
        let node = self.nodes.get(pointer)?;
        let span = node.span.clone();
        match node.form {
            Form::Inline => {
                let span = span?;
                let inner = self.text[..span.end - 1].trim_end().len();
                Some(Parent::Inline { end: inner.max(span.start + 1), empty: node.empty })
            }
            Form::Table => Some(Parent::Table { after: self.own_end(pointer)? }),
            _ => None,
        }
    }

    /// End of the last value that stands directly in a table, else of its heading.
    fn own_end(&self, pointer: &str) -> Option<usize> {
        let own = self
            .children(pointer)
            .filter(|(_, node)| matches!(node.form, Form::Value | Form::List | Form::Inline));
        let last = own.filter_map(|(_, node)| Some(node.span.clone()?.end)).max();
        let node = self.nodes.get(pointer)?;
        match (last, pointer.is_empty()) {
            (Some(end), _) => Some(end),
            (None, true) => Some(self.opening_comments()),
            (None, false) => Some(node.span.clone()?.start),
        }
    }

    /// End of the comments that a file begins with.
    fn opening_comments(&self) -> usize {
        let lines = self.text.split_inclusive('\n').take_while(|line| line.starts_with('#'));
        lines.map(str::len).sum::<usize>().saturating_sub(1)
    }

    fn children(&self, pointer: &str) -> impl Iterator<Item = (&String, &Node)> {
        let prefix = format!("{pointer}/");
        self.nodes
            .iter()
            .filter(move |(at, _)| at.strip_prefix(&prefix).is_some_and(|rest| !rest.contains('/')))
    }

    /// End of everything in a table, inner tables with headings included.
    fn far_end(&self, pointer: &str) -> Option<usize> {
        let prefix = format!("{pointer}/");
        let inner = self.nodes.iter().filter(|(at, _)| at.starts_with(&prefix));
        let ends = inner.filter_map(|(_, node)| {
            let span = node.span.clone()?;
            // A table's own span may end with its heading.
            Some(span.end)
        });
        let own = self.nodes.get(pointer)?.span.clone().map(|span| span.start);
        ends.chain(own).max()
    }

    /// The heading that makes a table where there is none yet.
    pub fn new_heading(&self, pointer: &str) -> Option<Heading> {
        let (parent, _) = parted(pointer)?;
        let node = self.nodes.get(&parent)?;
        if !matches!(node.form, Form::Table | Form::Implied) || self.nodes.contains_key(pointer) {
            return None;
        }
        let after = self.far_end(&parent).unwrap_or(self.text.len());
        let after = if parent.is_empty() { self.text.trim_end().len() } else { after };
        Some(Heading { name: self.heading_name(pointer)?, after })
    }

    /// The heading of the next row of a list of tables; the list may be new.
    pub fn next_row(&self, pointer: &str) -> Option<Heading> {
        let name = self.heading_name(pointer)?;
        match self.nodes.get(pointer) {
            Some(node) if node.form == Form::Rows => {
                Some(Heading { name, after: self.far_end(pointer)? })
            }
            Some(_) => None,
            None => Some(Heading { name, after: self.new_heading(pointer)?.after }),
        }
    }

    /// `a.b` for `/a/b`; rows on the way must be the last of their list for a heading to mean them.
    fn heading_name(&self, pointer: &str) -> Option<String> {
        let mut at = String::new();
        let mut keys = Vec::new();
        for part in pointer.split('/').skip(1) {
            let rows = self.nodes.get(&at).is_some_and(|node| node.form == Form::Rows);
            let next = format!("{at}/{part}");
            if rows {
                let last = self.children(&at).count().checked_sub(1)?;
                // Behind the row itself its inner headings still mean it.
                let index: usize = part.parse().ok()?;
                (index <= last).then_some(())?;
            } else {
                keys.push(key_text(&part.replace("~1", "/").replace("~0", "~")));
            }
            at = next;
        }
        Some(keys.join("."))
    }

    /// The end of a list on one line, and whether it is empty.
    pub fn list_end(&self, pointer: &str) -> Option<(usize, bool)> {
        let node = self.nodes.get(pointer).filter(|node| node.form == Form::List)?;
        let inside = self.text[..node.span.clone()?.end - 1].trim_end();
        // A comma behind the last element is the author's habit, not an element.
        Some((inside.strip_suffix(',').unwrap_or(inside).len(), node.empty))
    }

    /// What goes when a key, a row or an element goes: its whole lines, or it and its comma.
    pub fn whole_span(&self, pointer: &str) -> Option<Range<usize>> {
        let node = self.nodes.get(pointer)?;
        match node.form {
            Form::Table if !pointer.is_empty() => {
                let start = node.span.clone()?.start;
                Some(self.line_start(start)..self.line_end(self.far_end(pointer)?.max(start)))
            }
            Form::Table | Form::Implied | Form::Rows => None,
            Form::Value | Form::List | Form::Inline => {
                let span = node.span.clone()?;
                let start = node.key.clone().map_or(span.start, |key| key.start);
                let (parent, _) = parted(pointer)?;
                let in_table = self.nodes.get(&parent)?.form == Form::Table;
                Some(if in_table {
                    self.line_start(start)..self.line_end(span.end)
                } else {
                    self.with_comma(start..span.end)
                })
            }
        }
    }

    fn line_start(&self, at: usize) -> usize {
        self.text[..at].rfind('\n').map_or(0, |newline| newline + 1)
    }

    fn line_end(&self, at: usize) -> usize {
        self.text[at..].find('\n').map_or(self.text.len(), |newline| at + newline + 1)
    }

    fn with_comma(&self, span: Range<usize>) -> Range<usize> {
        let rest = &self.text[span.end..];
        let comma = rest.trim_start();
        if let Some(behind) = comma.strip_prefix(',') {
            let spaces = behind.len() - behind.trim_start_matches([' ', '\t']).len();
            return span.start..span.end + (rest.len() - comma.len()) + 1 + spaces;
        }
        let before = self.text[..span.start].trim_end();
        before.strip_suffix(',').map_or(span.clone(), |before| before.trim_end().len()..span.end)
    }
}
