//! The supply pressure panel, hatched where the compressor delivers.

use super::check::ChartError;
use super::half::Half;
use super::layout::Panel;
use super::panel::{self, direct};
use super::reader::Reader;
use crate::svg::{Frame, Stroke, Svg, solid};

pub(crate) const SUPPLY: Stroke = solid("#111", 1.8);
pub(crate) const DELIVERS: &str = "url(#strip-delivers)";

/// Makes the pattern of the hatching.
pub(crate) fn pattern(svg: &mut Svg) {
    svg.pattern("strip-delivers", (6.0, 6.0), "none", "M-1 1L1 -1M-1 7L7 -1M5 7L7 5");
}

/// Draws the panel.
pub(crate) fn draw(
    svg: &mut Svg,
    reader: Reader<'_>,
    half: &Half<'_>,
    panel: &Panel,
) -> Result<(), ChartError> {
    panel::grid(svg, reader, panel, 4);
    let Frame { top, bottom, .. } = panel.frame;
    for (from, to) in half.spans(|sample| sample.compressor_loading) {
        let (a, b) = (panel.x.at(reader.chainage(from)), panel.x.at(reader.chainage(to)));
        let (left, right) = (a.min(b), a.max(b));
        svg.rect(Frame { left, top, right, bottom }, DELIVERS, None);
    }
    let supply =
        half.moving.iter().map(|s| (reader.chainage(s.km), Some(reader.pressure(s.supply_kpa))));
    panel::curve(svg, panel, supply, SUPPLY, false);
    if let Some(end) = half.rightmost() {
        let y = panel.y.at(reader.pressure(end.supply_kpa));
        direct(svg, panel, &[(y, reader.word("chart-label-supply")?, SUPPLY)]);
    }
    Ok(())
}
