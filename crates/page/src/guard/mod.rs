//! Who may ask: the right host, the right origin, paired where that is wanted, and with the
//! token of the page where something is written.

pub mod headers;
pub mod pairing;

use std::net::{IpAddr, SocketAddr};
use std::sync::Arc;
use std::time::Duration;

use axum::extract::{ConnectInfo, Request, State};
use axum::http::{HeaderMap, Method, header};
use axum::middleware::Next;
use axum::response::{IntoResponse, Response};

use crate::failure::Failure;
use crate::site::{Share, Site};

/// Longest time from the head of a request to its answer.
const LONGEST: Duration = Duration::from_secs(20);

/// The header that carries the token of the page.
pub const TOKEN: &str = "x-airtide-token";

/// What a window may do.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Rights {
    /// Whether it may write.
    pub write: bool,
    /// Whether it is on this computer.
    pub here: bool,
}

/// Admits a request or says why not.
pub async fn admit(State(site): State<Arc<Site>>, mut request: Request, next: Next) -> Response {
    let rights = match judge(&site, &request) {
        Ok(rights) => rights,
        Err(Refused::Pair) => return pairing::ask(),
        Err(Refused::For(failure)) => return failure.into_response(),
    };
    request.extensions_mut().insert(rights);
    match tokio::time::timeout(LONGEST, next.run(request)).await {
        Ok(response) => response,
        Err(_) => Failure::too_slow().into_response(),
    }
}

enum Refused {
    /// A device that is not paired yet asks for the page itself.
    Pair,
    For(Failure),
}

impl From<Failure> for Refused {
    fn from(failure: Failure) -> Self {
        Self::For(failure)
    }
}

fn judge(site: &Site, request: &Request) -> Result<Rights, Refused> {
    let headers = request.headers();
    let host = host(site, headers)?;
    origin(headers, &host)?;
    let peer = request.extensions().get::<ConnectInfo<SocketAddr>>().map(|info| info.0.ip());
    let here = peer.is_none_or(is_loopback);
    let write = if here { !site.options.read_only } else { site.options.share == Share::Edit };
    let path = request.uri().path();
    if !here && path != pairing::PATH {
        if site.options.share == Share::No {
            let message = "this page is for the computer it runs on; share it with --share";
            return Err(Failure::forbidden("not-shared", message).into());
        }
        if !site.pairing.knows(headers) {
            let page = request.method() == Method::GET && !path.starts_with("/api");
            let message = "this device is not paired; open the page and type the code";
            return Err(if page {
                Refused::Pair
            } else {
                Failure::forbidden("not-paired", message).into()
            });
        }
    }
    let reads = matches!(*request.method(), Method::GET | Method::HEAD);
    if !reads && path != pairing::PATH {
        token(site, headers)?;
    }
    Ok(Rights { write, here })
}

fn is_loopback(address: IpAddr) -> bool {
    address.to_canonical().is_loopback()
}

/// The host asked for, if it is one of ours: a name that somebody else made point here is not.
fn host(site: &Site, headers: &HeaderMap) -> Result<String, Failure> {
    let given = headers.get(header::HOST).and_then(|host| host.to_str().ok()).unwrap_or_default();
    let name = without_port(given);
    let loopback = ["localhost", "127.0.0.1", "[::1]"].contains(&name);
    if loopback || site.options.hosts.iter().any(|host| host == name) {
        return Ok(given.to_owned());
    }
    let message = "this address is not one the page is served under; use the one it printed";
    Err(Failure::forbidden("wrong-host", message))
}

fn without_port(host: &str) -> &str {
    match host.rsplit_once(':') {
        Some((name, port)) if port.bytes().all(|byte| byte.is_ascii_digit()) => name,
        _ => host,
    }
}

/// Another page in the same browser may not ask.
fn origin(headers: &HeaderMap, host: &str) -> Result<(), Failure> {
    let text = |name| headers.get(name).map(|value| value.to_str().unwrap_or("?"));
    let foreign = text(header::ORIGIN).is_some_and(|origin| origin != format!("http://{host}"));
    let site = text(header::HeaderName::from_static("sec-fetch-site"));
    let cross = site.is_some_and(|site| !["same-origin", "none"].contains(&site));
    if foreign || cross {
        let message = "this request comes from another page; only the page itself may ask";
        return Err(Failure::forbidden("wrong-origin", message));
    }
    Ok(())
}

/// Writes and work carry the token that only the page itself can read.
fn token(site: &Site, headers: &HeaderMap) -> Result<(), Failure> {
    let given = headers.get(TOKEN).map(axum::http::HeaderValue::as_bytes).unwrap_or_default();
    if same(given, site.token.as_bytes()) {
        return Ok(());
    }
    let message = "the page was opened before the program was started again; reload it";
    Err(Failure::forbidden("wrong-token", message))
}

/// Equal, in a time that does not tell where the first difference is.
fn same(a: &[u8], b: &[u8]) -> bool {
    a.len() == b.len() && a.iter().zip(b).fold(0, |found, (a, b)| found | (a ^ b)) == 0
}
