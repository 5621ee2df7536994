//! Samples worked on as many threads as there are.

use plan::{Sampled, Workers};
use rayon::prelude::*;

/// All threads of the machine; results come back in order whatever finishes first.
#[derive(Debug, Clone, Copy, Default)]
pub struct Threads;

impl Workers for Threads {
    fn work(
        &self,
        count: usize,
        job: &(dyn Fn(usize) -> Option<Sampled> + Sync),
    ) -> Vec<Option<Sampled>> {
        (0..count).into_par_iter().with_min_len(8).map(job).collect()
    }
}
