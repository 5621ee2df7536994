//! Engine, fuel and driveline.

use std::borrow::Cow;

use super::{address, bits, number, state, text};
use crate::identifier::Pgn;
use crate::signal::{Group, Rate, Unit};

/// Positions, scales and rates stand in `super` with their source.
pub(super) const GROUPS: &[Group] = &[
    Group {
        pgn: Pgn::known(61443),
        name: Cow::Borrowed("engine 2"),
        rate: Rate::every_ms(50),
        location: None,
        signals: Cow::Borrowed(&[
            state(558, "spn_558", 0, 2),
            state(559, "spn_559", 2, 2),
            state(1437, "spn_1437", 4, 2),
            state(2970, "spn_2970", 6, 2),
            number(91, "accelerator_pedal", 8, 8, 0.4, 0.0, Unit::Percent),
            number(92, "engine_load", 16, 8, 1.0, 0.0, Unit::Percent),
            number(974, "spn_974", 24, 8, 0.4, 0.0, Unit::Percent),
            number(29, "spn_29", 32, 8, 0.4, 0.0, Unit::Percent),
            state(2979, "spn_2979", 40, 2),
            state(5021, "spn_5021", 42, 2),
            state(5399, "spn_5399", 44, 2),
            state(5400, "spn_5400", 46, 2),
            number(3357, "spn_3357", 48, 8, 0.4, 0.0, Unit::Percent),
            number(5398, "spn_5398", 56, 8, 1.0, -125.0, Unit::Percent),
        ]),
    },
    Group {
        pgn: Pgn::known(61444),
        name: Cow::Borrowed("engine 1"),
        rate: Rate::every_ms(50),
        location: None,
        signals: Cow::Borrowed(&[
            state(899, "torque_mode", 0, 4),
            number(4154, "engine_torque_fraction", 4, 4, 0.125, 0.0, Unit::Percent),
            number(512, "torque_demanded", 8, 8, 1.0, -125.0, Unit::Percent),
            number(513, "engine_torque", 16, 8, 1.0, -125.0, Unit::Percent),
            number(190, "engine_speed", 24, 16, 0.125, 0.0, Unit::RevolutionPerMinute),
            address(1483, "engine_control_address", 40),
            state(1675, "starter_mode", 48, 4),
            number(2432, "engine_torque_demand", 56, 8, 1.0, -125.0, Unit::Percent),
        ]),
    },
    Group {
        pgn: Pgn::known(61445),
        name: Cow::Borrowed("transmission"),
        rate: Rate::every_ms(100),
        location: None,
        signals: Cow::Borrowed(&[
            number(524, "gear_selected", 0, 8, 1.0, -125.0, Unit::Gear),
            number(526, "gear_ratio", 8, 16, 0.001, 0.0, Unit::None),
            number(523, "gear", 24, 8, 1.0, -125.0, Unit::Gear),
            text(162, "range_asked", 32, 16),
            text(163, "range", 48, 16),
        ]),
    },
    Group {
        pgn: Pgn::known(61446),
        name: Cow::Borrowed("differential locks"),
        rate: Rate::every_ms(500),
        location: None,
        signals: Cow::Borrowed(&[
            bits(927, "spn_927", 0, 8),
            state(567, "spn_567", 8, 2),
            state(568, "spn_568", 10, 2),
            state(569, "spn_569", 12, 2),
            state(570, "spn_570", 14, 2),
            state(564, "spn_564", 16, 2),
            state(565, "spn_565", 18, 2),
            state(566, "spn_566", 20, 2),
            state(7716, "spn_7716", 22, 2),
            state(3819, "spn_3819", 24, 2),
            state(3820, "spn_3820", 26, 2),
            state(12285, "spn_12285", 28, 2),
        ]),
    },
    Group {
        pgn: Pgn::known(65253),
        name: Cow::Borrowed("engine hours"),
        rate: Rate::OnRequest,
        location: None,
        signals: Cow::Borrowed(&[
            number(247, "engine_hours", 0, 32, 0.05, 0.0, Unit::Hour),
            number(249, "engine_revolutions", 32, 32, 1000.0, 0.0, Unit::Revolution),
        ]),
    },
    Group {
        pgn: Pgn::known(65257),
        name: Cow::Borrowed("fuel used"),
        rate: Rate::OnRequest,
        location: None,
        signals: Cow::Borrowed(&[
            number(182, "trip_fuel", 0, 32, 0.5, 0.0, Unit::Liter),
            number(250, "total_fuel", 32, 32, 0.5, 0.0, Unit::Liter),
        ]),
    },
    Group {
        pgn: Pgn::known(65262),
        name: Cow::Borrowed("engine temperatures"),
        rate: Rate::every_ms(1_000),
        location: None,
        signals: Cow::Borrowed(&[
            number(110, "coolant_temperature", 0, 8, 1.0, -40.0, Unit::Celsius),
            number(174, "fuel_temperature", 8, 8, 1.0, -40.0, Unit::Celsius),
            number(175, "oil_temperature", 16, 16, 0.03125, -273.0, Unit::Celsius),
            number(176, "turbocharger_oil_temperature", 32, 16, 0.03125, -273.0, Unit::Celsius),
            number(52, "intercooler_temperature", 48, 8, 1.0, -40.0, Unit::Celsius),
            number(1134, "spn_1134", 56, 8, 0.4, 0.0, Unit::Percent),
        ]),
    },
    Group {
        pgn: Pgn::known(65266),
        name: Cow::Borrowed("fuel economy"),
        rate: Rate::every_ms(100),
        location: None,
        signals: Cow::Borrowed(&[
            number(183, "fuel_rate", 0, 16, 0.05, 0.0, Unit::LiterPerHour),
            number(184, "fuel_economy", 16, 16, 0.001953125, 0.0, Unit::KilometerPerLiter),
            number(185, "fuel_economy_mean", 32, 16, 0.001953125, 0.0, Unit::KilometerPerLiter),
            number(51, "throttle_1", 48, 8, 0.4, 0.0, Unit::Percent),
            number(3673, "throttle_2", 56, 8, 0.4, 0.0, Unit::Percent),
        ]),
    },
];
