//! What no single key can show: values held against one another, each in a small function.

mod air;
mod approval;
mod haul;
mod loads;
mod names;
mod route;
mod rungs;
mod survey;
mod tire;
mod vehicle;

pub(crate) use approval::{approval, warmest_day};
pub(crate) use haul::{haul, haul_file};
pub(crate) use loads::assembly;
pub(crate) use route::route_file;
pub(crate) use rungs::combination_file;
pub(crate) use survey::survey;
pub(crate) use tire::tire;
pub(crate) use vehicle::vehicle;
