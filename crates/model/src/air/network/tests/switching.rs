//! What switches when.

use super::*;
use crate::air::vent_time;

fn closing(spec: ChannelSpec, closes_below: f64) -> ChannelSpec {
    ChannelSpec { closes_below: Some(psi(closes_below)), line_volume: Volume::from_l(1.5), ..spec }
}

#[test]
fn an_idle_supply_cycles_between_cut_in_and_cut_out() {
    let network = Network::new(&supply(299.0, 90.0), None, &[], true).unwrap();
    let around = Surroundings { brake_draw: VolumeFlow::from_l_per_s(0.5), ..around(1600.0) };
    let mut state = network.start(psi(110.0), None, &[], &around).unwrap();
    let mut switched = Vec::new();
    let hold = [ChannelOrder::Hold; MAX_CHANNELS];
    for _ in 0..400 {
        if let Some(event) = network.advance(&mut state, &around, &hold, Time::from_s(7.0)).event {
            let gauge = state.service().to_gauge(around.ambient).as_psi();
            let at = if event == AirEvent::CompressorLoads { 100.0 } else { 125.0 };
            assert!((gauge - at).abs() < 1e-6, "{event:?} at {gauge}");
            switched.push(event);
        }
    }
    assert!(switched.len() > 8);
    for pair in switched.chunks(2) {
        assert_eq!(pair[0], AirEvent::CompressorLoads);
    }
    assert!(state.duty().longest_loaded() <= state.duty().loaded());
    assert!(state.duty().longest_loaded().as_s() > 10.0);
}

#[test]
fn venting_alone_takes_the_closed_form_time() {
    let spec =
        ChannelSpec { path: vec![PathElement::Part(part(1e5, 0.5))], ..channel(1.5, 0.25, 110.0) };
    let network = Network::new(&supply(299.0, 90.0), None, &[spec], true).unwrap();
    let around = around(1600.0);
    let mut state = network.start(psi(120.0), None, &[psi(100.0)], &around).unwrap();
    let time = settle(&network, &mut state, &around, &orders(&[30.0])).last().unwrap().0;
    let absolute = |gauge: f64| psi(gauge).to_absolute(around.ambient);
    let exact = vent_time(
        Volume::from_l(110.0),
        part(1.5, 0.25),
        around.ambient,
        absolute(100.0),
        absolute(30.0),
    )
    .unwrap();
    assert!((time - exact.as_s()).abs() < 1e-3, "{time} against {exact}");
}

#[test]
fn a_warm_tire_is_brought_to_its_target_as_read() {
    let network =
        Network::new(&supply(299.0, 90.0), None, &[channel(1.5, 0.25, 896.0)], true).unwrap();
    let warm = Temperature::from_celsius(60.0);
    let around = Surroundings { tire_temperature: [warm; MAX_CHANNELS], ..around(1600.0) };
    let mut state = network.start(psi(120.0), None, &[psi(45.0)], &around).unwrap();
    settle(&network, &mut state, &around, &orders(&[75.0]));
    let read = |t| state.tire(0, t).to_gauge(around.ambient).as_psi();
    assert!((read(warm) - 75.0).abs() < 1e-6);
    assert!(read(Temperature::from_celsius(20.0)) < 65.0);
}

#[test]
fn one_after_another_works_in_the_order_of_channels() {
    let specs = [channel(1.5, 0.25, 448.0), channel(1.5, 0.25, 224.0)];
    let network = Network::new(&supply(299.0, 90.0), None, &specs, false).unwrap();
    let around = around(1600.0);
    let mut state = network.start(psi(120.0), None, &[psi(60.0), psi(60.0)], &around).unwrap();
    let reached: Vec<_> = settle(&network, &mut state, &around, &orders(&[75.0, 70.0]))
        .into_iter()
        .filter_map(|(_, event)| match event {
            AirEvent::ChannelReached { channel } => Some(channel),
            _ => None,
        })
        .collect();
    assert_eq!(reached, [0, 1]);
}

#[test]
fn a_settled_channel_stays_settled_until_told_otherwise() {
    let network =
        Network::new(&supply(299.0, 90.0), None, &[channel(1.5, 0.25, 224.0)], true).unwrap();
    let cool = around(1600.0);
    let mut state = network.start(psi(120.0), None, &[psi(60.0)], &cool).unwrap();
    settle(&network, &mut state, &cool, &orders(&[70.0]));
    let warm =
        Surroundings { tire_temperature: [Temperature::from_celsius(50.0); MAX_CHANNELS], ..cool };
    let before = state.totals();
    let advance = network.advance(&mut state, &warm, &orders(&[70.0]), Time::from_s(10.0));
    assert_eq!(advance.elapsed, Time::from_s(10.0));
    assert_eq!(state.totals().vented(), before.vented());
    settle(&network, &mut state, &warm, &orders(&[71.0]));
    assert!(state.totals().vented() > before.vented());
}

#[test]
fn the_brake_gate_takes_air_again_only_at_its_resuming_pressure() {
    let gate = BrakeGate { stops_below: psi(90.0), resumes_at: psi(105.0) };
    let network =
        Network::new(&supply(299.0, 90.0), Some(gate), &[channel(3.0, 0.25, 896.0)], true).unwrap();
    let around = around(1600.0);
    let mut state = network.start(psi(120.0), None, &[psi(45.0)], &around).unwrap();
    let events = settle(&network, &mut state, &around, &orders(&[75.0]));
    let stops = events.iter().filter(|(_, e)| *e == AirEvent::GateStops).count();
    let resumes = events.iter().filter(|(_, e)| *e == AirEvent::GateResumes).count();
    assert!(stops >= 2 && stops - resumes <= 1, "{events:?}");
    assert!((state.lowest_service().as_psi() - 90.0).abs() < 1e-6);
    assert_eq!(state.protection_closures(), 0);
}

/// A dip of the service pressure that a long step would straddle is met all the same.
#[test]
fn a_dip_and_its_recovery_are_not_stepped_over() {
    let run = |gate: Option<BrakeGate>, step: f64| {
        let spec = channel(4.0, 0.25, 300.0);
        let network = Network::new(&supply(636.0, 40.0), gate, &[spec], true)
            .unwrap()
            .with_largest_step(Time::from_s(step));
        let around = around(2000.0);
        let mut state = network.start(psi(99.0), None, &[psi(60.0)], &around).unwrap();
        let events = settle(&network, &mut state, &around, &orders(&[90.0]));
        (state.lowest_service(), events)
    };
    let (lowest, _) = run(None, 0.01);
    assert!((70.1..99.0).contains(&lowest.as_psi()), "{lowest}");
    let (coarse, _) = run(None, 1.0);
    assert!((coarse - lowest).as_kpa().abs() < 0.01, "{coarse} against {lowest}");
    let stops_below = GaugePressure::from_kpa(lowest.as_kpa() + 0.02);
    let gate = BrakeGate { stops_below, resumes_at: psi(98.9) };
    let (_, events) = run(Some(gate), 1.0);
    assert!(events.iter().any(|(_, event)| *event == AirEvent::GateStops), "{events:?}");
}

#[test]
fn a_reserve_tank_feeds_tires_while_the_brakes_keep_theirs() {
    let mut supply = supply(299.0, 90.0);
    supply.reserve_volume = Some(Volume::from_l(120.0));
    supply.protection.restriction = part(3.0, 0.4);
    let network = Network::new(&supply, None, &[channel(3.0, 0.25, 448.0)], true).unwrap();
    let around = around(700.0);
    let mut state = network.start(psi(120.0), Some(psi(120.0)), &[psi(45.0)], &around).unwrap();
    settle(&network, &mut state, &around, &orders(&[70.0]));
    let reserve = state.reserve().unwrap().to_gauge(around.ambient);
    assert!(state.lowest_service().as_psi() > 69.999);
    assert!(reserve <= state.service().to_gauge(around.ambient));
    // Standing afterward, reserve and reservoirs come back to cut-out together.
    let hold = [ChannelOrder::Hold; MAX_CHANNELS];
    for _ in 0..900 {
        network.advance(&mut state, &around, &hold, Time::from_s(1.0));
    }
    let reserve = state.reserve().unwrap().to_gauge(around.ambient).as_psi();
    assert!((124.5..=125.0).contains(&reserve), "{reserve}");
}

#[test]
fn self_closing_valves_shut_when_the_venting_line_falls_too_low() {
    // Wheel end and exhaust alike, so the line stands well under the tire.
    let spec = ChannelSpec {
        path: vec![PathElement::Part(part(50.0, 0.5))],
        wheel_end: vec![PathElement::Part(part(2.0, 0.3))],
        exhaust: part(2.0, 0.3),
        ..closing(channel(1.0, 0.25, 448.0), 20.0)
    };
    let around = around(1600.0);
    let network = Network::new(&supply(299.0, 90.0), None, &[spec], true).unwrap();
    let mut state = network.start(psi(120.0), None, &[psi(90.0)], &around).unwrap();
    let events = settle(&network, &mut state, &around, &orders(&[25.0]));
    assert_eq!(events.last().unwrap().1, AirEvent::WheelValvesShut { channel: 0 });
    assert!(state.settled(0) && state.wheel_valves_shut(0));
    // Through the wheel end the flow must equal the flow the line at 20 psi drives out.
    let tire = state.tire(0, around.temperature);
    let line = psi(20.0).to_absolute(around.ambient);
    let through = |p1, p2| part(2.0, 0.3).mass_flow(p1, around.temperature, p2).unwrap();
    let (into, out) = (through(tire, line), through(line, around.ambient));
    assert!((into / out - 1.0).abs() < 2e-3, "{into} in, {out} out");
    assert!(state.totals().lines().as_m3() > 0.0);
}

#[test]
fn self_closing_valves_stay_shut_on_an_empty_reserve() {
    let mut supply = supply(299.0, 90.0);
    supply.reserve_volume = Some(Volume::from_l(60.0));
    supply.protection.restriction = part(2.0, 0.4);
    let spec = closing(channel(1.5, 0.25, 224.0), 30.0);
    let network = Network::new(&supply, None, &[spec], true).unwrap();
    let around = around(1600.0);
    let mut state = network.start(psi(60.0), Some(psi(5.0)), &[psi(10.0)], &around).unwrap();
    let events = settle(&network, &mut state, &around, &orders(&[60.0]));
    let named = |wanted| events.iter().position(|(_, event)| *event == wanted);
    let shut = named(AirEvent::WheelValvesShut { channel: 0 }).unwrap();
    let open = named(AirEvent::WheelValvesOpen { channel: 0 }).unwrap();
    let protection = named(AirEvent::ProtectionOpens).unwrap();
    assert!(shut < protection && protection < open, "{events:?}");
    assert_eq!(events.last().unwrap().1, AirEvent::ChannelReached { channel: 0 });
}

#[test]
fn a_network_that_cannot_be_is_refused() {
    let good = channel(1.5, 0.25, 224.0);
    let try_with = |supply: AirSupply, spec: ChannelSpec| {
        Network::new(&supply, None, &[spec], true).map(|_| ()).unwrap_err()
    };
    let plain = || supply(299.0, 90.0);
    let backward =
        AirSupply { governor: Governor { cut_in: psi(125.0), cut_out: psi(100.0) }, ..plain() };
    assert!(matches!(try_with(backward, good.clone()), NetworkError::Order { .. }));
    let no_tires = ChannelSpec { tire_volume: Volume::ZERO, ..good.clone() };
    assert!(matches!(try_with(plain(), no_tires), NetworkError::Volume { .. }));
    let shut = ChannelSpec { open_wheel_ends: 0, ..good.clone() };
    assert_eq!(try_with(plain(), shut), NetworkError::NoOpenWheelEnd(0));
    let stiff = closing(good.clone(), 75.0);
    assert!(matches!(try_with(plain(), stiff), NetworkError::ClosesAboveProtection { .. }));
    let nothing = ChannelSpec { path: Vec::new(), ..good.clone() };
    assert_eq!(try_with(plain(), nothing), NetworkError::NoPath(0));
    let many = vec![good; MAX_CHANNELS + 1];
    assert_eq!(
        Network::new(&plain(), None, &many, true).map(|_| ()),
        Err(NetworkError::TooManyChannels(17))
    );
}

// A first form of the step control took one-second steps here and drew the reserve far
// under the tires it fills.
#[test]
fn regress_a_small_reserve_is_not_drawn_under_the_tires() {
    let mut supply = supply(635.0, 40.0);
    supply.reserve_volume = Some(Volume::from_l(20.0));
    supply.protection.restriction = part(24.0, 0.3);
    let specs = [1.85, 0.98, 2.47, 5.78].map(|c| channel(c, 0.25, 500.0));
    let network = Network::new(&supply, None, &specs, true).unwrap();
    let around = around(1500.0);
    let mut state = network.start(psi(120.0), Some(psi(100.0)), &[psi(60.0); 4], &around).unwrap();
    let softest = psi(60.0).to_absolute(around.ambient);
    for _ in 0..60 {
        network.advance(&mut state, &around, &orders(&[85.0; 4]), Time::from_s(1.0));
        let reserve = state.reserve().unwrap();
        assert!((softest - reserve).as_kpa() < 0.01, "{reserve}");
    }
    assert!(state.protection_closures() > 2);
}
