//! Tables of comma-separated numbers.

/// Why a table is no series.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum SeriesError {
    /// No heading line, or not `time_s` first.
    #[error("the first line must name the columns, time_s first; it begins with '{found}'")]
    NoClock {
        /// What it begins with.
        found: String,
    },
    /// No text.
    #[error("line {line}: it is not UTF-8 text")]
    NotText {
        /// The line.
        line: usize,
    },
    /// A time that is no number.
    #[error("line {line}: the time '{value}' is not a number of seconds")]
    NoTime {
        /// The line.
        line: usize,
        /// As written.
        value: String,
    },
    /// Too many or too few fields.
    #[error("line {line}: {found} fields under {expected} headings")]
    Fields {
        /// The line.
        line: usize,
        /// Fields.
        found: usize,
        /// Headings.
        expected: usize,
    },
    /// Times that are not in order.
    #[error("row {row}: the clock runs back; sort the rows by time_s")]
    ClockRunsBack {
        /// Row under the headings, from 1.
        row: usize,
    },
    /// Columns of different length.
    #[error("the column '{column}' is not as long as time_s")]
    Uneven {
        /// The column.
        column: String,
    },
}

type Columns = (Vec<f64>, Vec<(String, Vec<f32>)>);

pub(super) fn csv(bytes: &[u8]) -> Result<Columns, SeriesError> {
    let mut lines = bytes.split(|&byte| byte == b'\n').enumerate().map(|(index, line)| {
        let line = line.strip_suffix(b"\r").unwrap_or(line);
        let text = std::str::from_utf8(line).map_err(|_| SeriesError::NotText { line: index + 1 });
        text.map(|text| (index + 1, text))
    });
    let (_, heading) = lines.next().unwrap_or(Ok((1, "")))?;
    let names: Vec<&str> =
        heading.trim_start_matches('\u{feff}').split(',').map(str::trim).collect();
    if names[0] != "time_s" {
        return Err(SeriesError::NoClock { found: names[0].chars().take(40).collect() });
    }
    let mut time_s = Vec::new();
    let mut columns: Vec<(Vec<f32>, bool)> = vec![(Vec::new(), true); names.len() - 1];
    for line in lines {
        let (line, text) = line?;
        if text.trim().is_empty() {
            continue;
        }
        let mut fields = text.split(',');
        let first = fields.next().unwrap_or_default().trim();
        let time = first.parse::<f64>().ok().filter(|time| time.is_finite());
        time_s.push(time.ok_or_else(|| SeriesError::NoTime { line, value: first.to_owned() })?);
        let mut found = 1;
        for field in fields {
            if let Some((values, numbers)) = columns.get_mut(found - 1) {
                let value = number(field.trim());
                *numbers &= value.is_some();
                values.push(value.unwrap_or(f32::NAN));
            }
            found += 1;
        }
        if found != names.len() {
            return Err(SeriesError::Fields { line, found, expected: names.len() });
        }
    }
    let named = names[1..].iter().zip(columns);
    let numbers = named.filter(|(_, (_, numbers))| *numbers);
    Ok((time_s, numbers.map(|(name, (values, _))| ((*name).to_owned(), values)).collect()))
}

fn number(field: &str) -> Option<f32> {
    match field {
        "" => Some(f32::NAN),
        "true" => Some(1.0),
        "false" => Some(0.0),
        _ => field.parse().ok(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_flags_and_gaps_are_read_and_words_left_out() {
        let (time, columns) = csv(b"time_s,a,on,name\r\n0,1.5,true,x\r\n1,,false,y\r\n").unwrap();
        assert_eq!(time, [0.0, 1.0]);
        assert_eq!(columns.len(), 2);
        assert!((columns[0].1[0] - 1.5).abs() < 1e-12 && columns[0].1[1].is_nan());
        assert_eq!(columns[1], ("on".to_owned(), vec![1.0, 0.0]));
    }

    #[test]
    fn each_fault_names_its_line() {
        let refused = |text: &str| csv(text.as_bytes()).unwrap_err().to_string();
        assert!(refused("clock,a\n").contains("time_s first"));
        assert!(refused("time_s,a\n0,1\nx,2\n").contains("line 3: the time 'x'"));
        assert!(refused("time_s,a\n0,1,2\n").contains("line 2: 3 fields under 2"));
        assert!(csv(b"time_s,a\n\xff").unwrap_err().to_string().contains("line 2"));
    }
}
