//! Tire pressures, targets and settings.

use std::borrow::Cow;

use super::{bits, number, state};
use crate::identifier::Pgn;
use crate::signal::{Group, Rate, Unit};

/// Positions, scales and rates stand in `super` with their source.
pub(super) const GROUPS: &[Group] = &[
    Group {
        pgn: Pgn::known(33280),
        name: Cow::Borrowed("tire settings sent"),
        rate: Rate::OnRequest,
        location: Some(6973),
        signals: Cow::Borrowed(&[
            bits(6973, "set_tire_location", 0, 8),
            number(6974, "set_cold_pressure", 8, 16, 1.0, 0.0, Unit::Kilopascal),
            number(6975, "set_under_pressure_limit", 24, 8, 0.5, 0.0, Unit::Percent),
            number(6976, "set_extreme_under_pressure_limit", 32, 8, 0.5, 0.0, Unit::Percent),
            number(6977, "set_over_pressure_limit", 40, 8, 0.5, 0.0, Unit::Percent),
            number(6978, "set_over_temperature_limit", 48, 8, 1.0, -40.0, Unit::Celsius),
            state(7587, "set_tire_sensor_enabled", 56, 2),
        ]),
    },
    Group {
        pgn: Pgn::known(44544),
        name: Cow::Borrowed("reference pressure sent"),
        rate: Rate::OnRequest,
        location: Some(3192),
        signals: Cow::Borrowed(&[
            bits(3192, "reference_location_sent", 0, 8),
            number(3193, "reference_pressure_sent", 8, 8, 8.0, 0.0, Unit::Kilopascal),
        ]),
    },
    Group {
        pgn: Pgn::known(64578),
        name: Cow::Borrowed("tire condition, wide range"),
        rate: Rate::every_ms(10_000),
        location: Some(6987),
        signals: Cow::Borrowed(&[
            bits(6987, "tire_location_2", 0, 8),
            number(6988, "tire_pressure_wide", 8, 16, 1.0, 0.0, Unit::Kilopascal),
            number(6989, "tire_pressure_required", 24, 16, 1.0, 0.0, Unit::Kilopascal),
        ]),
    },
    Group {
        pgn: Pgn::known(64579),
        name: Cow::Borrowed("tire settings"),
        rate: Rate::OnRequest,
        location: Some(6979),
        signals: Cow::Borrowed(&[
            bits(6979, "configured_tire_location", 0, 8),
            number(6980, "configured_cold_pressure", 8, 16, 1.0, 0.0, Unit::Kilopascal),
            number(6981, "configured_under_pressure_limit", 24, 8, 0.5, 0.0, Unit::Percent),
            number(6982, "configured_extreme_under_pressure_limit", 32, 8, 0.5, 0.0, Unit::Percent),
            number(6983, "configured_over_pressure_limit", 40, 8, 0.5, 0.0, Unit::Percent),
            number(6984, "configured_over_temperature_limit", 48, 8, 1.0, -40.0, Unit::Celsius),
        ]),
    },
    Group {
        pgn: Pgn::known(64583),
        name: Cow::Borrowed("tires monitored"),
        rate: Rate::OnRequest,
        location: None,
        signals: Cow::Borrowed(&[
            number(6949, "axles_monitored", 0, 4, 1.0, 0.0, Unit::Count),
            number(6950, "tires_monitored", 8, 8, 1.0, 0.0, Unit::Count),
            number(6951, "axle_1_tires_monitored", 16, 4, 1.0, 0.0, Unit::Count),
            number(6952, "axle_2_tires_monitored", 20, 4, 1.0, 0.0, Unit::Count),
            number(6953, "axle_3_tires_monitored", 24, 4, 1.0, 0.0, Unit::Count),
            number(6954, "axle_4_tires_monitored", 28, 4, 1.0, 0.0, Unit::Count),
            number(6955, "axle_5_tires_monitored", 32, 4, 1.0, 0.0, Unit::Count),
            number(6956, "axle_6_tires_monitored", 36, 4, 1.0, 0.0, Unit::Count),
            number(6957, "axle_7_tires_monitored", 40, 4, 1.0, 0.0, Unit::Count),
            number(6958, "axle_8_tires_monitored", 44, 4, 1.0, 0.0, Unit::Count),
            number(6959, "axle_9_tires_monitored", 48, 4, 1.0, 0.0, Unit::Count),
            number(6960, "axle_10_tires_monitored", 52, 4, 1.0, 0.0, Unit::Count),
            number(6961, "axle_11_tires_monitored", 56, 4, 1.0, 0.0, Unit::Count),
            number(6962, "axle_12_tires_monitored", 60, 4, 1.0, 0.0, Unit::Count),
        ]),
    },
    Group {
        pgn: Pgn::known(64953),
        name: Cow::Borrowed("reference pressure"),
        rate: Rate::OnRequest,
        location: Some(3190),
        signals: Cow::Borrowed(&[
            bits(3190, "reference_location", 0, 8),
            number(3191, "reference_pressure", 8, 8, 8.0, 0.0, Unit::Kilopascal),
        ]),
    },
    Group {
        pgn: Pgn::known(65144),
        name: Cow::Borrowed("pressure control state"),
        rate: Rate::OnRequest,
        location: None,
        signals: Cow::Borrowed(&[
            number(39, "pressure_check_interval", 0, 8, 1.0, 0.0, Unit::Minute),
            state(1466, "steer_channel_mode", 8, 4),
            state(1467, "trailer_channel_mode", 16, 4),
            state(1468, "drive_channel_mode", 20, 4),
            state(1469, "drive_solenoid", 24, 2),
            state(1470, "steer_solenoid", 26, 2),
            state(1471, "supply_switch", 28, 2),
            state(1472, "deflate_solenoid", 32, 2),
            state(1473, "control_solenoid", 34, 2),
            state(1474, "supply_solenoid", 36, 2),
            state(1475, "trailer_solenoid", 38, 2),
        ]),
    },
    Group {
        pgn: Pgn::known(65145),
        name: Cow::Borrowed("channel targets"),
        rate: Rate::OnRequest,
        location: None,
        signals: Cow::Borrowed(&[
            number(141, "trailer_channel_target", 0, 16, 0.5, 0.0, Unit::Kilopascal),
            number(142, "drive_channel_target", 16, 16, 0.5, 0.0, Unit::Kilopascal),
            number(143, "steer_channel_target", 32, 16, 0.5, 0.0, Unit::Kilopascal),
        ]),
    },
    Group {
        pgn: Pgn::known(65146),
        name: Cow::Borrowed("channel pressures"),
        rate: Rate::OnRequest,
        location: None,
        signals: Cow::Borrowed(&[
            number(144, "trailer_channel_pressure", 0, 16, 0.5, 0.0, Unit::Kilopascal),
            number(145, "drive_channel_pressure", 16, 16, 0.5, 0.0, Unit::Kilopascal),
            number(146, "steer_channel_pressure", 32, 16, 0.5, 0.0, Unit::Kilopascal),
        ]),
    },
    Group {
        pgn: Pgn::known(65268),
        name: Cow::Borrowed("tire condition"),
        rate: Rate::every_ms(10_000),
        location: Some(929),
        signals: Cow::Borrowed(&[
            bits(929, "tire_location", 0, 8),
            number(241, "tire_pressure", 8, 8, 4.0, 0.0, Unit::Kilopascal),
            number(242, "tire_temperature", 16, 16, 0.03125, -273.0, Unit::Celsius),
            state(1699, "tire_sensor_enabled", 32, 2),
            state(1698, "tire_status", 34, 2),
            state(1697, "tire_sensor_fault", 36, 2),
            state(6990, "tire_wide_range_in_use", 38, 2),
            number(2586, "tire_leak_rate", 40, 16, 0.1, 0.0, Unit::PascalPerSecond),
            state(2587, "tire_pressure_band", 61, 3),
        ]),
    },
];
