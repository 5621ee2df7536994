//! What the API answers.

use std::time::{Duration, Instant};

use super::asked::Asked;
use axum::http::StatusCode;
use page::SiteOptions;
use serde_json::{Value, json};

async fn page() -> Asked {
    Asked::demo(SiteOptions::default()).await
}

#[tokio::test]
async fn a_plan_is_tried_and_a_heavier_load_needs_more() {
    let asked = page().await;
    let plan = async |load: f64| {
        let body = json!({ "haul": "logs", "what_if": { "load_pct": load } });
        let came = asked.json("POST", "/api/plan", &body).await;
        assert_eq!(came.status, StatusCode::OK);
        came.json()
    };
    let (surveyed, heavier) = (plan(0.0).await, plan(15.0).await);
    assert_eq!(surveyed["schema"], "airtide.trial/1");
    let lowest = |document: &Value| -> Vec<Option<f64>> {
        let cells = document["plan"]["ladder"].as_array().unwrap();
        cells.iter().map(|cell| cell["min_kpa"].as_f64()).collect()
    };
    // A heavier load may make a cell impossible; it never makes one need less.
    let (surveyed, heavier) = (lowest(&surveyed), lowest(&heavier));
    let both = surveyed.iter().zip(&heavier).filter_map(|(one, other)| (*one).zip(*other));
    let both: Vec<(f64, f64)> = both.collect();
    assert!(both.iter().all(|(one, other)| other >= one));
    assert!(both.iter().any(|(one, other)| other > one));
    let moved = json!({ "haul": "logs", "moved": [{ "number": 0, "km": 10.0 }] });
    let came = asked.json("POST", "/api/plan", &moved).await.json();
    assert_eq!(came["called"][0]["km"], json!(10.0));
}

#[tokio::test]
async fn what_cannot_be_tried_is_refused_with_the_reason() {
    let asked = page().await;
    for (body, status) in [
        (json!({ "haul": "nowhere" }), StatusCode::NOT_FOUND),
        (json!({ "haul": "logs", "what_if": { "load_pct": 900 } }), StatusCode::BAD_REQUEST),
        (json!({ "haul": "logs", "moved": [{ "number": 0, "km": 1e9 }] }), StatusCode::BAD_REQUEST),
        (json!({ "haul": "logs", "wish": 1 }), StatusCode::UNPROCESSABLE_ENTITY),
        (json!([1]), StatusCode::UNPROCESSABLE_ENTITY),
    ] {
        let came = asked.json("POST", "/api/plan", &body).await;
        assert_eq!(came.status, status, "{body}");
        assert!(came.json()["message"].as_str().is_some_and(|text| !text.is_empty()));
    }
}

#[tokio::test(flavor = "multi_thread", worker_threads = 4)]
async fn plans_beyond_the_cores_are_refused_at_once() {
    let asked = std::sync::Arc::new(page().await);
    let mut asking = Vec::new();
    for load in 0..24 {
        let asked = std::sync::Arc::clone(&asked);
        asking.push(tokio::spawn(async move {
            let body = json!({ "haul": "logs", "sampled": true, "what_if": { "load_pct": load } });
            let begun = Instant::now();
            let came = asked.json("POST", "/api/plan", &body).await;
            (came.status, came.error(), begun.elapsed())
        }));
    }
    let mut answered = 0;
    for one in asking {
        let (status, error, took) = one.await.unwrap();
        if status == StatusCode::OK {
            answered += 1;
        } else {
            assert_eq!((status, error.as_str()), (StatusCode::SERVICE_UNAVAILABLE, "busy"));
            // Generous: other tests share the cores; measured alone it is far below.
            assert!(took < Duration::from_millis(500), "{took:?}");
        }
    }
    assert!((1..24).contains(&answered), "{answered}");
}

#[tokio::test]
async fn a_save_names_what_it_was_made_from() {
    let asked = page().await;
    let read = asked.get("/api/file?path=hauls/logs.toml").await.json();
    let edit = |base: &Value, value: f64| {
        json!({ "path": "hauls/logs.toml", "base": base,
                "edits": [{ "do": "set", "pointer": "/cycles_a_day", "value": value }] })
    };
    let first = asked.json("PUT", "/api/file", &edit(&read["hash"], 3.0)).await;
    assert_eq!(first.status, StatusCode::OK);
    let text = |document: &Value| document["text"].as_str().unwrap().to_owned();
    let wanted = text(&read).replace("cycles_a_day = 2.5", "cycles_a_day = 3.0");
    assert_eq!(text(&first.json()), wanted);
    let second = asked.json("PUT", "/api/file", &edit(&read["hash"], 4.0)).await;
    assert_eq!(
        (second.status, second.error().as_str()),
        (StatusCode::CONFLICT, "changed-meanwhile")
    );
    let back =
        json!({ "path": "hauls/logs.toml", "base": first.json()["hash"], "text": text(&read) });
    let undone = asked.json("PUT", "/api/file", &back).await.json();
    assert_eq!(undone["hash"], read["hash"]);
}

#[tokio::test]
async fn a_problem_points_at_its_value() {
    let asked = page().await;
    let read = asked.get("/api/file?path=hauls/logs.toml").await.json();
    let edit = json!({ "path": "hauls/logs.toml", "base": read["hash"],
                       "edits": [{ "do": "set", "pointer": "/loading/time_min", "value": -5 }] });
    let saved = asked.json("PUT", "/api/file", &edit).await.json();
    let problems = saved["problems"].as_array().unwrap();
    assert!(problems.iter().any(|one| one["pointer"] == "/loading/time_min"), "{problems:?}");
}

#[tokio::test]
async fn a_survey_that_is_unusable_still_opens() {
    let folder = tempfile::tempdir().unwrap();
    std::fs::create_dir_all(folder.path().join("s")).unwrap();
    std::fs::write(folder.path().join("s/survey.toml"), "name = ").unwrap();
    let asked = Asked::of(folder, SiteOptions::default()).await;
    assert_eq!(asked.get("/api/site").await.status, StatusCode::OK);
    assert!(asked.get("/api/check").await.json()["errors"].as_u64() > Some(0));
    let plan = asked.json("POST", "/api/plan", &json!({ "haul": "logs" })).await;
    assert_eq!(plan.status, StatusCode::UNPROCESSABLE_ENTITY);
}

#[tokio::test]
async fn a_window_has_the_bytes_it_promises() {
    let asked = page().await;
    let list = asked.get("/api/series").await.json();
    let run = &list["series"][0];
    let path = format!(
        "/api/series/window?id=run%3Alogs&columns=0,2&from_s=0&to_s={}&buckets=300",
        run["to_s"]
    );
    let came = asked.get(&path).await;
    let number = |at: usize| u32::from_le_bytes(came.bytes[at..at + 4].try_into().unwrap());
    assert_eq!((number(12), number(16)), (300, 2));
    assert_eq!(came.bytes.len(), 24 + 300 * (8 + 2 * 8));
    let wrong = asked.get("/api/series/window?id=run%3Alogs&columns=99&from_s=0&to_s=1&buckets=9");
    assert_eq!(wrong.await.status, StatusCode::NOT_FOUND);
}

#[tokio::test]
async fn the_description_resolves_and_covers_the_questions() {
    let asked = page().await;
    let described = asked.get("/api/openapi.json").await.json();
    let mut found = Vec::new();
    refs(&described, &mut found);
    assert!(found.len() > 20);
    for reference in found {
        assert!(described.pointer(&reference[1..]).is_some(), "{reference}");
    }
    for path in described["paths"].as_object().unwrap().keys() {
        let came = asked.get(path).await;
        assert_ne!(came.error(), "not-there", "{path} is described and not answered");
    }
}

#[tokio::test]
async fn texts_of_every_language_are_given() {
    let asked = page().await;
    let site = asked.get("/api/site").await.json();
    for tag in site["languages"].as_array().unwrap() {
        let came = asked.get(&format!("/api/texts?language={}", tag.as_str().unwrap())).await;
        assert_eq!(came.status, StatusCode::OK);
        assert!(String::from_utf8(came.bytes).unwrap().contains("page-part-plan ="));
    }
    assert_eq!(asked.get("/api/texts?language=tlh").await.status, StatusCode::NOT_FOUND);
}

/// Every reference in a document.
fn refs(value: &Value, found: &mut Vec<String>) {
    match value {
        Value::Object(map) => {
            found.extend(map.get("$ref").and_then(Value::as_str).map(str::to_owned));
            map.values().for_each(|value| refs(value, found));
        }
        Value::Array(values) => values.iter().for_each(|value| refs(value, found)),
        _ => {}
    }
}

#[tokio::test]
async fn a_route_with_a_track_has_a_map_and_one_without_says_so_by_none() {
    let folder = tempfile::tempdir().unwrap();
    survey::write_demo("windfarm-rock", &folder.path().join("s")).unwrap();
    let asked = Asked::of(folder, SiteOptions::default()).await;
    let map = asked.get("/api/map?route=quarry-to-turbines").await.json();
    let points = map["points"].as_array().unwrap();
    let length =
        map["route"]["legs"].as_array().unwrap().last().unwrap()["to_km"].as_f64().unwrap();
    let last = points.last().unwrap()["km"].as_f64().unwrap();
    assert!(points.len() > 50 && (last / length - 1.0).abs() < 0.05, "{last} of {length}");
    let without = page().await.get("/api/map?route=ridge-to-mill").await.json();
    assert_eq!(without["points"], json!([]));
    assert!(!without["route"]["legs"].as_array().unwrap().is_empty());
    let unknown = asked.get("/api/map?route=nowhere").await;
    assert_eq!(unknown.status, StatusCode::UNPROCESSABLE_ENTITY);
}
