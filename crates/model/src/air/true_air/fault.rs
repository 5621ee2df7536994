//! Faults of the air system as changes to it.
//!
//! Each is one physical thing that is otherwise than it should be, with a size that can be measured on
//! a truck. That they happen is common practice without a source; what follows from them is the
//! flow law's doing.

use quantity::{GaugePressure, Length, PressureDifference, VolumeFlow};

use super::super::{Restriction, RestrictionError};
use super::{Channel, TrueAir, single};

/// Discharge coefficient of a hole with torn edges.
const HOLE_DISCHARGE: f64 = 0.8; // rounded or short-tube holes, 0.8 to 0.9, from memory

/// A fault of the air system.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum AirFault {
    /// A hole in a tire, or a seat that does not seal, as the round hole that lets as much through.
    TireLeak {
        /// Index of the tire.
        tire: usize,
        /// Width of the hole.
        hole: Length,
    },
    /// A hole in the line of a channel, or the line come off: a hole as wide as its bore.
    LineLeak {
        /// Index of the channel.
        channel: usize,
        /// Width of the hole.
        hole: Length,
    },
    /// A kinked or clogged line: this share of its conductance is left, both ways.
    LineNarrowed {
        /// Index of the channel.
        channel: usize,
        /// Share left.
        left: f64,
    },
    /// A line shut off before the wheel ends, as by a tap at the coupling.
    LineShut {
        /// Index of the channel.
        channel: usize,
    },
    /// The filling valve does not open.
    FillStuckShut {
        /// Index of the channel.
        channel: usize,
    },
    /// The filling valve opens only in part.
    FillSlow {
        /// Index of the channel.
        channel: usize,
        /// Share of the conductance left.
        left: f64,
    },
    /// The exhaust does not open: stuck, or frozen.
    ExhaustStuckShut {
        /// Index of the channel.
        channel: usize,
    },
    /// The exhaust does not shut.
    ExhaustStuckOpen {
        /// Index of the channel.
        channel: usize,
    },
    /// The exhaust opens only in part.
    ExhaustSlow {
        /// Index of the channel.
        channel: usize,
        /// Share of the conductance left.
        left: f64,
    },
    /// A wheel end shut that should be open.
    WheelEndShut {
        /// Index of the wheel end.
        end: usize,
    },
    /// A valve core left in a tire: this share of its wheel end's conductance is left.
    TireNarrowed {
        /// Index of the tire.
        tire: usize,
        /// Share left.
        left: f64,
    },
    /// A worn compressor or a clogged intake: this share of the delivery is left.
    WeakCompressor {
        /// Share left.
        left: f64,
    },
    /// The governor cuts in at another pressure.
    CutIn {
        /// By how much it is off; negative is later.
        by: PressureDifference,
    },
    /// The governor cuts out at another pressure.
    CutOut {
        /// By how much it is off; negative is earlier.
        by: PressureDifference,
    },
    /// The protection valve shuts and opens at other pressures.
    Protection {
        /// By how much both are off.
        by: PressureDifference,
    },
    /// The brakes lose air.
    BrakeLeak {
        /// Free air lost.
        flow: VolumeFlow,
    },
    /// The controller's gauge reads off on a channel.
    GaugeOff {
        /// Index of the channel.
        channel: usize,
        /// By how much it reads too high.
        by: PressureDifference,
    },
    /// The controller's gauge on a channel is of the other kind: sealed for vented, or the reverse.
    GaugeOtherKind {
        /// Index of the channel.
        channel: usize,
    },
}

/// Why a fault cannot be put on a truck.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum AirFaultError {
    /// The hole is none.
    #[error(transparent)]
    Hole(#[from] RestrictionError),
    /// There is no such part.
    #[error("there is no {what} number {index}")]
    NoSuch {
        /// What.
        what: &'static str,
        /// Its number.
        index: usize,
    },
    /// A share outside its range.
    #[error("a share of {0} cannot be left; give one above 0 and at most 1")]
    Share(f64),
    /// A negative flow.
    #[error("a leak cannot be {0}; give a flow above zero")]
    Flow(VolumeFlow),
    /// Pressures of a switch come into the wrong order.
    #[error(
        "{what} would be {lower} and {upper}; the first must lie under the second, and above zero"
    )]
    Order {
        /// Which switch.
        what: &'static str,
        /// What should be lower.
        lower: GaugePressure,
        /// What should be higher.
        upper: GaugePressure,
    },
}

impl TrueAir {
    /// The same truck with faults.
    ///
    /// A state of the one may be carried on by the other.
    ///
    /// # Errors
    /// [`AirFaultError`] for a part that it does not have, or a size that cannot be.
    pub fn afflicted(&self, faults: &[AirFault]) -> Result<Self, AirFaultError> {
        let mut other = self.clone();
        for fault in faults {
            other.take(fault)?;
        }
        let ordered = |what, lower: GaugePressure, upper: GaugePressure| {
            if lower.as_kpa() > 0.0 && lower < upper {
                Ok(())
            } else {
                Err(AirFaultError::Order { what, lower, upper })
            }
        };
        ordered("governor cut-in and cut-out", other.governor.cut_in, other.governor.cut_out)?;
        let (shuts, opens) = other.protection;
        ordered("shutting and opening of the protection valve", shuts, opens)?;
        Ok(other)
    }

    fn take(&mut self, fault: &AirFault) -> Result<(), AirFaultError> {
        match *fault {
            AirFault::TireLeak { tire, hole } => {
                self.some_tire(tire)?;
                self.tires[tire].hole = Some(hole_of(hole)?);
            }
            AirFault::TireNarrowed { tire, left } => {
                self.some_tire(tire)?;
                let left = share(left)?;
                let feed = &mut self.tires[tire].feed;
                *feed = feed.take().map(|curve| curve.scaled(left));
            }
            AirFault::WheelEndShut { end } => {
                let no_such = AirFaultError::NoSuch { what: "wheel end", index: end };
                *self.ends.get_mut(end).ok_or(no_such)? = true;
            }
            AirFault::WeakCompressor { left } => {
                let displacement = &mut self.compressor.displacement;
                *displacement = *displacement * share(left)?;
            }
            AirFault::CutIn { by } => self.governor.cut_in = self.governor.cut_in + by,
            AirFault::CutOut { by } => self.governor.cut_out = self.governor.cut_out + by,
            AirFault::Protection { by } => {
                self.protection = (self.protection.0 + by, self.protection.1 + by);
            }
            AirFault::BrakeLeak { flow } => {
                if flow.as_m3_per_s() <= 0.0 {
                    return Err(AirFaultError::Flow(flow));
                }
                self.brake_leak += flow;
            }
            AirFault::LineLeak { channel, hole } => {
                self.channel(channel)?.hole = Some(hole_of(hole)?);
            }
            AirFault::LineNarrowed { channel, left } => {
                self.channel(channel)?.narrow_fill(share(left)?);
                self.channel(channel)?.narrow_vent(share(left)?);
            }
            AirFault::LineShut { channel } => {
                for end in self.channel(channel)?.ends.clone() {
                    self.ends[end] = true;
                }
            }
            AirFault::FillStuckShut { channel } => self.channel(channel)?.fill_stuck_shut = true,
            AirFault::FillSlow { channel, left } => {
                self.channel(channel)?.narrow_fill(share(left)?);
            }
            AirFault::ExhaustStuckShut { channel } => {
                self.channel(channel)?.exhaust_stuck_shut = true;
            }
            AirFault::ExhaustStuckOpen { channel } => {
                self.channel(channel)?.exhaust_stuck_open = true;
            }
            AirFault::ExhaustSlow { channel, left } => {
                self.channel(channel)?.narrow_vent(share(left)?);
            }
            AirFault::GaugeOff { channel, by } => {
                self.channel(channel)?.gauge_off += by.as_kpa() * 1e3;
            }
            AirFault::GaugeOtherKind { channel } => {
                let spec = self.channel(channel)?;
                spec.sealed_gauge = !spec.sealed_gauge;
            }
        }
        Ok(())
    }

    fn channel(&mut self, index: usize) -> Result<&mut Channel, AirFaultError> {
        let no_such = AirFaultError::NoSuch { what: "air channel", index };
        self.channels.get_mut(index).ok_or(no_such)
    }

    fn some_tire(&self, index: usize) -> Result<(), AirFaultError> {
        if index < self.tires.len() {
            Ok(())
        } else {
            Err(AirFaultError::NoSuch { what: "tire", index })
        }
    }
}

impl Channel {
    fn narrow_fill(&mut self, left: f64) {
        for curve in &mut self.fill {
            *curve = curve.scaled(left);
        }
    }

    fn narrow_vent(&mut self, left: f64) {
        self.vent = self.vent.scaled(left);
    }
}

fn hole_of(width: Length) -> Result<super::SeriesCurve, AirFaultError> {
    Ok(single(Restriction::from_orifice(width, HOLE_DISCHARGE)?))
}

fn share(left: f64) -> Result<f64, AirFaultError> {
    if left > 0.0 && left <= 1.0 { Ok(left) } else { Err(AirFaultError::Share(left)) }
}
