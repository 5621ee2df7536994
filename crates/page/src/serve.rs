//! Binds the page to an address and answers until told to stop.

use std::io;
use std::net::{IpAddr, Ipv4Addr, SocketAddr};
use std::sync::Arc;
use std::time::Duration;

use axum::Router;
use axum::extract::{ConnectInfo, Request};
use hyper::server::conn::http1::Builder;
use hyper_util::rt::{TokioIo, TokioTimer};
use hyper_util::service::TowerToHyperService;
use tokio::net::TcpListener;
use tokio::sync::Semaphore;
use tower::ServiceExt;

use crate::site::{Share, Site};

/// Browsers open six connections each; more than a few browsers are no browsers.
const CONNECTIONS: usize = 64;
/// Longest time a request may take to say what it wants.
const HEAD: Duration = Duration::from_secs(5);

/// Where to serve.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Serving {
    /// Port; 0 takes a free one.
    pub port: u16,
}

/// Why the page does not run.
#[derive(Debug, thiserror::Error)]
pub enum ServeError {
    /// Another program has the port.
    #[error(
        "port {port} is taken by another program; give another with --port, or --port 0 for a free one"
    )]
    PortTaken {
        /// The port.
        port: u16,
    },
    /// The system refuses.
    #[error("port {port} cannot be opened: {source}")]
    Refused {
        /// The port.
        port: u16,
        /// What the system says.
        source: io::Error,
    },
    /// The runtime does not start.
    #[error("the server does not start: {0}")]
    Runtime(io::Error),
}

/// Serves a site until the process is told to stop; `ready` hears the address first.
///
/// It listens to this computer alone unless the site is shared.
///
/// # Errors
/// [`ServeError`], before anything is served.
pub fn serve(
    site: &Arc<Site>,
    serving: Serving,
    ready: impl FnOnce(SocketAddr),
) -> Result<(), ServeError> {
    let runtime = tokio::runtime::Builder::new_multi_thread()
        .enable_all()
        .max_blocking_threads(16)
        .build()
        .map_err(ServeError::Runtime)?;
    runtime.block_on(async {
        let listener = bind(site, serving.port).await?;
        let address = listener.local_addr().map_err(ServeError::Runtime)?;
        ready(address);
        let app = crate::router(Arc::clone(site));
        tokio::select! {
            () = accept(listener, app) => {}
            () = stopped() => {}
        }
        Ok(())
    })
}

async fn bind(site: &Site, port: u16) -> Result<TcpListener, ServeError> {
    let shared = site.options.share != Share::No;
    let address = if shared { Ipv4Addr::UNSPECIFIED } else { Ipv4Addr::LOCALHOST };
    TcpListener::bind((IpAddr::V4(address), port)).await.map_err(|source| match source.kind() {
        io::ErrorKind::AddrInUse => ServeError::PortTaken { port },
        _ => ServeError::Refused { port, source },
    })
}

/// Ctrl+C, or the polite signal of the system.
async fn stopped() {
    #[cfg(unix)]
    {
        use tokio::signal::unix::{SignalKind, signal};
        if let Ok(mut terminate) = signal(SignalKind::terminate()) {
            tokio::select! {
                _ = tokio::signal::ctrl_c() => {}
                _ = terminate.recv() => {}
            }
            return;
        }
    }
    if tokio::signal::ctrl_c().await.is_err() {
        std::future::pending::<()>().await;
    }
}

async fn accept(listener: TcpListener, app: Router) {
    let places = Arc::new(Semaphore::new(CONNECTIONS));
    loop {
        let Ok((stream, peer)) = listener.accept().await else {
            // Out of file handles for a moment; a loop without rest would take the core.
            tokio::time::sleep(Duration::from_millis(50)).await;
            continue;
        };
        // Full: the connection is closed at once, which browsers take as a reason to try again.
        let Ok(place) = Arc::clone(&places).try_acquire_owned() else { continue };
        let app = app.clone();
        tokio::spawn(async move {
            let service = app.map_request(move |mut request: Request<_>| {
                request.extensions_mut().insert(ConnectInfo(peer));
                request.map(axum::body::Body::new)
            });
            let mut builder = Builder::new();
            builder.timer(TokioTimer::new()).header_read_timeout(HEAD);
            let service = TowerToHyperService::new(service);
            // A browser that goes away in the middle is no error of ours.
            let _ = builder.serve_connection(TokioIo::new(stream), service).await;
            drop(place);
        });
    }
}
