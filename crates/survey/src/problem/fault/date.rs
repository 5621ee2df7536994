//! Days that cannot be.

use model::date::Date;

/// What is wrong with a day.
#[derive(Debug, Clone, PartialEq)]
pub enum DateFault {
    /// It is not a day.
    NotADay {
        /// What the reader says.
        message: String,
    },
    /// Something that was done lies in the future.
    InFuture {
        /// The day written.
        day: Date,
        /// Today.
        today: Date,
    },
    /// The last day lies before the first.
    EndsBeforeStart {
        /// First day.
        from: Date,
        /// Last day.
        expires: Date,
    },
}
