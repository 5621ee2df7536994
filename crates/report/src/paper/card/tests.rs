use language::{Format, Round, Texts, UnitProfile};
use quantity::{GaugePressure, Speed};

use crate::Words;
use crate::document::{Block, Cell, Document, Look, Sheet, Table};
use crate::paper::sample::Sample;
use crate::paper::{Issue, Kind as Paper, Material, document};

fn card(sample: &Sample, language: &str, profile: UnitProfile, sheet: Sheet) -> Document {
    let texts = Texts::new(language).unwrap();
    let format = Format::new(profile, language).unwrap();
    let issue = Issue {
        id: "spur to mill-1".to_owned(),
        date: "2027-03-01".to_owned(),
        units: vec!["12".to_owned()],
    };
    let material = Material { issue: Some(&issue), ..sample.material() };
    let words = Words { texts: &texts, format: &format };
    document(Paper::DriverCard, &material, sheet, words).unwrap()
}

fn tables(document: &Document, look: Look) -> Vec<&Table> {
    let mut found = Vec::new();
    for block in &document.blocks {
        if let Block::Table(table) = block
            && table.look == look
        {
            found.push(table);
        }
    }
    found
}

fn kmh(cell: &Cell, profile: UnitProfile) -> f64 {
    let figure = cell.figure.as_ref().expect("a cap is a number");
    if profile == UnitProfile::Us { Speed::from_mph(figure.value).as_kmh() } else { figure.value }
}

fn kpa(cell: &Cell, profile: UnitProfile) -> Option<f64> {
    let value = cell.figure.as_ref()?.value;
    Some(match profile {
        UnitProfile::Us => GaugePressure::from_psi(value).as_kpa(),
        UnitProfile::MetricBar => GaugePressure::from_bar(value).as_kpa(),
        UnitProfile::Si => value,
    })
}

#[test]
fn no_card_in_any_language_or_unit_allows_more_than_the_plan() {
    let made = Sample::new();
    let plan = &made.plan;
    let mut figures = 0;
    for language in language::OFFERED {
        for profile in UnitProfile::ALL {
            let card = card(&made, language, profile, Sheet::A5);
            let big = tables(&card, Look::Big);
            // Each ladder row: its cap and each pressure against the cells of the plan.
            for row in big.iter().flat_map(|table| &table.rows) {
                let name = &row.cells[0].text;
                let Some(rung) = plan.rungs.iter().find(|rung| rung.name == *name) else {
                    continue;
                };
                assert!(kmh(&row.cells[1], profile) <= rung.cap_kmh + 1e-6, "{name}");
                let cells: Vec<_> = [&plan.empty_state, &plan.laden_state]
                    .into_iter()
                    .flat_map(|state| plan.channels.iter().map(move |channel| (state, channel)))
                    .map(|(state, channel)| {
                        let of = |cell: &&view::CellView| {
                            cell.rung == *name
                                && cell.load_state == *state
                                && cell.channel == *channel
                        };
                        plan.ladder.iter().find(of).unwrap()
                    })
                    .collect();
                for shown in &row.cells[2..] {
                    let Some(shown) = kpa(shown, profile) else { continue };
                    let fits = cells.iter().any(|cell| {
                        cell.driver_set_kpa
                            .is_some_and(|set| shown >= set - 1e-6 && shown <= set + 7.0)
                    });
                    assert!(fits, "{name} shows {shown} kPa");
                    figures += 1;
                }
            }
        }
    }
    assert!(figures > 0);
}

#[test]
fn a_card_shows_no_number_that_is_not_approved() {
    let mut made = Sample::new();
    for cell in &mut made.plan.ladder {
        cell.driver = "dash".to_owned();
        cell.driver_set_kpa = None;
    }
    let card = card(&made, "en", UnitProfile::Si, Sheet::A5);
    for cell in &made.plan.ladder {
        let Some(set) = cell.set_kpa else { continue };
        let format = Format::new(UnitProfile::Si, "en").unwrap();
        let number = format.pressure(GaugePressure::from_kpa(set), Round::Up).number;
        for row in &tables(&card, Look::Big)[0].rows {
            assert!(row.cells[2..].iter().all(|cell| cell.text != number && cell.text == "–"));
        }
    }
    let texts = card.texts().join("\n");
    assert!(texts.contains("No road pressure of this plan is approved"), "{texts}");
}

#[test]
fn the_gauge_side_asks_for_at_least_what_the_table_does_and_is_no_faster_than_the_ladder() {
    let made = Sample::new();
    let fastest = made.plan.rungs.last().unwrap().cap_kmh;
    for profile in UnitProfile::ALL {
        let card = card(&made, "en", profile, Sheet::A5);
        let tables = tables(&card, Look::Big);
        let gauge = tables.last().unwrap();
        for row in &gauge.rows[1..] {
            let speed = kmh(&row.cells[0], profile);
            assert!(speed <= fastest + 1e-6);
            for (index, cell) in row.cells[1..].iter().enumerate() {
                let Some(kpa) = kpa(cell, profile) else { continue };
                let allowed = made.gauge.rows.iter().any(|row| {
                    row.reading_kpa <= kpa + 1e-6
                        && row.highest_speed_kmh[index % 2].is_some_and(|kmh| kmh >= speed - 1e-6)
                });
                assert!(allowed, "{speed} km/h at {kpa} kPa");
            }
        }
    }
}

#[test]
fn every_card_says_what_protects_people_and_where_it_does_not_hold() {
    let made = Sample::new();
    for language in language::OFFERED {
        let texts = Texts::new(language).unwrap();
        let card = card(&made, language, UnitProfile::Us, Sheet::HalfLetter);
        let all = card.texts().join("\n");
        for key in [
            "caution-maker-approves",
            "caution-law-decides",
            "caution-trained-people",
            "caution-rollover",
            "caution-ice",
            "caution-side-slope",
            "caution-loss-stay-away",
            "card-elsewhere",
        ] {
            assert!(all.contains(&texts.get(key, &[])), "{language}: {key}");
        }
        assert!(
            !all.contains("[card-") && !all.contains("[plan-") && !all.contains("[paper-"),
            "{all}"
        );
    }
}

#[test]
fn twelve_channels_and_sixty_change_points_are_all_there() {
    let mut made = Sample::new();
    let plan = &mut made.plan;
    let first = plan.channels[0].clone();
    for index in 2..=12 {
        let channel = format!("channel {index}");
        let cells: Vec<_> = plan
            .ladder
            .iter()
            .filter(|cell| cell.channel == first)
            .map(|cell| view::CellView { channel: channel.clone(), ..cell.clone() })
            .collect();
        plan.ladder.extend(cells);
        plan.channels.retain(|known| *known != channel);
        plan.channels.push(channel);
    }
    plan.channels.truncate(12);
    let point = plan.change_points[0].clone();
    plan.change_points = vec![point; 60];
    let card = card(&made, "en", UnitProfile::Si, Sheet::A5);
    let heads: Vec<&str> = tables(&card, Look::Big)
        .iter()
        .flat_map(|table| table.columns.iter().map(|column| &*column.head))
        .collect();
    for channel in &made.plan.channels {
        assert!(heads.contains(&channel.as_str()), "{channel}");
    }
    let rows: usize = tables(&card, Look::Plain).iter().map(|table| table.rows.len()).sum();
    assert_eq!(rows, 60);
    for block in &card.blocks {
        if let Block::Table(table) = block {
            let spans: usize = table.groups.iter().map(|group| group.span).sum();
            assert!(table.groups.is_empty() || spans == table.columns.len());
            assert!(table.rows.iter().all(|row| row.cells.len() == table.columns.len()));
            assert!(table.columns.len() <= 10, "too many columns for a card");
        }
    }
}

#[test]
fn no_number_on_a_card_has_a_thousands_mark() {
    let made = Sample::new();
    for profile in UnitProfile::ALL {
        let card = card(&made, "en", profile, Sheet::A5);
        for text in card.texts() {
            let letters: Vec<char> = text.chars().collect();
            let mark = letters.windows(5).any(|five| {
                five[0].is_ascii_digit()
                    && five[1] == ','
                    && five[2..].iter().all(char::is_ascii_digit)
            });
            // Coordinates of drawings are lists with commas.
            assert!(!mark || text.starts_with("<svg"), "{text}");
        }
    }
}
