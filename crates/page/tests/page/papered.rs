//! Documents for paper through the API.

use axum::http::{StatusCode, header};
use page::SiteOptions;

use super::asked::Asked;

fn path(kind: &str, more: &str) -> String {
    format!("/api/paper?kind={kind}&haul=logs&language=en&units=us{more}")
}

#[tokio::test]
async fn every_document_offered_is_made_or_says_why_not() {
    let asked = Asked::demo(SiteOptions::default()).await;
    let offered = asked.get("/api/papers").await.json();
    let kinds = offered["papers"].as_array().unwrap();
    assert_eq!(kinds.len(), 10);
    for kind in kinds {
        let kind = kind["kind"].as_str().unwrap();
        let came = asked.get(&path(kind, "&format=html")).await;
        assert_eq!(came.status, StatusCode::OK, "{kind}");
        let text = String::from_utf8(came.bytes).unwrap();
        assert!(text.starts_with("<!DOCTYPE html>") && text.contains("logs"), "{kind}");
    }
    std::fs::remove_dir_all(asked.folder.path().join("s/approvals")).unwrap();
    // A look at the disk holds for a moment.
    tokio::time::sleep(std::time::Duration::from_millis(500)).await;
    let recovery = asked.get(&path("recovery-procedure", "&format=html")).await;
    assert_eq!(recovery.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(recovery.json()["message"].as_str().unwrap().contains("approval request"));
}

#[cfg(feature = "paper")]
#[tokio::test]
async fn a_card_comes_as_pdf_and_a_report_as_workbook() {
    let asked = Asked::demo(SiteOptions::default()).await;
    let card = asked.get(&path("driver-card", "&format=pdf")).await;
    assert!(card.bytes.starts_with(b"%PDF-"));
    assert_eq!(card.headers[header::CONTENT_TYPE], "application/pdf");
    let named = card.headers[header::CONTENT_DISPOSITION].to_str().unwrap().to_owned();
    assert!(named.contains("driver-card.pdf"), "{named}");
    let report = asked.get(&path("plan-report", "&format=xlsx")).await;
    assert!(report.bytes.starts_with(b"PK"));
}

#[tokio::test]
async fn a_wrong_question_for_paper_is_refused() {
    let asked = Asked::demo(SiteOptions::default()).await;
    for (path, status) in [
        (path("poster", "&format=html"), StatusCode::NOT_FOUND),
        (path("driver-card", "&format=docx"), StatusCode::BAD_REQUEST),
        (path("driver-card", "&format=html&plan=7"), StatusCode::NOT_FOUND),
        (path("driver-card", ""), StatusCode::BAD_REQUEST),
        (
            path("driver-card", "&format=html").replace("units=us", "units=old"),
            StatusCode::BAD_REQUEST,
        ),
        (
            path("driver-card", "&format=html").replace("language=en", "language=tlh"),
            StatusCode::NOT_FOUND,
        ),
        (
            path("driver-card", "&format=html").replace("haul=logs", "haul=no"),
            StatusCode::UNPROCESSABLE_ENTITY,
        ),
    ] {
        let came = asked.get(&path).await;
        assert_eq!(came.status, status, "{path}: {:?}", came.json());
    }
}
