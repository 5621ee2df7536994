//! The page asked without a socket.

use std::net::SocketAddr;
use std::sync::Arc;

use axum::body::{Body, to_bytes};
use axum::extract::ConnectInfo;
use axum::http::{HeaderMap, Request, StatusCode};
use page::{Site, SiteOptions, router};
use serde_json::Value;
use tempfile::TempDir;
use tower::ServiceExt;

/// A page over a copy of a demo.
pub struct Asked {
    pub folder: TempDir,
    pub site: Arc<Site>,
    app: axum::Router,
    token: String,
}

/// What came back.
pub struct Came {
    pub status: StatusCode,
    pub headers: HeaderMap,
    pub bytes: Vec<u8>,
}

impl Came {
    pub fn json(&self) -> Value {
        serde_json::from_slice(&self.bytes).unwrap_or_default()
    }

    pub fn error(&self) -> String {
        self.json()["error"].as_str().unwrap_or_default().to_owned()
    }
}

impl Asked {
    pub async fn demo(options: SiteOptions) -> Self {
        let folder = tempfile::tempdir().unwrap();
        survey::write_demo("ridge-logs", &folder.path().join("s")).unwrap();
        Self::of(folder, options).await
    }

    pub async fn of(folder: TempDir, options: SiteOptions) -> Self {
        let options = SiteOptions { survey: folder.path().join("s"), ..options };
        let site = Arc::new(Site::new(options).unwrap());
        let app = router(Arc::clone(&site));
        let mut asked = Self { folder, site, app, token: String::new() };
        let found = asked.get("/api/site").await.json();
        found["token"].as_str().unwrap_or_default().clone_into(&mut asked.token);
        asked
    }

    pub async fn send(&self, request: Request<Body>) -> Came {
        let response = self.app.clone().oneshot(request).await.unwrap();
        let (status, headers) = (response.status(), response.headers().clone());
        let bytes = to_bytes(response.into_body(), 1 << 26).await.unwrap().to_vec();
        Came { status, headers, bytes }
    }

    pub async fn get(&self, path: &str) -> Came {
        self.send(Self::request("GET", path, &[]).body(Body::empty()).unwrap()).await
    }

    pub async fn json(&self, method: &str, path: &str, body: &Value) -> Came {
        let headers = [("x-airtide-token", self.token.as_str())];
        let request = Self::request(method, path, &headers);
        self.send(request.body(Body::from(body.to_string())).unwrap()).await
    }

    pub fn request(
        method: &str,
        path: &str,
        headers: &[(&str, &str)],
    ) -> axum::http::request::Builder {
        let host = ("host", "127.0.0.1:8731");
        let own = headers.iter().any(|(name, _)| *name == "host");
        let mut request = Request::builder().method(method).uri(path);
        request = request.header("content-type", "application/json");
        if !own {
            request = request.header(host.0, host.1);
        }
        for (name, value) in headers {
            request = request.header(*name, *value);
        }
        request
    }
}

/// Puts a request on another computer.
pub fn from_afar(mut request: Request<Body>) -> Request<Body> {
    let address: SocketAddr = "192.0.2.7:40000".parse().unwrap();
    request.extensions_mut().insert(ConnectInfo(address));
    request
}
