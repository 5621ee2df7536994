//! Steps that last are shown on standard error, where that is a terminal.

use std::io::{self, IsTerminal};
use std::sync::mpsc;
use std::thread;
use std::time::Duration;

use indicatif::{ProgressBar, ProgressStyle};

/// A step shorter than this shows nothing.
const QUIET: Duration = Duration::from_secs(1);
/// Time between two pictures of the spinner.
const TICK: Duration = Duration::from_millis(120);

/// Does a step, and shows what it is if it lasts.
pub fn step<T>(what: &str, work: impl FnOnce() -> T) -> T {
    if !io::stderr().is_terminal() {
        return work();
    }
    thread::scope(|scope| {
        let (working, done) = mpsc::channel::<()>();
        scope.spawn(move || show(what, &done));
        let result = work();
        drop(working);
        result
    })
}

/// Shows a step from the end of the quiet time until nobody works on it any more.
fn show(what: &str, done: &mpsc::Receiver<()>) {
    if done.recv_timeout(QUIET) == Err(mpsc::RecvTimeoutError::Timeout) {
        let style = ProgressStyle::with_template("{spinner} {msg} {elapsed}")
            .unwrap_or_else(|_| ProgressStyle::default_spinner());
        let bar = ProgressBar::new_spinner().with_style(style).with_message(what.to_owned());
        bar.enable_steady_tick(TICK);
        // Nothing is ever sent: the end of the step closes the channel.
        done.recv().unwrap_or(());
        bar.finish_and_clear();
    }
}
