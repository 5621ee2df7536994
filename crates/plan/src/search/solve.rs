//! Exact search: branch and bound over subsets of caps, a shortest path round the cycle inside.

use super::problem::{LadderProblem, Terms, Weights};

/// A ladder: the caps used, and which of them each step of the cycle is run on.
#[derive(Debug, Clone, PartialEq)]
pub struct Solution {
    /// Indices of the caps, rising.
    pub caps: Vec<usize>,
    /// Index of the cap of each step: legs of the empty run, then of the laden run.
    pub assignment: Vec<usize>,
    /// What it costs, term by term.
    pub terms: Terms,
    /// What it costs in money.
    pub cost: f64,
    /// How far above the unknown best it may lie; zero when the search came to its end.
    pub gap: f64,
}

/// The best ladders for a number of rungs, one fewer and one more.
#[derive(Debug, Clone, PartialEq)]
pub struct Ladders {
    /// With the number of rungs asked for.
    pub best: Solution,
    /// With one fewer, if that can be done.
    pub one_fewer: Option<Solution>,
    /// With one more.
    pub one_more: Option<Solution>,
}

/// Nodes after which the search stops and states its gap.
const MOST_NODES: usize = 200_000;

/// The best ladder with at most `rungs` caps, and what one fewer or one more would give.
///
/// `None` if no ladder of that many rungs is possible. One rung more never costs more, because
/// a ladder need not use all it may store.
pub fn solve(problem: &LadderProblem, weights: &Weights, rungs: usize) -> Option<Ladders> {
    let mut best = best_with(problem, weights, rungs)?;
    let mut rungs = rungs;
    // Rungs that bring nothing are not stored.
    while let Some(fewer) = (rungs > 1).then(|| best_with(problem, weights, rungs - 1)).flatten()
        && fewer.cost <= best.cost + 1e-9
    {
        best = fewer;
        rungs -= 1;
    }
    let one_fewer = if rungs > 1 { best_with(problem, weights, rungs - 1) } else { None };
    let one_more = if rungs < problem.caps { best_with(problem, weights, rungs + 1) } else { None };
    Some(Ladders { best, one_fewer, one_more })
}

struct Search<'a> {
    problem: &'a LadderProblem,
    weights: &'a Weights,
    rungs: usize,
    best: Option<(f64, Vec<usize>)>,
    nodes: usize,
    /// Least bound of what was left unsearched.
    unsearched: f64,
}

fn best_with(problem: &LadderProblem, weights: &Weights, rungs: usize) -> Option<Solution> {
    if problem.required.len() > rungs || problem.steps() == 0 {
        return None;
    }
    let mut search =
        Search { problem, weights, rungs, best: None, nodes: 0, unsearched: f64::INFINITY };
    let mut kept = vec![false; problem.caps];
    for &cap in &problem.required {
        kept[cap] = true;
    }
    search.branch(&mut kept, &mut vec![true; problem.caps]);
    let (cost, assignment) = search.best?;
    let mut caps = assignment.clone();
    caps.extend(&problem.required);
    caps.sort_unstable();
    caps.dedup();
    let terms = problem.terms(&assignment)?;
    let gap = (cost - search.unsearched).max(0.0);
    Some(Solution { caps, assignment, terms, cost, gap })
}

impl Search<'_> {
    /// Searches every subset that holds all of `kept` and nothing outside `allowed`.
    fn branch(&mut self, kept: &mut [bool], allowed: &mut [bool]) {
        // Any completion uses a part of what is allowed, so the path through all of it bounds it.
        let Some((bound, path)) = shortest(self.problem, self.weights, allowed) else { return };
        if self.best.as_ref().is_some_and(|(cost, _)| bound >= *cost) {
            return;
        }
        self.nodes += 1;
        if self.nodes > MOST_NODES {
            self.unsearched = self.unsearched.min(bound);
            return;
        }
        let mut used = kept.to_vec();
        for &cap in &path {
            used[cap] = true;
        }
        let count = |set: &[bool]| set.iter().filter(|&&member| member).count();
        if count(&used) <= self.rungs {
            self.best = Some((bound, path));
            return;
        }
        // A cap the path wants but that is not kept yet: with it, then without it.
        let Some(cap) = (0..self.problem.caps).find(|&cap| used[cap] && !kept[cap]) else {
            return;
        };
        if count(kept) < self.rungs {
            kept[cap] = true;
            if count(kept) == self.rungs {
                let mut only = kept.to_vec();
                self.branch(kept, &mut only);
            } else {
                self.branch(kept, allowed);
            }
            kept[cap] = false;
        }
        allowed[cap] = false;
        self.branch(kept, allowed);
        allowed[cap] = true;
    }
}

/// The cheapest way round the cycle on the allowed caps, with its cost.
fn shortest(
    problem: &LadderProblem,
    weights: &Weights,
    allowed: &[bool],
) -> Option<(f64, Vec<usize>)> {
    let caps: Vec<usize> = (0..problem.caps).filter(|&cap| allowed[cap]).collect();
    let steps = problem.steps();
    let mut best: Option<(f64, Vec<usize>)> = None;
    for &first in &caps {
        let Some((cost, path)) = round_from(problem, weights, &caps, steps, first) else {
            continue;
        };
        if best.as_ref().is_none_or(|(least, _)| cost < *least) {
            best = Some((cost, path));
        }
    }
    best
}

fn round_from(
    problem: &LadderProblem,
    weights: &Weights,
    caps: &[usize],
    steps: usize,
    first: usize,
) -> Option<(f64, Vec<usize>)> {
    let mut cost = vec![f64::INFINITY; problem.caps];
    let mut came: Vec<Vec<usize>> = Vec::with_capacity(steps);
    cost[first] = problem.leg(0, first)?.cost(weights);
    for step in 1..steps {
        let mut next = vec![f64::INFINITY; problem.caps];
        let mut from_cap = vec![usize::MAX; problem.caps];
        for &to in caps {
            let Some(leg) = problem.leg(step, to) else { continue };
            let leg = leg.cost(weights);
            for &from in caps {
                if cost[from].is_infinite() {
                    continue;
                }
                let Some(edge) = problem.edge(step - 1, from, to) else { continue };
                let total = cost[from] + edge.cost(weights) + leg;
                if total < next[to] {
                    next[to] = total;
                    from_cap[to] = from;
                }
            }
        }
        cost = next;
        came.push(from_cap);
    }
    let (total, last) = caps
        .iter()
        .filter_map(|&last| {
            let edge = problem.edge(steps - 1, last, first)?;
            let total = cost[last] + edge.cost(weights);
            total.is_finite().then_some((total, last))
        })
        .min_by(|a, b| a.0.total_cmp(&b.0))?;
    let mut path = vec![last];
    for from_cap in came.iter().rev() {
        path.push(from_cap[path[path.len() - 1]]);
    }
    path.reverse();
    Some((total, path))
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use quantity::{Length, PressureDifference, Time};

    use super::super::problem::{Edges, RunProblem};
    use super::*;

    const WEIGHTS: Weights =
        Weights { truck_hour: 120.0, hard_kpa_km: 0.01, change: 0.8, compressor_hour: 5.0 };

    /// Costs from a seed: every cap costs time on fast legs and pressure on soft ones.
    fn problem(caps: usize, legs: (usize, usize), seed: &[u8]) -> LadderProblem {
        let mut at = 0;
        let mut draw = || {
            at += 1;
            f64::from(seed[at % seed.len()]) / 255.0
        };
        let mut run = |legs: usize| -> RunProblem {
            let leg = |cap: usize, draw: &mut dyn FnMut() -> f64| {
                let r = draw();
                (r > 0.08 || cap == 0).then(|| {
                    Terms::of_time(Time::from_s(60.0 + 600.0 * draw() / (1.0 + cap as f64)))
                        .with_hard_road(
                            PressureDifference::from_kpa(40.0 * cap as f64 * draw()),
                            Length::from_km(5.0 * draw()),
                        )
                })
            };
            let changes = (1..legs).map(|_| edges(caps, &mut draw)).collect();
            let legs =
                (0..legs).map(|_| (0..caps).map(|cap| leg(cap, &mut draw)).collect()).collect();
            RunProblem { legs, changes }
        };
        let (empty, laden) = (run(legs.0), run(legs.1));
        let mut again = || 0.3;
        let (loading, unloading) = (edges(caps, &mut again), edges(caps, &mut again));
        LadderProblem { caps, empty, loading, laden, unloading, required: vec![] }
    }

    fn edges(caps: usize, draw: &mut dyn FnMut() -> f64) -> Edges {
        let mut edge = |from: usize, to: usize| {
            if from == to {
                return Some(Terms::default());
            }
            let compressor = Time::from_s(if to > from { 100.0 * draw() } else { 0.0 });
            let wait = Terms::of_time(Time::from_s(60.0 * draw()));
            (draw() > 0.05).then(|| wait.with_change(compressor))
        };
        (0..caps).map(|from| (0..caps).map(|to| edge(from, to)).collect()).collect()
    }

    /// The brute-force twin: every subset, every assignment.
    fn brute(problem: &LadderProblem, rungs: usize) -> Option<f64> {
        let steps = problem.steps();
        let mut best: Option<f64> = None;
        for set in 1_u32..(1 << problem.caps) {
            if set.count_ones() as usize > rungs {
                continue;
            }
            let members: Vec<usize> = (0..problem.caps).filter(|cap| set >> cap & 1 == 1).collect();
            let mut odometer = vec![0; steps];
            'count: loop {
                let assignment: Vec<usize> = odometer.iter().map(|&i| members[i]).collect();
                if let Some(terms) = problem.terms(&assignment) {
                    let cost = terms.cost(&WEIGHTS);
                    best = Some(best.map_or(cost, |least: f64| least.min(cost)));
                }
                for digit in &mut odometer {
                    *digit += 1;
                    if *digit < members.len() {
                        continue 'count;
                    }
                    *digit = 0;
                }
                break;
            }
        }
        best
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(500))]

        #[test]
        fn the_brute_force_twin_agrees(
            seed in proptest::collection::vec(any::<u8>(), 40..200),
            caps in 2_usize..5,
            legs in (1_usize..4, 1_usize..3),
            rungs in 1_usize..4,
        ) {
            let problem = problem(caps, legs, &seed);
            let found = best_with(&problem, &WEIGHTS, rungs).map(|solution| solution.cost);
            match (found, brute(&problem, rungs)) {
                (Some(found), Some(twin)) => prop_assert!((found - twin).abs() < 1e-9),
                (found, twin) => prop_assert_eq!(found, twin),
            }
        }

        #[test]
        fn one_rung_more_never_costs_more(
            seed in proptest::collection::vec(any::<u8>(), 40..200),
            rungs in 1_usize..6,
        ) {
            let problem = problem(8, (4, 4), &seed);
            let fewer = best_with(&problem, &WEIGHTS, rungs);
            let more = best_with(&problem, &WEIGHTS, rungs + 1);
            if let (Some(fewer), Some(more)) = (fewer, more) {
                prop_assert!(more.cost <= fewer.cost + 1e-9);
                prop_assert!(more.caps.len() <= rungs + 1);
            }
        }
    }
}
