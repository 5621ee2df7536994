//! What columns of samples have in common, whoever made them and whoever judges them.
//!
//! Logs make such columns, the audit reads them; neither has to know the other, and no file
//! format is known here.

/// What a number in a column is worth. The byte is what files hold.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[repr(u8)]
pub enum Quality {
    /// Measured, and new.
    Value = 0,
    /// The sender said not available.
    Absent = 1,
    /// The sender said error.
    Error = 2,
    /// The last value, older than it should be.
    Stale = 3,
    /// Never sent until here.
    NeverSent = 4,
    /// A reserved code; no value.
    Reserved = 5,
}

impl Quality {
    /// From the byte of a file.
    ///
    /// ```
    /// use series::Quality;
    /// assert_eq!(Quality::from_byte(3), Some(Quality::Stale));
    /// assert_eq!(Quality::from_byte(9), None);
    /// ```
    pub const fn from_byte(byte: u8) -> Option<Self> {
        match byte {
            0 => Some(Self::Value),
            1 => Some(Self::Absent),
            2 => Some(Self::Error),
            3 => Some(Self::Stale),
            4 => Some(Self::NeverSent),
            5 => Some(Self::Reserved),
            _ => None,
        }
    }

    /// The byte of a file.
    pub const fn byte(self) -> u8 {
        self as u8
    }
}

#[cfg(test)]
mod tests {
    use super::Quality;

    #[test]
    fn bytes_come_back_as_they_went() {
        for byte in 0..=u8::MAX {
            if let Some(quality) = Quality::from_byte(byte) {
                assert_eq!(quality.byte(), byte);
            }
        }
    }
}
