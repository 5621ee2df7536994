//! Pages in every language: nothing left in English, nothing broken, numbers in the reader's form.

mod common;

use std::sync::LazyLock;

use common::{Ran, airtide};

const DEMO: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../../demo/windfarm-rock");

fn page(tag: &str) -> Ran {
    airtide(&["plan", DEMO, "--language", tag, "--units", "us", "--full"])
}

/// The plan page in full, in the unit profile with the widest table, in each language.
static PAGES: LazyLock<Vec<(&str, Ran)>> =
    LazyLock::new(|| language::OFFERED.into_iter().map(|tag| (tag, page(tag))).collect());

/// Words of a page without its sources, whose titles and places stay as they were published.
fn words(ran: &Ran, tag: &str) -> Vec<String> {
    let sources = language::Texts::new(tag).unwrap().get("plan-sources", &[]);
    let page = ran.out.split(&format!("\n{sources}\n")).next().unwrap();
    let mut page = page.to_owned();
    while let Some(opened) = page.find('[') {
        let closed = opened + page[opened..].find(']').unwrap();
        // What stands last in the brackets is the standing, and that is ours to say.
        let kept = page[opened..closed].rsplit(": ").next().unwrap_or_default().to_owned();
        page.replace_range(opened..=closed, &kept.replace('[', ""));
    }
    let apart = |c: char| !c.is_alphanumeric() && c != '-';
    page.split(apart).filter(|word| !word.is_empty()).map(str::to_owned).collect()
}

#[test]
fn no_page_is_wider_than_100_columns_or_short_of_a_text() {
    let marks = ["[caution-", "[limit-", "[plan-", "[why-", "[cells-", "[unit-", "NaN"];
    for (tag, ran) in PAGES.iter() {
        assert!(ran.code < 2, "{tag}: {}", ran.err);
        for line in ran.out.lines() {
            assert!(line.chars().count() <= 100, "{tag}: {line}");
            assert!(!marks.iter().any(|mark| line.contains(mark)), "{tag}: {line}");
        }
    }
}

#[test]
fn no_page_of_another_language_holds_english_words() {
    let english = [
        "Ladder",
        "Rung",
        "Cap",
        "Lowest",
        "Highest",
        "Governed",
        "Cautions",
        "cold",
        "tires",
        "pressure",
        "needs",
        "approval",
        "approves",
        "possible",
        "raise",
        "lower",
        "RAISING",
        "loses",
        "saves",
        "wrong",
        "before",
        "beyond",
        "decided",
        "gauge",
        "deadband",
        "dual",
        "enough",
        "deflection",
        "Time",
        "Fuel",
        "Waited",
        "chosen",
        "memory",
        "given",
    ];
    let found = |tag: &str| {
        let (_, ran) = PAGES.iter().find(|(of, _)| *of == tag).unwrap();
        let words = words(ran, tag);
        english.into_iter().filter(|word| words.iter().any(|w| w == word)).collect::<Vec<_>>()
    };
    assert!(found("en").len() > english.len() / 2, "{:?}", found("en"));
    for (tag, _) in PAGES.iter().filter(|(tag, _)| !tag.starts_with("en")) {
        // `possible` is French and `enough` nothing else; names in the survey stay as written.
        let left: Vec<_> = found(tag).into_iter().filter(|word| *word != "possible").collect();
        assert!(left.is_empty(), "{tag}: {left:?}");
    }
}

#[test]
fn what_governs_a_cell_is_not_broken_within_a_word() {
    for (tag, ran) in PAGES.iter() {
        let texts = language::Texts::new(tag).unwrap();
        let words = words(ran, tag);
        for by in ["restricted-speed", "maker-row", "lowest-row"] {
            let text = texts.get(&format!("limit-brief-{by}"), &[]);
            for word in text.split([' ', '\'', '-']).filter(|word| word.len() > 1) {
                let whole = words.iter().any(|w| w.split('-').any(|part| part == word));
                assert!(whole, "{tag}: '{word}' of {by}");
            }
        }
    }
}

#[test]
fn safety_texts_that_nobody_reviewed_say_so() {
    for (tag, ran) in PAGES.iter() {
        let mark = language::Texts::new(tag).unwrap().unreviewed();
        assert_eq!(mark.is_none(), tag.starts_with("en"), "{tag}");
        if let Some(mark) = mark {
            assert!(ran.out.contains(&format!("[{mark}]")), "{tag}");
        }
    }
}

#[test]
fn chile_and_mexico_read_the_same_words_and_each_its_decimal_mark() {
    let of = |tag: &str| &PAGES.iter().find(|(of, _)| *of == tag).unwrap().1.out;
    let (chile, mexico) = (of("es-CL"), of("es-MX"));
    assert!(chile.contains("16,90 mi") && !chile.contains("16.90"), "{chile}");
    assert!(mexico.contains("16.90 mi") && !mexico.contains("16,90"), "{mexico}");
    let bare = |text: &str| text.replace([',', '.'], "");
    assert_eq!(bare(chile), bare(mexico));
}

#[test]
fn an_unknown_language_is_refused_with_the_choice() {
    for tag in ["nl", "??"] {
        let ran = airtide(&["plan", DEMO, "--language", tag]);
        assert_eq!(ran.code, 2, "{}", ran.err);
        assert!(ran.err.contains(tag) && ran.err.contains("fr-CA"), "{}", ran.err);
    }
}
