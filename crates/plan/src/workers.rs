//! Work given away: this crate starts no threads, who calls it may.

use std::sync::OnceLock;

/// Somebody who does numbered jobs in any order, perhaps several at once.
pub trait Workers: Sync {
    /// Does jobs 0 to `count`, each once, and comes back when all are done.
    fn each(&self, count: usize, job: &(dyn Fn(usize) + Sync));
}

/// Does one job after another.
#[derive(Debug, Clone, Copy, Default)]
pub struct OneByOne;

impl Workers for OneByOne {
    fn each(&self, count: usize, job: &(dyn Fn(usize) + Sync)) {
        (0..count).for_each(job);
    }
}

/// The results of numbered jobs in their order, whoever finished first.
pub(crate) fn collect<T: Send + Sync>(
    workers: &dyn Workers,
    count: usize,
    job: impl Fn(usize) -> T + Sync,
) -> Vec<T> {
    let slots: Vec<OnceLock<T>> = (0..count).map(|_| OnceLock::new()).collect();
    workers.each(count, &|index| {
        slots[index].get_or_init(|| job(index));
    });
    slots.into_iter().filter_map(OnceLock::into_inner).collect()
}
