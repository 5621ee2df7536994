//! Days, as files write them.

use model::date::Date;

use crate::document::Document;
use crate::problem::{DateFault, Problem, ProblemKind};

/// Reads a day such as 2027-03-01.
pub(crate) fn day(text: &str) -> Result<Date, DateFault> {
    let not_a_day = |message: String| DateFault::NotADay { message };
    let day: jiff::civil::Date = text.trim().parse().map_err(|error| match text.trim().len() {
        10 => not_a_day(jiff::Error::to_string(&error)),
        _ => not_a_day("year-month-day is wanted".to_owned()),
    })?;
    let number = |part: i8| u8::try_from(part).unwrap_or(0);
    Date::new(day.year(), number(day.month()), number(day.day()))
        .map_err(|error| not_a_day(error.to_string()))
}

/// The day at a pointer; anything else becomes a problem there.
pub(super) fn date(
    document: &Document,
    pointer: &str,
    text: &str,
    problems: &mut Vec<Problem>,
) -> Option<Date> {
    day(text).map_err(|fault| problems.push(document.problem(pointer, fault.into()))).ok()
}

/// A first day and an optional last one, in that order.
pub(super) fn period(
    document: &Document,
    (from_key, from): (&str, &str),
    expires: Option<&String>,
    problems: &mut Vec<Problem>,
) -> Option<(Date, Option<Date>)> {
    let from = date(document, from_key, from, problems);
    let expires = match expires {
        Some(text) => Some(date(document, "/expires", text, problems)?),
        None => None,
    };
    let from = from?;
    if let Some(expires) = expires.filter(|expires| *expires < from) {
        let kind = DateFault::EndsBeforeStart { from, expires };
        problems.push(document.problem("/expires", kind.into()));
        return None;
    }
    Some((from, expires))
}

impl From<DateFault> for ProblemKind {
    fn from(fault: DateFault) -> Self {
        Self::Date(fault)
    }
}
