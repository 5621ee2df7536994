//! Laws that hold for any network.

use proptest::prelude::*;
use quantity::PressureDifference;

use super::*;
use crate::air::{Compressor, CompressorInlet};

/// A random truck: reserve tank, gate, self-closing valves and boost by chance.
fn truck() -> impl Strategy<Value = (Network, usize)> {
    let spec = (0.5..6.0f64, 0.0..0.6f64, 0.5..3.0f64, 1..9u32, 100.0..1500.0f64, any::<bool>());
    (
        prop::collection::vec(spec, 1..7),
        50.0..700.0f64,
        40.0..300.0f64,
        prop::option::of(20.0..150.0f64),
        1.0..30.0f64,
        any::<(bool, bool, bool)>(),
    )
        .prop_map(|(specs, cc, service_l, reserve_l, c, (gated, together, boosted))| {
            let mut supply = supply(cc, service_l);
            supply.reserve_volume = reserve_l.map(Volume::from_l);
            supply.protection.restriction = part(c, 0.3);
            if boosted {
                let at_full_power = PressureDifference::from_kpa(120.0);
                let inlet = CompressorInlet::Boosted { at_full_power };
                supply.compressor = Compressor { inlet, ..supply.compressor };
            }
            let gate = gated.then(|| BrakeGate { stops_below: psi(88.0), resumes_at: psi(98.0) });
            let channels: Vec<_> = specs
                .into_iter()
                .map(|(c, b, end_c, ends, liters, closing)| ChannelSpec {
                    wheel_end: vec![PathElement::Part(part(end_c, 0.3))],
                    open_wheel_ends: ends,
                    closes_below: closing.then(|| psi(20.0)),
                    line_volume: Volume::from_l(2.0),
                    ..channel(c, b, liters)
                })
                .collect();
            let count = channels.len();
            (Network::new(&supply, gate, &channels, together).unwrap(), count)
        })
}

fn legs() -> impl Strategy<Value = Vec<(f64, f64, f64, f64, f64, Vec<f64>)>> {
    let targets = prop::collection::vec(-40.0..110.0f64, 6);
    let leg = (500.0..2400.0f64, 0.0..1.0f64, 70.0..102.0f64, -20.0..40.0f64, 0.0..3.0f64, targets);
    prop::collection::vec(leg, 1..6)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    #[test]
    fn no_air_is_lost_or_made((network, count) in truck(), legs in legs(), service in 20.0..130.0f64) {
        let mut around = around(1000.0);
        let reserve = network.reserve_volume.map(|_| psi(service * 0.7));
        let tires = vec![psi(60.0); count];
        let mut state = network.start(psi(service), reserve, &tires, &around).unwrap();
        let begun = network.contents(&state).as_m3();
        let tires_begun: f64 = tire_air(&network, &state);
        for (rpm, load, ambient, celsius, draw, targets) in legs {
            around.engine_speed = RotationalSpeed::from_rpm(rpm);
            around.engine_load = load;
            around.ambient = AbsolutePressure::from_kpa(ambient);
            around.temperature = Temperature::from_celsius(celsius);
            around.tire_temperature = [Temperature::from_celsius(celsius + 25.0); MAX_CHANNELS];
            around.brake_draw = VolumeFlow::from_l_per_s(draw);
            let mut orders = orders(&targets);
            for (order, target) in orders.iter_mut().zip(&targets) {
                if *target < 0.0 {
                    *order = ChannelOrder::Hold;
                }
            }
            for _ in 0..300 {
                network.advance(&mut state, &around, &orders, Time::from_s(1.0));
            }
            let t = state.totals();
            let passed = t.compressed() - t.brakes() - t.vented() - t.lines();
            let size = begun + t.compressed().as_m3();
            let lost = network.contents(&state).as_m3() - begun - passed.as_m3();
            prop_assert!(lost.abs() < 1e-9 * size, "{lost} of {size}");
            let into = (t.into_tires() - t.vented()).as_m3();
            prop_assert!((tire_air(&network, &state) - tires_begun - into).abs() < 1e-9 * size);
        }
    }

    #[test]
    fn shorter_steps_change_little(
        (network, count) in truck(), rpm in 600.0..2200.0f64, target in 62.0..90.0f64,
    ) {
        let around = around(rpm);
        let after = |step: f64| {
            let network = network.clone().with_largest_step(Time::from_s(step));
            let reserve = network.reserve_volume.map(|_| psi(100.0));
            let tires = vec![psi(60.0); count];
            let mut state = network.start(psi(120.0), reserve, &tires, &around).unwrap();
            let mut left = 60.0;
            while left > 0.0 {
                let dt = Time::from_s(left);
                left -= network.advance(&mut state, &around, &orders(&[target; 6]), dt).elapsed.as_s();
            }
            (0..count).map(|k| state.tires[k]).sum::<f64>() / count as f64
        };
        let [whole, half, eighth] = [1.0, 0.5, 0.125].map(after);
        prop_assert!((whole - eighth).abs() < 5.0, "{whole} {eighth} Pa");
        prop_assert!((half - eighth).abs() < 5.0, "{half} {eighth} Pa");
    }

    #[test]
    fn the_order_of_channels_working_together_does_not_matter(
        liters in prop::collection::vec(100.0..1200.0f64, 2..6),
        shift in 1..5usize,
        rpm in 700.0..2200.0f64,
    ) {
        let count = liters.len();
        let turned: Vec<_> = (0..count).map(|k| liters[(k + shift) % count]).collect();
        let run = |liters: &[f64]| {
            let specs: Vec<_> = liters.iter().map(|l| channel(1.5, 0.25, *l)).collect();
            let mut supply = supply(299.0, 90.0);
            supply.protection.restriction = part(6.0, 0.4);
            let network = Network::new(&supply, None, &specs, true).unwrap();
            let around = around(rpm);
            let tires: Vec<_> = (0..count).map(|_| psi(45.0)).collect();
            let mut state = network.start(psi(120.0), None, &tires, &around).unwrap();
            let mut left = 100.0;
            while left > 0.0 {
                let dt = Time::from_s(left);
                left -= network.advance(&mut state, &around, &orders(&[80.0; 5][..count]), dt).elapsed.as_s();
            }
            state.tires
        };
        let (one, other) = (run(&liters), run(&turned));
        for k in 0..count {
            prop_assert!((other[k] - one[(k + shift) % count]).abs() < 0.5);
        }
    }
}

/// Air in the tires, m³ in the reference atmosphere.
fn tire_air(network: &Network, state: &AirState) -> f64 {
    network.channels.iter().zip(&state.tires).map(|(c, p)| c.tire_volume * p / 1e5).sum()
}
