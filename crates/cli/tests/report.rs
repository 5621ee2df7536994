//! Documents on paper, as a user asks for them.

mod common;

use common::{airtide, airtide_in, with_starter};

#[test]
fn a_card_is_written_as_a_page_that_stands_alone() {
    let folder = with_starter();
    let ran = airtide_in(folder.path(), &["report", "fleet", "driver-card", "-o", "card.html"]);
    assert!(ran.code <= 1, "{}", ran.err);
    assert!(ran.err.contains("draft: no plan of this haul is issued"), "{}", ran.err);
    let page = std::fs::read_to_string(folder.path().join("card.html")).unwrap();
    assert!(page.contains("DRAFT, not issued: not for the driver"));
    let again = airtide_in(folder.path(), &["report", "fleet", "driver-card", "-o", "card.html"]);
    assert_eq!(again.code, 2);
    assert!(again.err.contains("there already"), "{}", again.err);
}

#[test]
fn an_issued_plan_is_printed_under_its_number_and_a_stale_one_is_refused() {
    let folder = with_starter();
    let issue = ["plan", "fleet", "--issue", "--date", "2026-12-01"];
    let issued = airtide_in(folder.path(), &issue);
    assert!(issued.code <= 1, "{}", issued.err);
    let call = ["report", "fleet", "driver-card", "--plan", "1", "--format", "html"];
    let ran = airtide_in(folder.path(), &call);
    assert!(ran.out.contains("-1, issued 2026-12-01"), "{}{}", ran.out, ran.err);
    assert!(!ran.out.contains("DRAFT"));
    let missing = airtide_in(
        folder.path(),
        &["report", "fleet", "driver-card", "--plan", "7", "--format", "html"],
    );
    assert_eq!(missing.code, 2);
    assert!(missing.err.contains("no issued plan 7; issued: 1"), "{}", missing.err);
    let survey = folder.path().join("fleet/survey.toml");
    let text = std::fs::read_to_string(&survey).unwrap();
    let hotter = text.replace("warmest_c = 22", "warmest_c = 24");
    assert_ne!(text, hotter);
    std::fs::write(&survey, hotter).unwrap();
    let stale = airtide_in(folder.path(), &call);
    assert_eq!(stale.code, 1);
    assert!(
        stale.err.contains("left behind") && stale.err.contains("survey.toml"),
        "{}",
        stale.err
    );
}

#[test]
fn a_form_that_the_ending_does_not_tell_is_asked_for() {
    let ran = airtide(&["report", ".", "driver-card", "-o", "card.doc"]);
    assert_eq!(ran.code, 2);
    assert!(ran.err.contains(".pdf, .html, .xlsx"), "{}", ran.err);
}

#[cfg(not(feature = "paper"))]
#[test]
fn a_build_without_paper_says_which_has_it() {
    let ran = airtide(&["report", ".", "driver-card", "-o", "card.pdf"]);
    assert_eq!(ran.code, 2);
    assert!(ran.err.contains("--features paper"), "{}", ran.err);
}

#[cfg(feature = "paper")]
#[test]
fn a_card_is_written_as_pdf_and_workbook() {
    let folder = with_starter();
    for (file, begins) in [("card.pdf", &b"%PDF-"[..]), ("card.xlsx", &b"PK"[..])] {
        let ran = airtide_in(folder.path(), &["report", "fleet", "driver-card", "-o", file]);
        assert!(ran.code <= 1, "{}", ran.err);
        assert!(std::fs::read(folder.path().join(file)).unwrap().starts_with(begins));
    }
}
