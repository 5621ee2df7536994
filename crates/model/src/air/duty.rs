//! How long the compressor has been loaded.

use quantity::Time;

/// How long the compressor has been loaded.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Duty {
    loaded: f64,
    running: f64,
    longest: f64,
}

impl Duty {
    /// Nothing yet.
    pub const NONE: Self = Self { loaded: 0.0, running: 0.0, longest: 0.0 };

    /// Time loaded, in all.
    pub const fn loaded(&self) -> Time {
        Time::from_s(self.loaded)
    }

    /// Time loaded without a pause up to now; zero while unloaded.
    pub const fn loaded_without_pause(&self) -> Time {
        Time::from_s(self.running)
    }

    /// The longest stretch loaded without a pause.
    pub const fn longest_loaded(&self) -> Time {
        Time::from_s(self.longest)
    }

    /// The longest stretch so far becomes the one now running.
    pub(super) fn forget_longest(&mut self) {
        self.longest = self.running;
    }

    #[inline]
    pub(super) fn pass(&mut self, seconds: f64, loading: bool) {
        if loading {
            self.loaded += seconds;
            self.running += seconds;
            self.longest = self.longest.max(self.running);
        } else {
            self.running = 0.0;
        }
    }
}
