//! Paved and thaw-weakened roads under wheels: strain, wear of an axle group, life against
//! pressure, and what trials found.

pub mod axle_factor;
pub mod layered;
pub mod pavement_life;
pub mod pavement_strain;
pub mod strain;
pub mod thaw;
pub mod threshold_pressure;
pub mod trials;
