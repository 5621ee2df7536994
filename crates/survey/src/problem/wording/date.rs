//! Sentences about days.

use crate::problem::DateFault;

pub(super) fn message(fault: &DateFault, key: &str, value: &str) -> String {
    match fault {
        DateFault::NotADay { message } => format!("{key} = {value} is not a day: {message}"),
        DateFault::InFuture { day, today } => {
            format!("{key} = {day} lies in the future; today is {today}")
        }
        DateFault::EndsBeforeStart { from, expires } => {
            format!("the last day {expires} lies before the first, {from}")
        }
    }
}

pub(super) fn hint(fault: &DateFault) -> &'static str {
    match fault {
        DateFault::NotADay { .. } => "write year, month and day, such as 2027-03-01",
        DateFault::InFuture { .. } => "check the day, and the clock of this computer",
        DateFault::EndsBeforeStart { .. } => "exchange them, or check the years",
    }
}
