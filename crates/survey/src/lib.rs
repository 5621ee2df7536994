//! survey

pub mod sheet;
pub mod track;
