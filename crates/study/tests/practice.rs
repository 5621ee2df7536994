//! Drives of the demo hauls on paper, judged: the plan's own has no finding, and each fault has its own.

use std::path::Path;
use std::sync::OnceLock;

use audit::{Finding, Rule};
use haul::Target;
use haul::practice::{SpeedChoice, Stage};
use plan::Detail;
use quantity::{Length, Speed, Time};
use study::practice::{
    Do, Script, ScriptItem, Session, SurpriseKind, SurpriseWish, Verdict, When, read_script,
};
use study::{Opened, Planned, plan_hauls};

fn detail() -> Detail {
    Detail { samples: 0, ..Detail::default() }
}

fn demo(name: &str) -> Planned {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../demo").join(name);
    let opened = Opened::read(&path).expect("the demo is there");
    let survey = opened.survey.expect("the demo is sound");
    let mut planned = plan_hauls(&survey, None, &detail()).expect("the demo can be planned");
    planned.remove(0)
}

fn logs() -> &'static Planned {
    static LOGS: OnceLock<Planned> = OnceLock::new();
    LOGS.get_or_init(|| demo("ridge-logs"))
}

fn rock() -> &'static Planned {
    static ROCK: OnceLock<Planned> = OnceLock::new();
    ROCK.get_or_init(|| demo("windfarm-rock"))
}

fn own(planned: &Planned) -> Script {
    Script::of_plan(planned.plan.driven.as_ref().expect("the demo can be driven"))
}

fn drive(planned: &Planned, script: &Script, wish: SurpriseWish) -> (Session, Verdict) {
    let mut session = Session::start(planned, &detail(), wish, 1).expect("the demo can be driven");
    session.drive(script).expect("the paper can be done");
    let verdict = session.verdict().expect("the columns fit");
    (session, verdict)
}

fn rules(findings: &[Finding]) -> Vec<Rule> {
    findings.iter().map(|finding| finding.rule).collect()
}

/// The plan's own drive with every change of a run called later.
fn late(planned: &Planned, by: Length) -> Script {
    let own = own(planned);
    let items = own.items().iter().map(|item| match item.when {
        When::At(place) => ScriptItem { when: When::At(place + by), ..*item },
        _ => *item,
    });
    Script::new(items.collect())
}

#[test]
fn the_plans_own_drive_has_no_finding_and_comes_to_the_time_of_the_plan() {
    for planned in [logs(), rock()] {
        let (session, verdict) = drive(planned, &own(planned), SurpriseWish::None);
        assert_eq!(session.practice().stage(), Stage::Arrived);
        assert_eq!(verdict.findings, [], "{}", planned.haul.name);
        assert!(verdict.coverage.unknown().as_s() < 0.5);
        assert_eq!(verdict.driven, verdict.planned);
        assert!(verdict.prices.iter().all(|line| line.more.abs() < 1e-9));
        // The cycle of the plan also unloads; the practice ends at arrival.
        let cycle = &planned.plan.driven.as_ref().expect("driven").cycle;
        let whole = cycle.time() - planned.haul.unloading.time;
        let off = (verdict.driven.time - whole).as_s() / whole.as_s();
        assert!(off.abs() < 0.03, "{}: {off}", planned.haul.name);
    }
}

#[test]
fn calls_a_mile_late_are_found_and_later_never_makes_fewer_seconds_late() {
    for planned in [logs(), rock()] {
        let mut before = 0.0;
        for by in [0.0, 400.0, 800.0, 1600.0, 2400.0] {
            let (_, verdict) =
                drive(planned, &late(planned, Length::from_m(by)), SurpriseWish::None);
            let lowered = verdict.findings.iter().filter(|one| one.rule == Rule::LoweredLate);
            let seconds: f64 = lowered.map(|one| one.lasted.as_s()).sum();
            assert!(seconds >= before - 1.0, "{} at {by}: {seconds} < {before}", planned.haul.name);
            before = seconds;
        }
        assert!(before > 30.0, "{}: {before}", planned.haul.name);
        let (_, verdict) = drive(planned, &late(planned, Length::from_km(1.6)), SurpriseWish::None);
        let rules = rules(&verdict.findings);
        assert!(rules.contains(&Rule::RaisedLate), "{rules:?}");
    }
}

/// The cells the laden run begins with.
fn laden_start(planned: &Planned) -> Target {
    planned.plan.driven.as_ref().expect("driven").laden_change.to
}

/// The plan's own drive with the laden pressures ordered when the load is on, whatever the plan prefers.
fn changed_at_loading(planned: &Planned) -> Vec<ScriptItem> {
    let to = laden_start(planned);
    let own = own(planned);
    let rest = own.items().iter().filter(|item| item.laden || item.action != Do::Order(to));
    let mut items: Vec<ScriptItem> = rest.copied().collect();
    items.push(ScriptItem { laden: true, when: When::Start, action: Do::Order(to) });
    items
}

#[test]
fn moving_off_at_once_after_loading_is_found_and_waiting_is_not() {
    for planned in [logs(), rock()] {
        let mut items = changed_at_loading(planned);
        let (_, verdict) = drive(planned, &Script::new(items.clone()), SurpriseWish::None);
        assert_eq!(verdict.findings, [], "{}", planned.haul.name);
        items.push(ScriptItem { laden: true, when: When::Start, action: Do::GoNow });
        let (_, verdict) = drive(planned, &Script::new(items), SurpriseWish::None);
        let rules = rules(&verdict.findings);
        assert!(rules.contains(&Rule::MovedOffBeforeComplete), "{:?}", verdict.findings);
        assert!(verdict.driven.under_minimum_kpa_min > 0.0);
    }
}

#[test]
fn the_empty_pressures_under_the_load_are_found_when_nobody_looks() {
    let wish = SurpriseWish::Named(SurpriseKind::WrongLoadState);
    for planned in [logs(), rock()] {
        let (_, verdict) = drive(planned, &own(planned), wish);
        let found = rules(&verdict.findings);
        assert!(found.contains(&Rule::MovedOffBeforeComplete), "{found:?}");
        assert_eq!(verdict.surprises, [SurpriseKind::WrongLoadState]);
        // Who looks orders again at the landing, and nothing is found.
        let mut items = own(planned).items().to_vec();
        let action = Do::Order(laden_start(planned));
        items.push(ScriptItem { laden: true, when: When::Start, action });
        let (_, verdict) = drive(planned, &Script::new(items), wish);
        assert_eq!(verdict.findings, []);
    }
}

#[test]
fn driving_as_fast_as_the_road_allows_on_low_tires_is_over_the_cap() {
    for planned in [logs(), rock()] {
        let lowest = Target { rung: 0, load_state: planned.haul.laden_state };
        let start = |action| ScriptItem { laden: true, when: When::Start, action };
        let mut items: Vec<_> =
            own(planned).items().iter().copied().filter(|item| !item.laden).collect();
        items.extend([start(Do::Order(lowest)), start(Do::Speed(SpeedChoice::Road))]);
        let (_, verdict) = drive(planned, &Script::new(items), SurpriseWish::None);
        assert!(rules(&verdict.findings).contains(&Rule::OverCap), "{:?}", verdict.findings);
    }
}

#[test]
fn a_session_crosses_threads_and_goes_on_from_a_copy() {
    fn sent<T: Send + Clone + 'static>(value: T) -> T {
        std::thread::spawn(move || value).join().expect("nothing breaks")
    }
    let session = Session::start(rock(), &detail(), SurpriseWish::ByChance, 5).expect("driven");
    let (mut one, mut other) = (sent(session.clone()), session);
    for session in [&mut one, &mut other] {
        session.act(haul::practice::Action::Go).expect("it stands");
    }
    one.advance(600);
    for _ in 0..60 {
        other.advance(10);
    }
    assert_eq!(one.practice().samples(), other.practice().samples());
}

#[test]
fn a_drive_is_read_from_a_table() {
    let haul = &rock().haul;
    let rungs = &haul.combination.rungs;
    let (low, high) = (&rungs[0].name, &rungs[rungs.len() - 1].name);
    let text = format!(
        "# my drive\nrun, at, do, what\nempty, start, lower, {low}\nempty, 90s, speed, 30km/h\n\
         laden, start, go, now\nladen, 1.5km, raise, {high}\nladen, 2km, stop, 10min\n"
    );
    let script = read_script(&text, haul).expect("sound");
    assert_eq!(script.items().len(), 5);
    assert_eq!(script.items()[1].when, When::After(Time::from_s(90.0)));
    assert_eq!(script.items()[1].action, Do::Speed(SpeedChoice::At(Speed::from_kmh(30.0))));
    assert!(script.items()[4].laden);
}

#[test]
fn every_problem_of_a_table_is_told_with_its_line() {
    let haul = &rock().haul;
    let top = haul.combination.rungs.last().map_or("", |rung| rung.name.as_str());
    let text = format!(
        "empty, start, lower, nowhere\nsideways, start, go\nempty, 900km, speed, cap\n\
         empty, 1km, speed, fast\nempty, 1km, stop, soon\nempty, 1km, go, now\n\
         empty, 1km, dance\nempty, soon, speed, cap\none, two\nladen, start, raise, {top}\n\
         laden, 1km, raise, {}\nladen, 0.5km, speed, cap\nempty, 1km, speed, cap",
        haul.combination.rungs[0].name
    );
    let problems = read_script(&text, haul).expect_err("nearly every line is wrong");
    let lines: Vec<usize> = problems.iter().map(|problem| problem.line).collect();
    assert_eq!(lines, [1, 2, 3, 4, 5, 6, 7, 8, 9, 11, 13], "{problems:#?}");
    assert!(problems[0].to_string().contains("there are: "), "{}", problems[0]);
}
