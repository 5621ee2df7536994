//! Laws of elasticity that hold whatever the layers are.

use std::f64::consts::PI;

use proptest::prelude::*;

use super::*;
use crate::road::strain::Strain;

fn layer(mpa: f64, poisson: f64, m: f64) -> Layer {
    let thickness = m.is_finite().then(|| Length::from_m(m));
    Layer { modulus: Stress::from_mpa(mpa), poisson, thickness }
}

fn pavement(layers: &[(f64, f64, f64)]) -> Pavement {
    Pavement::new(layers.iter().map(|(e, nu, h)| layer(*e, *nu, *h)).collect()).unwrap()
}

fn wheel(x: f64, y: f64) -> Wheel {
    Wheel {
        x: Length::from_m(x),
        y: Length::from_m(y),
        load: Force::from_kn(20.0),
        pressure: Stress::from_kpa(690.0),
    }
}

fn point(x: f64, y: f64, depth: Depth) -> Point {
    Point { x: Length::from_m(x), y: Length::from_m(y), depth }
}

fn at(m: f64) -> Depth {
    Depth::At(Length::from_m(m))
}

fn fine(pavement: &Pavement, wheels: &[Wheel], points: &[Point]) -> Vec<Response> {
    respond(pavement, wheels, points, Accuracy::Fine).unwrap()
}

const INF: f64 = f64::INFINITY;
const ROAD: [(f64, f64, f64); 3] = [(3000.0, 0.35, 0.1), (200.0, 0.35, 0.3), (50.0, 0.4, INF)];

fn numbers(r: &Response) -> [f64; 15] {
    let [ux, uy, uz] = r.displacement.map(Length::as_m);
    let s = &r.stress;
    let e = &r.strain;
    let [sxx, syy, szz, sxy, syz, sxz] = [s.xx, s.yy, s.zz, s.xy, s.yz, s.xz].map(Stress::as_kpa);
    let [exx, eyy, ezz, exy, eyz, exz] = [e.xx, e.yy, e.zz, e.xy, e.yz, e.xz].map(Strain::as_ratio);
    [ux, uy, uz, sxx, syy, szz, sxy, syz, sxz, exx, eyy, ezz, exy, eyz, exz]
}

/// Each component against its own scale: the largest of its kind.
fn assert_same(a: &Response, b: &Response, tolerance: f64, place: &str) {
    let (a, b) = (numbers(a), numbers(b));
    for kind in [0..3, 3..9, 9..15] {
        let scale = kind.clone().map(|i| a[i].abs().max(b[i].abs())).fold(0.0, f64::max);
        for i in kind {
            let off = (a[i] - b[i]).abs() / scale;
            assert!(off <= tolerance, "{place}: component {i}: {} against {}: {off:e}", a[i], b[i]);
        }
    }
}

// Boussinesq on the axis of a uniform circle: textbook closed form.
#[test]
fn worked_boussinesq_on_the_axis() {
    let (e, nu, q) = (50e3, 0.35, 690.0);
    let ground = pavement(&[(50.0, nu, 0.1), (50.0, nu, 0.3), (50.0, nu, INF)]);
    let load = wheel(0.0, 0.0);
    let a = load.radius().as_m();
    for z in [0.0, 0.02, 0.1, 0.15, 0.4, 0.9, 3.0] {
        let found = fine(&ground, &[load], &[point(0.0, 0.0, at(z))])[0];
        let c = z / z.hypot(a);
        let s_zz = -q * (1.0 - c.powi(3));
        let s_xx = -0.5 * q * (1.0 + 2.0 * nu - 2.0 * (1.0 + nu) * c + c.powi(3));
        let u_z = (1.0 + nu) * q / e * (2.0 * (1.0 - nu) * (z.hypot(a) - z) + z * (1.0 - c));
        let near = |ours: f64, theirs: f64| {
            assert!((ours - theirs).abs() < 1e-8 * q, "{z}: {ours} against {theirs}");
        };
        near(found.stress.zz.as_kpa(), s_zz);
        near(found.stress.xx.as_kpa(), s_xx);
        near(found.stress.yy.as_kpa(), s_xx);
        assert!((found.displacement[2].as_m() / u_z - 1.0).abs() < 1e-8, "{z}");
    }
    // 446.05 kPa at a depth of one radius of 150 mm.
    let load = Wheel { load: Force::from_kn(690.0 * PI * 0.15 * 0.15), ..load };
    let found = fine(&ground, &[load], &[point(0.0, 0.0, at(0.15))])[0];
    assert!((found.stress.zz.as_kpa() + 446.05).abs() < 0.005);
}

// Off the axis: a circle is the sum of point loads, each Boussinesq's; on a grid of rings.
#[test]
fn worked_boussinesq_off_the_axis() {
    let (e, nu, q) = (50e3, 0.3, 690.0);
    let ground = pavement(&[(50.0, nu, 0.1), (50.0, nu, 0.3), (50.0, nu, INF)]);
    let load = wheel(0.0, 0.0);
    let a = load.radius().as_m();
    for (x, z) in [(0.05, 0.08), (0.0961, 0.1), (0.2, 0.06), (0.2, 0.35), (1.0, 0.5)] {
        let found = fine(&ground, &[load], &[point(x, 0.0, at(z))])[0];
        let (mut s_zz, mut s_xz, mut s_xx, mut u_z, mut u_x) = (0.0, 0.0, 0.0, 0.0, 0.0);
        let n = 400_u32;
        for i in 0..n {
            let rho = a * ((f64::from(i) + 0.5) / f64::from(n));
            for j in 0..n {
                let theta = 2.0 * PI * (f64::from(j) + 0.5) / f64::from(n);
                let p = q * rho * (a / f64::from(n)) * (2.0 * PI / f64::from(n));
                let (dx, dy) = (x - rho * theta.cos(), -rho * theta.sin());
                let r2 = dx * dx + dy * dy;
                let big = r2.hypot(0.0) + z * z;
                let r = big.sqrt();
                s_zz -= 3.0 * p * z.powi(3) / (2.0 * PI * r.powi(5));
                s_xz -= 3.0 * p * z * z * dx / (2.0 * PI * r.powi(5));
                s_xx -= p / (2.0 * PI)
                    * (3.0 * dx * dx * z / r.powi(5)
                        - (1.0 - 2.0 * nu)
                            * ((dx * dx - dy * dy) / (r * r2 * (r + z))
                                + dy * dy * z / (r.powi(3) * r2)));
                u_z += p * (1.0 + nu) / (2.0 * PI * e) * (z * z / r.powi(3) + 2.0 * (1.0 - nu) / r);
                u_x += p * (1.0 + nu) / (2.0 * PI * e)
                    * (z / r.powi(3) - (1.0 - 2.0 * nu) / (r * (r + z)))
                    * dx;
            }
        }
        let near = |ours: f64, theirs: f64, scale: f64, what: &str| {
            let off = (ours - theirs).abs() / scale;
            assert!(off < 3e-5, "{what} at {x}, {z}: {ours} against {theirs}");
        };
        near(found.stress.zz.as_kpa(), s_zz, s_zz.abs(), "szz");
        near(found.stress.xz.as_kpa(), s_xz, s_xz.abs(), "sxz");
        near(found.stress.xx.as_kpa(), s_xx, s_zz.abs().max(s_xx.abs()), "sxx");
        near(found.displacement[2].as_m(), u_z, u_z, "uz");
        near(found.displacement[0].as_m(), u_x, u_z, "ux");
    }
}

/// Displacement and the stresses that act on a horizontal plane.
fn across(r: &Response) -> [f64; 6] {
    let [ux, uy, uz] = r.displacement.map(|u| u.as_m() * 1e6);
    [ux, uy, uz, r.stress.zz.as_kpa(), r.stress.yz.as_kpa(), r.stress.xz.as_kpa()]
}

#[test]
fn stress_and_displacement_pass_through_every_interface() {
    let road =
        pavement(&[(6000.0, 0.3, 0.04), (1500.0, 0.35, 0.1), (200.0, 0.4, 0.3), (15.0, 0.5, INF)]);
    let wheels = [wheel(0.0, 0.0), wheel(0.34, 0.0), wheel(0.0, 1.3)];
    for layer in 0..3 {
        for (x, y) in [(0.0, 0.0), (0.17, 0.0), (0.1, 0.6), (2.0, -1.0)] {
            let above = point(x, y, Depth::BottomOf(layer));
            let below = point(x, y, Depth::TopOf(layer + 1));
            let found = fine(&road, &wheels, &[above, below]);
            let (above, below) = (across(&found[0]), across(&found[1]));
            for i in 0..6 {
                let scale = if i < 3 { above[2].abs() } else { above[3].abs().max(1.0) };
                let off = (above[i] - below[i]).abs() / scale;
                assert!(off < 1e-7, "{layer}, {x}, {y}, {i}: {} {}", above[i], below[i]);
            }
        }
    }
}

#[test]
fn the_surface_carries_the_wheel_and_nothing_else() {
    let road = pavement(&ROAD);
    let inside = fine(&road, &[wheel(0.0, 0.0)], &[point(0.03, 0.0, at(0.0))])[0];
    let outside = fine(&road, &[wheel(0.0, 0.0)], &[point(0.3, 0.1, at(0.0))])[0];
    assert!((inside.stress.zz.as_kpa() + 690.0).abs() < 1e-6);
    assert!(outside.stress.zz.as_kpa().abs() < 1e-6);
    for free in [inside.stress.xz, inside.stress.yz, outside.stress.xz, outside.stress.yz] {
        assert!(free.as_kpa().abs() < 1e-6);
    }
}

// A stiff top is a membrane: what it pulls sideways reaches E₁h₁/E (7 m here) out, and so does
// the tail of the vertical stress; hence a second, milder ground with a tighter bound.
#[test]
fn the_vertical_stress_of_any_plane_adds_up_to_the_load() {
    let mild = [(200.0, 0.35, 0.1), (100.0, 0.3, 0.3), (50.0, 0.4, INF)];
    for (layers, tolerance) in [(ROAD, 5e-4), (mild, 2e-5)] {
        for z in [0.05, 0.1, 0.4, 0.8] {
            // Simpson over r = t³, so that the steps are fine under the wheel.
            let (n, end) = (1200_u32, 49.0_f64.cbrt());
            let mut total = 0.0;
            for i in 0..=n {
                let t = end * f64::from(i) / f64::from(n);
                let r = t.powi(3);
                let place = [point(r, 0.0, at(z))];
                let found = fine(&pavement(&layers), &[wheel(0.0, 0.0)], &place)[0];
                let weight = f64::from([2, 4][(i % 2) as usize]) * if i == n { 0.5 } else { 1.0 };
                total -= weight * found.stress.zz.as_kpa() * 2.0 * PI * r * 3.0 * t * t;
            }
            total *= end / f64::from(n) / 3.0;
            assert!((total / 20.0 - 1.0).abs() < tolerance, "{z}: {total} kN");
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn a_layer_split_in_two_changes_nothing(
        share in 0.05..0.95_f64, x in 0.0..1.5_f64, z in 0.0..0.8_f64, which in 0..2_usize,
    ) {
        let mut split = ROAD.to_vec();
        let (e, nu, h) = split[which];
        split[which] = (e, nu, h * share);
        split.insert(which + 1, (e, nu, h * (1.0 - share)));
        let wheels = [wheel(0.0, 0.0), wheel(0.34, 0.0)];
        let place = [point(x, 0.2, at(z))];
        let whole = fine(&pavement(&ROAD), &wheels, &place);
        let split = fine(&pavement(&split), &wheels, &place);
        assert_same(&whole[0], &split[0], 1e-8, "split");
    }

    #[test]
    fn wheels_add_up_and_scale(x in -1.0..1.0_f64, y in -1.0..1.0_f64, z in 0.0..1.0_f64) {
        let road = pavement(&ROAD);
        let place = [point(x, y, at(z))];
        let one = fine(&road, &[wheel(0.0, 0.0)], &place)[0];
        let other = fine(&road, &[wheel(0.5, 0.2)], &place)[0];
        let both = fine(&road, &[wheel(0.0, 0.0), wheel(0.5, 0.2)], &place)[0];
        let sum: Vec<f64> =
            numbers(&one).iter().zip(numbers(&other)).map(|(a, b)| a + b).collect();
        for (i, both) in numbers(&both).iter().enumerate() {
            prop_assert!((both - sum[i]).abs() <= 1e-7 * (both.abs() + 1e-6), "{i}");
        }
    }
}

#[test]
fn a_contrast_of_ten_thousand_holds_its_laws() {
    let layers = [(30000.0, 0.2, 0.2), (3.0, 0.45, INF)];
    let split = [(30000.0, 0.2, 0.05), (30000.0, 0.2, 0.15), (3.0, 0.45, INF)];
    let wheels = [wheel(0.0, 0.0)];
    let places = [0.0, 0.1, 0.2, 0.5].map(|z| point(0.2, 0.0, at(z)));
    let whole = fine(&pavement(&layers), &wheels, &places);
    let split = fine(&pavement(&split), &wheels, &places);
    for (a, b) in whole.iter().zip(&split) {
        assert_same(a, b, 1e-7, "contrast");
    }
    let faces = [Depth::BottomOf(0), Depth::TopOf(1)].map(|depth| point(0.2, 0.0, depth));
    let found = fine(&pavement(&layers), &wheels, &faces);
    let (above, below) = (across(&found[0]), across(&found[1]));
    for i in 0..6 {
        assert!((above[i] - below[i]).abs() < 1e-6 * above[2].abs(), "{i}: {above:?} {below:?}");
    }
}

#[test]
fn twice_the_nodes_move_nothing() {
    let wheels = [wheel(0.0, 0.0), wheel(0.34, 0.0), wheel(0.0, 1.3), wheel(0.34, 1.3)];
    for top in [0.01, 0.05, 0.2] {
        let road = pavement(&[(3000.0, 0.35, top), (200.0, 0.35, 0.3), (15.0, 0.4, INF)]);
        let places = [Depth::At(Length::ZERO), Depth::BottomOf(0), Depth::TopOf(2)]
            .map(|d| point(0.17, 0.0, d));
        for (accuracy, tolerance) in [(Accuracy::Screen, 1e-4), (Accuracy::Fine, 1e-9)] {
            let once = respond(&road, &wheels, &places, accuracy).unwrap();
            let twice =
                respond_with(&road, &wheels, &places, 2 * accuracy.nodes(), 2.0 * accuracy.cut())
                    .unwrap();
            for (a, b) in once.iter().zip(&twice) {
                assert_same(a, b, tolerance, &format!("{accuracy:?}, {top} m"));
            }
        }
    }
}

#[test]
fn what_is_no_pavement_is_refused() {
    let refused = |layers: &[(f64, f64, f64)]| {
        Pavement::new(layers.iter().map(|(e, nu, h)| layer(*e, *nu, *h)).collect()).unwrap_err()
    };
    assert!(matches!(refused(&[]), PavementError::Count { count: 0, .. }));
    assert!(matches!(refused(&[ROAD[0]; 6]), PavementError::Count { count: 6, .. }));
    assert!(matches!(refused(&[(0.0, 0.3, INF)]), PavementError::Modulus { layer: 1, .. }));
    assert!(matches!(
        refused(&[ROAD[0], (50.0, 0.6, INF)]),
        PavementError::Poisson { layer: 2, .. }
    ));
    assert!(matches!(refused(&[ROAD[2], ROAD[2]]), PavementError::Thickness { layer: 1 }));
    assert!(matches!(refused(&[ROAD[0]]), PavementError::Bottom { layer: 1 }));
    assert!(matches!(
        refused(&[(1e5, 0.3, 0.1), (0.5, 0.3, INF)]),
        PavementError::Contrast { layer: 1, .. }
    ));
}

#[test]
fn what_is_no_place_or_wheel_is_refused() {
    let road = pavement(&ROAD);
    let ask = |wheel: Wheel, depth| {
        respond(&road, &[wheel], &[point(0.0, 0.0, depth)], Accuracy::Screen).unwrap_err()
    };
    let unloaded = Wheel { load: Force::ZERO, ..wheel(0.0, 0.0) };
    assert!(matches!(ask(unloaded, at(0.1)), LayeredError::Wheel { .. }));
    assert!(matches!(ask(wheel(0.0, 0.0), at(-0.1)), LayeredError::Above { .. }));
    assert!(matches!(
        ask(wheel(0.0, 0.0), Depth::BottomOf(2)),
        LayeredError::NoSuchFace { layer: 3, count: 3 }
    ));
    assert!(matches!(ask(wheel(60.0, 0.0), at(0.1)), LayeredError::Far { .. }));
}
