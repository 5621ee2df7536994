//! Chance by counter: the same key always gives the same draw, whatever was drawn before.

/// A draw of the standard normal distribution, keyed by seed, sample and the name of the input.
///
/// Two uniform numbers from a mixing function of the key make it by the Box-Muller transform,
/// so samples may be worked in any order on any number of threads.
///
/// ```
/// use haul::chance::normal;
/// assert_eq!(normal(1, 7, "delivery").to_bits(), normal(1, 7, "delivery").to_bits());
/// assert_ne!(normal(1, 7, "delivery"), normal(1, 7, "conductance"));
/// ```
pub fn normal(seed: u64, sample: usize, input: &str) -> f64 {
    let first = drawn(seed, sample, input);
    let second = mix(first ^ GOLDEN);
    let radius = (-2.0 * unit(first).ln()).sqrt();
    radius * (std::f64::consts::TAU * unit(second)).cos()
}

/// A draw of the uniform distribution above 0 and not above 1, keyed the same way.
pub fn uniform(seed: u64, sample: usize, input: &str) -> f64 {
    unit(drawn(seed, sample, input))
}

/// Another seed, for everything that a name stands for.
pub fn seed_of(seed: u64, name: &str) -> u64 {
    drawn(seed, 0, name)
}

fn drawn(seed: u64, sample: usize, input: &str) -> u64 {
    let key = input
        .bytes()
        .fold(seed ^ FNV_OFFSET, |hash, byte| (hash ^ u64::from(byte)).wrapping_mul(FNV_PRIME));
    mix(key.wrapping_add((sample as u64).wrapping_mul(GOLDEN)))
}

const FNV_OFFSET: u64 = 0xcbf2_9ce4_8422_2325;
const FNV_PRIME: u64 = 0x0000_0100_0000_01b3;
const GOLDEN: u64 = 0x9e37_79b9_7f4a_7c15;

/// The finalizer of the `SplitMix64` generator (Steele, Lea and Flood 2014).
fn mix(mut z: u64) -> u64 {
    z = z.wrapping_add(GOLDEN);
    z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
    z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
    z ^ (z >> 31)
}

/// A number above 0 and not above 1.
fn unit(bits: u64) -> f64 {
    ((bits >> 11) as f64 + 1.0) / (1_u64 << 53) as f64
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn draws_have_the_mean_and_spread_of_the_normal_distribution() {
        const N: usize = 20_000;
        let n = N as f64;
        let draws: Vec<f64> = (0..N).map(|i| normal(3, i, "x")).collect();
        let mean = draws.iter().sum::<f64>() / n;
        let variance = draws.iter().map(|z| (z - mean).powi(2)).sum::<f64>() / n;
        let beyond = draws.iter().filter(|z| **z > 1.2816).count();
        assert!(mean.abs() < 0.02, "{mean}");
        assert!((variance - 1.0).abs() < 0.03, "{variance}");
        // Table of the normal distribution: one in ten lies above 1.2816.
        assert!((beyond as f64 / n - 0.1).abs() < 0.01, "{beyond}");
    }

    #[test]
    fn uniform_draws_fill_their_range_evenly() {
        const N: usize = 20_000;
        let draws: Vec<f64> = (0..N).map(|i| uniform(3, i, "x")).collect();
        let mean = draws.iter().sum::<f64>() / N as f64;
        let low = draws.iter().filter(|u| **u < 0.25).count() as f64 / N as f64;
        assert!((mean - 0.5).abs() < 0.01 && (low - 0.25).abs() < 0.01, "{mean} {low}");
        assert!(draws.iter().all(|u| *u > 0.0 && *u <= 1.0));
    }
}
