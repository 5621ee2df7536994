//! Where words go: how wide they are, how they are shortened, lanes, and spread columns.

use unicode_width::UnicodeWidthChar;

use crate::svg::printable;

/// Widths in em of a wide sans-serif face (`DejaVu Sans`), so that other faces fit as well.
fn em(c: char) -> f64 {
    match c {
        'i' | 'j' | 'l' | '\'' => 0.31,
        ' ' | '.' | ',' | 'I' => 0.33,
        'f' | 't' | 'r' | '-' | '(' | ')' | '/' | ':' | ';' | '!' | '|' | '[' | ']' => 0.44,
        'm' | 'W' | '%' | '…' | '←' | '→' | '@' => 1.0,
        'w' | '↑' | '↓' | 'M' | 'O' | 'Q' => 0.88,
        '#' | '&' | '+' | '<' | '=' | '>' | '^' | '~' => 0.84,
        'A'..='Z' => 0.76,
        c if c.is_ascii() => 0.645,
        c => c.width().unwrap_or(1) as f64,
    }
}

/// Width of a text in px at a font size; bold is counted a little wider.
pub(crate) fn width(text: &str, size: f64, bold: bool) -> f64 {
    let plain: f64 = text.chars().map(em).sum();
    plain * size * if bold { 1.12 } else { 1.0 }
}

/// Fewer letters before an ellipsis tell nothing.
const LEAST_KEPT: usize = 3;

/// The text itself where it fits, else its beginning and an ellipsis; empty where that
/// would leave too few letters.
pub(crate) fn fitted(text: &str, room: f64, size: f64, bold: bool) -> String {
    let text = printable(text.trim());
    if width(&text, size, bold) <= room {
        return text;
    }
    let mut kept = String::new();
    for c in text.chars() {
        let longer = format!("{kept}{c}…");
        if width(&longer, size, bold) > room {
            break;
        }
        kept.push(c);
    }
    let kept = kept.trim_end();
    if kept.chars().count() < LEAST_KEPT { String::new() } else { format!("{kept}…") }
}

/// A text broken between words into lines that fit; a word wider than the room stands alone.
pub(crate) fn broken(text: &str, room: f64, size: f64) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in printable(text).split_whitespace() {
        match lines.last_mut() {
            Some(line) if width(&format!("{line} {word}"), size, false) <= room => {
                line.push(' ');
                line.push_str(word);
            }
            _ => lines.push(word.to_owned()),
        }
    }
    lines
}

/// A label that wants to be near a place on the x axis.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Wish {
    /// Where its left edge should best be.
    pub(crate) left: f64,
    pub(crate) width: f64,
}

/// Where a label was put.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Slot {
    pub(crate) lane: usize,
    pub(crate) left: f64,
}

const GAP: f64 = 5.0;

/// Puts labels into lanes between `from` and `to` without overlap, each moved as little as
/// possible and not more than `reach`; `None` where there was no room.
pub(crate) fn lanes(
    wishes: &[Wish],
    (from, to): (f64, f64),
    lanes: usize,
    reach: f64,
) -> Vec<Option<Slot>> {
    let mut taken: Vec<Vec<(f64, f64)>> = vec![Vec::new(); lanes];
    let mut order: Vec<usize> = (0..wishes.len()).collect();
    order.sort_by(|&a, &b| wishes[a].left.total_cmp(&wishes[b].left));
    let mut slots = vec![None; wishes.len()];
    for index in order {
        let Wish { left, width } = wishes[index];
        let best = left.clamp(from, (to - width).max(from));
        let mut found: Option<(f64, Slot)> = None;
        for (lane, spans) in taken.iter().enumerate() {
            let beside = spans.iter().flat_map(|&(l, r)| [r + GAP, l - GAP - width]);
            for left in std::iter::once(best).chain(beside) {
                let inside = left >= from && left + width <= to;
                let free = spans.iter().all(|&(l, r)| left >= r + GAP || left + width <= l - GAP);
                let moved = (left - best).abs();
                let better = found.is_none_or(|(least, _)| moved < least);
                if inside && free && moved <= reach && better {
                    found = Some((moved, Slot { lane, left }));
                }
            }
        }
        if let Some((_, slot)) = found {
            taken[slot.lane].push((slot.left, slot.left + width));
            slots[index] = Some(slot);
        }
    }
    slots
}

/// Heights for labels in a column, `step` apart at least, each as near to its wish as the
/// others let it; all lie between `top` and `bottom` where these leave room.
pub(crate) fn column(wishes: &[f64], step: f64, (top, bottom): (f64, f64)) -> Vec<f64> {
    let mut order: Vec<usize> = (0..wishes.len()).collect();
    order.sort_by(|&a, &b| wishes[a].total_cmp(&wishes[b]));
    let mut heights = vec![0.0; wishes.len()];
    let mut least = top;
    for &index in &order {
        heights[index] = wishes[index].max(least);
        least = heights[index] + step;
    }
    let mut most = bottom;
    for &index in order.iter().rev() {
        heights[index] = heights[index].min(most);
        most = heights[index] - step;
    }
    heights
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn a_broken_text_fits_and_loses_no_word() {
        let text = "Lines are expected stress, shade the band from firm to soft ground.";
        let lines = broken(text, 120.0, 12.0);
        assert!(lines.len() > 1 && lines.iter().all(|line| width(line, 12.0, false) <= 120.0));
        assert_eq!(lines.join(" "), text);
        assert!(broken("", 120.0, 12.0).is_empty());
    }

    #[test]
    fn long_names_end_in_an_ellipsis_and_short_ones_stay() {
        assert_eq!(fitted("spur", 100.0, 12.0, false), "spur");
        assert_eq!(fitted("a very long name", 60.0, 12.0, false), "a very l…");
        assert_eq!(fitted("name", 5.0, 12.0, false), "");
    }

    proptest! {
        #[test]
        fn a_fitted_text_fits(text in ".{0,120}", room in 0.0..300.0f64) {
            prop_assert!(width(&fitted(&text, room, 12.0, false), 12.0, false) <= room);
        }

        #[test]
        fn lanes_hold_labels_apart(
            wishes in prop::collection::vec((0.0..500.0f64, 5.0..120.0f64), 0..60),
            count in 1usize..6,
            reach in 0.0..300.0f64,
        ) {
            let wishes: Vec<_> =
                wishes.into_iter().map(|(left, width)| Wish { left, width }).collect();
            let slots = lanes(&wishes, (0.0, 500.0), count, reach);
            let placed: Vec<_> =
                slots.iter().zip(&wishes).filter_map(|(s, w)| s.map(|s| (s, w.width))).collect();
            for (index, (slot, width)) in placed.iter().enumerate() {
                prop_assert!(slot.left >= 0.0 && slot.left + width <= 500.0);
                for (other, its_width) in &placed[index + 1..] {
                    let apart = slot.left + width <= other.left || other.left + its_width <= slot.left;
                    prop_assert!(slot.lane != other.lane || apart);
                }
            }
        }

        #[test]
        fn a_column_keeps_its_step_and_its_range(
            wishes in prop::collection::vec(-50.0..250.0f64, 1..15),
        ) {
            let heights = column(&wishes, 13.0, (0.0, 200.0));
            let mut sorted = heights.clone();
            sorted.sort_by(f64::total_cmp);
            prop_assert!(sorted.windows(2).all(|pair| pair[1] - pair[0] >= 13.0 - 1e-9));
            prop_assert!(sorted[0] >= 0.0 - 1e-9 && sorted[sorted.len() - 1] <= 200.0);
        }
    }
}
