//! A case file: one source, and the numbers taken from it.

use toml_edit::{DocumentMut, Item, Table, TableLike, Value};

use crate::CaseError;

/// What a comparison is worth.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Level {
    /// Our own past answer: guards against change, proves nothing.
    Regress,
    /// An independent program computed it, by the same or another method.
    Library,
    /// A published worked example.
    Worked,
    /// A published table or curve.
    Table,
    /// A measurement that was not used to fit anything here.
    Measured,
}

impl Level {
    /// Every level, weakest first.
    pub const ALL: [Self; 5] =
        [Self::Regress, Self::Library, Self::Worked, Self::Table, Self::Measured];

    /// Its name in case files.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Regress => "regress",
            Self::Library => "library",
            Self::Worked => "worked",
            Self::Table => "table",
            Self::Measured => "measured",
        }
    }
}

/// How the numbers were obtained from the source.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Standing {
    /// Read in its text.
    Read,
    /// Recalled: shown, but never counted as a check from outside.
    FromMemory,
    /// Computed by a program stored here.
    Script {
        /// The script, under `validation/`.
        path: String,
        /// Library and version that did the work.
        made_with: String,
    },
}

/// How near a number must come.
#[derive(Debug, Clone, PartialEq)]
pub struct Tolerance {
    /// Share of the expected number, or a size in its unit.
    pub size: ToleranceSize,
    /// Why this and not less.
    pub because: String,
}

/// Relative or absolute.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum ToleranceSize {
    /// Share of the expected number.
    Relative(f64),
    /// In the unit of the expected number.
    Absolute(f64),
}

/// One number taken from the source.
#[derive(Debug, Clone)]
pub struct Case {
    /// Id of the equation under test.
    pub equation: String,
    /// What the comparison is worth.
    pub level: Level,
    /// Where in the source.
    pub locator: String,
    /// What to put in, by name.
    pub inputs: Vec<(String, Value)>,
    /// What came out there, by name.
    pub expected: Vec<(String, Value)>,
    /// How near we must come.
    pub tolerance: Tolerance,
    /// Why we are known to differ; the case then fails if it stops differing.
    pub differs_because: Option<String>,
}

/// A source with its cases.
#[derive(Debug, Clone)]
pub struct CaseFile {
    /// Key in the register; also the name of the file.
    pub source: String,
    /// How the numbers were obtained.
    pub standing: Standing,
    /// The numbers.
    pub cases: Vec<Case>,
}

impl CaseFile {
    /// Reads a case file.
    ///
    /// # Errors
    /// [`CaseError::File`] for anything missing, misspelled or unknown.
    pub fn parse(name: &str, text: &str) -> Result<Self, CaseError> {
        let fail = |what: String| CaseError::File { file: format!("{name}.toml"), what };
        let document: DocumentMut = text.parse().map_err(|e| fail(format!("{e}")))?;
        let table = document.as_table();
        only(table, &["source", "checks", "locator", "standing", "script", "made_with", "case"])
            .map_err(&fail)?;
        let source = text_of(table, "source").map_err(&fail)?;
        if source != name {
            return Err(fail(format!("its source is '{source}'; name the file after it")));
        }
        let standing = match text_of(table, "standing").map_err(&fail)?.as_str() {
            "read" => Standing::Read,
            "from memory" => Standing::FromMemory,
            "script" => Standing::Script {
                path: text_of(table, "script").map_err(&fail)?,
                made_with: text_of(table, "made_with").map_err(&fail)?,
            },
            other => {
                return Err(fail(format!("standing '{other}'; write read, from memory or script")));
            }
        };
        let locator = text_of(table, "locator").map_err(&fail)?;
        let cases = table.get("case").and_then(Item::as_array_of_tables);
        let cases = cases.ok_or_else(|| fail("it has no [[case]]".to_owned()))?;
        let cases: Result<_, _> = cases
            .iter()
            .enumerate()
            .map(|(i, t)| case(t, &locator).map_err(|what| fail(format!("case {}: {what}", i + 1))))
            .collect();
        Ok(Self { source, standing, cases: cases? })
    }
}

fn case(table: &Table, locator: &str) -> Result<Case, String> {
    only(
        table,
        &["equation", "level", "locator", "inputs", "expected", "tolerance", "differs_because"],
    )?;
    let level = text_of(table, "level")?;
    let level = Level::ALL.into_iter().find(|known| known.name() == level).ok_or_else(|| {
        format!("level '{level}'; write regress, library, worked, table or measured")
    })?;
    let own = table.get("locator").and_then(Item::as_str);
    let locator = own.map_or_else(|| locator.to_owned(), |own| format!("{locator}, {own}"));
    Ok(Case {
        equation: text_of(table, "equation")?,
        level,
        locator,
        inputs: pairs(table, "inputs")?,
        expected: pairs(table, "expected")?,
        tolerance: tolerance(table)?,
        differs_because: table.get("differs_because").and_then(Item::as_str).map(str::to_owned),
    })
}

fn tolerance(table: &Table) -> Result<Tolerance, String> {
    let given =
        table.get("tolerance").and_then(Item::as_table_like).ok_or("it has no tolerance")?;
    only(given, &["relative", "absolute", "because"])?;
    let number = |key: &str| given.get(key).and_then(|item| number_of(item.as_value()?));
    let size = match (number("relative"), number("absolute")) {
        (Some(share), None) => ToleranceSize::Relative(share),
        (None, Some(size)) => ToleranceSize::Absolute(size),
        _ => return Err("its tolerance needs one of relative and absolute".to_owned()),
    };
    Ok(Tolerance { size, because: text_of(given, "because")? })
}

fn pairs(table: &Table, key: &str) -> Result<Vec<(String, Value)>, String> {
    let given = table.get(key).and_then(Item::as_table_like).ok_or(format!("it has no {key}"))?;
    given
        .iter()
        .map(|(name, item)| {
            let value = item.as_value().ok_or(format!("{key}.{name} is not a value"))?;
            Ok((name.to_owned(), value.clone()))
        })
        .collect()
}

/// The number of a value that is one.
pub fn number_of(value: &Value) -> Option<f64> {
    value.as_float().or_else(|| value.as_integer().map(|whole| whole as f64))
}

fn text_of(table: &dyn TableLike, key: &str) -> Result<String, String> {
    let text = table.get(key).and_then(Item::as_str);
    text.map(str::to_owned).ok_or(format!("it has no text '{key}'"))
}

fn only(table: &dyn TableLike, known: &[&str]) -> Result<(), String> {
    match table.iter().find(|(key, _)| !known.contains(key)) {
        None => Ok(()),
        Some((key, _)) => Err(format!("unknown key '{key}'; known: {}", known.join(", "))),
    }
}
