//! A case against the equation it names.

use crate::case::{Case, CaseFile, Level, Standing, ToleranceSize};
use crate::equations::{Equation, find};
use crate::inputs::Inputs;

/// How one case came out.
#[derive(Debug, Clone)]
pub struct Comparison {
    /// Id of the equation.
    pub equation: &'static str,
    /// Source of the number.
    pub source: String,
    /// What the comparison is worth.
    pub level: Level,
    /// Whether the number comes from outside the project and was not recalled.
    pub from_outside: bool,
    /// Largest error over its results, as a share of the expected number (of the tolerance's
    /// scale where zero was expected).
    pub error: f64,
    /// The tolerance in the same measure.
    pub tolerance: f64,
    /// Whether the source is known to differ.
    pub differs: bool,
}

/// Compares every case; problems carry the file, the number of the case and what to look at.
pub fn compare(files: &[CaseFile]) -> (Vec<Comparison>, Vec<String>) {
    let mut comparisons = Vec::new();
    let mut problems = Vec::new();
    for file in files {
        for (index, case) in file.cases.iter().enumerate() {
            let place = format!("{}.toml, case {} ({})", file.source, index + 1, case.locator);
            match compare_one(file, case) {
                Ok(comparison) => {
                    let inside = comparison.error <= comparison.tolerance;
                    if inside == comparison.differs {
                        let Comparison { error, tolerance, .. } = comparison;
                        let what = if inside { "no longer differs" } else { "misses" };
                        problems.push(format!(
                            "{place}: {} {what}: error {error:.3e}, tolerance {tolerance:.3e}",
                            case.equation
                        ));
                    }
                    comparisons.push(comparison);
                }
                Err(what) => problems.push(format!("{place}: {what}")),
            }
        }
    }
    (comparisons, problems)
}

fn compare_one(file: &CaseFile, case: &Case) -> Result<Comparison, String> {
    let Equation { id, evaluate, .. } =
        find(&case.equation).ok_or_else(|| format!("unknown equation '{}'", case.equation))?;
    let inputs = Inputs::new(&case.inputs);
    let outputs = evaluate(&inputs).map_err(|error| error.to_string())?;
    if let [first, ..] = inputs.unused()[..] {
        return Err(format!("input '{first}' is used by nothing"));
    }
    let mut worst: Option<(f64, f64)> = None;
    for (name, expected) in &case.expected {
        let (theirs, ours) = outputs.pair(name, expected)?;
        let (error, tolerance) = errors(theirs, ours, case.tolerance.size)?;
        if worst.is_none_or(|(e, t)| error / tolerance > e / t) {
            worst = Some((error, tolerance));
        }
    }
    let (error, tolerance) = worst.ok_or("it expects nothing")?;
    Ok(Comparison {
        equation: id,
        source: file.source.clone(),
        level: case.level,
        from_outside: case.level != Level::Regress && file.standing != Standing::FromMemory,
        error,
        tolerance,
        differs: case.differs_because.is_some(),
    })
}

fn errors(theirs: f64, ours: f64, tolerance: ToleranceSize) -> Result<(f64, f64), String> {
    let off = (ours - theirs).abs();
    if !off.is_finite() {
        return Err(format!("expected {theirs}, got {ours}"));
    }
    match tolerance {
        // A share of nothing is met by nothing only.
        ToleranceSize::Relative(share) if theirs == 0.0 => Ok((off.min(1.0).ceil(), share)),
        ToleranceSize::Relative(share) => Ok((off / theirs.abs(), share)),
        ToleranceSize::Absolute(size) if theirs == 0.0 => Ok((off / size, 1.0)),
        ToleranceSize::Absolute(size) => Ok((off / theirs.abs(), size / theirs.abs())),
    }
}
