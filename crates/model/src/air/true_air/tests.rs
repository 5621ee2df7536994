use proptest::prelude::*;
use quantity::{
    AbsolutePressure, GaugePressure, Length, PressureDifference, RotationalSpeed, SonicConductance,
    Temperature, Time, Volume, VolumeFlow,
};

use super::super::compressor::tests::fixture as compressor;
use super::super::{
    AirSupply, BrakeUse, ChannelOrder, ChannelSpec, Governor, MAX_CHANNELS, Network, PathElement,
    ProtectionValve, Restriction, Surroundings, adiabatic_vent,
};
use super::*;

const AMBIENT: AbsolutePressure = AbsolutePressure::from_kpa(101.3);
const TIRE: Volume = Volume::from_l(112.0);

fn kpa(value: f64) -> GaugePressure {
    GaugePressure::from_kpa(value)
}

fn part(c: f64) -> Restriction {
    Restriction::new(SonicConductance::from_dm3_per_s_bar(c), 0.3).unwrap()
}

fn supply() -> AirSupply {
    AirSupply {
        compressor: compressor(Volume::from_cm3(636.0)),
        governor: Governor { cut_in: kpa(750.0), cut_out: kpa(900.0) },
        service_volume: Volume::from_l(120.0),
        brakes: BrakeUse {
            full_application: Volume::from_l(60.0),
            full_deceleration_g: 0.5,
            descent_applications_per_minute: 2.0,
            leakage: VolumeFlow::ZERO,
        },
        protection: ProtectionValve {
            opens: kpa(600.0),
            shuts: kpa(500.0),
            restriction: part(9.0),
        },
        reserve_volume: None,
        measured_delivery: 1.0,
    }
}

fn spec(closes_below: Option<f64>) -> ChannelSpec {
    ChannelSpec {
        path: vec![PathElement::Part(part(4.0))],
        wheel_end: vec![PathElement::Part(part(1.6))],
        open_wheel_ends: 4,
        exhaust: part(5.0),
        tire_volume: TIRE * 8.0,
        closes_below: closes_below.map(kpa),
        line_volume: Volume::from_l(1.5),
        conductance: 1.0,
    }
}

fn habits() -> ControllerHabits {
    ControllerHabits {
        deadband: PressureDifference::from_kpa(15.0),
        check_interval: Time::from_min(12.0),
        together: true,
        sealed_gauge: false,
    }
}

/// One channel with wheel valves by hand, one with self-closing ones, four duals each; two tires
/// that nothing feeds.
fn truck() -> TrueAir {
    let end = |channel| WheelEnd { channel, tires: vec![TIRE; 2], shut: false };
    let ends: Vec<WheelEnd> = [0, 0, 0, 0, 1, 1, 1, 1].map(end).into();
    let specs = [spec(None), spec(Some(130.0))];
    TrueAir::new(&supply(), None, &specs, &ends, &[TIRE; 2], habits()).unwrap()
}

struct Day {
    walls: Vec<Temperature>,
    squash: Vec<f64>,
}

impl Day {
    fn mild() -> Self {
        Self { walls: vec![Temperature::from_celsius(20.0); 18], squash: vec![0.0; 18] }
    }

    fn around(&self) -> TrueSurroundings<'_> {
        TrueSurroundings {
            engine_speed: RotationalSpeed::from_rpm(1400.0),
            engine_load: 0.5,
            ambient: AMBIENT,
            temperature: Temperature::from_celsius(20.0),
            reservoir_temperature: Temperature::from_celsius(20.0),
            brake_draw: VolumeFlow::from_l_per_min(5.0),
            walls: &self.walls,
            squash: &self.squash,
        }
    }
}

fn started(air: &TrueAir, tires: f64) -> TrueState {
    air.start(kpa(900.0), &[kpa(tires); 18], &Day::mild().around()).unwrap()
}

/// Runs until what was ordered is complete; gives the time it took, or an hour.
fn complete(air: &TrueAir, state: &mut TrueState) -> f64 {
    let day = Day::mild();
    let mut passed = 0.0;
    while !state.is_complete() && passed < 3600.0 {
        passed += air.advance(state, &day.around(), Time::from_s(10.0)).elapsed.as_s();
    }
    passed
}

fn pass(air: &TrueAir, state: &mut TrueState, seconds: f64) {
    air.advance(state, &Day::mild().around(), Time::from_s(seconds));
}

#[test]
fn the_controller_brings_every_tire_near_what_was_ordered_and_no_tire_it_does_not_feed() {
    let air = truck();
    for (from, to) in [(600.0, 400.0), (400.0, 650.0)] {
        let mut state = started(&air, from);
        air.order(&mut state, &[kpa(to), kpa(to)]);
        let took = complete(&air, &mut state);
        assert!(took > 60.0 && took < 1800.0, "{took} s");
        for tire in 0..16 {
            let off = state.tire(tire).as_kpa() - to;
            assert!(off.abs() < 15.0, "tire {tire} is off by {off} kPa");
        }
        assert!((state.tire(17).as_kpa() - from).abs() < 1e-6);
    }
}

#[test]
fn filling_takes_about_as_long_as_a_plan_says_and_longer_for_its_pauses() {
    let air = truck();
    let mut state = started(&air, 400.0);
    air.order(&mut state, &[kpa(600.0), kpa(600.0)]);
    let took = complete(&air, &mut state);
    let network = Network::new(&supply(), None, &[spec(None), spec(Some(130.0))], true).unwrap();
    let around = Surroundings {
        engine_speed: RotationalSpeed::from_rpm(1400.0),
        engine_load: 0.5,
        ambient: AMBIENT,
        temperature: Temperature::from_celsius(20.0),
        brake_draw: VolumeFlow::from_l_per_min(5.0),
        tire_temperature: [Temperature::from_celsius(20.0); MAX_CHANNELS],
    };
    let mut planned = network.start(kpa(900.0), None, &[kpa(400.0); 2], &around).unwrap();
    let orders = [ChannelOrder::Reach(kpa(600.0)); MAX_CHANNELS];
    let mut plan = 0.0;
    while !(planned.settled(0) && planned.settled(1)) {
        plan += network.advance(&mut planned, &around, &orders, Time::from_s(5.0)).elapsed.as_s();
    }
    assert!(took > 0.9 * plan && took < 1.8 * plan, "{took} s against {plan} s");
}

#[test]
fn after_a_fast_fall_the_reading_rises_and_after_a_fast_rise_it_falls() {
    let air = truck();
    let day = Day::mild();
    let mut state = started(&air, 700.0);
    let leaking =
        air.afflicted(&[AirFault::TireLeak { tire: 16, hole: Length::from_mm(10.0) }]).unwrap();
    leaking.advance(&mut state, &day.around(), Time::from_s(4.0));
    let low = state.tire(16).as_kpa();
    let cold = state.gas_temperature(16).as_celsius();
    pass(&air, &mut state, 120.0);
    assert!(cold < 0.0, "{cold} °C");
    assert!(state.tire(16).as_kpa() > low + 20.0);
    assert!((state.gas_temperature(16).as_celsius() - 20.0).abs() < 0.5);
}

// The closed form of a vessel that gives no heat: 8.2 to 4.052 bar ends at 239.7 K.
#[test]
fn worked_a_fall_in_seconds_comes_near_the_adiabatic_one() {
    let air = truck();
    let hole = Length::from_mm(16.0);
    let leaking = air.afflicted(&[AirFault::TireLeak { tire: 16, hole }]).unwrap();
    let mut state = started(&air, 820.0 - 101.3);
    let day = Day::mild();
    while state.tire(16).as_kpa() > 405.2 - 101.3 {
        leaking.advance(&mut state, &day.around(), Time::from_s(0.05));
    }
    let end = state.gas_temperature(16).as_kelvin();
    let p = |bar: f64| AbsolutePressure::from_bar(bar);
    let form = adiabatic_vent(
        TIRE,
        Restriction::from_orifice(hole, 0.8).unwrap(),
        AMBIENT,
        p(8.2),
        p(4.052),
    );
    let worked = form.unwrap().end.as_kelvin();
    assert!((worked - 239.7).abs() < 0.2, "{worked}");
    assert!(end > worked && end < worked + 7.0, "{end} K");
}

#[test]
fn a_leak_behind_wheel_valves_by_hand_draws_on_the_whole_channel_and_a_sealed_one_on_its_dual() {
    let air = truck();
    let leak = |tire| AirFault::TireLeak { tire, hole: Length::from_mm(1.0) };
    for (tire, loses) in [(0, 0..8), (8, 8..10)] {
        let leaking = air.afflicted(&[leak(tire)]).unwrap();
        let mut state = started(&air, 600.0);
        pass(&leaking, &mut state, 600.0);
        for other in 0..18 {
            let lost = 600.0 - state.tire(other).as_kpa();
            assert_eq!(lost > 1.0, loses.contains(&other), "tire {other} lost {lost} kPa");
        }
    }
}

#[test]
fn a_check_tops_a_leaking_channel_up_again() {
    let air = truck();
    let hole = Length::from_mm(0.6);
    let leaking = air.afflicted(&[AirFault::TireLeak { tire: 8, hole }]).unwrap();
    let mut state = started(&air, 600.0);
    air.order(&mut state, &[kpa(600.0), kpa(600.0)]);
    complete(&air, &mut state);
    let day = Day::mild();
    let (mut lowest, mut refilled): (f64, f64) = (600.0, 0.0);
    for _ in 0..720 {
        leaking.advance(&mut state, &day.around(), Time::from_s(5.0));
        let now = state.tire(8).as_kpa();
        refilled = refilled.max(now - lowest);
        lowest = lowest.min(now);
    }
    assert!(lowest < 590.0 && refilled > 8.0, "lowest {lowest}, refilled {refilled}");
}

#[test]
fn each_fault_of_a_channel_does_what_it_says() {
    let air = truck();
    let time = |faults: &[AirFault], from: f64, to: f64| {
        let air = air.afflicted(faults).unwrap();
        let mut state = started(&air, from);
        air.order(&mut state, &[kpa(to), kpa(from)]);
        (complete(&air, &mut state), state)
    };
    let healthy = time(&[], 400.0, 600.0).0;
    let slower = |fault| time(&[fault], 400.0, 600.0).0;
    assert!(slower(AirFault::LineNarrowed { channel: 0, left: 0.15 }) > 1.3 * healthy);
    assert!(slower(AirFault::FillSlow { channel: 0, left: 0.15 }) > 1.3 * healthy);
    assert!(slower(AirFault::WeakCompressor { left: 0.3 }) > 1.2 * healthy);
    assert!(slower(AirFault::WheelEndShut { end: 0 }) < 0.95 * healthy);
    let (_, stuck) = time(&[AirFault::FillStuckShut { channel: 0 }], 400.0, 600.0);
    assert!(stuck.gave_up(0) && (stuck.tire(0).as_kpa() - 400.0).abs() < 2.0);
    let (_, stuck) = time(&[AirFault::ExhaustStuckShut { channel: 0 }], 600.0, 400.0);
    assert!(stuck.gave_up(0) && (stuck.tire(0).as_kpa() - 600.0).abs() < 2.0);
    let (_, off) = time(
        &[AirFault::GaugeOff { channel: 0, by: PressureDifference::from_kpa(30.0) }],
        400.0,
        600.0,
    );
    assert!((off.tire(0).as_kpa() - 570.0).abs() < 12.0, "{}", off.tire(0));
    // Shut before the wheel ends, the line comes to the supply at once and sits there.
    let shut = air.afflicted(&[AirFault::LineShut { channel: 0 }]).unwrap();
    let mut state = started(&shut, 400.0);
    shut.order(&mut state, &[kpa(600.0), kpa(400.0)]);
    pass(&shut, &mut state, 12.0);
    assert!(state.line(0).as_kpa() > 750.0, "{}", state.line(0));
    assert!((state.tire(0).as_kpa() - 400.0).abs() < 1.0);
}

#[test]
fn what_a_truck_does_not_have_cannot_fail() {
    let air = truck();
    for fault in [
        AirFault::TireLeak { tire: 18, hole: Length::from_mm(1.0) },
        AirFault::TireLeak { tire: 0, hole: Length::ZERO },
        AirFault::LineShut { channel: 2 },
        AirFault::WheelEndShut { end: 8 },
        AirFault::WeakCompressor { left: 0.0 },
        AirFault::LineNarrowed { channel: 0, left: 1.5 },
        AirFault::CutIn { by: PressureDifference::from_kpa(200.0) },
        AirFault::BrakeLeak { flow: VolumeFlow::ZERO },
    ] {
        assert!(air.afflicted(&[fault]).is_err(), "{fault:?}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(12))]

    #[test]
    fn air_is_neither_made_nor_lost(
        from in 200.0..700.0f64,
        to in 150.0..700.0f64,
        hole_mm in prop::option::of(0.2..3.0f64),
    ) {
        let mut air = truck();
        if let Some(mm) = hole_mm {
            let hole = Length::from_mm(mm);
            let line = AirFault::LineLeak { channel: 1, hole };
            air = air.afflicted(&[AirFault::TireLeak { tire: 3, hole }, line]).unwrap();
        }
        let mut state = started(&air, from);
        let before = air.contents(&state).as_m3();
        air.order(&mut state, &[kpa(to), kpa(to)]);
        pass(&air, &mut state, 400.0);
        let totals = state.totals();
        let gone = totals.brakes() + totals.vented() + totals.leaked();
        let grown = air.contents(&state).as_m3() - before;
        let off = grown - (totals.compressed() - gone).as_m3();
        prop_assert!(off.abs() < 1e-9, "{off} m³");
    }

    #[test]
    fn a_bigger_leak_loses_faster(mm in 0.2..3.0f64, more in 1.1..2.0f64) {
        let air = truck();
        let left = |mm| {
            let hole = Length::from_mm(mm);
            let leaking = air.afflicted(&[AirFault::TireLeak { tire: 8, hole }]).unwrap();
            let mut state = started(&air, 650.0);
            pass(&leaking, &mut state, 300.0);
            state.tire(8)
        };
        prop_assert!(left(mm * more) < left(mm));
        prop_assert!(left(mm) < kpa(650.0));
    }
}
