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

/// Does several things at once, and shows how much of them is done if they last; the work tells its
/// share of each by its number.
#[cfg(feature = "logs")]
pub fn shares<T>(
    what: &str,
    count: usize,
    work: impl FnOnce(&(dyn Fn(usize, f64) + Sync)) -> T,
) -> T {
    use std::sync::Mutex;
    use std::time::Instant;

    const FINE: f64 = 1000.0;
    if !io::stderr().is_terminal() {
        return work(&|_, _| {});
    }
    let begun = Instant::now();
    let bar: Mutex<(Vec<f64>, Option<ProgressBar>)> = Mutex::new((vec![0.0; count], None));
    let told = |number: usize, share: f64| {
        // A bar that fails shows nothing; the work goes on.
        let Ok(mut state) = bar.lock() else { return };
        if let Some(own) = state.0.get_mut(number) {
            *own = share.clamp(0.0, 1.0);
        }
        if begun.elapsed() < QUIET {
            return;
        }
        let done = state.0.iter().sum::<f64>() / state.0.len().max(1) as f64;
        let shown = state.1.get_or_insert_with(|| {
            let style = ProgressStyle::with_template("{msg} {wide_bar} {percent} % {elapsed}")
                .unwrap_or_else(|_| ProgressStyle::default_bar());
            ProgressBar::new(1000).with_style(style).with_message(what.to_owned())
        });
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "0 to 1000")]
        shown.set_position((done * FINE) as u64);
    };
    let result = work(&told);
    if let Ok(state) = bar.lock()
        && let Some(shown) = &state.1
    {
        shown.finish_and_clear();
    }
    result
}

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

/// Reads a log, and shows how far it is if that lasts: `work` is handed a function that takes the bytes
/// of the file and the count of those read.
#[cfg(feature = "logs")]
pub fn of_log<T>(
    what: &str,
    work: impl FnOnce(&dyn Fn(u64, std::sync::Arc<std::sync::atomic::AtomicU64>)) -> T,
) -> T {
    use std::sync::atomic::Ordering;

    if !io::stderr().is_terminal() {
        return work(&|_, _| {});
    }
    thread::scope(|scope| {
        let (working, done) = mpsc::channel::<()>();
        let (told, watch) = mpsc::channel::<(u64, std::sync::Arc<std::sync::atomic::AtomicU64>)>();
        scope.spawn(move || {
            if done.recv_timeout(QUIET) != Err(mpsc::RecvTimeoutError::Timeout) {
                return;
            }
            let Ok((length, read)) = watch.recv() else { return };
            let template = "{bar:30} {bytes} of {total_bytes}  {bytes_per_sec}  {msg}";
            let style = ProgressStyle::with_template(template)
                .unwrap_or_else(|_| ProgressStyle::default_bar());
            let bar = ProgressBar::new(length).with_style(style).with_message(what.to_owned());
            while done.recv_timeout(TICK) == Err(mpsc::RecvTimeoutError::Timeout) {
                bar.set_position(read.load(Ordering::Relaxed));
            }
            bar.finish_and_clear();
        });
        let result = work(&|length, read| told.send((length, read)).unwrap_or(()));
        drop(working);
        result
    })
}
