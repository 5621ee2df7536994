//! Who may ask what.

use super::asked::{Asked, from_afar};
use axum::body::Body;
use axum::http::StatusCode;
use page::{LARGEST_BODY, Share, SiteOptions};
use serde_json::json;

async fn page() -> Asked {
    Asked::demo(SiteOptions::default()).await
}

#[tokio::test]
async fn only_our_own_host_and_origin_may_ask() {
    let asked = page().await;
    for headers in [
        [("host", "evil.example"), ("accept", "*/*")],
        [("host", "127.0.0.1.evil.example:8731"), ("accept", "*/*")],
        [("origin", "http://evil.example"), ("accept", "*/*")],
        [("origin", "null"), ("accept", "*/*")],
        [("origin", "http://localhost:8731"), ("accept", "*/*")],
        [("sec-fetch-site", "cross-site"), ("accept", "*/*")],
    ] {
        let request = Asked::request("GET", "/api/site", &headers).body(Body::empty()).unwrap();
        assert_eq!(asked.send(request).await.status, StatusCode::FORBIDDEN, "{headers:?}");
    }
    for headers in [
        [("host", "localhost:9"), ("origin", "http://localhost:9")],
        [("host", "[::1]:9"), ("sec-fetch-site", "same-origin")],
    ] {
        let request = Asked::request("GET", "/api/site", &headers).body(Body::empty()).unwrap();
        assert_eq!(asked.send(request).await.status, StatusCode::OK, "{headers:?}");
    }
}

#[tokio::test]
async fn what_is_not_a_plain_question_needs_the_token() {
    let asked = page().await;
    for (method, path) in
        [("PUT", "/api/file"), ("POST", "/api/plan"), ("POST", "/api/issue"), ("POST", "/api/now")]
    {
        for headers in [&[][..], &[("x-airtide-token", "00")][..]] {
            let request = Asked::request(method, path, headers).body(Body::from("{}")).unwrap();
            let came = asked.send(request).await;
            assert_eq!(
                (came.status, came.error().as_str()),
                (StatusCode::FORBIDDEN, "wrong-token")
            );
        }
    }
}

#[tokio::test]
async fn every_answer_carries_the_policy() {
    let asked = page().await;
    for path in ["/", "/app.js", "/api/site", "/api/nothing", "/nothing.png"] {
        let came = asked.get(path).await;
        let policy = came.headers["content-security-policy"].to_str().unwrap();
        let scripts = policy.split(';').find(|part| part.contains("script-src")).unwrap();
        assert_eq!(scripts.trim(), "script-src 'self'");
        assert!(policy.contains("default-src 'none'") && policy.contains("frame-ancestors 'none'"));
        assert_eq!(came.headers["x-content-type-options"], "nosniff");
    }
}

#[tokio::test]
async fn paths_stay_inside_the_survey() {
    let asked = page().await;
    let outside = asked.folder.path().join("outside.toml");
    std::fs::write(&outside, "a = 1\n").unwrap();
    for path in
        ["../outside.toml", "tires/../../outside.toml", "/etc/hostname", "..%2Foutside.toml"]
    {
        let came = asked.get(&format!("/api/file?path={path}")).await;
        assert_eq!(came.status, StatusCode::NOT_FOUND, "{path}");
        let save = json!({ "path": path, "base": null, "text": "a = 2\n" });
        assert_eq!(asked.json("PUT", "/api/file", &save).await.status, StatusCode::NOT_FOUND);
    }
    for path in ["/../Cargo.toml", "/%2e%2e/Cargo.toml", "/assets/../../x.toml"] {
        assert_eq!(asked.get(path).await.status, StatusCode::NOT_FOUND, "{path}");
    }
    assert_eq!(std::fs::read_to_string(outside).unwrap(), "a = 1\n");
}

#[tokio::test]
async fn a_body_too_large_is_refused() {
    let asked = page().await;
    let text = "x".repeat(LARGEST_BODY);
    let save = json!({ "path": "survey.toml", "base": null, "text": text });
    let came = asked.json("PUT", "/api/file", &save).await;
    assert_eq!(came.status, StatusCode::PAYLOAD_TOO_LARGE);
}

#[tokio::test]
async fn devices_are_let_in_by_the_code_and_may_read_only() {
    let sharing =
        |share| SiteOptions { share, hosts: vec!["10.0.0.5".into()], ..SiteOptions::default() };
    let asked = Asked::demo(sharing(Share::ReadOnly)).await;
    let host = ("host", "10.0.0.5:8731");
    let get = |path: &str, headers: &[(&str, &str)]| {
        from_afar(Asked::request("GET", path, headers).body(Body::empty()).unwrap())
    };
    let came = asked.send(get("/", &[host])).await;
    assert_eq!(came.status, StatusCode::UNAUTHORIZED);
    assert!(String::from_utf8(came.bytes).unwrap().contains("action=\"/pair\""));
    assert_eq!(asked.send(get("/api/site", &[host])).await.error(), "not-paired");

    let form = [host, ("content-type", "application/x-www-form-urlencoded")];
    let mut request = Asked::request("POST", "/pair", &[host]).body(Body::empty()).unwrap();
    request.headers_mut().insert("content-type", form[1].1.parse().unwrap());
    *request.body_mut() = Body::from(format!("code={}", asked.site.pairing_code()));
    let came = asked.send(from_afar(request)).await;
    assert_eq!(came.status, StatusCode::SEE_OTHER);
    let cookie = came.headers["set-cookie"].to_str().unwrap().to_owned();
    assert!(cookie.contains("HttpOnly") && cookie.contains("SameSite=Strict"));
    let key = cookie.split(';').next().unwrap();
    let came = asked.send(get("/api/site", &[host, ("cookie", key)])).await;
    let site = came.json();
    assert_eq!((came.status, &site["read_only"]), (StatusCode::OK, &json!(true)));
    assert_eq!(site["pairing_code"], json!(null));

    let token = site["token"].as_str().unwrap();
    let headers = [host, ("cookie", key), ("x-airtide-token", token)];
    let save = json!({ "path": "survey.toml", "base": null, "text": "" }).to_string();
    let request = Asked::request("PUT", "/api/file", &headers).body(Body::from(save)).unwrap();
    assert_eq!(asked.send(from_afar(request)).await.error(), "read-only");
}

#[tokio::test]
async fn without_sharing_nobody_else_may_look() {
    let asked = page().await;
    let request = Asked::request("GET", "/api/site", &[]).body(Body::empty()).unwrap();
    assert_eq!(asked.send(from_afar(request)).await.error(), "not-shared");
}
