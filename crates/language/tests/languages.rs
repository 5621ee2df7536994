//! Every language holds every text, whole: the same keys, arguments and attributes as English,
//! plurals of its own grammar.

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

use fluent_syntax::ast::{
    Attribute, Entry, Expression, InlineExpression, Pattern, PatternElement, VariantKey,
};
use language::{FIRST, Texts, with_texts};

fn texts() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("texts")
}

/// What a text asks for and how it chooses.
#[derive(Debug, Default, PartialEq, Eq, Clone)]
struct Shape {
    file: String,
    source: String,
    arguments: BTreeSet<String>,
    /// What each choice is made by, with its variants.
    choices: BTreeMap<String, BTreeSet<String>>,
    attributes: BTreeSet<String>,
}

impl Shape {
    fn pattern(&mut self, pattern: &Pattern<String>) {
        for element in &pattern.elements {
            match element {
                PatternElement::TextElement { value } => self.source.push_str(value),
                PatternElement::Placeable { expression } => self.expression(expression),
            }
        }
    }

    fn expression(&mut self, expression: &Expression<String>) {
        match expression {
            Expression::Inline(inline) => self.inline(inline),
            Expression::Select { selector, variants } => {
                self.inline(selector);
                let InlineExpression::VariableReference { id } = selector else {
                    panic!("a choice is made by an argument: {selector:?}");
                };
                let keys = variants.iter().map(|variant| match &variant.key {
                    VariantKey::Identifier { name } => name.clone(),
                    VariantKey::NumberLiteral { value } => value.clone(),
                });
                self.choices.entry(id.name.clone()).or_default().extend(keys);
                for variant in variants {
                    self.pattern(&variant.value);
                }
            }
        }
    }

    fn inline(&mut self, inline: &InlineExpression<String>) {
        match inline {
            InlineExpression::VariableReference { id } => {
                self.arguments.insert(id.name.clone());
                self.source.push_str("{ }");
            }
            InlineExpression::StringLiteral { value }
            | InlineExpression::NumberLiteral { value } => {
                self.source.push_str(value);
            }
            InlineExpression::Placeable { expression } => self.expression(expression),
            other => panic!("texts stand alone, without references: {other:?}"),
        }
    }
}

/// The texts of a language by key.
fn shapes(language: &str) -> BTreeMap<String, Shape> {
    let mut shapes = BTreeMap::new();
    for entry in std::fs::read_dir(texts().join(language)).unwrap() {
        let path = entry.unwrap().path();
        let file = path.file_name().unwrap().to_str().unwrap().to_owned();
        let source = std::fs::read_to_string(&path).unwrap();
        let resource = fluent_syntax::parser::parse(source)
            .unwrap_or_else(|(_, errors)| panic!("{}: {errors:?}", path.display()));
        for entry in resource.body {
            match entry {
                Entry::Message(message) => {
                    let mut shape = Shape { file: file.clone(), ..Shape::default() };
                    shape.pattern(&message.value.expect("every text has words"));
                    for Attribute { id, value } in &message.attributes {
                        shape.attributes.insert(id.name.clone());
                        shape.pattern(value);
                    }
                    let twice = shapes.insert(message.id.name.clone(), shape);
                    assert!(twice.is_none(), "{language}/{file}: {} twice", message.id.name);
                }
                Entry::Term(term) => {
                    panic!("{language}/{file}: -{}: texts stand alone", term.id.name)
                }
                Entry::Junk { content } => panic!("{language}/{file}: not read: {content}"),
                _ => {}
            }
        }
    }
    shapes
}

/// Languages beside English.
fn others() -> Vec<&'static str> {
    with_texts().filter(|language| *language != FIRST).collect()
}

/// Keys that have English words only so far, a line each in `texts/untranslated.txt`.
fn untranslated() -> BTreeSet<String> {
    let list = std::fs::read_to_string(texts().join("untranslated.txt")).unwrap();
    let lines = list.lines().filter(|line| !line.starts_with('#') && !line.is_empty());
    lines.map(str::to_owned).collect()
}

#[test]
fn every_key_is_in_every_language_or_on_the_list_of_those_still_to_translate() {
    let english = shapes(FIRST);
    assert!(english.len() > 500);
    let listed = untranslated();
    let mut missing = BTreeSet::new();
    for language in others() {
        let own = shapes(language);
        for (key, shape) in &english {
            match own.get(key) {
                Some(own) => assert_eq!(own.file, shape.file, "file of {key} in {language}"),
                None => {
                    missing.insert(key.clone());
                }
            }
        }
        let unknown: Vec<_> = own.keys().filter(|key| !english.contains_key(*key)).collect();
        assert!(unknown.is_empty(), "{language} has keys that English has not: {unknown:?}");
    }
    let unlisted: Vec<_> = missing.difference(&listed).collect();
    assert!(
        unlisted.is_empty(),
        "translate these, or list them in untranslated.txt: {unlisted:#?}"
    );
    let done: Vec<_> = listed.difference(&missing).collect();
    assert!(done.is_empty(), "take these off untranslated.txt: {done:#?}");
}

#[test]
fn every_language_has_the_arguments_choices_and_attributes_of_english() {
    let english = shapes(FIRST);
    for language in others() {
        for (key, own) in shapes(language) {
            let Some(first) = english.get(&key) else { continue };
            assert_eq!(own.arguments, first.arguments, "arguments of {key} in {language}");
            assert_eq!(own.attributes, first.attributes, "attributes of {key} in {language}");
            let by = |shape: &Shape| shape.choices.keys().cloned().collect::<Vec<_>>();
            assert_eq!(by(&own), by(first), "what {key} chooses by in {language}");
        }
    }
}

// Unicode CLDR, language plural rules, cardinals: categories, and those that whole numbers under a
// million need.
const PLURALS: [(&str, &[&str], &[&str]); 7] = [
    ("de", &["one", "other"], &["one", "other"]),
    ("en", &["one", "other"], &["one", "other"]),
    ("es", &["one", "many", "other"], &["one", "other"]),
    ("fi", &["one", "other"], &["one", "other"]),
    ("fr", &["one", "many", "other"], &["one", "other"]),
    ("pt", &["one", "many", "other"], &["one", "other"]),
    ("sv", &["one", "other"], &["one", "other"]),
];

#[test]
fn table_plurals_are_those_of_the_language() {
    for language in with_texts() {
        let (_, known, needed) = PLURALS.iter().find(|(name, ..)| *name == language).unwrap();
        for (key, shape) in shapes(language) {
            let Some(variants) = shape.choices.get("count") else { continue };
            for variant in variants {
                let number = variant.parse::<u32>().is_ok();
                let in_grammar = number || known.contains(&variant.as_str());
                assert!(in_grammar, "'{variant}' of {key} is no plural in {language}");
            }
            for category in *needed {
                assert!(variants.contains(*category), "{key} has no '{category}' in {language}");
            }
        }
    }
}

// French and Portuguese count nothing as one thing, the others as many; CLDR as above.
#[test]
fn table_nothing_takes_the_plural_of_the_language() {
    let files = |count: usize, tag: &str| {
        Texts::new(tag).unwrap().get("plan-change-count", &[("count", count.into())])
    };
    for tag in ["en-CA", "de", "es-MX", "fi", "fr-CA", "pt-BR", "sv"] {
        let words = |count| files(count, tag).replace(char::is_numeric, "");
        let zero_as_one = matches!(tag, "fr-CA" | "pt-BR");
        if untranslated().contains("plan-change-count") && tag != "en-CA" {
            continue;
        }
        assert_eq!(words(0) == words(1), zero_as_one, "{tag}");
        assert_eq!(words(2), words(1_000), "{tag}");
        assert_ne!(words(1), words(2), "{tag}");
    }
}

#[test]
fn every_language_says_whether_its_safety_texts_were_reviewed() {
    for language in with_texts() {
        let texts = Texts::new(language).unwrap();
        let key = "caution-unreviewed";
        assert!(texts.keys().any(|own| own == key), "{language} has no mark of its own");
        let source = std::fs::read_to_string(texts_of(language, "cautions.ftl")).unwrap();
        let yes = source.contains("    .reviewed = yes");
        assert!(yes != source.contains("    .reviewed = no"), "{language}: reviewed is yes or no");
        assert_eq!(texts.unreviewed(), (!yes).then(|| texts.get(key, &[])), "{language}");
    }
}

fn texts_of(language: &str, file: &str) -> PathBuf {
    texts().join(language).join(file)
}

// Chile writes a decimal comma, Mexico a point, and both read these texts.
#[test]
fn spanish_texts_hold_no_decimal_number() {
    for (key, shape) in shapes("es") {
        // The number of the rule is a name, not a decimal number.
        let source = shape.source.replace("1910.177", "");
        let characters: Vec<char> = source.chars().collect();
        let decimal = characters.windows(3).any(|three| {
            three[0].is_ascii_digit() && matches!(three[1], '.' | ',') && three[2].is_ascii_digit()
        });
        assert!(!decimal, "{key}: {}", shape.source);
    }
}
