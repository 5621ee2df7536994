//! A smooth function tabulated once: a cubic on each of many equal cells.

/// Piecewise cubic through given values and slopes at equally spaced points.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct CubicTable {
    from: f64,
    cells_per_unit: f64,
    cells: Box<[[f64; 4]]>,
}

impl CubicTable {
    /// A table over `from..=to` through `nodes`, each a value and a slope.
    pub(super) fn new(from: f64, to: f64, nodes: &[(f64, f64)]) -> Self {
        let count = nodes.len() - 1;
        let width = (to - from) / count as f64;
        let cells = nodes
            .windows(2)
            .map(|pair| {
                let ((y0, m0), (y1, m1)) = (pair[0], pair[1]);
                let (m0, m1, rise) = (m0 * width, m1 * width, y1 - y0);
                [y0, m0, 3.0 * rise - 2.0 * m0 - m1, m0 + m1 - 2.0 * rise]
            })
            .collect();
        Self { from, cells_per_unit: 1.0 / width, cells }
    }

    /// The same with every value times `factor`.
    pub(super) fn scaled(&self, factor: f64) -> Self {
        let cells = self.cells.iter().map(|cell| cell.map(|c| c * factor)).collect();
        Self { cells, ..*self }
    }

    /// Value and slope at `x`; the end cells are continued outside the table.
    #[inline]
    pub(super) fn at(&self, x: f64) -> (f64, f64) {
        let place = (x - self.from) * self.cells_per_unit;
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "saturates, then ends at the last cell"
        )]
        let index = (place as u32 as usize).min(self.cells.len() - 1);
        let [a, b, c, d] = self.cells[index];
        let t = place - index as f64;
        let value = a + t * (b + t * (c + t * d));
        let slope = (b + t * (2.0 * c + t * 3.0 * d)) * self.cells_per_unit;
        (value, slope)
    }
}
