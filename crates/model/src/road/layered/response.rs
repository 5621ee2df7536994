//! Displacement, stress and strain at a point.

use quantity::{Length, Stress};

use super::field::Field;
use super::pavement::Layer;
use crate::road::strain::Strain;

/// A symmetric tensor: x and y across the road's plane, z down.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tensor<T> {
    /// Along x.
    pub xx: T,
    /// Along y.
    pub yy: T,
    /// Vertical.
    pub zz: T,
    /// In the plane of the road.
    pub xy: T,
    /// Between y and down.
    pub yz: T,
    /// Between x and down.
    pub xz: T,
}

impl Tensor<Strain> {
    /// The largest tensile strain in any horizontal direction.
    #[must_use]
    pub fn largest_horizontal(&self) -> Strain {
        let [xx, yy, xy] = [self.xx, self.yy, self.xy].map(Strain::as_ratio);
        Strain::from_ratio(f64::midpoint(xx, yy) + (0.5 * (xx - yy)).hypot(xy))
    }
}

/// What all wheels together do at one point; tension is positive.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Response {
    /// Displacement along x, along y, and down.
    pub displacement: [Length; 3],
    /// Stress.
    pub stress: Tensor<Stress>,
    /// Strain (tensor components: half the engineering shear).
    pub strain: Tensor<Strain>,
}

/// Fields of single circles, turned into the road's axes and added up; m and kPa.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Sum {
    u: [f64; 3],
    e_xx: f64,
    e_yy: f64,
    e_xy: f64,
    s_zz: f64,
    t_xz: f64,
    t_yz: f64,
}

impl Sum {
    /// Adds the field of a circle with pressure `q` whose center lies `dx`, `dy` before the point.
    pub fn add(&mut self, field: &Field, q: f64, dx: f64, dy: f64) {
        let r = dx.hypot(dy);
        let (c, s) = if r > 0.0 { (dx / r, dy / r) } else { (1.0, 0.0) };
        let hoop = q * field.hoop_strain;
        let radial = q * field.horizontal_dilation - hoop;
        self.u[0] += hoop * dx;
        self.u[1] += hoop * dy;
        self.u[2] += q * field.settlement;
        self.e_xx += radial * c * c + hoop * s * s;
        self.e_yy += radial * s * s + hoop * c * c;
        self.e_xy += (radial - hoop) * c * s;
        self.s_zz += q * field.vertical_stress;
        self.t_xz += q * field.shear_stress * c;
        self.t_yz += q * field.shear_stress * s;
    }

    /// The missing components by Hooke's law, in the form that bears ν = 0.5.
    pub fn response(&self, layer: &Layer) -> Response {
        let (e, nu) = (layer.modulus.as_kpa(), layer.poisson);
        let side = nu / (1.0 - nu);
        let plate = e / (1.0 - nu * nu);
        let shear = (1.0 + nu) / e;
        let e_zz =
            shear * (1.0 - 2.0 * nu) / (1.0 - nu) * self.s_zz - side * (self.e_xx + self.e_yy);
        let tensor = |[xx, yy, zz, xy, yz, xz]: [f64; 6]| Tensor { xx, yy, zz, xy, yz, xz };
        let strain = [self.e_xx, self.e_yy, e_zz, self.e_xy, shear * self.t_yz, shear * self.t_xz];
        let stress = [
            plate * (self.e_xx + nu * self.e_yy) + side * self.s_zz,
            plate * (self.e_yy + nu * self.e_xx) + side * self.s_zz,
            self.s_zz,
            self.e_xy / shear,
            self.t_yz,
            self.t_xz,
        ];
        Response {
            displacement: self.u.map(Length::from_m),
            stress: tensor(stress).map(Stress::from_kpa),
            strain: tensor(strain).map(Strain::from_ratio),
        }
    }
}

impl<T> Tensor<T> {
    fn map<U>(self, with: impl Fn(T) -> U) -> Tensor<U> {
        Tensor {
            xx: with(self.xx),
            yy: with(self.yy),
            zz: with(self.zz),
            xy: with(self.xy),
            yz: with(self.yz),
            xz: with(self.xz),
        }
    }
}
