//! One frame of a vehicle's network, decoded.

use language::Round;
use logs::signal::Signal;
use logs::{Identifier, Value, table};
use model::source::Key;
use serde_json::{Value as Json, json};

use super::Answer;
use crate::args::FrameArgs;
use crate::outcome::Failure;
use crate::words::Words;

const SIGNALS: Key = Key("j1939-signals");
const INDICATORS: Key = Key("j1939-indicators");
const IDENTIFIER: Key = Key("linux-j1939");

pub(super) fn answer(args: &FrameArgs, words: &Words) -> Result<Answer, Failure> {
    let mut answer = Answer::to("frame");
    answer.put_in_plain("id", args.id.to_string(), args.id);
    let bytes: Vec<String> = args.data.bytes().iter().map(|byte| format!("{byte:02X}")).collect();
    answer.put_in_plain("data", bytes.concat(), bytes.join(" "));
    let Some(parts) = Identifier::split(args.id) else {
        return Err(Failure::call(anyhow::anyhow!("the identifier has 11 bits; J1939 has 29")));
    };
    let pgn = parts.pgn.number();
    let group = table::group(parts.pgn);
    let name = group.map_or_else(|| pgn.to_string(), |group| format!("{pgn}, {}", group.name));
    answer.result("pgn", "", pgn, name);
    let source = parts.source.0;
    answer.result("source-address", "", source, format!("{source} (0x{source:02X})"));

    let signals = group.map_or(&[][..], |group| &group.signals);
    let found: Vec<(&Signal, Value)> = signals
        .iter()
        .filter_map(|signal| Some((signal, signal.decode(args.data.bytes())?)))
        .collect();
    let views: Vec<Json> = found.iter().map(|(signal, value)| view(signal, *value)).collect();
    let told: Vec<String> =
        found.iter().map(|(signal, value)| told(signal, *value, words)).collect();
    answer.result("signals", "", views, told.join("; "));
    if group.is_none() {
        answer.warn(words.fill("calc-warn-group-unknown", &[("pgn", &pgn)]));
    }
    if found.len() < signals.len() {
        let beyond = signals.len() - found.len();
        answer.warn(words.count("calc-warn-signal-beyond", beyond));
    }
    answer.cite_key(SIGNALS);
    answer.cite_key(INDICATORS);
    answer.cite_key(IDENTIFIER);
    Ok(answer)
}

fn view(signal: &Signal, value: Value) -> Json {
    let number = match value {
        Value::Number(number) => json!(number),
        Value::Code(code) => json!(code),
        Value::Text(letters) => json!(String::from_utf8_lossy(&letters)),
        Value::Absent | Value::Error | Value::Reserved(_) => Json::Null,
    };
    json!({
        "spn": signal.spn.0,
        "name": signal.name,
        "value": number,
        "unit": signal.unit.sign(),
        "state": state(value),
    })
}

fn state(value: Value) -> &'static str {
    match value {
        Value::Number(_) | Value::Code(_) | Value::Text(_) => "value",
        Value::Absent => "absent",
        Value::Error => "error",
        Value::Reserved(_) => "reserved",
    }
}

fn told(signal: &Signal, value: Value, words: &Words) -> String {
    let unit = signal.unit.sign();
    let said = match value {
        Value::Number(number) => {
            let digits = words.format.number(number, 3, Round::Nearest);
            if unit.is_empty() { digits } else { format!("{digits} {unit}") }
        }
        Value::Code(code) => words.fill("calc-code", &[("code", &code)]),
        Value::Text(letters) => String::from_utf8_lossy(&letters).into_owned(),
        Value::Absent | Value::Error | Value::Reserved(_) => {
            words.text(&format!("calc-state-{}", state(value)))
        }
    };
    format!("{} (SPN {}) {said}", signal.name, signal.spn)
}
