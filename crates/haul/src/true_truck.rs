//! The combination tire by tire: where each one sits, what it carries, how warm it gets.

use model::air::{BrakeGate, ControllerHabits, TrueAir, WheelEnd};
use model::haul_cycle::HaulCycle;
use model::tire::warm_up::{WarmUp, WarmUpError};
use model::vehicle::{AxleGroup, Combination, GaugeKind, LoadState};
use quantity::{ColdPressure, GaugePressure, Length, Mass, Volume};

use crate::truck::channel_spec;
use crate::{SetPressures, Truck, TruckError, Variation};

/// Share of its volume a tire loses by standing flat under its rated load.
const SQUASH_AT_RATED: f64 = 0.02; // "a few per cent", from memory

/// One tire of the combination.
#[derive(Debug, Clone, PartialEq)]
pub struct TireOnTruck {
    /// Such as `drive.1.left.outer`; the vehicle's name stands before it where groups share a name.
    pub name: String,
    /// The same with the vehicle's name before it.
    pub full_name: String,
    /// Wheel end of it, such as `drive.1.left`.
    pub end_name: String,
    /// Index of its axle group.
    pub group: usize,
    /// Axle within the group, counted from 0.
    pub axle: u32,
    /// Index of the air channel that feeds it.
    pub channel: Option<usize>,
    /// Index of the wheel end on a channel.
    pub end: Option<usize>,
    /// Axle of the combination, front to back from 0.
    pub row: usize,
    /// Place on the axle, left to right from 0.
    pub position: usize,
    on_right: bool,
    is_inner: bool,
}

/// What a tire carries in a load state.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Carried {
    pub warm_up: WarmUp,
    pub squash: f64,
    pub is_down: bool,
}

/// A combination made ready to be followed tire by tire.
#[derive(Debug, Clone)]
pub struct TrueTruck {
    /// What the stepper drives.
    pub(crate) motion: Truck,
    pub(crate) air: TrueAir,
    pub(crate) tires: Vec<TireOnTruck>,
    /// By load state, then tire.
    pub(crate) carried: Vec<Vec<Carried>>,
    pub(crate) fixed: Vec<Option<GaugePressure>>,
    pub(crate) set: SetPressures,
}

impl TrueTruck {
    /// Makes one truck of the haul's type ready, with the pressures it is set to.
    ///
    /// # Errors
    /// [`TruckError`] as [`Truck::new`].
    pub fn new(
        haul: &HaulCycle,
        set: &SetPressures,
        variation: &Variation,
    ) -> Result<Self, TruckError> {
        let combination = &haul.combination;
        let mut fed = Vec::new();
        let mut unfed = Vec::new();
        let mut ends = Vec::new();
        let mut row = 0;
        for (index, group) in combination.groups.iter().enumerate() {
            for axle in 0..group.axles {
                let place = AxlePlace { combination, index, group, axle, row };
                place.put(&mut fed, &mut unfed, &mut ends);
                row += 1;
            }
        }
        let specs = (0..combination.channels.len())
            .map(|index| channel_spec(combination, index))
            .collect::<Result<Vec<_>, _>>()?;
        let controller = &combination.controller;
        let gate = BrakeGate {
            stops_below: controller.brake_threshold,
            resumes_at: controller.brake_resume,
        };
        let habits = ControllerHabits {
            deadband: controller.deadband,
            check_interval: controller.check_interval,
            together: controller.channels_together,
            sealed_gauge: controller.gauge == GaugeKind::Sealed,
        };
        let volume = |tire: &TireOnTruck| combination.groups[tire.group].tire.air_volume;
        let unfed_volumes: Vec<Volume> = unfed.iter().map(volume).collect();
        let air =
            TrueAir::new(&combination.supply, Some(gate), &specs, &ends, &unfed_volumes, habits)?
                .varied(variation.delivery, variation.conductance, variation.tire_volume);
        let mut tires = fed;
        tires.extend(unfed);
        let carried = combination
            .load_states
            .iter()
            .map(|state| tires.iter().map(|tire| carried(combination, state, tire)).collect())
            .collect::<Result<_, WarmUpError>>()?;
        let fixed = tires
            .iter()
            .map(|tire| {
                combination.groups[tire.group].fixed_pressure.map(ColdPressure::at_reference)
            })
            .collect();
        let motion = Truck::new(haul, set.clone())?.varied(variation);
        Ok(Self { motion, air, tires, carried, fixed, set: set.clone() })
    }

    /// Its tires; those on air channels come first.
    pub fn tires(&self) -> &[TireOnTruck] {
        &self.tires
    }

    /// Its air.
    pub fn air(&self) -> &TrueAir {
        &self.air
    }

    /// Indices of the tires a place names: one tire, or those of a wheel end.
    pub fn tires_at(&self, place: &str) -> Vec<usize> {
        let is_there = |tire: &TireOnTruck| {
            let end = tire.full_name.rsplit_once('.').map(|(end, _)| end);
            place == tire.name
                || place == tire.full_name
                || place == tire.end_name
                || end == Some(place) && tire.end_name != tire.name
        };
        (0..self.tires.len()).filter(|&tire| is_there(&self.tires[tire])).collect()
    }
}

/// One axle while the tires are numbered through.
struct AxlePlace<'a> {
    combination: &'a Combination,
    index: usize,
    group: &'a AxleGroup,
    axle: u32,
    row: usize,
}

impl AxlePlace<'_> {
    fn put(
        &self,
        fed: &mut Vec<TireOnTruck>,
        unfed: &mut Vec<TireOnTruck>,
        ends: &mut Vec<WheelEnd>,
    ) {
        let group = self.group;
        let dual = group.tires_per_end() == 2;
        for on_right in [false, true] {
            let number = self.axle * 2 + u32::from(on_right);
            let shut = number >= group.wheel_ends() - group.wheel_ends_shut.min(group.wheel_ends());
            let end = group.channel.map(|channel| {
                let tires = vec![group.tire.air_volume; group.tires_per_end() as usize];
                ends.push(WheelEnd { channel, tires, shut });
                ends.len() - 1
            });
            // Left to right: outer and inner on the left, inner and outer on the right.
            for mate in 0..group.tires_per_end() as usize {
                let position = usize::from(on_right) * group.tires_per_end() as usize + mate;
                let is_inner = dual && (mate == 1) != on_right;
                let tire = self.tire(on_right, dual.then_some(is_inner), position, end);
                if end.is_some() { fed.push(tire) } else { unfed.push(tire) }
            }
        }
    }

    fn tire(
        &self,
        on_right: bool,
        inner: Option<bool>,
        position: usize,
        end: Option<usize>,
    ) -> TireOnTruck {
        let group = self.group;
        let shared =
            self.combination.groups.iter().filter(|other| other.name == group.name).count() > 1;
        let vehicle = &self.combination.vehicles[group.vehicle].name;
        let side = if on_right { "right" } else { "left" };
        let mate = match inner {
            None => "",
            Some(true) => ".inner",
            Some(false) => ".outer",
        };
        let plain_end = format!("{}.{}.{side}", group.name, self.axle + 1);
        let end_name = if shared { format!("{vehicle}.{plain_end}") } else { plain_end.clone() };
        TireOnTruck {
            name: format!("{end_name}{mate}"),
            full_name: format!("{vehicle}.{plain_end}{mate}"),
            end_name,
            group: self.index,
            axle: self.axle,
            channel: group.channel,
            end,
            row: self.row,
            position,
            on_right,
            is_inner: inner == Some(true),
        }
    }
}

fn carried(
    combination: &Combination,
    state: &LoadState,
    tire: &TireOnTruck,
) -> Result<Carried, WarmUpError> {
    let group = &combination.groups[tire.group];
    let load = &state.groups[tire.group];
    let down = state.axles_down[tire.group];
    let is_down = tire.axle < down;
    // The right side and the inner mate are taken as the heavier ones.
    let of_side =
        if tire.on_right { load.heavier_side_share } else { 1.0 - load.heavier_side_share };
    let of_end = match group.tires_per_end() {
        2 if tire.is_inner => load.heavier_mate_share,
        2 => 1.0 - load.heavier_mate_share,
        _ => 1.0,
    };
    let mass = if is_down { load.mass / f64::from(down) * of_side * of_end } else { Mass::ZERO };
    let rated = group.tire.dual.unwrap_or(group.tire.single).load;
    Ok(Carried {
        warm_up: WarmUp::new(&group.tire, mass)?,
        squash: SQUASH_AT_RATED * (mass / rated).min(1.5),
        is_down,
    })
}

/// Bore of the widest tube in the path of a channel; `None` where no tube is given.
pub fn line_bore(combination: &Combination, channel: usize) -> Option<Length> {
    combination.channels[channel]
        .path
        .iter()
        .filter_map(|element| match element {
            model::air::PathElement::Tube { bore, .. } => Some(*bore),
            model::air::PathElement::Part(_) => None,
        })
        .max_by(Length::total_cmp)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn truck() -> TrueTruck {
        let haul = example::haul();
        let set = SetPressures::new(2, 2, 3, |_, _, _| GaugePressure::from_psi(60.0));
        TrueTruck::new(&haul, &set, &Variation::NONE).unwrap()
    }

    #[test]
    fn tires_are_named_and_numbered_front_to_back_and_left_to_right() {
        let truck = truck();
        // Two singles in front, two axles of duals on truck and trailer each.
        assert_eq!(truck.tires().len(), 2 + 8 + 8);
        let of = |name: &str| {
            let tire = truck.tires().iter().find(|tire| tire.name == name).unwrap();
            (tire.row, tire.position, tire.channel)
        };
        assert_eq!(of("steer.1.right"), (0, 1, None));
        assert_eq!(of("drive.1.left.outer"), (1, 0, Some(0)));
        assert_eq!(of("drive.2.left.inner"), (2, 1, Some(0)));
        assert_eq!(of("drive.2.right.inner"), (2, 2, Some(0)));
        assert_eq!(of("trailer.2.right.outer"), (4, 3, Some(1)));
    }

    #[test]
    fn a_place_is_a_tire_or_a_wheel_end() {
        let truck = truck();
        assert_eq!(truck.tires_at("drive.1.left.outer").len(), 1);
        assert_eq!(truck.tires_at("truck.drive.1.left.outer").len(), 1);
        assert_eq!(truck.tires_at("drive.1.left").len(), 2);
        assert_eq!(truck.tires_at("truck.drive.1.left").len(), 2);
        assert_eq!(truck.tires_at("steer.1.left").len(), 1);
        assert!(truck.tires_at("drive.3.left").is_empty());
        assert!(truck.tires_at("steer").is_empty());
    }

    #[test]
    fn the_tires_of_a_laden_truck_carry_what_stands_on_the_road() {
        let truck = truck();
        let laden = &truck.carried[example::LADEN];
        assert!(laden.iter().all(|carried| carried.is_down));
        let empty = &truck.carried[example::EMPTY];
        assert!(laden.iter().zip(empty).all(|(laden, empty)| laden.squash > empty.squash));
    }
}
