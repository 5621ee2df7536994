//! Dates and times of day as logs write them, to time stamps.

use jiff::civil::{self, Date};

use super::hex;
use crate::frame::Timestamp;

/// `2026-03-01` and `10:00:00.123456`, taken as UTC. `None` where either is none.
///
/// ```
/// use logs::read::clock::date_and_time;
/// let time = date_and_time(b"1970-01-02", b"00:00:01.5").ok_or("a time")?;
/// assert_eq!(time.as_ns(), 86_401_500_000_000);
/// # Ok::<(), &str>(())
/// ```
pub fn date_and_time(date: &[u8], clock: &[u8]) -> Option<Timestamp> {
    let mut parts = date.split(|byte| *byte == b'-');
    let mut part = || hex::decimal(parts.next()?);
    let (year, month, day) = (part()?, part()?, part()?);
    let day = day_number(year, month, day)?;
    Some(Timestamp::from_ns(day.checked_mul(86_400_000_000_000)?.checked_add(time_of_day(clock)?)?))
}

/// `10:00:00.123456` in nanoseconds.
pub fn time_of_day(clock: &[u8]) -> Option<i64> {
    let mut parts = clock.splitn(3, |byte| *byte == b':');
    let hour = hex::decimal(parts.next()?)?;
    let minute = hex::decimal(parts.next()?)?;
    let seconds = hex::seconds(parts.next()?)?;
    let whole = (0..24).contains(&hour)
        && (0..60).contains(&minute)
        && (0..61_000_000_000).contains(&seconds);
    whole.then(|| (hour * 60 + minute) * 60_000_000_000 + seconds)
}

/// Days from 1970-01-01 to a day of the calendar, of years 1678 to 2261.
pub fn day_number(year: i64, month: i64, day: i64) -> Option<i64> {
    let year = i16::try_from(year).ok().filter(|year| (1678..2262).contains(year))?;
    let date = Date::new(year, i8::try_from(month).ok()?, i8::try_from(day).ok()?).ok()?;
    Some(date.duration_since(civil::date(1970, 1, 1)).as_hours() / 24)
}

/// The day of a time stamp, such as `2026-03-01`.
pub fn day_of(time: Timestamp) -> String {
    jiff::Timestamp::from_second(time.second())
        .map_or_else(|_| "0000-00-00".to_owned(), |time| time.strftime("%Y-%m-%d").to_string())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn worked_days_of_the_calendar() {
        // 2000-03-01 is day 11017, 2024-02-29 day 19782: Unix time in any calendar program.
        assert_eq!(day_number(2000, 3, 1), Some(11_017));
        assert_eq!(day_number(2024, 2, 29), Some(19_782));
        assert_eq!(day_of(Timestamp::from_us(19_782 * 86_400_000_000)), "2024-02-29");
    }

    #[test]
    fn times_beyond_a_day_are_refused() {
        assert_eq!(time_of_day(b"24:00:00"), None);
        assert_eq!(time_of_day(b"23:59"), None);
        assert_eq!(date_and_time(b"2026-13-01", b"00:00:00"), None);
    }
}
