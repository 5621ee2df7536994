//! Requests that are not answered, with the reason.

use axum::Json;
use axum::http::{StatusCode, header};
use axum::response::{IntoResponse, Response};
use view::ErrorDocument;

/// A request that is not answered.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Failure {
    status: StatusCode,
    error: &'static str,
    message: String,
}

/// What a handler gives.
pub type Answer<T> = Result<T, Failure>;

impl Failure {
    #[expect(clippy::needless_pass_by_value, reason = "an error is handed over where it is told")]
    fn new(status: StatusCode, error: &'static str, message: impl ToString) -> Self {
        Self { status, error, message: message.to_string() }
    }

    /// What is wrong and what to do.
    pub fn message(&self) -> &str {
        &self.message
    }

    /// The request itself is wrong.
    pub fn wrong(message: impl ToString) -> Self {
        Self::new(StatusCode::BAD_REQUEST, "wrong-request", message)
    }

    /// Nothing of that name.
    pub fn missing(message: impl ToString) -> Self {
        Self::new(StatusCode::NOT_FOUND, "not-there", message)
    }

    /// Not from here, or not by them.
    pub fn forbidden(error: &'static str, message: impl ToString) -> Self {
        Self::new(StatusCode::FORBIDDEN, error, message)
    }

    /// Somebody else changed it first.
    pub fn changed(message: impl ToString) -> Self {
        Self::new(StatusCode::CONFLICT, "changed-meanwhile", message)
    }

    /// The survey cannot bear it.
    pub fn survey(message: impl ToString) -> Self {
        Self::new(StatusCode::UNPROCESSABLE_ENTITY, "survey", message)
    }

    /// Too much at once.
    pub fn busy() -> Self {
        let message = "as many plans as this computer has cores are being worked out; ask again";
        Self::new(StatusCode::SERVICE_UNAVAILABLE, "busy", message)
    }

    /// Too many tries.
    pub fn too_often(message: impl ToString) -> Self {
        Self::new(StatusCode::TOO_MANY_REQUESTS, "too-often", message)
    }

    /// Took too long.
    pub fn too_slow() -> Self {
        let message = "the request took too long to arrive or to be answered";
        Self::new(StatusCode::REQUEST_TIMEOUT, "too-slow", message)
    }

    /// This computer failed.
    pub fn broken(message: impl ToString) -> Self {
        Self::new(StatusCode::INTERNAL_SERVER_ERROR, "failed", message)
    }
}

impl IntoResponse for Failure {
    fn into_response(self) -> Response {
        let document = Json(ErrorDocument::new(self.error, self.message));
        if self.status == StatusCode::SERVICE_UNAVAILABLE {
            return (self.status, [(header::RETRY_AFTER, "1")], document).into_response();
        }
        (self.status, document).into_response()
    }
}

impl From<study::OpenError> for Failure {
    fn from(error: study::OpenError) -> Self {
        Self::broken(error)
    }
}

impl From<axum::extract::rejection::JsonRejection> for Failure {
    fn from(rejection: axum::extract::rejection::JsonRejection) -> Self {
        Self::new(rejection.status(), "wrong-request", rejection.body_text())
    }
}

impl From<axum::extract::rejection::QueryRejection> for Failure {
    fn from(rejection: axum::extract::rejection::QueryRejection) -> Self {
        Self::wrong(rejection.body_text())
    }
}
