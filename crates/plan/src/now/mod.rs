//! The call from the road: how fast this truck may go now, how far, and what to check.
//!
//! Readings of a gauge are taken to cold pressures on the side that does no harm, held against
//! the windows of the load state, and turned round: the highest speed the pressure there is
//! allows. What is not known is never taken for good.

mod answer;
mod card;
mod curve;
mod judge;
mod overall;
mod question;
mod slip;
mod subject;

pub use answer::{Answer, Check, GroupAnswer, HowFar, Reason, SetFor, Stance, Verdict};
pub use card::{CardRow, card};
pub use question::{Call, CallError, Gauged, Load, Reading, Trailer, Warmth, Whose};
pub use slip::Slip;

pub(crate) use curve::Curves;
pub(crate) use subject::Subject;

use model::haul_cycle::HaulCycle;
use quantity::Speed;

/// Walking pace: what is left to a truck whose tires nobody has gauged.
pub const WALKING_PACE: Speed = Speed::from_kmh(5.0);

/// Answers a call.
///
/// The 80 % of 29 CFR 1910.177 is judged on the cold pressure of the softest tire against what
/// its load needs at walking pace; that is our reading of the rule.
///
/// # Validity
/// Pressures are judged as the ladder judges them: legs of a rung bring their crossfall, their
/// law and their permits in at the rung's speed and under it. A warm reading is taken as that of
/// the warmest credible tire on the rung; brake heat is not in it.
///
/// # Errors
/// [`CallError`] for a reading, a load state or a chain state that does not fit the combination.
///
/// # Source
/// [`model::tire::roadside::CFR_1910_177`] and what each limit of a window names.
///
/// ```
/// use plan::now::{Call, Gauged, Load, Reading, Trailer, Verdict, Warmth, Whose, answer};
/// use quantity::{GaugePressure, Speed};
///
/// let reading = |whose, psi| Reading {
///     whose,
///     gauged: Gauged::One(GaugePressure::from_psi(psi)),
///     warmth: Warmth::NotKnown,
///     typed_in: None,
/// };
/// let call = Call {
///     load: Load::State(example::LADEN),
///     chains: None,
///     readings: vec![reading(Whose::Channel(0), 105.0), reading(Whose::Channel(1), 105.0)],
///     ran_last_hour: true,
///     ambient: None,
///     trailer: Trailer::AsPlanned,
///     with_unapproved: false,
///     cap_step: Speed::from_mph(5.0),
/// };
/// let answer = answer(&example::haul(), &call)?;
/// assert_eq!(answer.verdict, Verdict::Go);
/// # Ok::<(), plan::now::CallError>(())
/// ```
pub fn answer(haul: &HaulCycle, call: &Call) -> Result<Answer, CallError> {
    let subject = Subject::of(haul, call)?;
    let curves = Curves::of(&subject, call.cap_step);
    let groups = judge::groups(&subject, &curves, call);
    Ok(overall::overall(&subject, &curves, call, groups))
}
