//! Work that takes longer than a moment, away from the threads that talk to browsers.

use std::sync::Arc;

use tokio::sync::Semaphore;

use crate::failure::{Answer, Failure};
use crate::site::Site;
use crate::snapshot::Snapshot;

/// Does short work that reads the disk.
pub async fn reading<T: Send + 'static>(
    site: Arc<Site>,
    work: impl FnOnce(&Site, &Snapshot) -> Answer<T> + Send + 'static,
) -> Answer<T> {
    blocking(move || work(&site, &*site.snapshots.current()?)).await
}

/// Does work that needs a core for itself; where none is free it is refused at once.
pub async fn computing<T: Send + 'static>(
    slots: &Arc<Semaphore>,
    work: impl FnOnce() -> Answer<T> + Send + 'static,
) -> Answer<T> {
    let slot = Arc::clone(slots).try_acquire_owned().map_err(|_| Failure::busy())?;
    blocking(move || {
        // Held until the work ends, even where the browser went away meanwhile.
        let _slot = slot;
        work()
    })
    .await
}

async fn blocking<T: Send + 'static>(
    work: impl FnOnce() -> Answer<T> + Send + 'static,
) -> Answer<T> {
    tokio::task::spawn_blocking(work).await.unwrap_or_else(|_| {
        Err(Failure::broken("the program failed at this; what it was asked is on its terminal"))
    })
}
