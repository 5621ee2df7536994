//! The front end, compiled in.

use axum::http::{StatusCode, Uri, header};
use axum::response::{IntoResponse, Response};
use rust_embed::RustEmbed;

#[derive(RustEmbed)]
#[folder = "front/dist"]
struct Front;

/// A file of the front end; every other path of the page is its one document.
pub async fn serve(uri: Uri) -> Response {
    let path = uri.path().trim_start_matches('/');
    let wanted = if path.is_empty() { "index.html" } else { path };
    if let Some(file) = Front::get(wanted) {
        return answer(wanted, &file);
    }
    // A place in the page, such as /plan, is not a file.
    let is_place = !wanted.contains('.') && !wanted.contains('/');
    match Front::get("index.html").filter(|_| is_place) {
        Some(file) => answer("index.html", &file),
        None => (StatusCode::NOT_FOUND, "not here").into_response(),
    }
}

fn answer(name: &str, file: &rust_embed::EmbeddedFile) -> Response {
    let kind = match name.rsplit('.').next().unwrap_or_default() {
        "html" => "text/html; charset=utf-8",
        "js" => "text/javascript; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "svg" => "image/svg+xml",
        _ => "application/octet-stream",
    };
    let headers = [(header::CONTENT_TYPE, kind), (header::CACHE_CONTROL, "no-cache")];
    (headers, file.data.clone()).into_response()
}
