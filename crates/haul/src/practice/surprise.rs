//! What goes otherwise than planned.

use model::haul_cycle::HaulCycle;
use quantity::{Length, Time, VolumeFlow};

use super::Stage;
use crate::Truck;

/// Something that goes otherwise than planned. Sizes are the caller's; none is taken from a product.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Surprise {
    /// A worn compressor: this share of its delivery.
    SlowCompressor {
        /// The share, above 0 to 1.
        share: f64,
    },
    /// A leak in the lines behind the compressor: free air lost all the time.
    Leak {
        /// How much.
        lost: VolumeFlow,
    },
    /// Something in the way: the truck must stop for a while.
    UnexpectedStop {
        /// On which run: [`Stage::Empty`] or [`Stage::Laden`].
        run: Stage,
        /// Travel distance at which it is seen.
        at: Length,
        /// How long it stands.
        time: Time,
    },
    /// A lay-by that is closed: nobody can stop near it.
    ClosedLayBy {
        /// Its chainage.
        at: Length,
    },
    /// The controller still has the empty load state selected: the first order for the laden pressures goes to the
    /// empty ones.
    WrongLoadState,
    /// A leg softened by rain: it rolls harder.
    SoftLeg {
        /// Index of the leg.
        leg: usize,
        /// Added to its rolling-resistance coefficient.
        added: f64,
    },
}

impl Surprise {
    /// What it changes about the truck.
    pub(super) fn on_truck(self, truck: &mut Truck) {
        match self {
            Self::SlowCompressor { share } => {
                truck.network = truck.network.varied(share, 1.0, 1.0);
            }
            Self::Leak { lost } => truck.leakage += lost.as_m3_per_s(),
            Self::UnexpectedStop { .. }
            | Self::ClosedLayBy { .. }
            | Self::WrongLoadState
            | Self::SoftLeg { .. } => {}
        }
    }

    /// What it changes about the haul.
    pub(super) fn on_haul(self, haul: &mut HaulCycle) {
        if let Self::SoftLeg { leg, added } = self
            && let Some(leg) = haul.route.legs.get_mut(leg)
        {
            leg.rolling_resistance += added;
        }
    }
}
