//! `airtide serve`

use crate::args::{GlobalArgs, ServeArgs};
use crate::outcome::{Failure, Outcome};
use crate::terminal::Terminal;

#[cfg(feature = "page")]
pub(super) fn run(
    args: ServeArgs,
    global: &GlobalArgs,
    terminal: Terminal,
) -> Result<Outcome, Failure> {
    use std::sync::Arc;

    use ::page::{Serving, Share, Site, SiteError, SiteOptions, serve};

    use crate::words::Words;

    let words = Words::of_call(global)?;
    for file in &args.series {
        if !file.is_file() {
            return Err(Failure::call(anyhow::anyhow!(
                "--series {}: there is no such file",
                file.display()
            )));
        }
    }
    let share = match (args.share, args.share_edit) {
        (false, _) => Share::No,
        (true, false) => Share::ReadOnly,
        (true, true) => Share::Edit,
    };
    let hosts = if args.share && args.host.is_empty() { own_addresses() } else { args.host };
    let options = SiteOptions {
        survey: args.survey,
        share,
        read_only: args.read_only,
        series: args.series,
        hosts: hosts.clone(),
    };
    let site = Arc::new(Site::new(options).map_err(|error| match error {
        SiteError::Open(_) => Failure::call(error),
        SiteError::NoChance(_) => Failure::input(error),
    })?);
    let code = (share != Share::No).then(|| site.pairing_code());
    let ready = |address: std::net::SocketAddr| {
        let port = address.port();
        let mut lines =
            vec![words.fill("serve-open", &[("address", &format!("http://127.0.0.1:{port}/"))])];
        for host in &hosts {
            lines.push(
                words.fill("serve-open-shared", &[("address", &format!("http://{host}:{port}/"))]),
            );
        }
        if let Some(code) = &code {
            lines.push(
                words.fill("serve-code", &[("code", &format!("{} {}", &code[..4], &code[4..]))]),
            );
            lines.push(words.text("serve-not-encrypted"));
        }
        lines.push(words.text("serve-stop"));
        // Where standard error is gone the page still runs.
        terminal.talk(&(lines.join("\n") + "\n")).unwrap_or(());
    };
    serve(&site, Serving { port: args.port }, ready).map_err(Failure::call)?;
    Ok(Outcome::Done)
}

/// The address a device on the local network would reach this computer under: that of the way
/// out, which no packet is sent to find.
#[cfg(feature = "page")]
fn own_addresses() -> Vec<String> {
    let found = std::net::UdpSocket::bind(("0.0.0.0", 0)).and_then(|socket| {
        // An address for documentation (RFC 5737); connecting a datagram socket sends nothing.
        socket.connect(("192.0.2.1", 9))?;
        socket.local_addr()
    });
    found.map(|address| vec![address.ip().to_string()]).unwrap_or_default()
}

#[cfg(not(feature = "page"))]
pub(super) fn run(_: ServeArgs, _: &GlobalArgs, _: Terminal) -> Result<Outcome, Failure> {
    Err(Failure::call(anyhow::anyhow!(
        "this build has no page; build one with: cargo xtask front && cargo build --release --features page"
    )))
}
