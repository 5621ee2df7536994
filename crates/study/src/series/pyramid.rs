//! Lowest and highest over blocks of four, of those again, and so on up.

use std::ops::Range;

/// Samples in a block of the level below.
const BLOCK: usize = 4;

/// A column with its extremes at every level.
#[derive(Debug, Clone)]
pub(super) struct Pyramid {
    values: Vec<f32>,
    /// Level k holds the extremes of 4^(k+1) values each.
    levels: Vec<Vec<(f32, f32)>>,
}

/// Extremes of nothing: not a number gives way to every number.
const NOTHING: (f32, f32) = (f32::NAN, f32::NAN);

fn joined(a: (f32, f32), b: (f32, f32)) -> (f32, f32) {
    (a.0.min(b.0), a.1.max(b.1))
}

impl Pyramid {
    pub fn new(values: Vec<f32>) -> Self {
        let mut levels: Vec<Vec<(f32, f32)>> = Vec::new();
        let first = values
            .chunks(BLOCK)
            .map(|block| block.iter().fold(NOTHING, |found, &value| joined(found, (value, value))));
        let mut level: Vec<(f32, f32)> = first.collect();
        while level.len() > 1 {
            let next = level.chunks(BLOCK).map(|block| block.iter().copied().fold(NOTHING, joined));
            let next = next.collect();
            levels.push(std::mem::replace(&mut level, next));
        }
        levels.push(level);
        Self { values, levels }
    }

    /// Lowest and highest of a range of samples.
    pub fn extremes(&self, range: Range<usize>) -> (f32, f32) {
        let (mut start, mut end) = (range.start, range.end.min(self.values.len()));
        let mut found = NOTHING;
        let value = |index: usize| (self.values[index], self.values[index]);
        // Loose ends of a level are taken one by one, whole blocks one level up.
        let mut level: Option<&Vec<(f32, f32)>> = None;
        let mut above = self.levels.iter();
        while start < end {
            let at = |index: usize| level.map_or_else(|| value(index), |level| level[index]);
            let next = above.next().filter(|_| end - start >= 2 * BLOCK);
            let (inner_start, inner_end) = match next {
                Some(_) => (start.div_ceil(BLOCK), end / BLOCK),
                None => (end, end),
            };
            let Some(next) = next else {
                return (start..end).map(at).fold(found, joined);
            };
            found = (start..inner_start * BLOCK)
                .chain(inner_end * BLOCK..end)
                .map(at)
                .fold(found, joined);
            (start, end, level) = (inner_start, inner_end, Some(next));
        }
        found
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_range_has_the_extremes_of_its_samples() {
        let values: Vec<f32> = (0..997_u32).map(|i| ((i * 7919) % 1009) as f32).collect();
        let pyramid = Pyramid::new(values.clone());
        for start in (0..997).step_by(13) {
            for end in (start..=997).step_by(7) {
                let plain = values[start..end].iter().fold(NOTHING, |f, &v| joined(f, (v, v)));
                let found = pyramid.extremes(start..end);
                assert!(found == plain || (start == end && found.0.is_nan()), "{start}..{end}");
            }
        }
    }

    #[test]
    fn what_is_not_known_hides_nothing() {
        let pyramid = Pyramid::new(vec![f32::NAN, 3.0, f32::NAN, 1.0, f32::NAN]);
        assert_eq!(pyramid.extremes(0..5), (1.0, 3.0));
        assert!(pyramid.extremes(4..5).0.is_nan());
    }
}
