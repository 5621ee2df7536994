//! Physics and standards of tires, air and road, without I/O.
//!
//! Modules import one way: `source` → `tire` and `air` → `ground` → `road` → `route` → `vehicle` →
//! `money` → `haul_cycle`; a tidy check reads the imports. Nothing here reads a file, a clock or an environment: what a
//! formula needs comes as an argument, and what it rests on is named by a
//! [`source::Key`] that `docs/sources.toml` explains.

pub mod air;
pub mod date;
pub mod ground;
pub mod haul_cycle;
pub mod money;
pub mod motion;
pub mod road;
pub mod route;
pub mod source;
pub mod tire;
pub mod vehicle;
