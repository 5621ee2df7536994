//! Forces and power along the road.
