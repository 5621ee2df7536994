//! Another device is let in once by a code that the person at this computer reads out.

use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::time::{Duration, Instant};

use axum::extract::{Form, State};
use axum::http::{HeaderMap, StatusCode, header};
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::post;
use serde::Deserialize;

use crate::failure::Failure;
use crate::site::{Site, random_text};

/// Where the code is sent.
pub const PATH: &str = "/pair";

const COOKIE: &str = "airtide-device";
/// Wrong codes before a new code is made.
const MOST_TRIES: u32 = 5;
/// Least time between two tries of anybody.
const PAUSE: Duration = Duration::from_secs(1);
/// How long a code holds.
const CODE_HOLDS: Duration = Duration::from_secs(600);
/// Devices at once.
const MOST_DEVICES: usize = 8;

#[derive(Debug)]
struct Known {
    code: String,
    made: Instant,
    tries: u32,
    last_try: Option<Instant>,
    devices: Vec<String>,
}

/// Codes given out and devices let in.
#[derive(Debug)]
pub struct Pairing(Mutex<Known>);

impl Pairing {
    pub fn new() -> Result<Self, getrandom::Error> {
        Ok(Self(Mutex::new(Known {
            code: fresh_code()?,
            made: Instant::now(),
            tries: 0,
            last_try: None,
            devices: Vec::new(),
        })))
    }

    fn lock(&self) -> MutexGuard<'_, Known> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// The code that lets the next device in.
    pub fn code(&self) -> String {
        self.lock().code.clone()
    }

    /// Whether the device was let in.
    pub fn knows(&self, headers: &HeaderMap) -> bool {
        let cookies =
            headers.get_all(header::COOKIE).iter().filter_map(|value| value.to_str().ok());
        let mut keys = cookies
            .flat_map(|cookies| cookies.split(';'))
            .filter_map(|cookie| cookie.trim().strip_prefix(COOKIE)?.strip_prefix('='));
        let state = self.lock();
        keys.any(|key| {
            state.devices.iter().any(|known| super::same(known.as_bytes(), key.as_bytes()))
        })
    }

    /// Lets a device in by its code; gives its key.
    fn pair(&self, code: &str) -> Result<String, Failure> {
        let no_chance = |error: getrandom::Error| Failure::broken(error);
        let mut state = self.lock();
        let now = Instant::now();
        if state.last_try.is_some_and(|last| now.duration_since(last) < PAUSE) {
            return Err(Failure::too_often("wait a second between two codes"));
        }
        state.last_try = Some(now);
        let given: String = code.chars().filter(char::is_ascii_digit).collect();
        let holds = now.duration_since(state.made) < CODE_HOLDS;
        let right = holds && super::same(given.as_bytes(), state.code.as_bytes());
        state.tries += 1;
        if right || !holds || state.tries >= MOST_TRIES {
            // A code lets one device in, once; a code that was guessed at is gone.
            state.code = fresh_code().map_err(no_chance)?;
            (state.made, state.tries) = (now, 0);
        }
        if !right {
            return Err(Failure::forbidden(
                "wrong-code",
                "that is not the code, or it is used up; the computer shows the new one",
            ));
        }
        let key = random_text(32).map_err(no_chance)?;
        if state.devices.len() >= MOST_DEVICES {
            state.devices.remove(0);
        }
        state.devices.push(key.clone());
        Ok(key)
    }
}

/// Eight digits.
fn fresh_code() -> Result<String, getrandom::Error> {
    let random = getrandom::u64()?;
    Ok(format!("{:08}", random % 100_000_000))
}

/// The form that asks for the code; no script, no style from elsewhere.
pub fn ask() -> Response {
    const PAGE: &str = include_str!("pair.html");
    (StatusCode::UNAUTHORIZED, [(header::CONTENT_TYPE, "text/html; charset=utf-8")], PAGE)
        .into_response()
}

#[derive(Deserialize)]
struct Code {
    code: String,
}

/// Where a device sends its code.
pub fn routes() -> axum::Router<Arc<Site>> {
    axum::Router::new().route(PATH, post(pair))
}

async fn pair(State(site): State<Arc<Site>>, Form(given): Form<Code>) -> Response {
    match site.pairing.pair(&given.code) {
        Ok(key) => {
            // Without Secure: the local network has no certificate. See the threat model.
            let cookie = format!("{COOKIE}={key}; HttpOnly; SameSite=Strict; Path=/");
            ([(header::SET_COOKIE, cookie)], Redirect::to("/")).into_response()
        }
        Err(failure) => failure.into_response(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn rested(pairing: &Pairing) {
        pairing.lock().last_try = None;
    }

    #[test]
    fn a_code_lets_one_device_in_once() {
        let pairing = Pairing::new().unwrap();
        let code = pairing.code();
        let key = pairing.pair(&format!("{} {}", &code[..4], &code[4..])).unwrap();
        let mut headers = HeaderMap::new();
        headers.insert(header::COOKIE, format!("a=b; {COOKIE}={key}").parse().unwrap());
        assert!(pairing.knows(&headers));
        rested(&pairing);
        assert!(pairing.pair(&code).is_err());
        headers.insert(header::COOKIE, format!("{COOKIE}=0000").parse().unwrap());
        assert!(!pairing.knows(&headers));
    }

    #[test]
    fn guesses_are_slow_and_use_the_code_up() {
        let pairing = Pairing::new().unwrap();
        let code = pairing.code();
        let wrong = if code == "00000000" { "1" } else { "00000000" };
        assert!(pairing.pair(wrong).is_err());
        assert_eq!(pairing.pair(&code), Err(Failure::too_often("wait a second between two codes")));
        for _ in 1..MOST_TRIES {
            rested(&pairing);
            assert!(pairing.pair(wrong).is_err());
        }
        rested(&pairing);
        assert!(pairing.pair(&code).is_err());
    }
}
