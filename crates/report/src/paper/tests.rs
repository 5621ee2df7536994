use language::{Format, Texts, UnitProfile};
use quantity::{ColdPressure, GaugePressure};

use super::sample::Sample;
use super::*;
use crate::document::{Block, Cell, Table};

fn in_english(kind: Kind, sample: &Sample, profile: UnitProfile) -> Document {
    let texts = Texts::new("en").unwrap();
    let format = Format::new(profile, "en").unwrap();
    let words = Words { texts: &texts, format: &format };
    document(kind, &sample.material(), Sheet::A4, words).unwrap()
}

fn tables(document: &Document) -> impl Iterator<Item = &Table> {
    document.blocks.iter().filter_map(|block| match block {
        Block::Table(table) => Some(table),
        _ => None,
    })
}

fn words_left(document: &Document) -> Option<String> {
    let prefixes = [
        "paper",
        "card",
        "signs",
        "lesson",
        "planreport",
        "authority",
        "plan",
        "limit",
        "setup",
        "mechanic",
        "commission",
        "service",
        "recovery",
        "request",
        "effects",
        "cost",
        "caution",
    ];
    let all = document.texts().join("\n");
    let missing = |prefix: &&str| all.contains(&format!("[{prefix}-"));
    prefixes.into_iter().find(missing).map(|_| all)
}

#[test]
fn every_document_is_made_in_every_language_with_every_word_and_caution() {
    let sample = Sample::new().with_recovery();
    for language in language::OFFERED {
        let texts = Texts::new(language).unwrap();
        let format = Format::new(UnitProfile::Us, language).unwrap();
        let words = Words { texts: &texts, format: &format };
        for kind in Kind::ALL {
            let made = document(kind, &sample.material(), Sheet::A4, words).unwrap();
            let all = made.texts().join("\n");
            assert_eq!(words_left(&made), None, "{language} {kind:?}");
            assert!(all.contains(&texts.get("paper-draft", &[])));
            assert!(all.contains(&texts.get("caution-law-decides", &[])), "{kind:?}");
            for table in tables(&made) {
                let columns = table.columns.len();
                let spans: usize = table.groups.iter().map(|group| group.span).sum();
                assert!(table.groups.is_empty() || spans == columns, "{kind:?}");
                assert!(table.rows.iter().all(|row| row.cells.len() == columns), "{kind:?}");
            }
        }
    }
}

#[test]
fn mechanics_are_told_to_vent_before_they_loosen_anything() {
    let sample = Sample::new();
    let texts = Texts::new("en").unwrap();
    for kind in [Kind::SetupSheet, Kind::CommissioningRecord, Kind::ServiceList] {
        let made = in_english(kind, &sample, UnitProfile::Si);
        let first = made.blocks.iter().find_map(|block| match block {
            Block::Caution(caution) => Some(caution),
            _ => None,
        });
        let first = first.expect("a framed caution");
        assert!(first.grave && first.lines.contains(&texts.get("caution-mechanic-vent", &[])));
        assert!(made.texts().contains(&&*texts.get("caution-trained-people", &[])));
    }
}

fn in_kpa(cell: &Cell) -> Option<f64> {
    let figure = cell.figure.as_ref()?;
    match figure.unit.as_str() {
        "psi" => Some(GaugePressure::from_psi(figure.value).as_kpa()),
        "bar" => Some(GaugePressure::from_bar(figure.value).as_kpa()),
        "kPa" => Some(figure.value),
        _ => None,
    }
}

/// Cells of the tables that hold what is stored or set, by rung, load state and channel.
#[test]
fn no_sheet_in_any_unit_stores_less_than_the_plan_or_what_nobody_approved() {
    let mut sample = Sample::new().with_recovery();
    // One cell that nobody stands behind: nothing is stored there.
    let hidden = sample.plan.ladder.iter_mut().find(|cell| cell.set_kpa.is_some()).unwrap();
    "needs approval".clone_into(&mut hidden.approval);
    "dash".clone_into(&mut hidden.driver);
    hidden.driver_set_kpa = None;
    let mut figures = 0;
    for profile in UnitProfile::ALL {
        let sheet = in_english(Kind::SetupSheet, &sample, profile);
        let plan = &sample.plan;
        for table in tables(&sheet).filter(|table| table.groups.len() == 3) {
            let channels: Vec<&str> =
                table.columns[2..table.columns.len() - 1].iter().map(|c| &*c.head).collect();
            for row in &table.rows {
                let rung = plan.rungs.iter().find(|r| r.name == row.cells[0].text).unwrap();
                for (channel, cell) in channels.iter().zip(&row.cells[2..]) {
                    let of_plan = plan.ladder.iter().find(|one| {
                        let caption = format!("{}, {}", one.load_state, one.chain_state);
                        one.channel == *channel && one.rung == rung.name && table.caption == caption
                    });
                    let stored = of_plan.and_then(|one| one.driver_set_kpa);
                    let shown = in_kpa(cell);
                    assert_eq!(shown.is_some(), stored.is_some());
                    if let (Some(shown), Some(stored)) = (shown, stored) {
                        assert!(shown >= stored - 1e-6 && shown <= stored + 7.0);
                        figures += 1;
                    }
                }
            }
        }
    }
    assert!(figures > 0);
}

#[test]
fn no_report_in_any_unit_widens_a_window_or_a_permit() {
    let mut sample = Sample::new();
    let leg = sample.route.legs.last_mut().unwrap();
    leg.permit = Some(view::PermitView {
        number: "7".to_owned(),
        authority: "road office".to_owned(),
        in_force: true,
        expires: None,
        cold: true,
        minimum_kpa: Some(301.3),
        maximum_kpa: Some(655.7),
        tolerance_kpa: Some(20.0),
        speed_kmh: Some(61.9),
        gross_mass_kg: Some(44_444.4),
        evidence_interval_s: Some(59.6),
    });
    let mut cells = 0;
    for kind in [Kind::PlanReport, Kind::AuthorityReport] {
        for profile in UnitProfile::ALL {
            let made = in_english(kind, &sample, profile);
            let plan = &sample.plan;
            let windows = tables(&made).filter(|table| table.columns.len() == 10);
            for (table, block) in
                windows.zip(crate::cells::blocks(plan, crate::cells::Extent::Driven))
            {
                for (row, cell) in table.rows.iter().zip(block.cells) {
                    let (Some(low), Some(high)) = (in_kpa(&row.cells[5]), in_kpa(&row.cells[7]))
                    else {
                        continue;
                    };
                    assert!(low >= cell.min_kpa.unwrap() - 1e-6, "{kind:?}");
                    assert!(high <= cell.max_kpa.unwrap() + 1e-6, "{kind:?}");
                    cells += 1;
                }
            }
        }
    }
    assert!(cells > 0);
    let made = in_english(Kind::AuthorityReport, &sample, UnitProfile::Si);
    let permits = tables(&made).find(|table| table.columns.len() == 7).unwrap();
    let shown: Vec<&str> = permits.rows[0].cells[2..].iter().map(|cell| &*cell.text).collect();
    assert_eq!(shown, ["302–655, cold tires", "20.0", "61", "44444", "59 s"]);
}

#[test]
fn accepted_times_are_never_wider_than_predicted_by_a_fifth() {
    let sample = Sample::new();
    let record = in_english(Kind::CommissioningRecord, &sample, UnitProfile::Us);
    let timed =
        tables(&record).filter(|table| table.columns.len() == 9 && !table.caption.is_empty());
    let mut rows = timed.flat_map(|table| &table.rows).peekable();
    assert!(rows.peek().is_some());
    let mut channels = sample.setup.yard_changes.iter().flat_map(|change| &change.channels);
    for row in rows {
        let channel = channels.next().unwrap();
        let shown = |at: usize| row.cells[at].figure.as_ref().map(|figure| figure.value);
        let (Some(time), Some(least), Some(most)) = (channel.time_s, shown(5), shown(6)) else {
            assert_eq!(channel.time_s, None);
            continue;
        };
        assert!(least >= 0.8 * time - 1e-6 && most <= 1.2 * time + 1e-6);
    }
    assert!(channels.next().is_none());
}

#[test]
fn a_request_asks_for_no_more_than_the_plan_runs_and_names_every_open_line() {
    let sample = Sample::new();
    for profile in UnitProfile::ALL {
        let letter = in_english(Kind::ApprovalRequest, &sample, profile);
        let lines: Vec<&view::AskedLineView> =
            sample.requests.requests[0].hauls.iter().flat_map(|haul| &haul.lines).collect();
        let asked = tables(&letter).find(|table| table.columns.len() == 11).unwrap();
        assert_eq!(asked.rows.len(), lines.len());
        for (row, line) in asked.rows.iter().zip(lines) {
            if let (Some(shown), Some(wanted)) = (in_kpa(&row.cells[9]), line.wanted_kpa) {
                let wanted = ColdPressure::from_kpa(wanted).as_kpa();
                assert!(shown <= wanted + 1e-6 && shown > wanted - 7.0);
            }
            assert_eq!(row.strong, !matches!(line.approval.as_str(), "maker" | "standard"));
        }
    }
}

#[test]
fn a_recovery_procedure_is_refused_with_what_is_missing_until_the_maker_approved_it() {
    let mut sample = Sample::new();
    for cell in &mut sample.plan.ladder {
        "standard".clone_into(&mut cell.approval);
    }
    let texts = Texts::new("en").unwrap();
    let format = Format::new(UnitProfile::Us, "en").unwrap();
    let words = Words { texts: &texts, format: &format };
    let refused =
        document(Kind::RecoveryProcedure, &sample.material(), Sheet::A4, words).unwrap_err();
    let PaperError::RecoveryNotApproved { missing, rung, .. } = &refused else {
        panic!("{refused}")
    };
    assert!(missing.iter().all(|one| one.contains("today: standard")), "{missing:?}");
    assert_eq!(*rung, sample.plan.rungs[0].name);

    let sample = sample.with_recovery();
    for profile in UnitProfile::ALL {
        let made = in_english(Kind::RecoveryProcedure, &sample, profile);
        let table = tables(&made).next().unwrap();
        let approved: Vec<f64> =
            sample.plan.ladder.iter().filter_map(|cell| cell.driver_set_kpa).collect();
        for cell in &table.rows[0].cells[2..] {
            let shown = in_kpa(cell).unwrap();
            assert!(approved.iter().any(|set| shown >= set - 1e-6 && shown <= set + 7.0));
        }
    }
}

/// Twelve channels, sixty change points, names of two hundred letters.
#[test]
fn large_plans_are_all_there_in_tables_that_fit_a_page() {
    let mut sample = Sample::new().with_recovery();
    let first = sample.plan.channels[0].clone();
    let name = |index: usize| format!("channel {index} {}", "long ".repeat(38));
    for index in 2..=12 {
        let cells = sample.plan.ladder.iter().filter(|cell| cell.channel == first);
        let cells: Vec<_> =
            cells.map(|cell| view::CellView { channel: name(index), ..cell.clone() }).collect();
        sample.plan.ladder.extend(cells);
        sample.plan.channels.push(name(index));
        let end = sample.setup.wheel_ends.last().unwrap().clone();
        sample.setup.wheel_ends.push(view::WheelEndView { channel: Some(name(index)), ..end });
    }
    sample.plan.change_points = vec![sample.plan.change_points[0].clone(); 60];
    for kind in [Kind::SetupSheet, Kind::CommissioningRecord, Kind::RecoveryProcedure] {
        let made = in_english(kind, &sample, UnitProfile::Us);
        let all = made.texts().join("\n");
        for index in 2..=12 {
            let told = all.contains(&name(index));
            assert!(told || kind == Kind::CommissioningRecord, "{kind:?}: {index}");
        }
        assert!(tables(&made).all(|table| table.columns.len() <= 10), "{kind:?}");
        let longest = tables(&made).map(|table| table.rows.len()).max();
        assert!(kind != Kind::CommissioningRecord || longest == Some(60), "{longest:?}");
    }
}

#[test]
fn nothing_to_ask_is_said_and_an_empty_ladder_is_refused() {
    let mut sample = Sample::new();
    sample.requests.requests.clear();
    let texts = Texts::new("en").unwrap();
    let format = Format::new(UnitProfile::Us, "en").unwrap();
    let words = Words { texts: &texts, format: &format };
    let make = |sample: &Sample, kind| document(kind, &sample.material(), Sheet::A4, words);
    let nothing = make(&sample, Kind::ApprovalRequest).unwrap_err();
    assert!(matches!(nothing, PaperError::NothingToAsk { .. }), "{nothing}");
    sample.plan.ladder.clear();
    for kind in Kind::ALL {
        let refused = make(&sample, kind).unwrap_err();
        assert!(matches!(refused, PaperError::NoLadder { .. }), "{kind:?}: {refused}");
    }
}

#[test]
fn a_lesson_keeps_its_answers_on_a_page_of_their_own_and_asks_no_trick() {
    let lesson = in_english(Kind::DriverLesson, &Sample::new(), UnitProfile::Si);
    let pages: Vec<&[Block]> = lesson.blocks.split(|block| *block == Block::PageBreak).collect();
    let [.., test, answers] = &pages[..] else { panic!("no page of answers") };
    let Some(Block::Table(right)) = answers.iter().find(|b| matches!(b, Block::Table(_))) else {
        panic!("no answers")
    };
    let asked: Vec<&Vec<String>> = test
        .iter()
        .filter_map(|block| if let Block::Ticks { lines } = block { Some(lines) } else { None })
        .collect();
    assert!(asked.len() >= 6 && asked.len() == right.rows.len());
    for (choices, row) in asked.iter().zip(&right.rows) {
        assert_eq!(choices.iter().filter(|choice| **choice == row.cells[2].text).count(), 1);
        assert!(choices.len() > 1);
    }
}

#[test]
fn a_lesson_asks_about_no_rung_that_is_never_driven() {
    let mut sample = Sample::new();
    let never = view::RungView {
        name: "never driven".to_owned(),
        cap_kmh: 111.0,
        hold_limit_min: None,
        hold_limit_m: None,
    };
    let road = sample.plan.rungs.last().unwrap().name.clone();
    let cells = sample.plan.ladder.iter().filter(|cell| cell.rung == road).cloned();
    let cells: Vec<_> = cells
        .map(|cell| view::CellView { rung: never.name.clone(), used: false, ..cell })
        .collect();
    sample.plan.ladder.extend(cells);
    sample.plan.rungs.push(never);
    let lesson = in_english(Kind::DriverLesson, &sample, UnitProfile::Si);
    let test = lesson.blocks.split(|block| *block == Block::PageBreak).nth(1).unwrap();
    let asked: Vec<&String> = test
        .iter()
        .filter_map(|block| if let Block::Heading { text, .. } = block { Some(text) } else { None })
        .collect();
    assert!(asked.len() >= 6 && asked.iter().all(|text| !text.contains("never driven")));
}

#[test]
fn kinds_turn_round_and_others_are_refused_with_the_choice() {
    for kind in Kind::ALL {
        assert_eq!(kind.name().parse(), Ok(kind));
    }
    let error = "poem".parse::<Kind>().unwrap_err();
    assert!(error.to_string().contains("there are: setup-sheet"), "{error}");
}
