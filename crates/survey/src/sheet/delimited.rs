//! Tables of text, with the line each record begins on.

use csv::{ReaderBuilder, StringRecord};

/// Records of a text, each with its line counted from 1; blank lines count but give no record.
pub(crate) fn records(
    text: &str,
    separator: u8,
) -> impl Iterator<Item = Result<(usize, StringRecord), csv::Error>> + '_ {
    let mut builder = ReaderBuilder::new();
    builder.delimiter(separator).has_headers(false).flexible(true);
    let records = builder.from_reader(text.as_bytes()).into_records();
    records.map(|record| {
        record.map(|record| {
            let line = record.position().and_then(|at| first_line(text, at));
            (line.unwrap_or(0), record)
        })
    })
}

/// The reader's position may stand on blank lines before the record.
fn first_line(text: &str, at: &csv::Position) -> Option<usize> {
    let (offset, line) = (usize::try_from(at.byte()).ok()?, usize::try_from(at.line()).ok()?);
    let blank = text.get(offset..)?.chars().take_while(|c| matches!(c, '\n' | '\r'));
    Some(line + blank.filter(|c| *c == '\n').count())
}

/// The separator that cuts most records into equally many parts.
pub(super) fn separator(text: &str) -> u8 {
    let agreement = |separator: &u8| {
        let widths: Vec<usize> = records(text, *separator)
            .take(200)
            .filter_map(Result::ok)
            .map(|(_, record)| record.len())
            .filter(|width| *width > 1)
            .collect();
        widths.iter().map(|width| widths.iter().filter(|other| *other == width).count()).max()
    };
    // Of equals the first: text with decimal commas cuts as evenly at its commas.
    [b';', b'\t', b',', b'|'].into_iter().rev().max_by_key(agreement).unwrap_or(b',')
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lines_are_counted_over_blank_ones() {
        let lines: Vec<_> =
            records("a,b\n\n\nc,d\r\n\r\ne,f\n", b',').map(|r| r.unwrap().0).collect();
        assert_eq!(lines, [1, 4, 6]);
    }

    #[test]
    fn the_separator_is_the_one_that_cuts_evenly() {
        assert_eq!(separator("title\na;b\n1,5;2,5\n3,5;4,5\n"), b';');
        assert_eq!(separator("a,b,c\n1,\"2;3\",4\n"), b',');
        assert_eq!(separator("a\tb\n1,5\t2\n"), b'\t');
    }
}
