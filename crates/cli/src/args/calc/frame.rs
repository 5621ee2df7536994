//! Flags of `airtide calc frame`.

use clap::Args;
use logs::{CanId, Data};

/// One frame of a vehicle's network: group, sender and signals
///
/// Absent, error and value are told apart. Blanks in the data do not matter.
#[derive(Debug, Args)]
#[command(
    after_help = "Example:\n  airtide calc frame --id 18FEAE31 --data \"FF FF 64 65 FF FF FF FF\""
)]
pub struct FrameArgs {
    /// Identifier of 29 bits, in hexadecimal digits
    #[arg(long, value_name = "HEX", value_parser = identifier)]
    pub id: CanId,
    /// Up to eight bytes, in hexadecimal digits
    #[arg(long, value_name = "HEX", value_parser = data)]
    pub data: Data,
}

fn identifier(text: &str) -> Result<CanId, String> {
    let digits = text.trim().trim_start_matches("0x").trim_start_matches("0X");
    let plain = digits.len() <= 8 && digits.bytes().all(|digit| digit.is_ascii_hexdigit());
    let number = u32::from_str_radix(digits, 16).ok().filter(|_| plain);
    number.and_then(CanId::extended).ok_or_else(|| {
        "give an identifier of 29 bits in hexadecimal digits, such as 18FEAE31".to_owned()
    })
}

fn data(text: &str) -> Result<Data, String> {
    let wrong =
        || "give up to eight bytes, two hexadecimal digits each, such as FFFF6465".to_owned();
    let digits: Vec<u8> = text.bytes().filter(|byte| !byte.is_ascii_whitespace()).collect();
    if !digits.len().is_multiple_of(2) || !digits.iter().all(u8::is_ascii_hexdigit) {
        return Err(wrong());
    }
    let pair = |pair: &[u8]| {
        let text = std::str::from_utf8(pair).ok()?;
        u8::from_str_radix(text, 16).ok()
    };
    let bytes: Option<Vec<u8>> = digits.chunks_exact(2).map(pair).collect();
    bytes.and_then(|bytes| Data::new(&bytes)).ok_or_else(wrong)
}
