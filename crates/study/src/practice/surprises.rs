//! Which surprise a practice has: named, by chance, or none.

use haul::practice::{Stage, Surprise};
use model::haul_cycle::HaulCycle;
use model::route::Surface;
use plan::chance::normal;
use quantity::{Time, VolumeFlow};

/// A kind of surprise by its name.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SurpriseKind {
    /// A worn compressor.
    SlowCompressor,
    /// A leak behind the compressor.
    Leak,
    /// Something in the way on the laden run.
    UnexpectedStop,
    /// A lay-by that is closed.
    ClosedLayBy,
    /// The empty load state still selected when the laden pressures are ordered.
    WrongLoadState,
    /// A leg softened by rain.
    SoftLeg,
}

/// What the person asks for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum SurpriseWish {
    /// Nothing goes wrong.
    #[default]
    None,
    /// This one.
    Named(SurpriseKind),
    /// Whatever the seed brings, or nothing.
    ByChance,
}

/// A surprise nobody knows.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("there is no surprise '{wanted}'; there are: none, any, {}", SurpriseKind::names())]
pub struct NoSuchSurprise {
    /// The name asked for.
    pub wanted: String,
}

impl SurpriseKind {
    /// Every kind.
    pub const ALL: [Self; 6] = [
        Self::SlowCompressor,
        Self::Leak,
        Self::UnexpectedStop,
        Self::ClosedLayBy,
        Self::WrongLoadState,
        Self::SoftLeg,
    ];

    /// Its name.
    pub const fn name(self) -> &'static str {
        match self {
            Self::SlowCompressor => "slow-compressor",
            Self::Leak => "leak",
            Self::UnexpectedStop => "unexpected-stop",
            Self::ClosedLayBy => "closed-lay-by",
            Self::WrongLoadState => "wrong-load-state",
            Self::SoftLeg => "soft-leg",
        }
    }

    fn names() -> String {
        Self::ALL.map(Self::name).join(", ")
    }

    /// The kind of a surprise.
    pub const fn of(surprise: &Surprise) -> Self {
        match surprise {
            Surprise::SlowCompressor { .. } => Self::SlowCompressor,
            Surprise::Leak { .. } => Self::Leak,
            Surprise::UnexpectedStop { .. } => Self::UnexpectedStop,
            Surprise::ClosedLayBy { .. } => Self::ClosedLayBy,
            Surprise::WrongLoadState => Self::WrongLoadState,
            Surprise::SoftLeg { .. } => Self::SoftLeg,
        }
    }
}

impl std::str::FromStr for SurpriseWish {
    type Err = NoSuchSurprise;

    fn from_str(wanted: &str) -> Result<Self, NoSuchSurprise> {
        match wanted {
            "none" => Ok(Self::None),
            "any" => Ok(Self::ByChance),
            _ => SurpriseKind::ALL
                .into_iter()
                .find(|kind| kind.name() == wanted)
                .map(Self::Named)
                .ok_or_else(|| NoSuchSurprise { wanted: wanted.to_owned() }),
        }
    }
}

impl SurpriseWish {
    /// The surprises of a practice; the same seed always brings the same.
    pub fn surprises(self, haul: &HaulCycle, seed: u64) -> Vec<Surprise> {
        let kind = match self {
            Self::None => return Vec::new(),
            Self::Named(kind) => kind,
            Self::ByChance => {
                // One place more than there are kinds: it also happens that nothing happens.
                let at = pick(share(seed, "which"), SurpriseKind::ALL.len() + 1);
                let Some(kind) = SurpriseKind::ALL.get(at) else { return Vec::new() };
                *kind
            }
        };
        made(kind, haul, seed).into_iter().collect()
    }
}

/// A number between 0 and 1, keyed by seed and name.
fn share(seed: u64, name: &str) -> f64 {
    // Two normal draws point in a direction that no angle is likelier than another.
    let (x, y) = (normal(seed, 0, &format!("{name} x")), normal(seed, 0, &format!("{name} y")));
    (y.atan2(x) / std::f64::consts::TAU).rem_euclid(1.0)
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a share of a small count"
)]
fn pick(share: f64, count: usize) -> usize {
    ((share * count as f64) as usize).min(count.saturating_sub(1))
}

/// Sizes are invented for practice: large enough to matter, small enough to be driven.
fn made(kind: SurpriseKind, haul: &HaulCycle, seed: u64) -> Option<Surprise> {
    let draw = share(seed, kind.name());
    Some(match kind {
        SurpriseKind::SlowCompressor => Surprise::SlowCompressor { share: 0.5 + 0.25 * draw },
        SurpriseKind::Leak => {
            Surprise::Leak { lost: VolumeFlow::from_m3_per_s((60.0 + 60.0 * draw) / 6e4) }
        }
        SurpriseKind::UnexpectedStop => Surprise::UnexpectedStop {
            run: Stage::Laden,
            at: haul.route.length() * (0.1 + 0.7 * draw),
            time: Time::from_min(2.0 + 6.0 * share(seed, "how long")),
        },
        SurpriseKind::ClosedLayBy => {
            let lay_bys = &haul.route.lay_bys;
            Surprise::ClosedLayBy { at: lay_bys.get(pick(draw, lay_bys.len()))?.at }
        }
        SurpriseKind::WrongLoadState => Surprise::WrongLoadState,
        SurpriseKind::SoftLeg => {
            let hard = |surface| matches!(surface, Surface::Paved | Surface::Sealed);
            let legs = haul.route.legs.iter().enumerate();
            let soft: Vec<usize> =
                legs.filter(|(_, leg)| !hard(leg.surface)).map(|(at, _)| at).collect();
            let leg = *soft.get(pick(draw, soft.len()))?;
            Surprise::SoftLeg { leg, added: 0.01 }
        }
    })
}

#[cfg(test)]
mod tests {
    use quantity::Length;

    use super::*;

    #[test]
    fn names_are_read_back_and_others_are_refused_with_the_choice() {
        for kind in SurpriseKind::ALL {
            assert_eq!(kind.name().parse(), Ok(SurpriseWish::Named(kind)));
        }
        let error = "flood".parse::<SurpriseWish>().unwrap_err().to_string();
        assert!(error.contains("'flood'") && error.contains("slow-compressor"), "{error}");
    }

    #[test]
    fn a_seed_always_brings_the_same_and_seeds_differ() {
        let haul_of = |seed| SurpriseWish::ByChance.surprises(&example_haul(), seed);
        let mut kinds = std::collections::BTreeSet::new();
        for seed in 0..60 {
            let once = haul_of(seed);
            assert_eq!(once, haul_of(seed));
            kinds.insert(once.first().map(|one| SurpriseKind::of(one).name()));
        }
        assert!(kinds.len() >= 6, "{kinds:?}");
    }

    fn example_haul() -> HaulCycle {
        example::haul()
    }

    #[test]
    fn a_place_lies_on_the_route() {
        for seed in 0..50 {
            let haul = example::haul();
            for kind in SurpriseKind::ALL {
                match made(kind, &haul, seed) {
                    Some(Surprise::UnexpectedStop { at, .. }) => {
                        assert!(at > Length::ZERO && at < haul.route.length());
                    }
                    Some(Surprise::SoftLeg { leg, .. }) => assert!(leg < haul.route.legs.len()),
                    _ => {}
                }
            }
        }
    }
}
