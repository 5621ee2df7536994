//! Paved and thaw-weakened roads under wheels: strain, wear of an axle group, life against
//! pressure, and what trials found.

pub mod layered;
pub mod strain;
