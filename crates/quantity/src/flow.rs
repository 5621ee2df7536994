//! Flow of air: mass, free volume, and the conductance of a restriction.

use crate::kind::{kind, linear};

kind! {
    /// Mass of air per time.
    MassFlow ("mass flow") {
        "kg/s" = from_kg_per_s, try_from_kg_per_s, as_kg_per_s, 1.0;
        "g/s" = from_g_per_s, try_from_g_per_s, as_g_per_s, 0.001;
    }
}

kind! {
    /// Volume per time; as free air delivery, at ambient pressure and temperature.
    VolumeFlow ("volume flow") {
        "m3/s" = from_m3_per_s, try_from_m3_per_s, as_m3_per_s, 1.0;
        "l/s" = from_l_per_s, try_from_l_per_s, as_l_per_s, 0.001;
        "l/min" = from_l_per_min, try_from_l_per_min, as_l_per_min, 0.001 / 60.0;
        "cfm" = from_cfm, try_from_cfm, as_cfm, 0.028316846592 / 60.0;
    }
}

kind! {
    /// Sonic conductance C of a restriction (ISO 6358).
    SonicConductance ("sonic conductance") {
        "dm3/s/bar" = from_dm3_per_s_bar, try_from_dm3_per_s_bar, as_dm3_per_s_bar, 1e-8;
        "m3/s/Pa" = from_m3_per_s_pa, try_from_m3_per_s_pa, as_m3_per_s_pa, 1.0;
    }
}

linear!(MassFlow, VolumeFlow, SonicConductance);
