//! Layers of a pavement, checked.

use quantity::{Length, Stress};

use super::wave::Medium;

/// One elastic layer.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Layer {
    /// Young's modulus.
    pub modulus: Stress,
    /// Poisson's ratio.
    pub poisson: f64,
    /// Thickness; none for the last layer, which has no bottom.
    pub thickness: Option<Length>,
}

/// Why layers make no pavement.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum PavementError {
    /// Too few or too many.
    #[error("{count} layers; give 1 to {most}, from the top down")]
    Count {
        /// Layers given.
        count: usize,
        /// Most that are taken.
        most: usize,
    },
    /// Stiffness that is none.
    #[error("layer {layer}: a modulus of {modulus} is outside 0.1 MPa to 1 000 000 MPa")]
    Modulus {
        /// Number from the top, from 1.
        layer: usize,
        /// Modulus given.
        modulus: Stress,
    },
    /// Poisson's ratio of no such material.
    #[error("layer {layer}: a Poisson's ratio of {poisson} is outside 0 to 0.5")]
    Poisson {
        /// Number from the top, from 1.
        layer: usize,
        /// Ratio given.
        poisson: f64,
    },
    /// Thickness missing or no layer's.
    #[error("layer {layer} needs a thickness of 1 mm to 100 m; only the last has none")]
    Thickness {
        /// Number from the top, from 1.
        layer: usize,
    },
    /// A bottom where there is none.
    #[error("layer {layer} is the last; leave out its thickness")]
    Bottom {
        /// Number from the top, from 1.
        layer: usize,
    },
    /// Contrast beyond what was checked.
    #[error(
        "layers {layer} and {next}: their moduli differ more than {most:e} times, beyond what was \
         checked",
        next = layer + 1
    )]
    Contrast {
        /// Number of the upper one from the top, from 1.
        layer: usize,
        /// Largest ratio taken.
        most: f64,
    },
}

/// Layers bonded to each other on a ground without end.
#[derive(Debug, Clone, PartialEq)]
pub struct Pavement {
    layers: Vec<Layer>,
}

impl Pavement {
    /// Most layers taken.
    pub const MOST_LAYERS: usize = 5;
    /// Largest ratio of neighboring moduli.
    pub const MOST_CONTRAST: f64 = 1e5;

    /// Layers from the top down, the last without thickness.
    ///
    /// # Errors
    /// [`PavementError`] names the layer and what it lacks.
    pub fn new(layers: Vec<Layer>) -> Result<Self, PavementError> {
        let count = layers.len();
        if !(1..=Self::MOST_LAYERS).contains(&count) {
            return Err(PavementError::Count { count, most: Self::MOST_LAYERS });
        }
        for (index, given) in layers.iter().enumerate() {
            let layer = index + 1;
            if !(0.1..=1e6).contains(&given.modulus.as_mpa()) {
                return Err(PavementError::Modulus { layer, modulus: given.modulus });
            }
            if !(0.0..=0.5).contains(&given.poisson) {
                return Err(PavementError::Poisson { layer, poisson: given.poisson });
            }
            match given.thickness {
                Some(_) if layer == count => return Err(PavementError::Bottom { layer }),
                Some(h) if (0.001..=100.0).contains(&h.as_m()) => {}
                None if layer == count => {}
                _ => return Err(PavementError::Thickness { layer }),
            }
        }
        for (index, pair) in layers.windows(2).enumerate() {
            let ratio = pair[0].modulus / pair[1].modulus;
            if ratio.max(1.0 / ratio) > Self::MOST_CONTRAST {
                let most = Self::MOST_CONTRAST;
                return Err(PavementError::Contrast { layer: index + 1, most });
            }
        }
        Ok(Self { layers })
    }

    /// The layers, from the top down.
    pub fn layers(&self) -> &[Layer] {
        &self.layers
    }

    /// The same with another modulus of the last layer, such as of a thawing subgrade.
    ///
    /// # Errors
    /// As [`Pavement::new`].
    pub fn on_subgrade(&self, modulus: Stress) -> Result<Self, PavementError> {
        let mut layers = self.layers.clone();
        if let Some(last) = layers.last_mut() {
            last.modulus = modulus;
        }
        Self::new(layers)
    }

    /// Depth of a layer's top.
    pub(super) fn top_of(&self, layer: usize) -> Length {
        self.layers[..layer].iter().filter_map(|l| l.thickness).sum()
    }

    /// As the waves see it, in m and kPa.
    pub(super) fn media(&self) -> Vec<Medium> {
        let medium = |layer: &Layer| Medium {
            double_shear: layer.modulus.as_kpa() / (1.0 + layer.poisson),
            poisson: layer.poisson,
            thickness: layer.thickness.map_or(f64::INFINITY, Length::as_m),
        };
        self.layers.iter().map(medium).collect()
    }

    /// The length over which the stiffest contrast spreads a load: as a plate with the cube root of
    /// the ratio of moduli, but as a membrane with the ratio itself.
    pub(super) fn spread(&self) -> f64 {
        let moduli = || self.layers.iter().map(|layer| layer.modulus.as_kpa());
        let (least, most) = moduli().fold((f64::MAX, 0.0_f64), |(least, most), modulus| {
            (least.min(modulus), most.max(modulus))
        });
        self.top_of(self.layers.len() - 1).as_m() * (most / least)
    }
}
