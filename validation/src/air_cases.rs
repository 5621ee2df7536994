//! Whole-truck air cases with event times by an independent integrator, read from
//! `validation/scipy/air_events.json`.
//!
//! Same equations, written anew in Python and solved by Radau at 1e-10; the script beside
//! the file makes it, with all inputs. The test and the bench run the same cases.

use std::fs;
use std::path::Path;

use model::air::{
    AirEvent, AirSupply, BrakeGate, BrakeUse, ChannelOrder, ChannelSpec, Compressor,
    CompressorInlet, Governor, MAX_CHANNELS, Network, PathElement, ProtectionValve, Restriction,
    Surroundings,
};
use quantity::{
    AbsolutePressure, GaugePressure, RotationalSpeed, SonicConductance, Temperature, Time, Volume,
    VolumeFlow,
};
use serde_json::Value;

/// One case: a network, its start, its orders, and the events that must come.
#[derive(Debug, Clone)]
pub struct AirCase {
    value: Value,
}

/// Every stored case.
///
/// # Panics
/// If the stored file is missing or not whole.
pub fn cases() -> Vec<AirCase> {
    let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("scipy/air_events.json");
    let text = fs::read_to_string(file).expect("the stored cases are in the tree");
    let document: Value = serde_json::from_str(&text).expect("the stored cases are whole");
    list(&document, "cases").iter().map(|value| AirCase { value: value.clone() }).collect()
}

impl AirCase {
    /// Its name.
    ///
    /// # Panics
    /// If the stored case has none.
    pub fn name(&self) -> &str {
        self.value["name"].as_str().expect("a stored case has a name")
    }

    /// Time of the first stored event.
    pub fn first_event(&self) -> Time {
        Time::from_s(number(&list(&self.value, "events")[0], "time_s"))
    }

    /// Runs to the last stored event and gives the largest difference of an event time.
    ///
    /// # Panics
    /// If an event is another one than stored, or never comes.
    pub fn worst_difference(&self, largest_step: Time) -> Time {
        let case = &self.value;
        let gate = case["gate"].is_object().then(|| BrakeGate {
            stops_below: gauge(&case["gate"], "stops_below_kpa"),
            resumes_at: gauge(&case["gate"], "resumes_at_kpa"),
        });
        let channels: Vec<_> = list(case, "channels").iter().map(channel).collect();
        let together = case["together"].as_bool().expect("the stored cases are whole");
        let network = Network::new(&supply(&case["supply"]), gate, &channels, together)
            .expect("the stored cases are whole")
            .with_largest_step(largest_step);
        let around = surroundings(&case["surroundings"]);
        let start = &case["start"];
        let reserve = start["reserve_kpa"].as_f64().map(GaugePressure::from_kpa);
        let mut state = network
            .start(gauge(start, "service_kpa"), reserve, &gauges(start, "tires_kpa"), &around)
            .expect("the stored cases are whole");
        let mut orders = [ChannelOrder::Hold; MAX_CHANNELS];
        for (order, target) in orders.iter_mut().zip(gauges(case, "targets_kpa")) {
            *order = ChannelOrder::Reach(target);
        }
        let (mut time, mut worst) = (0.0, 0.0f64);
        for wanted in list(case, "events") {
            let event = loop {
                let advance = network.advance(&mut state, &around, &orders, Time::from_s(1.0));
                time += advance.elapsed.as_s();
                if let Some(event) = advance.event {
                    break event;
                }
                assert!(time < 36_000.0, "{wanted} never comes");
            };
            assert_eq!(event, event_named(wanted), "at {time} s in {}", case["name"]);
            worst = worst.max((time - number(wanted, "time_s")).abs());
        }
        Time::from_s(worst)
    }
}

fn number(value: &Value, key: &str) -> f64 {
    value[key].as_f64().unwrap_or_else(|| panic!("no number '{key}' in {value}"))
}

fn list<'a>(value: &'a Value, key: &str) -> &'a [Value] {
    value[key].as_array().unwrap_or_else(|| panic!("no list '{key}' in {value}"))
}

fn gauges(value: &Value, key: &str) -> Vec<GaugePressure> {
    list(value, key)
        .iter()
        .map(|p| GaugePressure::from_kpa(p.as_f64().expect("the stored cases are whole")))
        .collect()
}

fn gauge(value: &Value, key: &str) -> GaugePressure {
    GaugePressure::from_kpa(number(value, key))
}

fn restriction(value: &Value) -> Restriction {
    let c = SonicConductance::from_dm3_per_s_bar(number(value, "c_dm3_per_s_bar"));
    Restriction::new(c, number(value, "b")).expect("the stored cases are whole")
}

fn path(value: &Value, key: &str) -> Vec<PathElement> {
    list(value, key).iter().map(|part| PathElement::Part(restriction(part))).collect()
}

fn supply(value: &Value) -> AirSupply {
    AirSupply {
        compressor: Compressor {
            displacement: Volume::from_l(number(value, "displacement_l")),
            speed_ratio: number(value, "speed_ratio"),
            efficiency: number(value, "efficiency"),
            clearance: number(value, "clearance"),
            polytropic: number(value, "polytropic"),
            inlet: CompressorInlet::Ambient,
        },
        governor: Governor {
            cut_in: gauge(value, "cut_in_kpa"),
            cut_out: gauge(value, "cut_out_kpa"),
        },
        service_volume: Volume::from_l(number(value, "service_l")),
        brakes: BrakeUse {
            full_application: Volume::from_l(10.0),
            full_deceleration_g: 0.6,
            descent_applications_per_minute: 2.0,
            leakage: VolumeFlow::ZERO,
        },
        protection: ProtectionValve {
            opens: gauge(value, "opens_kpa"),
            shuts: gauge(value, "shuts_kpa"),
            restriction: restriction(&value["protection"]),
        },
        reserve_volume: value["reserve_l"].as_f64().map(Volume::from_l),
        measured_delivery: 1.0,
    }
}

fn channel(value: &Value) -> ChannelSpec {
    ChannelSpec {
        path: path(value, "path"),
        wheel_end: path(value, "wheel_end"),
        open_wheel_ends: u32::try_from(
            value["open_wheel_ends"].as_u64().expect("the stored cases are whole"),
        )
        .expect("the stored cases are whole"),
        exhaust: restriction(&value["exhaust"]),
        tire_volume: Volume::from_l(number(value, "tire_l")),
        closes_below: None,
        line_volume: Volume::ZERO,
        conductance: 1.0,
    }
}

fn surroundings(value: &Value) -> Surroundings {
    let mut tire_temperature = [Temperature::from_celsius(20.0); MAX_CHANNELS];
    for (t, kelvin) in tire_temperature.iter_mut().zip(list(value, "tire_temperature_k")) {
        *t = Temperature::from_kelvin(kelvin.as_f64().expect("the stored cases are whole"));
    }
    Surroundings {
        engine_speed: RotationalSpeed::from_rpm(number(value, "engine_rpm")),
        engine_load: 0.0,
        ambient: AbsolutePressure::from_kpa(number(value, "ambient_kpa")),
        temperature: Temperature::from_kelvin(number(value, "temperature_k")),
        brake_draw: VolumeFlow::from_l_per_s(number(value, "brake_draw_l_per_s")),
        tire_temperature,
    }
}

fn event_named(value: &Value) -> AirEvent {
    let channel = || {
        usize::try_from(value["channel"].as_u64().expect("the stored cases are whole"))
            .expect("the stored cases are whole")
    };
    match value["event"].as_str().expect("the stored cases are whole") {
        "ChannelReached" => AirEvent::ChannelReached { channel: channel() },
        "CompressorLoads" => AirEvent::CompressorLoads,
        "CompressorUnloads" => AirEvent::CompressorUnloads,
        "ProtectionOpens" => AirEvent::ProtectionOpens,
        "ProtectionShuts" => AirEvent::ProtectionShuts,
        "GateStops" => AirEvent::GateStops,
        "GateResumes" => AirEvent::GateResumes,
        other => panic!("unknown event {other}"),
    }
}
