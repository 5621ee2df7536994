//! An answer as a page and as a document.

use language::{Kind, Round};
use model::ground::strength::Cbr;
use model::source::{Citation, Key, Standing};
use quantity::{Stress, Unit};
use schemars::JsonSchema;
use serde::Serialize;
use serde_json::{Map, Value, json};

use super::{Given, Share, TireLoad, repeated};
use crate::outcome::Failure;
use crate::page::{cone_index, labelled, line, paragraph, unreviewed};
use crate::register;
use crate::terminal::{HEADING, LOOK};
use crate::words::Words;

/// The document of an answer.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct CalcDocument {
    /// `airtide.calc/1`.
    pub schema: String,
    /// The topic.
    pub topic: String,
    /// What was put in; keys carry the unit.
    pub inputs: Map<String, Value>,
    /// The answer; keys carry the unit.
    pub results: Map<String, Value>,
    /// Key of the source of the equation.
    pub source: String,
    /// Weakest standing among the sources: `read`, `given`, `common practice, no source` or
    /// `from memory`.
    pub standing: String,
    /// Every source used.
    pub sources: Vec<SourceView>,
    /// Where the equation holds.
    pub validity: String,
    /// What to know before using the answer.
    pub warnings: Vec<String>,
}

/// A source used.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct SourceView {
    /// Key in the register.
    pub key: String,
    /// Title.
    pub title: String,
    /// Where in it.
    pub locator: String,
    /// How the number stands to it.
    pub standing: String,
}

struct Line {
    name: &'static str,
    unit: &'static str,
    value: Value,
    /// Low and high end.
    band: Option<[f64; 2]>,
    shown: String,
}

impl Line {
    fn new(name: &'static str, unit: &'static str, value: Value, shown: String) -> Self {
        Self { name, unit, value, band: None, shown }
    }

    /// `rated-load` and `kg` make `rated_load_kg`; the ends of a band are `area_low_cm2` and
    /// `area_high_cm2`.
    fn entries(&self) -> Vec<(String, Value)> {
        let key = |end: &str| {
            let name = format!("{}{end}", self.name.replace('-', "_"));
            if self.unit.is_empty() { name } else { format!("{name}_{}", self.unit) }
        };
        let mut entries = vec![(key(""), self.value.clone())];
        if let Some([low, high]) = self.band {
            entries.extend([(key("_low"), json!(low)), (key("_high"), json!(high))]);
        }
        entries
    }
}

/// An answer under way.
pub struct Answer {
    topic: &'static str,
    inputs: Vec<Line>,
    results: Vec<Line>,
    citations: Vec<Citation>,
    warnings: Vec<String>,
}

impl Answer {
    /// An empty answer to a topic.
    pub fn to(topic: &'static str) -> Self {
        Self {
            topic,
            inputs: Vec::new(),
            results: Vec::new(),
            citations: Vec::new(),
            warnings: Vec::new(),
        }
    }

    /// Notes a quantity put in.
    pub fn put_in(&mut self, name: &'static str, unit: &'static str, value: f64, shown: String) {
        self.inputs.push(Line::new(name, unit, json!(value), shown));
    }

    /// Notes a number or word without a unit that was put in.
    pub fn put_in_plain(
        &mut self,
        name: &'static str,
        value: impl Into<Value>,
        shown: impl std::fmt::Display,
    ) {
        self.inputs.push(Line::new(name, "", value.into(), shown.to_string()));
    }

    /// Notes a quantity as it was typed.
    pub fn put_in_given<Q: Unit>(
        &mut self,
        words: &Words,
        name: &'static str,
        unit: &'static str,
        given: &Given<Q>,
        number: fn(Q) -> f64,
        kind: Kind,
    ) {
        let shown = repeated(words, &given.text, given.value, kind);
        self.put_in(name, unit, number(given.value), shown);
    }

    /// Notes a cone index as it was typed, and in the unit cones are read in.
    pub fn put_in_cone_index(&mut self, words: &Words, given: &Given<Stress>) {
        let index = cone_index(&words.format, given.value, Round::Nearest);
        let typed = given.text.replace(' ', "");
        let shown = if typed == format!("{}{}", index.number, index.unit) {
            given.text.clone()
        } else {
            format!("{} = {index}", given.text)
        };
        self.put_in("cone-index", "kpa", given.value.as_kpa(), shown);
    }

    /// Notes a load on a tire or a vehicle as it was typed.
    pub fn put_in_load(&mut self, words: &Words, name: &'static str, load: &Given<TireLoad>) {
        let shown = repeated(words, &load.text, load.value.0, Kind::Load);
        self.put_in(name, "kg", load.value.0.as_kg(), shown);
    }

    /// Notes a bearing ratio as it was typed, and checks it.
    pub fn put_in_cbr(&mut self, name: &'static str, given: &Given<Share>) -> Result<Cbr, Failure> {
        let (text, pct) = (&given.text, given.value.as_percent());
        let shown = if text.contains('%') { text.clone() } else { format!("{text} %") };
        self.put_in(name, "pct", pct, shown);
        Cbr::from_pct(pct).map_err(Failure::input)
    }

    /// Notes a number, or what stands for it where none was typed.
    pub fn put_in_or(
        &mut self,
        words: &Words,
        name: &'static str,
        given: Option<f64>,
        usual: f64,
    ) -> f64 {
        let value = given.unwrap_or(usual);
        let shown = match given {
            Some(typed) => typed.to_string(),
            None => words.fill("calc-by-default", &[("value", &usual)]),
        };
        self.put_in_plain(name, value, shown);
        value
    }

    /// Notes a part of the answer.
    pub fn result(
        &mut self,
        name: &'static str,
        unit: &'static str,
        value: impl Into<Value>,
        shown: impl std::fmt::Display,
    ) {
        self.results.push(Line::new(name, unit, value.into(), shown.to_string()));
    }

    /// Notes a part of the answer with its band: value, low and high end.
    pub fn result_band<Q: Copy>(
        &mut self,
        words: &Words,
        (name, unit): (&'static str, &'static str),
        [value, low, high]: [Q; 3],
        number: impl Fn(Q) -> f64,
        shown: impl Fn(Q, Round) -> String,
    ) {
        let ends = [number(low), number(high)];
        let middle = shown(value, Round::Nearest);
        let text = if ends[0] < ends[1] {
            let (low, high) = (shown(low, Round::Down), shown(high, Round::Up));
            words.fill("calc-band", &[("value", &middle), ("low", &low), ("high", &high)])
        } else {
            middle
        };
        let line = Line::new(name, unit, json!(number(value)), text);
        self.results.push(Line { band: Some(ends), ..line });
    }

    /// Cites a source; the first one is the equation's own.
    pub fn cite(&mut self, citation: Citation) {
        if !self.citations.contains(&citation) {
            self.citations.push(citation);
        }
    }

    /// Cites a source as the register has it.
    pub fn cite_key(&mut self, key: Key) {
        let standing = match register::entry(key.0).map(|entry| entry.standing.as_str()) {
            Some("read") => Standing::Read,
            Some("common practice") => Standing::CommonPractice,
            _ => Standing::FromMemory,
        };
        self.cite(Citation::of(key, standing));
    }

    /// Adds something to know before the answer is used.
    pub fn warn(&mut self, text: String) {
        self.warnings.push(text);
    }

    fn standing(&self) -> Standing {
        self.citations
            .iter()
            .map(|citation| citation.standing)
            .max()
            .unwrap_or(Standing::FromMemory)
    }

    /// Warnings, the standing's own among them.
    fn all_warnings(&self, words: &Words) -> Vec<String> {
        let mut all = self.warnings.clone();
        match self.standing() {
            Standing::FromMemory => all.push(words.text("caution-from-memory")),
            Standing::CommonPractice => all.push(words.text("calc-warn-common-practice")),
            Standing::Read | Standing::Given => {}
        }
        all
    }

    fn validity(&self, words: &Words) -> String {
        words.text(&format!("calc-validity-{}", self.topic))
    }

    /// As a document.
    pub fn document(&self, words: &Words) -> CalcDocument {
        let map = |lines: &[Line]| lines.iter().flat_map(Line::entries).collect::<Map<_, _>>();
        CalcDocument {
            schema: "airtide.calc/1".to_owned(),
            topic: self.topic.to_owned(),
            inputs: map(&self.inputs),
            results: map(&self.results),
            source: self.citations.first().map(|one| one.key.to_string()).unwrap_or_default(),
            standing: standing_word(self.standing()).to_owned(),
            sources: self
                .citations
                .iter()
                .map(|citation| SourceView {
                    key: citation.key.to_string(),
                    title: title(citation),
                    locator: citation.locator.clone(),
                    standing: standing_word(citation.standing).to_owned(),
                })
                .collect(),
            validity: self.validity(words),
            warnings: self.all_warnings(words),
        }
    }

    /// As a page.
    pub fn page(&self, words: &Words) -> String {
        let head = |key: &str| line(HEADING, "", &words.text(key));
        let mut parts = vec![head("calc-answer") + &lines(&self.results, words)];
        let warnings = self.all_warnings(words);
        if !warnings.is_empty() {
            let list: String =
                warnings.iter().map(|warning| paragraph(warning, "  - ", "    ")).collect();
            let mark = unreviewed(words, "  ");
            parts.push(line(LOOK, "", &words.text("calc-warnings")) + &list + &mark);
        }
        parts.push(head("calc-inputs") + &lines(&self.inputs, words));
        parts.push(head("calc-validity") + &paragraph(&self.validity(words), "  ", "  "));
        let sources: String = self.citations.iter().map(|one| cited(one, words)).collect();
        parts.push(head("calc-source") + &sources);
        parts.join("\n")
    }
}

/// Labels and numbers, the numbers even.
fn lines(lines: &[Line], words: &Words) -> String {
    let fact = |line: &Line| (words.text(&format!("calc-{}", line.name)), line.shown.clone());
    labelled(&lines.iter().map(fact).collect::<Vec<_>>())
}

/// A source in full.
fn cited(citation: &Citation, words: &Words) -> String {
    let place =
        if citation.locator.is_empty() { String::new() } else { format!(", {}", citation.locator) };
    let standing = words.text(standing_key(citation.standing));
    let text = format!("{}{place} [{}]: {standing}", title(citation), citation.key);
    paragraph(&text, "  ", "    ")
}

fn title(citation: &Citation) -> String {
    register::entry(citation.key.0)
        .map_or_else(|| citation.key.to_string(), |entry| entry.title.clone())
}

/// The word of the documents for a standing.
fn standing_word(standing: Standing) -> &'static str {
    match standing {
        Standing::Read => "read",
        Standing::Given => "given",
        Standing::CommonPractice => "common practice, no source",
        Standing::FromMemory => "from memory",
    }
}

fn standing_key(standing: Standing) -> &'static str {
    match standing {
        Standing::Read => "plan-standing-read",
        Standing::Given => "plan-standing-given",
        Standing::CommonPractice => "plan-standing-practice",
        Standing::FromMemory => "plan-standing-memory",
    }
}
