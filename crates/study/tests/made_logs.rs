//! Made logs, read back against their truth.

use std::collections::BTreeMap;
use std::path::Path;

use haul::DriverHabit;
use logs::signal::Spn;
use logs::{Identifier, Pgn, Value, table};
use model::date::Date;
use plan::Detail;
use quantity::{Length, Time};
use study::make::{FaultSpec, MadeLog, MakeError, MakeOrder, make_logs};
use study::{Opened, Planned, plan_hauls};

struct Fleet {
    folder: tempfile::TempDir,
    opened: Opened,
    planned: Planned,
}

impl Fleet {
    fn new() -> Self {
        let folder = tempfile::tempdir().unwrap();
        let survey = folder.path().join("fleet");
        survey::write_demo("windfarm-rock", &survey).unwrap();
        let opened = Opened::read_as_of(&survey, Date::new(2026, 1, 12).unwrap()).unwrap();
        let detail = Detail { samples: 0, ..Detail::default() };
        let planned = plan_hauls(opened.survey.as_ref().unwrap(), None, &detail).unwrap();
        let planned = planned.into_iter().next().unwrap();
        Self { folder, opened, planned }
    }

    fn order(&self, out: &str) -> MakeOrder {
        MakeOrder {
            folder: self.folder.path().join(out),
            units: vec!["T-31".into()],
            first_day: Date::new(2026, 1, 12).unwrap(),
            days: 1,
            starts: Time::from_s(5.0 * 3600.0),
            driver: DriverHabit::Good,
            cycles: Some(1),
            faults: Vec::new(),
            seed: 3,
        }
    }

    fn make(&self, order: &MakeOrder) -> Result<Vec<MadeLog>, MakeError> {
        make_logs(&self.opened, &self.planned, order, &|_, _| {})
    }
}

fn fault(text: &str) -> FaultSpec {
    text.parse().unwrap()
}

/// A frame as its line tells it: seconds, identifier, bytes.
type Line = (f64, Identifier, Vec<u8>);

fn lines(file: &Path) -> Vec<Line> {
    let text = std::fs::read_to_string(file).unwrap();
    let read = |line: &str| {
        let mut parts = line.split(' ');
        let time = parts.next().unwrap().trim_matches(['(', ')']).parse().unwrap();
        assert_eq!(parts.next(), Some("can0"));
        let (id, data) = parts.next().unwrap().split_once('#').unwrap();
        let id = logs::CanId::extended(u32::from_str_radix(id, 16).unwrap()).unwrap();
        let byte = |at: usize| u8::from_str_radix(&data[at..at + 2], 16).unwrap();
        let bytes = (0..data.len()).step_by(2).map(byte).collect();
        (time, Identifier::split(id).unwrap(), bytes)
    };
    text.lines().map(read).collect()
}

fn value(pgn: u32, spn: u32, data: &[u8]) -> Value {
    let group = table::group(Pgn::new(pgn).unwrap()).unwrap();
    group.signal(Spn(spn)).unwrap().decode(data).unwrap()
}

fn of_group(lines: &[Line], pgn: u32) -> impl Iterator<Item = &Line> {
    lines.iter().filter(move |line| line.1.pgn.number() == pgn)
}

/// True pressure of a tire at a time, and how far it moves in the minute around, kPa.
fn truth_at(log: &MadeLog, tire: usize, clock: f64) -> (f64, f64) {
    let samples = &log.truth.samples;
    let after = samples.partition_point(|one| one.clock.as_s() <= clock);
    let after = after.clamp(1, samples.len() - 1);
    let (a, b) = (&samples[after - 1], &samples[after]);
    let span = (b.clock - a.clock).as_s();
    let kpa = |sample: &study::make::TruthSample| sample.tires[tire].as_kpa();
    let share = ((clock - a.clock.as_s()) / span).clamp(0.0, 1.0);
    let around = &samples[after.saturating_sub(3)..(after + 3).min(samples.len())];
    let high = around.iter().map(kpa).fold(f64::NEG_INFINITY, f64::max);
    let low = around.iter().map(kpa).fold(f64::INFINITY, f64::min);
    (kpa(a) + (kpa(b) - kpa(a)) * share, high - low)
}

#[test]
fn pressures_of_a_made_log_are_those_of_the_truth_within_lag_error_and_step() {
    let fleet = Fleet::new();
    let made = fleet.make(&fleet.order("out")).unwrap().remove(0);
    let lines = lines(&made.file);
    assert_eq!(lines.len(), made.frames);
    let begins = made.truth.begins_unix as f64;
    let (mut seen, mut worst) = (BTreeMap::new(), 0.0_f64);
    for (time, _, data) in of_group(&lines, 65268) {
        let at = value(65268, 929, data);
        let tire =
            made.truth.tires.iter().position(|one| at == Value::Code(one.location.into())).unwrap();
        let said = value(65268, 241, data).number().unwrap();
        let off = made.truth.tires[tire].sensor_off.unwrap().as_kpa();
        let (truth, moves) = truth_at(&made, tire, time - begins);
        // Half a step of 4 kPa, and what the pressure does around the ten seconds between two truths.
        let allowed = 2.0 + 0.5 + moves;
        assert!((said - off - truth).abs() <= allowed, "{said} for {truth}, {moves}");
        worst = worst.max((said - off - truth).abs());
        *seen.entry(tire).or_insert(0) += 1;
    }
    // The register has sensors on the drive tires and the tridem: eight and six.
    assert_eq!(seen.len(), 14);
    assert!(worst > 0.5, "quantised values cannot be the truth itself");
    let of_line = |line: &Line| value(65198, 1087, &line.2).number().unwrap();
    let service: Vec<f64> = of_group(&lines, 65198).map(of_line).collect();
    assert!(service.len() > 1000);
    assert!(service.into_iter().fold(0.0, f64::max) > 880.0);
}

#[test]
fn rates_requests_and_long_messages_are_those_of_a_bus() {
    let fleet = Fleet::new();
    let made = fleet.make(&fleet.order("out")).unwrap().remove(0);
    let lines = lines(&made.file);
    for pair in lines.windows(2) {
        assert!(pair[1].0 > pair[0].0);
    }
    for (pgn, period) in [(61444, 0.05), (65265, 0.1), (65198, 1.0), (64502, 5.0)] {
        let times: Vec<f64> = of_group(&lines, pgn).map(|line| line.0).collect();
        let mut apart: Vec<f64> = times.windows(2).map(|pair| pair[1] - pair[0]).collect();
        apart.sort_by(f64::total_cmp);
        let middle = apart[apart.len() / 2];
        assert!((middle / period - 1.0).abs() < 0.02, "{pgn}: {middle} s");
    }
    // Each answer of a group on request has its request just before it.
    let asked = |data: &[u8]| u32::from_le_bytes([data[0], data[1], data[2], 0]);
    for (index, line) in lines.iter().enumerate() {
        let pgn = line.1.pgn.number();
        if [65144, 65145, 65146, 65258].contains(&pgn) {
            let mut before = lines[..index].iter().rev().take_while(|one| line.0 - one.0 < 0.1);
            assert!(before.any(|one| one.1.pgn == Pgn::REQUEST && asked(&one.2) == pgn));
        }
    }
    let announced: Vec<u32> = lines
        .iter()
        .filter(|line| line.1.pgn == Pgn::TRANSPORT_MANAGEMENT)
        .map(|line| u32::from_le_bytes([line.2[5], line.2[6], line.2[7], 0]))
        .collect();
    assert!(announced.contains(&65260) && announced.contains(&65200), "{announced:?}");
    let begins = lines.iter().position(|line| {
        line.1.pgn == Pgn::TRANSPORT_MANAGEMENT && line.2[5..] == [0xEC, 0xFE, 0x00]
    });
    let packets = of_group(&lines[begins.unwrap()..], Pgn::TRANSPORT_DATA.number()).take(3);
    let number: Vec<u8> = packets.flat_map(|line| line.2[1..].to_vec()).collect();
    assert!(String::from_utf8_lossy(&number).contains("NOT-REAL"));
}

#[test]
fn one_thread_and_eight_write_the_same_bytes_and_another_seed_does_not() {
    let fleet = Fleet::new();
    let with = |threads: usize, out: &str, seed| {
        let pool = rayon::ThreadPoolBuilder::new().num_threads(threads).build().unwrap();
        let order = MakeOrder {
            units: vec!["T-31".into(), "T-34".into()],
            days: 2,
            seed,
            ..fleet.order(out)
        };
        let made = pool.install(|| fleet.make(&order)).unwrap();
        assert_eq!(made.len(), 4);
        let bytes = made.iter().map(|log| std::fs::read(&log.file).unwrap());
        (bytes.collect::<Vec<_>>(), made.into_iter().map(|log| log.truth).collect::<Vec<_>>())
    };
    let one = with(1, "one", 3);
    assert!(one == with(8, "eight", 3));
    assert!(one.0 != with(2, "other", 4).0);
    assert!(one.0[0] != one.0[1] && one.0[0] != one.0[2]);
}

#[test]
fn a_fault_of_a_sensor_changes_what_that_sensor_says_and_nothing_else() {
    let fleet = Fleet::new();
    let healthy = fleet.make(&fleet.order("healthy")).unwrap().remove(0);
    let faults = vec![fault("sensor-off@drive.1.left.outer=40kPa,from=10min")];
    let order = MakeOrder { faults, ..fleet.order("off") };
    let off = fleet.make(&order).unwrap().remove(0);
    assert_eq!(healthy.truth.samples, off.truth.samples);
    let at = healthy.truth.tires.iter().find(|tire| tire.name == "drive.1.left.outer").unwrap();
    let (a, b) = (lines(&healthy.file), lines(&off.file));
    assert_eq!(a.len(), b.len());
    let mut changed = 0;
    for (one, other) in a.iter().zip(&b) {
        if one == other {
            continue;
        }
        assert_eq!((one.0, one.1), (other.0, other.1));
        assert_eq!((one.1.pgn.number(), one.2[0]), (65268, at.location));
        let said = |line: &Line| value(65268, 241, &line.2).number().unwrap();
        assert!((said(other) - said(one) - 40.0).abs() < 1e-9);
        changed += 1;
    }
    assert!(changed > 100, "{changed}");
}

#[test]
fn a_leak_shows_in_its_channel_and_the_truth_says_where_and_when() {
    let fleet = Fleet::new();
    let faults = vec![fault("tire-leak@tridem.2.right=3mm,from=30min")];
    let order = MakeOrder { faults, ..fleet.order("leak") };
    let leak = fleet.make(&order).unwrap().remove(0);
    let good = fleet.make(&fleet.order("good")).unwrap().remove(0);
    let told = &leak.truth.faults[0];
    assert_eq!(
        (told.kind, told.place.as_str(), told.size.as_str()),
        ("tire-leak", "tridem.2.right", "3mm")
    );
    let (index, from, until) = leak.truth.active[0];
    assert_eq!((index, until), (0, None));
    assert!((from.as_s() - 1800.0).abs() < 1.0);
    let lowest = |log: &MadeLog, name: &str| {
        let tire = log.truth.tires.iter().position(|tire| tire.name == name).unwrap();
        let after = log.truth.samples.iter().filter(|one| one.clock.as_s() > 1800.0);
        after.map(|one| one.tires[tire].as_kpa()).fold(f64::INFINITY, f64::min)
    };
    assert!(lowest(&leak, "tridem.2.right") < lowest(&good, "tridem.2.right") - 20.0);
    assert!((lowest(&leak, "steer.1.left") - lowest(&good, "steer.1.left")).abs() < 5.0);
}

#[test]
fn late_and_forgetful_drivers_stand_in_the_truth() {
    let fleet = Fleet::new();
    let of = |driver, out: &str| {
        let order = MakeOrder { driver, cycles: Some(3), ..fleet.order(out) };
        fleet.make(&order).unwrap().remove(0).truth.changes
    };
    let late = of(DriverHabit::Late { by: Length::from_km(1.0) }, "late");
    let planned = late.iter().filter(|change| change.planned_at.is_some());
    for change in planned.clone() {
        let past = (change.asked_at - change.planned_at.unwrap()).abs();
        assert!(past.as_m() > 400.0, "{past}");
        assert_eq!(change.call, haul::Call::Late);
    }
    assert!(planned.count() > 3);
    let forgetful = of(DriverHabit::Forgetful { share: 0.5 }, "forgetful");
    let forgotten = forgetful.iter().filter(|change| change.call == haul::Call::Forgotten);
    assert!(forgotten.clone().count() > 0);
    assert!(forgotten.clone().all(|change| change.complete.is_none()));
}

#[test]
fn what_cannot_be_made_is_refused_before_anything_is_written() {
    let fleet = Fleet::new();
    let told = |order: MakeOrder| {
        let error = fleet.make(&order).unwrap_err();
        assert!(error.is_wrong_call(), "{error}");
        assert!(!order.folder.exists() || order.folder.read_dir().unwrap().count() <= 2);
        error.to_string()
    };
    let unit = told(MakeOrder { units: vec!["T-99".into()], ..fleet.order("no") });
    assert!(unit.contains("T-99") && unit.contains("T-31, T-32"), "{unit}");
    let twice = told(MakeOrder { units: vec!["T-31".into(); 2], ..fleet.order("no") });
    assert!(twice.contains("twice"), "{twice}");
    let with = |text: &str| told(MakeOrder { faults: vec![fault(text)], ..fleet.order("no") });
    assert!(with("line-shut@spare").contains("there are: drive, trailer"));
    assert!(with("tire-leak@drive.3.left.outer=1mm").contains("drive.2.right.outer"));
    assert!(with("wheel-end-shut@steer.1.left").contains("no air channel feeds"));
    assert!(with("sensor-stuck@steer.1.left").contains("no sensor"));
    assert!(with("cut-in-off=300kPa").contains("cut-in and cut-out"));
    assert!(with("log-gap,from=1h").contains("for="));
    fleet.make(&fleet.order("there")).unwrap();
    assert!(told(fleet.order("there")).contains("is there already"));
}
