//! Jobs done on as many threads as there are.

use plan::Workers;
use rayon::prelude::*;

/// All threads of the machine.
#[derive(Debug, Clone, Copy, Default)]
pub struct Threads;

impl Workers for Threads {
    fn each(&self, count: usize, job: &(dyn Fn(usize) + Sync)) {
        (0..count).into_par_iter().with_min_len(4).for_each(job);
    }
}
