//! The few SVG elements the charts are made of, escaped and with rounded coordinates.

use quick_xml::Writer;
use quick_xml::events::{BytesEnd, BytesStart, BytesText, Event};

const IN_MEMORY: &str = "writing to memory does not fail";

/// A place on the page, in px from its top left corner.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Point {
    pub(crate) x: f64,
    pub(crate) y: f64,
}

/// Short for a [`Point`].
pub(crate) const fn at(x: f64, y: f64) -> Point {
    Point { x, y }
}

/// A rectangle on the page.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Frame {
    pub(crate) left: f64,
    pub(crate) top: f64,
    pub(crate) right: f64,
    pub(crate) bottom: f64,
}

impl Frame {
    pub(crate) fn width(self) -> f64 {
        self.right - self.left
    }

    pub(crate) fn height(self) -> f64 {
        self.bottom - self.top
    }
}

/// How a line is drawn.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Stroke {
    pub(crate) color: &'static str,
    pub(crate) width: f64,
    /// Lengths of dashes and gaps; empty for a solid line.
    pub(crate) dash: &'static str,
}

/// A solid line.
pub(crate) const fn solid(color: &'static str, width: f64) -> Stroke {
    Stroke { color, width, dash: "" }
}

/// Which end of a text its place is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Anchor {
    Start,
    Middle,
    End,
}

/// How a text is set.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Type {
    pub(crate) size: f64,
    pub(crate) bold: bool,
    pub(crate) color: &'static str,
    pub(crate) anchor: Anchor,
}

impl Type {
    pub(crate) const fn of_size(size: f64) -> Self {
        Self { size, bold: false, color: "#111", anchor: Anchor::Start }
    }

    pub(crate) const fn bold(self) -> Self {
        Self { bold: true, ..self }
    }

    pub(crate) const fn colored(self, color: &'static str) -> Self {
        Self { color, ..self }
    }

    pub(crate) const fn anchored(self, anchor: Anchor) -> Self {
        Self { anchor, ..self }
    }
}

/// An SVG document under way.
pub(crate) struct Svg {
    writer: Writer<Vec<u8>>,
}

impl Svg {
    /// Begins a document that is read aloud as `title` and `description`.
    pub(crate) fn new(width: f64, height: f64, title: &str, description: &str) -> Self {
        let mut svg = Self { writer: Writer::new_with_indent(Vec::new(), b' ', 1) };
        let mut root = BytesStart::new("svg");
        let view = format!("0 0 {} {}", number(width), number(height));
        root.push_attribute(("xmlns", "http://www.w3.org/2000/svg"));
        root.push_attribute(("viewBox", view.as_str()));
        root.push_attribute(("width", number(width).as_str()));
        root.push_attribute(("height", number(height).as_str()));
        root.push_attribute(("role", "img"));
        root.push_attribute(("aria-labelledby", "strip-title strip-desc"));
        root.push_attribute(("font-family", "sans-serif"));
        svg.event(Event::Start(root));
        svg.words("title", "strip-title", title);
        svg.words("desc", "strip-desc", description);
        svg
    }

    /// Ends the document.
    pub(crate) fn finish(mut self) -> String {
        self.event(Event::End(BytesEnd::new("svg")));
        String::from_utf8(self.writer.into_inner()).expect("only text was written") + "\n"
    }

    pub(crate) fn line(&mut self, from: Point, to: Point, stroke: Stroke) {
        self.polyline(&[from, to], stroke);
    }

    /// A line through points; neighbors that fall on the same tenth of a px are drawn once, and of a
    /// level stretch the ends.
    pub(crate) fn polyline(&mut self, points: &[Point], stroke: Stroke) {
        let list = coordinates(points);
        self.element("polyline", &[("points", &list), ("fill", "none")], Some(stroke));
    }

    pub(crate) fn polygon(&mut self, points: &[Point], fill: &str, stroke: Option<Stroke>) {
        let list = coordinates(points);
        self.element("polygon", &[("points", &list), ("fill", fill)], stroke);
    }

    pub(crate) fn rect(&mut self, frame: Frame, fill: &str, stroke: Option<Stroke>) {
        let (x, y) = (number(frame.left), number(frame.top));
        let (width, height) = (number(frame.width()), number(frame.height()));
        let place = [("x", &*x), ("y", &y), ("width", &width), ("height", &height), ("fill", fill)];
        self.element("rect", &place, stroke);
    }

    pub(crate) fn text(&mut self, place: Point, text: &str, look: Type) {
        let (x, y, size) = (number(place.x), number(place.y), number(look.size));
        let mut start = BytesStart::new("text");
        let attributes = [("x", &*x), ("y", &y), ("font-size", &size), ("fill", look.color)];
        start.extend_attributes(attributes);
        if look.bold {
            start.push_attribute(("font-weight", "bold"));
        }
        match look.anchor {
            Anchor::Start => {}
            Anchor::Middle => start.push_attribute(("text-anchor", "middle")),
            Anchor::End => start.push_attribute(("text-anchor", "end")),
        }
        self.filled(start, text);
    }

    /// A fill that can be named `url(#id)`: a tile of one path on a ground.
    pub(crate) fn pattern(&mut self, id: &str, tile: (f64, f64), ground: &str, path: &str) {
        let (width, height) = (number(tile.0), number(tile.1));
        self.event(Event::Start(BytesStart::new("defs")));
        let mut start = BytesStart::new("pattern");
        let attributes = [
            ("id", id),
            ("width", &*width),
            ("height", &height),
            ("patternUnits", "userSpaceOnUse"),
        ];
        start.extend_attributes(attributes);
        self.event(Event::Start(start));
        self.element(
            "path",
            &[("d", &format!("M0 0H{width}V{height}H0Z")), ("fill", ground)],
            None,
        );
        let ink = solid("#333", 1.1);
        self.element("path", &[("d", path), ("fill", "none")], Some(ink));
        self.event(Event::End(BytesEnd::new("pattern")));
        self.event(Event::End(BytesEnd::new("defs")));
    }

    fn element(&mut self, name: &str, attributes: &[(&str, &str)], stroke: Option<Stroke>) {
        let mut start = BytesStart::new(name);
        start.extend_attributes(attributes.iter().copied());
        if let Some(stroke) = stroke {
            start.push_attribute(("stroke", stroke.color));
            start.push_attribute(("stroke-width", number(stroke.width).as_str()));
            if !stroke.dash.is_empty() {
                start.push_attribute(("stroke-dasharray", stroke.dash));
            }
        }
        self.event(Event::Empty(start));
    }

    fn words(&mut self, name: &str, id: &str, text: &str) {
        let mut start = BytesStart::new(name);
        start.push_attribute(("id", id));
        self.filled(start, text);
    }

    fn filled(&mut self, start: BytesStart<'_>, text: &str) {
        let end = start.to_end().into_owned();
        self.event(Event::Start(start));
        self.event(Event::Text(BytesText::new(&printable(text))));
        self.event(Event::End(end));
    }

    fn event(&mut self, event: Event<'_>) {
        self.writer.write_event(event).expect(IN_MEMORY);
    }
}

/// What XML 1.0 can carry: other control characters become the replacement character.
pub(crate) fn printable(text: &str) -> String {
    text.chars()
        .map(|c| match c {
            c if c.is_whitespace() => ' ',
            c if c.is_control() || matches!(c, '\u{fffe}' | '\u{ffff}') => '\u{fffd}',
            c => c,
        })
        .collect()
}

fn coordinates(points: &[Point]) -> String {
    let mut kept: Vec<[String; 2]> = Vec::new();
    for point in points {
        let next = [number(point.x), number(point.y)];
        if kept.last() == Some(&next) {
            continue;
        }
        // Of points that lie level, one after the other, the ends are enough.
        if let [.., before, last] = &kept[..]
            && before[1] == last[1]
            && last[1] == next[1]
        {
            kept.pop();
        }
        kept.push(next);
    }
    kept.iter().map(|pair| pair.join(",")).collect::<Vec<_>>().join(" ")
}

fn number(value: f64) -> String {
    let tenths = (value * 10.0).round() + 0.0;
    let text = format!("{:.1}", tenths / 10.0);
    text.strip_suffix(".0").map_or(text.clone(), str::to_owned)
}
