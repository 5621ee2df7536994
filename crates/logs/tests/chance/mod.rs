//! Chance that is the same on every run, and how much memory a run took.

/// A generator of Marsaglia's family: the same bytes on every run.
pub struct Chance(pub u64);

impl Chance {
    /// The next 64 bits.
    pub fn next(&mut self) -> u64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        self.0
    }

    /// A number below an end.
    pub fn below(&mut self, end: usize) -> usize {
        usize::try_from(self.next() % (end.max(1) as u64)).unwrap()
    }
}

/// Most memory that this test ever held, where the system tells it and the test is a process of its
/// own, as nextest runs it.
pub fn peak_mb() -> Option<u64> {
    std::env::var_os("NEXTEST")?;
    let status = std::fs::read_to_string("/proc/self/status").ok()?;
    let line = status.lines().find_map(|line| line.strip_prefix("VmHWM:"))?;
    Some(line.trim().strip_suffix(" kB")?.parse::<u64>().ok()? / 1024)
}
