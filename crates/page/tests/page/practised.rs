//! Practice through the API.

use axum::http::StatusCode;
use page::SiteOptions;
use serde_json::{Value, json};

use super::asked::Asked;

async fn begun(asked: &Asked, again: Option<Value>) -> (String, Value) {
    let wanted = json!({ "haul": "logs", "surprise": "leak", "seed": 3, "again": again });
    let came = asked.json("POST", "/api/practice", &wanted).await;
    assert_eq!(came.status, StatusCode::OK, "{:?}", came.json());
    let found = came.json();
    (found["id"].as_str().unwrap().to_owned(), found["drive"].clone())
}

async fn step(asked: &Asked, id: &str, action: Value, seconds: u32) -> Value {
    let body = json!({ "id": id, "action": action, "seconds": seconds });
    let came = asked.json("POST", "/api/practice/step", &body).await;
    assert_eq!(came.status, StatusCode::OK, "{:?}", came.json());
    came.json()
}

#[tokio::test]
async fn a_drive_played_again_stands_where_it_stood() {
    let asked = Asked::demo(SiteOptions::default()).await;
    let (id, start) = begun(&asked, None).await;
    assert_eq!((&start["stage"], &start["time_s"]), (&json!("start"), &json!(0.0)));
    step(&asked, &id, json!({ "action": "go" }), 40).await;
    step(&asked, &id, json!({ "action": "speed", "speed": "chosen", "speed_kmh": 30 }), 200).await;
    let was = step(&asked, &id, json!({ "action": "stop" }), 60).await;
    assert!(was["km"].as_f64().unwrap() > 0.0 && was["speed_kmh"].as_f64().unwrap() < 1.0);
    let (_, again) =
        begun(&asked, Some(json!({ "acted": was["acted"], "time_s": was["time_s"] }))).await;
    assert_eq!(again, was);
}

#[tokio::test]
async fn a_drive_over_the_cap_is_judged_so_and_priced() {
    let asked = Asked::demo(SiteOptions::default()).await;
    let (id, start) = begun(&asked, None).await;
    let order = json!({ "action": "order", "rung": "woods", "load_state": start["load_state"] });
    let body = json!({ "id": id, "action": order, "seconds": 0 });
    let unknown = asked.json("POST", "/api/practice/step", &body).await;
    assert_eq!(unknown.status, StatusCode::NOT_FOUND, "there is no rung 'woods'");
    let plan = asked.json("POST", "/api/plan", &json!({ "haul": "logs" })).await.json();
    let rungs = plan["plan"]["rungs"].as_array().unwrap();
    let slowest = rungs
        .iter()
        .min_by(|a, b| a["cap_kmh"].as_f64().partial_cmp(&b["cap_kmh"].as_f64()).unwrap());
    let order = json!({ "action": "order", "rung": slowest.unwrap()["name"],
                        "load_state": start["load_state"] });
    step(&asked, &id, order, 600).await;
    step(&asked, &id, json!({ "action": "speed", "speed": "road" }), 0).await;
    step(&asked, &id, json!({ "action": "go" }), 300).await;
    let came = asked.json("POST", "/api/practice/verdict", &json!({ "id": id })).await.json();
    let rules: Vec<&str> = came["findings"]
        .as_array()
        .unwrap()
        .iter()
        .filter_map(|one| one["rule"].as_str())
        .collect();
    assert!(rules.contains(&"over-cap"), "{rules:?}");
    assert_eq!(came["surprises"], json!(["leak"]));
    assert_eq!(came["prices"].as_array().unwrap().len(), 6);
}

#[tokio::test]
async fn what_cannot_be_driven_is_refused_with_the_reason() {
    let asked = Asked::demo(SiteOptions::default()).await;
    let (id, _) = begun(&asked, None).await;
    let body =
        |action: Value, seconds: u32| json!({ "id": id, "action": action, "seconds": seconds });
    let again = |acted: Value, time_s: f64| json!({ "haul": "logs", "surprise": "none", "seed": 1, "again": { "acted": acted, "time_s": time_s } });
    let gone = json!({ "time_s": 30.0, "action": "go", "rung": null, "load_state": null, "speed": null, "speed_kmh": null });
    for (path, body, status) in [
        ("/api/practice/step", body(json!({ "action": "fly" }), 1), StatusCode::BAD_REQUEST),
        (
            "/api/practice/step",
            body(json!({ "action": "speed", "speed": "chosen", "speed_kmh": -3 }), 1),
            StatusCode::BAD_REQUEST,
        ),
        (
            "/api/practice/step",
            body(json!({ "action": "order", "rung": "x" }), 1),
            StatusCode::BAD_REQUEST,
        ),
        ("/api/practice/step", body(Value::Null, 601), StatusCode::BAD_REQUEST),
        ("/api/practice/step", json!({ "id": "gone", "seconds": 1 }), StatusCode::NOT_FOUND),
        ("/api/practice/verdict", json!({ "id": "gone" }), StatusCode::NOT_FOUND),
        (
            "/api/practice",
            json!({ "haul": "logs", "surprise": "ufo", "seed": 1 }),
            StatusCode::BAD_REQUEST,
        ),
        (
            "/api/practice",
            json!({ "haul": "nowhere", "surprise": "none", "seed": 1 }),
            StatusCode::NOT_FOUND,
        ),
        ("/api/practice", again(json!([gone.clone()]), 10.0), StatusCode::BAD_REQUEST),
        ("/api/practice", again(json!([]), 1e9), StatusCode::BAD_REQUEST),
    ] {
        let came = asked.json("POST", path, &body).await;
        assert_eq!(came.status, status, "{path} {body}: {:?}", came.json());
        assert!(came.json()["message"].as_str().is_some_and(|text| !text.is_empty()));
    }
}
