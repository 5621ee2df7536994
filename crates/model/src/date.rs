//! A calendar day, for approvals, permits and issued plans.

/// A day of the Gregorian calendar.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Date {
    year: i16,
    month: u8,
    day: u8,
}

/// A day that is not in the calendar.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("{year:04}-{month:02}-{day:02} is not a day of the calendar")]
pub struct NoSuchDay {
    /// Year.
    pub year: i16,
    /// Month.
    pub month: u8,
    /// Day.
    pub day: u8,
}

/// A text that is not a day.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum NotADay {
    /// It has another form.
    #[error("'{0}' is not a day; year-month-day is wanted, such as 2027-03-01")]
    Form(String),
    /// It has the form, and no calendar holds it.
    #[error(transparent)]
    NoSuchDay(#[from] NoSuchDay),
}

impl Date {
    /// Makes a day.
    ///
    /// # Errors
    /// [`NoSuchDay`] for a month or day that does not exist.
    ///
    /// ```
    /// use model::date::Date;
    /// assert!(Date::new(2028, 2, 29).is_ok());
    /// assert!(Date::new(2027, 2, 29).is_err());
    /// assert_eq!(Date::new(2027, 3, 1).unwrap().to_string(), "2027-03-01");
    /// ```
    pub fn new(year: i16, month: u8, day: u8) -> Result<Self, NoSuchDay> {
        let leap = year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
        let days = match month {
            2 if leap => 29,
            2 => 28,
            4 | 6 | 9 | 11 => 30,
            1..=12 => 31,
            _ => 0,
        };
        if (1..=days).contains(&day) {
            Ok(Self { year, month, day })
        } else {
            Err(NoSuchDay { year, month, day })
        }
    }

    /// Year, month and day.
    pub fn parts(self) -> (i16, u8, u8) {
        (self.year, self.month, self.day)
    }
}

impl std::fmt::Display for Date {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{:04}-{:02}-{:02}", self.year, self.month, self.day)
    }
}

/// Reads `2027-03-01`.
///
/// ```
/// use model::date::Date;
/// assert_eq!("2027-03-01".parse(), Date::new(2027, 3, 1).map_err(Into::into));
/// assert!("2027-02-29".parse::<Date>().is_err());
/// assert!("1.3.2027".parse::<Date>().is_err());
/// ```
impl std::str::FromStr for Date {
    type Err = NotADay;

    fn from_str(text: &str) -> Result<Self, NotADay> {
        let form = || NotADay::Form(text.to_owned());
        let parts: Vec<&str> = text.split('-').collect();
        let [year, month, day] = parts[..] else { return Err(form()) };
        let all_digits = |part: &str| part.bytes().all(|byte| byte.is_ascii_digit());
        if [year, month, day].map(str::len) != [4, 2, 2]
            || !parts.iter().all(|part| all_digits(part))
        {
            return Err(form());
        }
        let number = |part: &str| part.parse().map_err(|_| form());
        Ok(Self::new(year.parse().map_err(|_| form())?, number(month)?, number(day)?)?)
    }
}
