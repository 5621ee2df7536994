//! A user's own DBC files: groups of 29-bit messages, matched by group number whoever sends them.
//!
//! Priority, source and destination of the message's identifier are masked away. Unsigned signals keep
//! the usual codes for absent and error; signed ones have none.
//!
//! # Source
//! `dbc-identifiers`

use std::borrow::Cow;

use can_dbc::{
    AttributeValue, AttributeValuedForObjectType, ByteOrder, Dbc, Message, MessageId,
    MultiplexIndicator, SignalExtendedValueType, ValueType,
};

use crate::frame::CanId;
use crate::identifier::{Identifier, Pgn};
use crate::signal::{Coding, Group, Order, Rate, Signal, Spn, Unit, When};

/// Why a DBC file cannot be used.
#[derive(Debug, thiserror::Error, PartialEq, Eq)]
pub enum DbcError {
    /// A line that is none of the format.
    #[error("line {line} is not read as DBC: {text}")]
    Line {
        /// From 1.
        line: usize,
        /// Its beginning.
        text: String,
    },
    /// No message of 29 bits.
    #[error("it holds no message of 29 bits with a signal that can be read")]
    Nothing,
}

/// What a file adds.
#[derive(Debug, Clone, PartialEq)]
pub struct OwnGroups {
    /// Groups, one a number.
    pub groups: Vec<Group>,
    /// Messages and signals left out, each with why.
    pub left_out: Vec<String>,
}

/// Groups of a DBC file.
///
/// # Errors
/// Where the text is not of the format, or nothing in it can be used.
pub fn groups_of(text: &str) -> Result<OwnGroups, DbcError> {
    let at = |rest: &str| {
        let before = &text[..text.len() - rest.len().min(text.len())];
        let shown = rest.lines().find(|line| !line.trim().is_empty()).unwrap_or_default();
        let shown = shown.trim().chars().take(60).collect();
        DbcError::Line { line: before.lines().count().max(1), text: shown }
    };
    let dbc = match Dbc::try_from(text) {
        Ok(dbc) => dbc,
        Err(can_dbc::Error::Incomplete(_, rest)) => return Err(at(rest)),
        // The parser does not say where it gave up without its own types.
        Err(_) => return Err(at(text)),
    };
    let mut own = OwnGroups { groups: Vec::new(), left_out: Vec::new() };
    for message in dbc.messages() {
        let name = message.name();
        let MessageId::Extended(number) = *message.id() else {
            own.left_out.push(format!("{name}: 11 bits of identifier"));
            continue;
        };
        let Some(pgn) = pgn_of(number) else {
            own.left_out.push(format!("{name}: no identifier of 29 bits"));
            continue;
        };
        if own.groups.iter().any(|group| group.pgn == pgn) {
            own.left_out.push(format!("{name}: group {pgn} is there already"));
            continue;
        }
        let signals = signals_of(&dbc, message, &mut own.left_out);
        if !signals.is_empty() {
            own.groups.push(Group {
                pgn,
                name: Cow::Owned(name.clone()),
                rate: Rate::OnRequest,
                location: None,
                signals: Cow::Owned(signals),
            });
        }
    }
    if own.groups.is_empty() { Err(DbcError::Nothing) } else { Ok(own) }
}

fn pgn_of(number: u32) -> Option<Pgn> {
    CanId::extended(number).and_then(Identifier::split).map(|parts| parts.pgn)
}

fn signals_of(dbc: &Dbc, message: &Message, left_out: &mut Vec<String>) -> Vec<Signal> {
    let switch = dbc.message_multiplexor_switch(*message.id());
    let switch = switch.ok().flatten().map(|signal| (signal.start_bit, signal.size));
    let mut signals = Vec::new();
    for signal in message.signals() {
        let mut leave =
            |why: &str| left_out.push(format!("{}.{}: {why}", message.name(), signal.name()));
        let (Ok(start), Ok(bits @ 1..=32)) =
            (u16::try_from(signal.start_bit), u8::try_from(signal.size))
        else {
            leave("longer than 32 bits");
            continue;
        };
        let float = dbc.extended_value_type_for_signal(*message.id(), signal.name());
        if float.is_some_and(|kind| *kind != SignalExtendedValueType::SignedOrUnsignedInteger) {
            leave("a floating-point number");
            continue;
        }
        if signal.factor == 0.0 || !signal.factor.is_finite() || !signal.offset.is_finite() {
            leave("its factor is none");
            continue;
        }
        let when = match (*signal.multiplexer_indicator(), switch) {
            (MultiplexIndicator::Plain | MultiplexIndicator::Multiplexor, _) => None,
            (MultiplexIndicator::MultiplexedSignal(equals), Some((start, bits))) => {
                let when = u16::try_from(start).ok().zip(u8::try_from(bits).ok());
                let when = when.filter(|(_, bits)| (1..=32).contains(bits));
                when.zip(u32::try_from(equals).ok()).map(|((start, bits), equals)| When {
                    start,
                    bits,
                    equals,
                })
            }
            _ => {
                leave("its switch is a switched signal itself");
                continue;
            }
        };
        let (scale, offset) = (signal.factor, signal.offset);
        let coding = match *signal.value_type() {
            ValueType::Unsigned => Coding::Number { scale, offset },
            ValueType::Signed => Coding::Signed { scale, offset },
        };
        let order = match *signal.byte_order() {
            ByteOrder::LittleEndian => Order::Intel,
            ByteOrder::BigEndian => Order::Motorola,
        };
        let (name, unit) = name_and_unit(signal.name(), signal.unit());
        let spn = Spn(number_of(dbc, *message.id(), signal.name()).unwrap_or(0));
        signals.push(Signal { spn, name: name.into(), start, bits, order, coding, unit, when });
    }
    signals
}

/// Number of a signal (SPN), where the file gives it as an attribute.
fn number_of(dbc: &Dbc, message: MessageId, signal: &str) -> Option<u32> {
    dbc.attribute_values().iter().filter(|one| one.name() == "SPN").find_map(|one| {
        let AttributeValuedForObjectType::Signal(id, name, value) = one.value() else {
            return None;
        };
        if *id != message || name != signal {
            return None;
        }
        match value {
            AttributeValue::U64(number) => u32::try_from(*number).ok(),
            AttributeValue::I64(number) => u32::try_from(*number).ok(),
            AttributeValue::Double(number) => format!("{number:.0}").parse().ok(),
            AttributeValue::String(_) => None,
        }
    })
}

/// A unit that is not of the table goes into the name.
fn name_and_unit(name: &str, unit: &str) -> (String, Unit) {
    let known = match unit.trim() {
        "" => Unit::None,
        "kPa" => Unit::Kilopascal,
        "°C" | "degC" | "deg C" | "C" => Unit::Celsius,
        "%" => Unit::Percent,
        "km/h" | "kph" => Unit::KilometerPerHour,
        "rpm" | "1/min" => Unit::RevolutionPerMinute,
        "kg" => Unit::Kilogram,
        "km" => Unit::Kilometer,
        "m" => Unit::Meter,
        "s" => Unit::Second,
        "h" => Unit::Hour,
        "l" | "L" => Unit::Liter,
        "deg" | "°" => Unit::Degree,
        other => {
            let plain: String =
                other.chars().map(|c| if c.is_alphanumeric() { c } else { '_' }).collect();
            return (format!("{name}_{plain}"), Unit::None);
        }
    };
    (name.to_owned(), known)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::Value;

    const FILE: &str = "VERSION \"\"\n\nNS_ :\n\nBS_:\n\nBU_: ECU\n\n\
        BO_ 2566844672 CCVS: 8 ECU\n \
        SG_ Speed : 8|16@1+ (0.00390625,0) [0|250] \"km/h\" ECU\n \
        SG_ Slope : 24|8@1- (0.5,0) [-64|63] \"mV\" ECU\n\n\
        BO_ 2566845438 Other: 8 ECU\n SG_ Long : 0|40@1+ (1,0) [0|1] \"\" ECU\n\n\
        BO_ 100 Short: 8 ECU\n SG_ A : 0|8@1+ (1,0) [0|1] \"\" ECU\n";

    #[test]
    fn worked_file_matches_by_group_and_tells_what_it_left() {
        let own = groups_of(FILE).unwrap();
        assert_eq!(own.groups.len(), 1, "{:?}", own.left_out);
        let group = &own.groups[0];
        // 2566844672 is 0x98FEF100: 29 bits, group 65265.
        assert_eq!((group.pgn.number(), group.signals.len()), (65265, 2));
        let data = [0xFF, 0x64, 0x36, 0xFE, 0xFF, 0x68, 0x00, 0xCF];
        assert_eq!(group.signals[0].decode(&data), Some(Value::Number(54.390625)));
        assert_eq!(group.signals[1].decode(&data), Some(Value::Number(-1.0)));
        assert_eq!(group.signals[1].name, "Slope_mV");
        assert_eq!(own.left_out.len(), 2);
    }

    #[test]
    fn a_text_that_is_none_is_refused_with_its_line() {
        assert!(matches!(groups_of("VERSION \"\"\n\nnonsense\n"), Err(DbcError::Line { .. })));
        assert_eq!(groups_of("VERSION \"\"\n\nNS_ :\n\nBS_:\n\nBU_: A\n"), Err(DbcError::Nothing));
    }
}
