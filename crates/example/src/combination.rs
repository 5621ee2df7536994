//! An invented five-axle combination: fixed steer tires, drive and trailer on two channels.

use std::sync::Arc;

use model::air::PathElement;
use model::route::Surface;
use model::tire::Fitment;
use model::vehicle::{
    AirChannel, AxleGroup, ChainState, Combination, Controller, DualPair, GaugeKind, GroupLoad,
    LoadState, MeasuredAir, Powertrain, Rung, Vehicle, Weighing, WheelValve,
};
use quantity::{
    Area, ColdPressure, GaugePressure, Length, Mass, Power, PressureDifference, RotationalSpeed,
    Speed, Time, VolumeFlow,
};

use crate::supply::{restriction, supply};
use crate::tires::us_dual;

fn group(name: &str, vehicle: usize, axles: u32, channel: Option<usize>) -> AxleGroup {
    let dual = channel.is_some();
    AxleGroup {
        name: name.into(),
        vehicle,
        axles,
        fitment: if dual { Fitment::Dual } else { Fitment::Single },
        tire: Arc::new(us_dual()),
        also_fitted: vec![],
        dual: dual.then(|| DualPair {
            spacing: Length::from_in(13.0),
            diameter_difference: Length::ZERO,
            least_gap: Length::from_mm(5.0),
        }),
        driven: name == "drive",
        steered: name == "steer",
        liftable: false,
        channel,
        fixed_pressure: channel.is_none().then(|| ColdPressure::from_psi(105.0)),
        axle_rating: Mass::from_lb(20_000.0 * f64::from(axles)),
        wheel_valve: channel.map(|_| WheelValve::ByHand),
        wheel_ends_shut: 0,
        track: Length::from_m(1.85),
        scrub_minimum: None,
    }
}

fn channel(name: &str, line_m: f64) -> AirChannel {
    AirChannel {
        name: name.into(),
        path: vec![
            PathElement::Part(restriction(4.0, 0.3)),
            PathElement::Tube { bore: Length::from_mm(12.7), length: Length::from_m(line_m) },
        ],
        wheel_end: vec![PathElement::Part(restriction(1.5, 0.25))],
        exhaust: restriction(4.0, 0.3),
        line_length: Length::from_m(line_m),
        measured: MeasuredAir::AS_THE_TYPE,
    }
}

fn load_state(name: &str, masses_lb: [f64; 3]) -> LoadState {
    LoadState {
        name: name.into(),
        groups: masses_lb
            .iter()
            .map(|&lb| GroupLoad {
                mass: Mass::from_lb(lb),
                heavier_side_share: 0.51,
                heavier_mate_share: 0.52,
                weighing: Weighing::Scale,
                uncertainty: 0.01,
            })
            .collect(),
        axles_down: vec![1, 2, 2],
        body_raised: false,
        treat_as: None,
        center_height: Some(Length::from_m(2.0)),
        chain_states: vec![
            ChainState { name: "no chains".into(), chained_groups: vec![] },
            ChainState { name: "chains on drive".into(), chained_groups: vec![1] },
        ],
    }
}

/// The combination.
pub fn combination() -> Combination {
    Combination {
        name: "five axles".into(),
        vehicles: vec![
            Vehicle { name: "truck".into(), is_truck: true },
            Vehicle { name: "trailer".into(), is_truck: false },
        ],
        groups: vec![
            group("steer", 0, 1, None),
            group("drive", 0, 2, Some(0)),
            group("trailer", 1, 2, Some(1)),
        ],
        channels: vec![channel("drive", 6.0), channel("trailer", 14.0)],
        controller: Controller {
            step: PressureDifference::from_psi(1.0),
            unit: "psi",
            deadband: PressureDifference::from_psi(1.0),
            gauge_error: PressureDifference::from_psi(1.0),
            stored_rungs: 4,
            check_interval: Time::from_min(10.0),
            gauge: GaugeKind::Vented,
            brake_threshold: GaugePressure::from_psi(85.0),
            brake_resume: GaugePressure::from_psi(100.0),
            channels_together: true,
            compressor_limit: Time::from_min(30.0),
        },
        supply: supply(),
        powertrain: Powertrain {
            rated_power: Power::from_kw(373.0),
            accessory_power: Power::from_kw(15.0),
            efficiency: 0.85,
            working_speed: RotationalSpeed::from_rpm(1500.0),
            descent_speed: RotationalSpeed::from_rpm(1700.0),
            idle_speed: RotationalSpeed::from_rpm(650.0),
            high_idle_speed: RotationalSpeed::from_rpm(1200.0),
            fuel_l_per_kwh: 0.245,
            idle_fuel: VolumeFlow::from_l_per_min(3.0 / 60.0),
        },
        drag_area: Area::from_m2(8.0),
        load_states: vec![
            load_state("empty", [9_500.0, 10_500.0, 9_000.0]),
            load_state("laden", [11_500.0, 34_000.0, 34_000.0]),
        ],
        rungs: vec![
            rung("spur", 25.0, vec![Surface::SoftGround, Surface::Earth]),
            rung("gravel", 35.0, vec![Surface::Gravel]),
            rung("highway", 60.0, vec![Surface::Paved, Surface::Sealed]),
        ],
        hand_set: vec![],
    }
}

fn rung(name: &str, mph: f64, surfaces: Vec<Surface>) -> Rung {
    Rung { name: name.into(), cap: Speed::from_mph(mph), hold: None, surfaces }
}
