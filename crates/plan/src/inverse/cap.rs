//! Which speed cap a pressure allows: the window turned round.

use model::haul_cycle::HaulCycle;
use quantity::{ColdPressure, Speed};

use crate::now::{
    Call, CallError, Gauged, Load, Reading, Reason, Trailer, Verdict, Warmth, Whose, answer,
};
use crate::window::MinimumKind;

/// Which pressure.
#[derive(Debug, Clone, PartialEq)]
pub struct CapAsked {
    /// Index of the air channel.
    pub channel: usize,
    /// Load.
    pub load: Load,
    /// Chain state; `None` is the usual one.
    pub chains: Option<String>,
    /// Pressure the tires hold, cold.
    pub pressure: ColdPressure,
    /// Step the cap is rounded down to between rungs.
    pub cap_step: Speed,
}

/// Which cap.
#[derive(Debug, Clone, PartialEq)]
pub struct CapAnswer {
    /// Highest cap that the windows allow, whoever stands behind them.
    pub by_window: Option<Speed>,
    /// The same without rounding.
    pub exact: Option<Speed>,
    /// Highest cap that the maker or a standard stands behind.
    pub approved: Option<Speed>,
    /// What governs just above it.
    pub governed_by: Option<MinimumKind>,
    /// Whether the pressure is above the highest.
    pub above_highest: bool,
}

/// The highest cap a channel may be run at on a pressure: no stack is taken off, the tires hold it.
///
/// # Validity
/// As [`crate::now::answer`].
///
/// # Errors
/// [`CallError`] for a channel or state the combination does not have.
pub fn highest_cap(haul: &HaulCycle, asked: &CapAsked) -> Result<CapAnswer, CallError> {
    let read = |with_unapproved| {
        let reading = Reading {
            whose: Whose::Channel(asked.channel),
            gauged: Gauged::One(asked.pressure.at_reference()),
            warmth: Warmth::Cold,
            typed_in: None,
        };
        answer(
            haul,
            &Call {
                load: asked.load,
                chains: asked.chains.clone(),
                readings: vec![reading],
                ran_last_hour: false,
                ambient: Some(haul.weather.reference),
                trailer: Trailer::AsPlanned,
                with_unapproved,
                cap_step: asked.cap_step,
            },
        )
    };
    let (window, approved) = (read(true)?, read(false)?);
    let slowest = |found: &crate::now::Answer, exact: bool| -> Option<Speed> {
        let groups = found.groups.iter().filter(|group| group.channel == Some(asked.channel));
        let speeds: Option<Vec<Speed>> =
            groups.map(|group| if exact { group.exact } else { group.speed }).collect();
        speeds?.into_iter().min_by(Speed::total_cmp)
    };
    let of_channel = || window.groups.iter().filter(|group| group.channel == Some(asked.channel));
    let exact = slowest(&window, true);
    let governed_by =
        of_channel().filter(|group| group.exact == exact).find_map(|group| group.next);
    let above = |reason: &Reason| matches!(reason, Reason::AboveHighest { .. });
    Ok(CapAnswer {
        by_window: slowest(&window, false),
        exact,
        approved: slowest(&approved, false),
        governed_by,
        above_highest: of_channel()
            .any(|group| group.verdict == Verdict::Stop && group.reasons.iter().any(above)),
    })
}
