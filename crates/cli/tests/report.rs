//! Documents on paper, as a user asks for them.

mod common;

use std::path::Path;

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
fn papers_for_the_workshop_say_what_the_survey_states_and_leave_room_for_what_is_found() {
    let folder = with_starter();
    for kind in ["setup-sheet", "commissioning-record", "service-list", "approval-request"] {
        let call = ["report", "fleet", kind, "--format", "html", "--units", "si"];
        let ran = airtide_in(folder.path(), &call);
        assert!(ran.code <= 1, "{kind}: {}", ran.err);
        let told = match kind {
            "setup-sheet" => "Takes no air for tires while brake pressure is under",
            "commissioning-record" => "They differ by",
            "service-list" => "common practice, no source",
            _ => "Approved, cold, kPa",
        };
        assert!(ran.out.contains(told), "{kind}: {}", ran.out);
    }
}

#[test]
fn a_recovery_procedure_that_no_maker_approved_is_refused_with_what_is_missing() {
    let folder = with_starter();
    let ran = airtide_in(folder.path(), &["report", "fleet", "recovery-procedure", "-o", "r.html"]);
    assert_eq!(ran.code, 1);
    for told in ["no tire maker approved rung", "Missing:", "approvals/", "waits for help"] {
        assert!(ran.err.contains(told), "{}", ran.err);
    }
    assert!(!folder.path().join("r.html").exists());
}

#[test]
fn an_approved_lowest_rung_gives_a_recovery_procedure() {
    let demo = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../demo/ridge-logs");
    let demo = demo.display().to_string();
    let ran = airtide(&["report", &demo, "recovery-procedure", "--format", "html"]);
    assert!(ran.out.contains("rung spur may be used to get out, empty, laden"), "{}", ran.err);
    assert!(ran.out.contains("no number is made up on the phone"));
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
