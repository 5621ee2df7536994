//! What is carried from row to row, and the loop over rows.

use crate::rows::{CHUNK, Rows};
use crate::rules::{
    held_too_long, lowered_late, moved_off_before_complete, over_cap, raised_late,
    raised_on_descent, under_minimum,
};
use crate::{Columns, ColumnsError, Coverage, Limits, Sink};

/// What the rules remember of one unit; a copy of it goes on exactly here.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct State {
    coverage: Coverage,
    lowered_late: lowered_late::State,
    raised_late: raised_late::State,
    over_cap: over_cap::State,
    under_minimum: under_minimum::State,
    held_too_long: held_too_long::State,
    moved_off: moved_off_before_complete::State,
    raised_on_descent: raised_on_descent::State,
}

impl State {
    /// How much was judged so far.
    pub fn coverage(&self) -> &Coverage {
        &self.coverage
    }

    pub(crate) fn feed(
        &mut self,
        columns: &Columns<'_>,
        limits: &Limits,
        sink: &mut impl Sink,
    ) -> Result<(), ColumnsError> {
        columns.check(limits.channels)?;
        let mut rows = Rows::new(limits.channels);
        let total = columns.rows();
        let mut from = 0;
        while from < total {
            let len = CHUNK.min(total - from);
            rows.first = self.coverage.rows;
            rows.fill(columns, from, len, limits);
            self.judge(&mut rows, limits, sink);
            from += len;
        }
        Ok(())
    }

    fn judge(&mut self, rows: &mut Rows, limits: &Limits, sink: &mut impl Sink) {
        let coverage = &mut self.coverage;
        let [late, raised, cap, minimum, held, moved, descent] = &mut coverage.rules;
        lowered_late::feed(&mut self.lowered_late, rows, limits, late, sink);
        raised_late::feed(&mut self.raised_late, rows, limits, raised, sink);
        over_cap::feed(&mut self.over_cap, rows, limits, cap, sink);
        under_minimum::feed(&mut self.under_minimum, rows, limits, minimum, sink);
        held_too_long::feed(&mut self.held_too_long, rows, limits, held, sink);
        moved_off_before_complete::feed(&mut self.moved_off, rows, limits, moved, sink);
        raised_on_descent::feed(&mut self.raised_on_descent, rows, limits, descent, sink);
        coverage.rows += rows.len as u64;
        coverage.bad_rows += rows.bad;
        coverage.unknown_rows += rows.unknown[..rows.len].iter().filter(|one| **one).count() as u64;
    }

    pub(crate) fn finish(&mut self, limits: &Limits, sink: &mut impl Sink) {
        self.lowered_late.finish(sink);
        self.raised_late.finish(limits, sink);
        self.over_cap.finish(limits, sink);
        self.under_minimum.finish(sink);
        self.held_too_long.finish(sink);
        self.moved_off.finish(sink);
        self.raised_on_descent.finish(limits, sink);
    }
}
