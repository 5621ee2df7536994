//! Frames with known content against the signal table: real ones of an open research-truck log as
//! decoded by independent readers, and constructed ones worked out by hand from the positions of the
//! open annex extract.

use logs::signal::{Coding, Spn};
use logs::{CanId, Identifier, Value, table};
use proptest::prelude::*;

struct Vector {
    id: u32,
    data: Vec<u8>,
    spn: Spn,
    expected: String,
}

fn vectors() -> Vec<Vector> {
    let text = include_str!("decode_vectors.csv");
    csv::Reader::from_reader(text.as_bytes())
        .into_records()
        .map(|record| {
            let record = record.unwrap();
            let byte = |at: usize| u8::from_str_radix(&record[2][at..at + 2], 16).unwrap();
            Vector {
                id: u32::from_str_radix(&record[1], 16).unwrap(),
                data: (0..record[2].len()).step_by(2).map(byte).collect(),
                spn: Spn(record[3].parse().unwrap()),
                expected: record[4].to_owned(),
            }
        })
        .collect()
}

#[test]
fn worked_frames_decode_to_their_known_values() {
    let vectors = vectors();
    assert!(vectors.len() > 50);
    for Vector { id, data, spn, expected } in vectors {
        let id = CanId::extended(id).and_then(Identifier::split).unwrap();
        let group = table::group(id.pgn).unwrap();
        let signal = group.signal(spn).unwrap();
        match (signal.decode(&data).unwrap(), expected.as_str()) {
            (Value::Absent, "absent") | (Value::Error, "error") => {}
            (Value::Code(code), expected) => assert_eq!(format!("code {code}"), expected, "{spn}"),
            (Value::Number(number), expected) => {
                let (wanted, unit) = expected.split_once(' ').unwrap();
                let wanted: f64 = wanted.parse().unwrap();
                // Nothing is rounded but the last bit of scale times raw.
                assert!((number - wanted).abs() < 1e-9, "{spn}: {number} for {wanted}");
                assert_eq!(signal.unit.sign(), unit, "{spn}");
            }
            (other, expected) => panic!("{spn}: {other:?} for {expected}"),
        }
    }
}

proptest! {
    #[test]
    fn every_value_comes_back_from_its_bits(raw: u32, fill: u8, pick: prop::sample::Index) {
        let all: Vec<_> = table::GROUPS.iter().flat_map(|group| group.signals.iter()).collect();
        let signal = *pick.get(&all);
        let raw = raw & (u32::MAX >> (32 - u32::from(signal.bits)));
        let mut data = vec![fill; 20];
        prop_assert!(signal.set_raw(&mut data, raw));
        prop_assert_eq!(signal.raw(&data), Some(raw));
        let value = signal.value_of(raw);
        let again = signal.encode(value).map(|raw| signal.value_of(raw));
        // Codes for absent and error are ranges: they come back as the state, not as the number.
        prop_assert_eq!(again, Some(value), "{:?}", signal);
        if matches!(value, Value::Number(_)) && matches!(signal.coding, Coding::Number { .. }) {
            prop_assert_eq!(signal.encode(value), Some(raw));
        }
    }

    #[test]
    fn setting_bits_touches_no_others(raw: u32, pick: prop::sample::Index) {
        let all: Vec<_> = table::GROUPS.iter().flat_map(|group| group.signals.iter()).collect();
        let signal = *pick.get(&all);
        let mut data = vec![0; 20];
        prop_assert!(signal.set_raw(&mut data, raw));
        let set: u32 = data.iter().map(|byte| byte.count_ones()).sum();
        let kept = raw & (u32::MAX >> (32 - u32::from(signal.bits)));
        prop_assert_eq!(set, kept.count_ones());
    }
}
