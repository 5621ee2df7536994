//! The table of errors, as a page of the documentation.

use std::collections::BTreeMap;
use std::fmt::Write as _;

use crate::case::Level;
use crate::check::Comparison;
use crate::equations::EQUATIONS;

/// How many checks of one equation count toward the whole.
pub const COUNTED_EACH: usize = 3;

/// What the comparisons amount to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Count {
    /// Equations with at least one number from outside.
    pub equations: usize,
    /// Numbers from outside, at most [`COUNTED_EACH`] of each equation.
    pub checks: usize,
}

/// Counts the numbers that come from outside the project.
pub fn count(comparisons: &[Comparison]) -> Count {
    let mut each: BTreeMap<&str, usize> = BTreeMap::new();
    for comparison in comparisons.iter().filter(|c| c.from_outside && !c.differs) {
        *each.entry(comparison.equation).or_default() += 1;
    }
    Count { equations: each.len(), checks: each.values().map(|n| COUNTED_EACH.min(*n)).sum() }
}

/// The page: each equation with each source it was held against.
pub fn page(comparisons: &[Comparison]) -> String {
    let Count { equations, checks } = count(comparisons);
    let mut page = format!(
        "# How well each equation is checked\n\n\
         Made by `cargo xtask generate` from `validation/cases`. {equations} equations are held \
         against {checks} numbers from outside the project (at most {COUNTED_EACH} of each \
         equation counted).\n\n\
         Levels: measured: a measurement not used to fit anything; table: a published table or \
         curve; worked: a published worked example; library: an independent program; regress: our \
         own past answer, which proves nothing. A number recalled rather than read is marked so \
         and not counted. Errors are shares of the expected number.\n\n\
         | equation | source | level | checks | worst error | median error | tolerance |\n\
         |---|---|---|---|---|---|---|\n"
    );
    for equation in EQUATIONS {
        let mut groups: BTreeMap<(&str, Level), Vec<&Comparison>> = BTreeMap::new();
        for comparison in comparisons.iter().filter(|c| c.equation == equation.id) {
            groups.entry((&comparison.source, comparison.level)).or_default().push(comparison);
        }
        if groups.is_empty() {
            let _ = writeln!(page, "| {} | none | | 0 | | | |", equation.name);
        }
        for ((source, level), group) in &groups {
            let _ = writeln!(page, "| {} | {source} | {}", equation.name, row(*level, group));
        }
    }
    page
}

/// The columns from the level on.
fn row(level: Level, group: &[&Comparison]) -> String {
    let mut errors: Vec<f64> = group.iter().map(|c| c.error).collect();
    errors.sort_by(f64::total_cmp);
    let worst = errors.last().copied().unwrap_or_default();
    let median = errors.get(errors.len().saturating_sub(1) / 2).copied().unwrap_or_default();
    let tolerance = group.iter().map(|c| c.tolerance).fold(0.0, f64::max);
    let recalled = level != Level::Regress && group.iter().any(|c| !c.from_outside);
    format!(
        "{}{}{} | {} | {} | {} | {} |",
        level.name(),
        if recalled { ", from memory" } else { "" },
        if group.iter().any(|c| c.differs) { ", known to differ" } else { "" },
        group.len(),
        share(worst),
        share(median),
        share(tolerance),
    )
}

/// A share as percent; what is only float noise is not printed digit by digit.
fn share(value: f64) -> String {
    if value < 1e-9 { "0".to_owned() } else { format!("{} %", three_digits(value * 100.0)) }
}

fn three_digits(value: f64) -> String {
    let magnitude = value.abs().log10().floor();
    if magnitude < -4.0 {
        return format!("{value:.0e}");
    }
    // Between 1e-4 and 1e15 the magnitude is a small whole number.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "clamped to 0..=6")]
    let decimals = (1.0 - magnitude).clamp(0.0, 6.0) as usize;
    format!("{value:.decimals$}")
}
