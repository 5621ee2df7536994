//! What is fitted on a combination and its units, `airtide.setup/1`: what a mechanic sets and checks.

use model::haul_cycle::HaulCycle;
use model::tire::Fitment;
use model::vehicle::{AxleGroup, Combination, GaugeKind, WheelValve};
use plan::Action;
use plan::yard::YardChange;
use quantity::Time;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use survey::{FittedValue, Measured, Unit};

use crate::plan::group_name;

/// What is fitted.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct SetupView {
    /// `airtide.setup/1`.
    pub schema: String,
    /// Combination.
    pub combination: String,
    /// The pressure controller.
    pub controller: ControllerView,
    /// Air supply.
    pub supply: AirSupplyView,
    /// Axle groups with what stands between air line and tire.
    pub wheel_ends: Vec<WheelEndView>,
    /// Units of the register that have a place in the combination.
    pub units: Vec<UnitView>,
    /// Air temperature that changes in the yard are predicted at.
    pub yard_c: f64,
    /// Changes standing in the yard, with the times a test accepts; empty where not asked for.
    pub yard_changes: Vec<YardChangeView>,
}

/// What the survey states of the controller.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ControllerView {
    /// Unit it works in: `kPa`, `psi` or `bar`.
    pub unit: String,
    /// Smallest step.
    pub step_kpa: f64,
    /// Band in which it does nothing.
    pub deadband_kpa: f64,
    /// Error of its gauge, either way.
    pub gauge_error_kpa: f64,
    /// `vented` or `sealed`.
    pub gauge: String,
    /// Rungs it can store.
    pub stored_rungs: u32,
    /// Time between its own checks.
    pub check_interval_s: f64,
    /// Service brake pressure under which it takes no air.
    pub brake_threshold_kpa: f64,
    /// Service brake pressure from which it takes air again.
    pub brake_resume_kpa: f64,
    /// Whether it works all channels at once.
    pub channels_together: bool,
    /// Longest compressor run without a pause.
    pub compressor_limit_s: f64,
}

/// What the survey states of the air supply.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct AirSupplyView {
    /// Governor: starts to fill.
    pub cut_in_kpa: f64,
    /// Governor: stops.
    pub cut_out_kpa: f64,
    /// Protection valve of the tire circuit: opens above.
    pub opens_kpa: f64,
    /// Shuts under.
    pub shuts_kpa: f64,
    /// Service and wet reservoirs.
    pub service_l: f64,
    /// Reserve tank for tire air; `null` where none is fitted.
    pub reserve_l: Option<f64>,
}

/// Wheel ends of an axle group.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct WheelEndView {
    /// Axle group.
    pub axle_group: String,
    /// Air channel; `null` for a fixed pressure.
    pub channel: Option<String>,
    /// Wheel ends.
    pub wheel_ends: u32,
    /// Tires on each.
    pub tires_per_end: u32,
    /// `single` or `dual`.
    pub fitment: String,
    /// Whether the engine drives it.
    pub driven: bool,
    /// `by-hand`, `self-closing` or, without a channel, `none`.
    pub valve: String,
    /// Line pressure under which a self-closing valve shuts.
    pub closes_below_kpa: Option<f64>,
    /// Wheel ends shut by hand now.
    pub shut: u32,
    /// Least gap wanted between duals.
    pub least_gap_mm: Option<f64>,
    /// Measured difference of the diameters of mates.
    pub diameter_difference_mm: Option<f64>,
}

/// A unit of the register.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct UnitView {
    /// Fleet number.
    pub number: String,
    /// Its type.
    pub vehicle: String,
    /// Pressure sensors.
    pub sensors: Vec<SensorView>,
    /// Measured values.
    pub fitted: Vec<FittedView>,
}

/// A pressure sensor.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct SensorView {
    /// What it measures.
    pub place: String,
    /// Day it was last held against a reference gauge; `null` for never.
    pub verified: Option<String>,
}

/// A value measured on a unit.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct FittedView {
    /// `delivery`, `conductance` or `tire-volume`.
    pub what: String,
    /// Air channel; `null` for the delivery of the compressor.
    pub channel: Option<String>,
    /// Measured value as a share of the type's.
    pub share_pct: f64,
    /// Day of the measurement.
    pub date: String,
}

/// A change in the yard.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct YardChangeView {
    /// Load state.
    pub load_state: String,
    /// Rung before.
    pub from_rung: String,
    /// Rung after.
    pub to_rung: String,
    /// `raise` or `lower`.
    pub action: String,
    /// Channels that move.
    pub channels: Vec<YardChannelView>,
}

/// One channel of it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct YardChannelView {
    /// Air channel.
    pub channel: String,
    /// From, as the controller reads it.
    pub from_kpa: f64,
    /// To, as the controller reads it.
    pub to_kpa: f64,
    /// Predicted; `null` where the air does not get there.
    pub time_s: Option<f64>,
    /// Least that a test accepts.
    pub least_s: Option<f64>,
    /// Most that a test accepts.
    pub most_s: Option<f64>,
}

impl SetupView {
    /// What is fitted on the combination of a haul and on units, with changes in the yard where they
    /// were asked for.
    pub fn new(haul: &HaulCycle, units: &[&Unit], changes: &[YardChange]) -> Self {
        let combination = &haul.combination;
        let groups = combination.groups.iter().enumerate();
        Self {
            schema: "airtide.setup/1".to_owned(),
            combination: combination.name.clone(),
            controller: controller(combination),
            supply: supply(combination),
            wheel_ends: groups.map(|(index, group)| wheel_end(haul, index, group)).collect(),
            units: units.iter().map(|one| unit(one)).collect(),
            yard_c: haul.weather.ambient.as_celsius(),
            yard_changes: changes.iter().map(|change| yard_change(combination, change)).collect(),
        }
    }
}

fn controller(combination: &Combination) -> ControllerView {
    let controller = &combination.controller;
    ControllerView {
        unit: controller.unit.to_owned(),
        step_kpa: controller.step.as_kpa(),
        deadband_kpa: controller.deadband.as_kpa(),
        gauge_error_kpa: controller.gauge_error.as_kpa(),
        gauge: match controller.gauge {
            GaugeKind::Vented => "vented",
            GaugeKind::Sealed => "sealed",
        }
        .to_owned(),
        stored_rungs: controller.stored_rungs,
        check_interval_s: controller.check_interval.as_s(),
        brake_threshold_kpa: controller.brake_threshold.as_kpa(),
        brake_resume_kpa: controller.brake_resume.as_kpa(),
        channels_together: controller.channels_together,
        compressor_limit_s: controller.compressor_limit.as_s(),
    }
}

fn supply(combination: &Combination) -> AirSupplyView {
    let supply = &combination.supply;
    AirSupplyView {
        cut_in_kpa: supply.governor.cut_in.as_kpa(),
        cut_out_kpa: supply.governor.cut_out.as_kpa(),
        opens_kpa: supply.protection.opens.as_kpa(),
        shuts_kpa: supply.protection.shuts.as_kpa(),
        service_l: supply.service_volume.as_l(),
        reserve_l: supply.reserve_volume.map(quantity::Volume::as_l),
    }
}

fn wheel_end(haul: &HaulCycle, index: usize, group: &AxleGroup) -> WheelEndView {
    let (valve, closes_below) = match group.wheel_valve {
        Some(WheelValve::ByHand) => ("by-hand", None),
        Some(WheelValve::SelfClosing { closes_below }) => ("self-closing", Some(closes_below)),
        None => ("none", None),
    };
    WheelEndView {
        axle_group: group_name(haul, index),
        channel: group.channel.map(|channel| haul.combination.channels[channel].name.clone()),
        wheel_ends: group.wheel_ends(),
        tires_per_end: group.tires_per_end(),
        fitment: match group.fitment {
            Fitment::Single => "single",
            Fitment::Dual => "dual",
        }
        .to_owned(),
        driven: group.driven,
        valve: valve.to_owned(),
        closes_below_kpa: closes_below.map(quantity::GaugePressure::as_kpa),
        shut: group.wheel_ends_shut,
        least_gap_mm: group.dual.map(|dual| dual.least_gap.as_mm()),
        diameter_difference_mm: group.dual.map(|dual| dual.diameter_difference.as_mm()),
    }
}

fn unit(unit: &Unit) -> UnitView {
    UnitView {
        number: unit.number.clone(),
        vehicle: unit.vehicle.clone(),
        sensors: unit
            .sensors
            .iter()
            .map(|sensor| SensorView {
                place: sensor.position.to_string(),
                verified: sensor.verified.map(|day| day.to_string()),
            })
            .collect(),
        fitted: unit.fitted.iter().map(fitted).collect(),
    }
}

fn fitted(value: &FittedValue) -> FittedView {
    let (what, channel) = match &value.measured {
        Measured::Delivery => ("delivery", None),
        Measured::Conductance(channel) => ("conductance", Some(channel.clone())),
        Measured::TireVolume(channel) => ("tire-volume", Some(channel.clone())),
    };
    FittedView {
        what: what.to_owned(),
        channel,
        share_pct: value.ratio * 100.0,
        date: value.date.to_string(),
    }
}

fn yard_change(combination: &Combination, change: &YardChange) -> YardChangeView {
    let rung = |index: usize| combination.rungs[index].name.clone();
    let channels = change.channels.iter().map(|one| {
        let accepted = one.accepted();
        YardChannelView {
            channel: combination.channels[one.channel].name.clone(),
            from_kpa: one.from.as_kpa(),
            to_kpa: one.to.as_kpa(),
            time_s: one.time.map(Time::as_s),
            least_s: accepted.map(|[least, _]| least.as_s()),
            most_s: accepted.map(|[_, most]| most.as_s()),
        }
    });
    YardChangeView {
        load_state: combination.load_states[change.load_state].name.clone(),
        from_rung: rung(change.from),
        to_rung: rung(change.to),
        action: match change.action {
            Action::Raise => "raise",
            Action::Lower => "lower",
        }
        .to_owned(),
        channels: channels.collect(),
    }
}
