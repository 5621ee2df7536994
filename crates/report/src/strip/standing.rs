//! Times of standing, as text: they have no extent along the chainage.

use language::Round;

use super::check::ChartError;
use super::half::{Half, Reason, Stand};
use super::labels;
use super::layout::SMALL;
use super::reader::Reader;

/// Lines of text at most.
const MAX_LINES: usize = 2;

fn words(reader: Reader<'_>, stand: &Stand) -> Result<String, ChartError> {
    let key = match stand.reason {
        Reason::Loading => "chart-standing-loading",
        Reason::WaitingForChange => "chart-standing-waiting-change",
        Reason::BeforeMovingOff => "chart-standing-before-off",
        Reason::Unloading => "chart-standing-unloading",
        Reason::OnTheWay => "chart-standing-on-the-way",
    };
    let time = reader.minutes(stand.time_s);
    let place = reader.place(stand.km, Round::Nearest);
    reader.filled(key, &[("time", time.into()), ("place", place.into())])
}

/// The lines for a run, each within `room`; what does not fit is counted in the last.
pub(crate) fn lines(
    reader: Reader<'_>,
    half: &Half<'_>,
    room: f64,
) -> Result<Vec<String>, ChartError> {
    let heading = reader.word("chart-standing")? + ": ";
    if half.stands.is_empty() {
        return Ok(vec![heading + &reader.word("chart-standing-none")?]);
    }
    let fits = |text: &str| labels::width(text, SMALL, false) <= room;
    let mut lines = vec![heading];
    for (index, stand) in half.stands.iter().enumerate() {
        let part = words(reader, stand)?;
        let rest = &half.stands[index + 1..];
        let close =
            if rest.is_empty() { String::new() } else { "; ".to_owned() + &more(reader, rest)? };
        let last = lines.len() == MAX_LINES;
        let line = lines.last_mut().expect("it begins with a heading");
        let begun = if line.ends_with(": ") || line.is_empty() { "" } else { "; " };
        let longer = format!("{line}{begun}{part}");
        if fits(&if last { format!("{longer}{close}") } else { longer.clone() }) {
            *line = longer;
        } else if last {
            let all = format!("{line}{begun}{}", more(reader, &half.stands[index..])?);
            *line = labels::fitted(&all, room, SMALL, false);
            break;
        } else {
            lines.push(labels::fitted(&part, room, SMALL, false));
        }
    }
    Ok(lines)
}

fn more(reader: Reader<'_>, stands: &[Stand]) -> Result<String, ChartError> {
    let time = reader.minutes(stands.iter().map(|stand| stand.time_s).sum());
    let args = [("count", stands.len().into()), ("time", time.into())];
    reader.filled("chart-standing-more", &args)
}
