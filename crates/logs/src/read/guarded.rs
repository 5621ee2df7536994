//! Work of a library that may panic on a broken file.

use std::cell::Cell;
use std::panic::{self, AssertUnwindSafe};
use std::sync::Once;

thread_local! {
    static GUARDED: Cell<bool> = const { Cell::new(false) };
}

/// What the library gives; where a broken file makes it panic, that is a problem of the file, told once
/// and not on standard error too.
pub(super) fn guarded<T, E: std::fmt::Display>(
    work: impl FnOnce() -> Result<T, E>,
) -> Result<T, String> {
    static QUIET: Once = Once::new();
    QUIET.call_once(|| {
        let usual = panic::take_hook();
        panic::set_hook(Box::new(move |told| {
            if !GUARDED.get() {
                usual(told);
            }
        }));
    });
    GUARDED.set(true);
    let done = panic::catch_unwind(AssertUnwindSafe(work));
    GUARDED.set(false);
    match done {
        Ok(done) => done.map_err(|error| error.to_string()),
        Err(_) => Err("its lengths contradict each other".to_owned()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_panic_is_a_problem_and_work_goes_on_after_it() {
        let broken = guarded(|| -> Result<u8, String> { panic!("a length that is none") });
        assert!(broken.unwrap_err().contains("contradict"));
        assert_eq!(guarded(|| Ok::<_, String>(5)), Ok(5));
        assert_eq!(guarded(|| Err::<u8, _>("short")), Err("short".to_owned()));
    }
}
