//! haul
