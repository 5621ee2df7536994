//! Load on the worst tire of a group.

use model::vehicle::{AxleGroup, LoadState};
use quantity::Mass;

/// Load on the worst tire, with what made it worse than the mean.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WorstTire {
    /// Mean load of the group's tires.
    pub mean: Mass,
    /// Load on the worst tire.
    pub load: Mass,
    /// Share of the heavier side, crossfall included.
    pub side_share: f64,
    /// Share of the heavier mate of a dual.
    pub mate_share: f64,
    /// Relative error of the weighing, added.
    pub uncertainty: f64,
}

/// Load on the worst tire of a group: side by weighing and crossfall, mate by weighing, plus
/// weighing error. Only axles that are down carry; a lifted group carries nothing.
///
/// On a crossfall `e` the center of mass at height `h` over a track `T` moves `e h / T` of the
/// load to the lower side (statics of a rigid body).
///
/// # Validity
/// Small crossfall, no suspension roll; without a center height the crossfall adds nothing,
/// and the plan says so.
pub fn worst_tire(index: usize, group: &AxleGroup, state: &LoadState, crossfall: f64) -> WorstTire {
    let load = &state.groups[index];
    let shift = state.center_height.map_or(0.0, |h| crossfall.abs() * (h / group.track));
    let side_share = (load.heavier_side_share + shift).min(1.0);
    let mate_share = if group.tires_per_end() == 2 { load.heavier_mate_share } else { 1.0 };
    let carried = if state.is_lifted(index) { Mass::ZERO } else { load.mass };
    let mean = carried / f64::from(state.tires_down(index, group).max(1));
    let worst = carried * (1.0 + load.uncertainty) * (side_share * mate_share)
        / f64::from(state.axles_down[index].max(1));
    WorstTire { mean, load: worst, side_share, mate_share, uncertainty: load.uncertainty }
}
