//! What one circle does at one radius and depth, around its own axis.

/// Stress (tension positive), settlement and strain of one axisymmetric load; in the units of
/// the pressure and lengths put in.
#[derive(Debug, Clone, Copy, Default)]
pub struct Field {
    /// σz.
    pub vertical_stress: f64,
    /// τrz.
    pub shear_stress: f64,
    /// Vertical displacement, downward.
    pub settlement: f64,
    /// εr + εθ.
    pub horizontal_dilation: f64,
    /// εθ, the radial displacement over the radius.
    pub hoop_strain: f64,
}

impl Field {
    /// Adds another, in place.
    pub fn add(&mut self, other: &Self) {
        self.vertical_stress += other.vertical_stress;
        self.shear_stress += other.shear_stress;
        self.settlement += other.settlement;
        self.horizontal_dilation += other.horizontal_dilation;
        self.hoop_strain += other.hoop_strain;
    }
}
