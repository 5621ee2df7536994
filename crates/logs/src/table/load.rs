//! Axle loads, surroundings and the clock.

use std::borrow::Cow;

use super::{bits, number, state};
use crate::identifier::Pgn;
use crate::signal::{Group, Rate, Unit};

/// Positions, scales and rates stand in `super` with their source.
pub(super) const GROUPS: &[Group] = &[
    Group {
        pgn: Pgn::known(64873),
        name: Cow::Borrowed("axle group calibration"),
        rate: Rate::OnRequest,
        location: Some(4074),
        signals: Cow::Borrowed(&[
            state(4074, "calibrated_axle_group", 0, 4),
            state(5936, "calibrated_axle_group_more", 4, 4),
            number(408, "axle_group_empty_calibration", 8, 16, 2.0, 0.0, Unit::Kilogram),
            number(407, "axle_group_full_calibration", 24, 16, 2.0, 0.0, Unit::Kilogram),
        ]),
    },
    Group {
        pgn: Pgn::known(64874),
        name: Cow::Borrowed("axle group weight"),
        rate: Rate::every_ms(10_000),
        location: Some(4073),
        signals: Cow::Borrowed(&[
            state(4073, "axle_group_location", 0, 4),
            state(5935, "axle_group_location_more", 4, 4),
            number(409, "axle_group_weight", 8, 16, 2.0, 0.0, Unit::Kilogram),
        ]),
    },
    Group {
        pgn: Pgn::known(65112),
        name: Cow::Borrowed("bellows pressures"),
        rate: Rate::every_ms(100),
        location: None,
        signals: Cow::Borrowed(&[
            number(1725, "bellows_front_left", 0, 16, 0.1, 0.0, Unit::Kilopascal),
            number(1726, "bellows_front_right", 16, 16, 0.1, 0.0, Unit::Kilopascal),
            number(1727, "bellows_rear_left", 32, 16, 0.1, 0.0, Unit::Kilopascal),
            number(1728, "bellows_rear_right", 48, 16, 0.1, 0.0, Unit::Kilopascal),
        ]),
    },
    Group {
        pgn: Pgn::known(65136),
        name: Cow::Borrowed("combination weight"),
        rate: Rate::OnRequest,
        location: None,
        signals: Cow::Borrowed(&[
            number(1585, "powered_vehicle_weight", 0, 16, 10.0, 0.0, Unit::Kilogram),
            number(1760, "combination_weight", 16, 16, 10.0, 0.0, Unit::Kilogram),
        ]),
    },
    Group {
        pgn: Pgn::known(65254),
        name: Cow::Borrowed("clock"),
        rate: Rate::OnRequest,
        location: None,
        signals: Cow::Borrowed(&[
            number(959, "clock_seconds", 0, 8, 0.25, 0.0, Unit::Second),
            number(960, "clock_minutes", 8, 8, 1.0, 0.0, Unit::Minute),
            number(961, "clock_hours", 16, 8, 1.0, 0.0, Unit::Hour),
            number(963, "clock_month", 24, 8, 1.0, 0.0, Unit::Month),
            number(962, "clock_day", 32, 8, 0.25, 0.0, Unit::Day),
            number(964, "clock_year", 40, 8, 1.0, 1985.0, Unit::Year),
            number(1601, "clock_offset_minutes", 48, 8, 1.0, -125.0, Unit::Minute),
            number(1602, "clock_offset_hours", 56, 8, 1.0, -125.0, Unit::Hour),
        ]),
    },
    Group {
        pgn: Pgn::known(65258),
        name: Cow::Borrowed("vehicle weight"),
        rate: Rate::OnRequest,
        location: Some(928),
        signals: Cow::Borrowed(&[
            bits(928, "axle_location", 0, 8),
            number(582, "axle_weight", 8, 16, 0.5, 0.0, Unit::Kilogram),
            number(180, "trailer_weight", 24, 16, 2.0, 0.0, Unit::Kilogram),
            number(181, "cargo_weight", 40, 16, 2.0, 0.0, Unit::Kilogram),
        ]),
    },
    Group {
        pgn: Pgn::known(65269),
        name: Cow::Borrowed("surroundings"),
        rate: Rate::every_ms(1_000),
        location: None,
        signals: Cow::Borrowed(&[
            number(108, "barometric_pressure", 0, 8, 0.5, 0.0, Unit::Kilopascal),
            number(170, "cab_temperature", 8, 16, 0.03125, -273.0, Unit::Celsius),
            number(171, "air_temperature", 24, 16, 0.03125, -273.0, Unit::Celsius),
            number(172, "intake_temperature", 40, 8, 1.0, -40.0, Unit::Celsius),
            number(79, "road_temperature", 48, 16, 0.03125, -273.0, Unit::Celsius),
        ]),
    },
    Group {
        pgn: Pgn::known(65273),
        name: Cow::Borrowed("axles"),
        rate: Rate::every_ms(1_000),
        location: Some(930),
        signals: Cow::Borrowed(&[
            number(75, "steer_axle_temperature", 0, 8, 1.0, -40.0, Unit::Celsius),
            bits(930, "drive_axle_location", 8, 8),
            number(579, "drive_axle_lift_pressure", 16, 8, 4.0, 0.0, Unit::Kilopascal),
            number(578, "drive_axle_temperature", 24, 8, 1.0, -40.0, Unit::Celsius),
            number(2613, "spn_2613", 32, 8, 4.0, 0.0, Unit::Kilopascal),
            number(2614, "spn_2614", 56, 8, 4.0, 0.0, Unit::Kilopascal),
        ]),
    },
];
