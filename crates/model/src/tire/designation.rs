//! Size designations as molded, and what they fix about a tire.

use quantity::Length;

use super::{Construction, SizeClass};
use crate::source::{Citation, Key, Standing};

/// Dimensions that follow from a size designation.
pub const SIZE_DIMENSIONS: Key = Key("un-r54-annex-5");
/// Section height of inch sizes over their width.
pub const INCH_ASPECT: Key = Key("inch-size-aspect");

/// Rim codes of truck, bus and earthmover tires; the half ones are 15° drop-center rims.
const RIM_CODES: [f64; 38] = [
    14.0, 14.5, 15.0, 16.0, 16.5, 17.0, 17.5, 18.0, 19.0, 19.5, 20.0, 21.0, 22.0, 22.5, 24.0, 24.5,
    25.0, 26.0, 28.0, 29.0, 30.0, 32.0, 33.0, 34.0, 35.0, 38.0, 39.0, 42.0, 43.0, 45.0, 46.0, 49.0,
    51.0, 54.0, 57.0, 61.0, 63.0, 69.0,
];
/// Drop-center rims of highway truck tires.
const DROP_CENTER: [f64; 4] = [17.5, 19.5, 22.5, 24.5];
/// What may follow the rim code.
const SUFFIXES: [&str; 4] = ["", "HC", "LT", "C"];

/// Why a text is no size designation.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum DesignationError {
    /// Not built like one.
    #[error(
        "'{text}' is not a tire size; write it as molded, such as 11R22.5, 315/80R22.5, 12.00R24 or 10.00-20"
    )]
    Form {
        /// What was written.
        text: String,
    },
    /// A metric width without aspect ratio.
    #[error(
        "'{text}' gives a width of {width} without an aspect ratio; write it in full, such as 315/80R22.5"
    )]
    NoAspect {
        /// What was written.
        text: String,
        /// Width read.
        width: f64,
    },
    /// A width no tire has.
    #[error(
        "'{text}' gives a section width of {width}; widths are 145 to 1200 mm in steps of 5, or 4 to 65 in"
    )]
    Width {
        /// What was written.
        text: String,
        /// Width read.
        width: f64,
    },
    /// An aspect ratio no tire has.
    #[error("'{text}' gives an aspect ratio of {aspect} %; ratios are 25 to 100 in steps of 5")]
    Aspect {
        /// What was written.
        text: String,
        /// Ratio read.
        aspect: f64,
    },
    /// An inch width with an aspect ratio on a rim that has no such sizes.
    #[error(
        "'{text}' joins an inch width to an aspect ratio, which only earthmover sizes on rims of 45 in \
         and more do; is the width in millimeters?"
    )]
    InchWithAspect {
        /// What was written.
        text: String,
    },
    /// A rim that is not made.
    #[error(
        "'{text}' needs a rim of code {rim}, which is not made; truck rims are 17.5, 19.5, 20, 22.5, 24 and 24.5"
    )]
    Rim {
        /// What was written.
        text: String,
        /// Rim code read.
        rim: f64,
    },
    /// Letters after the rim code that are not understood.
    #[error(
        "'{text}' ends with '{suffix}', which is not understood; write only the size, without load range or index"
    )]
    Suffix {
        /// What was written.
        text: String,
        /// The end of it.
        suffix: String,
    },
}

/// A size as molded.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Designation {
    width: Width,
    aspect_pct: Option<f64>,
    construction: Construction,
    rim_code: f64,
}

#[derive(Debug, Clone, Copy, PartialEq)]
enum Width {
    Millimeters(f64),
    /// Inches, and whether written with two decimals, as full-profile sizes are.
    Inches(f64, bool),
}

/// Overall diameter as far as a designation fixes it.
#[derive(Debug, Clone, PartialEq)]
pub struct NominalDiameter {
    /// The diameter, new.
    pub value: Length,
    /// How far a catalog may differ, as a share.
    pub tolerance: f64,
    /// Where the rule comes from.
    pub citation: Citation,
}

impl Designation {
    /// Section width in the designation; the true one depends on the rim.
    pub fn section(&self) -> Length {
        match self.width {
            Width::Millimeters(mm) => Length::from_mm(mm),
            Width::Inches(inches, _) => Length::from_in(inches),
        }
    }

    /// Section height over width, percent, where the designation gives it.
    pub fn aspect_pct(&self) -> Option<f64> {
        self.aspect_pct
    }

    /// Radial or bias.
    pub fn construction(&self) -> Construction {
        self.construction
    }

    /// Rim code, as molded.
    pub fn rim_code(&self) -> f64 {
        self.rim_code
    }

    /// Bead-seat diameter of the rim: the code in inches.
    ///
    /// # Source
    /// [`SIZE_DIMENSIONS`], from memory; the regulation prints it rounded to millimeters.
    pub fn rim_diameter(&self) -> Length {
        Length::from_in(self.rim_code)
    }

    /// The column of the restricted-speed table this size most likely belongs to: metric sizes
    /// and wide inch sizes on drop-center rims apart from the conventional ones.
    pub fn size_class(&self) -> SizeClass {
        match self.width {
            Width::Millimeters(_) => SizeClass::MetricOrWide,
            Width::Inches(inches, _) if inches >= 14.0 && self.on_drop_center() => {
                SizeClass::MetricOrWide
            }
            Width::Inches(..) => SizeClass::Conventional,
        }
    }

    /// Overall diameter from the designation; `None` where it does not fix one, as for
    /// wide-base inch sizes: take the catalog's.
    ///
    /// # Validity
    /// 1 % for sizes with an aspect ratio, 2 % for inch drop-center sizes, 3 % for full-profile ones.
    ///
    /// # Source
    /// [`SIZE_DIMENSIONS`] and [`INCH_ASPECT`], from memory.
    pub fn nominal_diameter(&self) -> Option<NominalDiameter> {
        let (aspect, tolerance, key) = match (self.aspect_pct, self.width) {
            (Some(aspect), _) => (aspect, 0.01, SIZE_DIMENSIONS),
            (None, Width::Inches(inches, _)) if self.on_drop_center() && inches < 14.0 => {
                (86.0, 0.02, INCH_ASPECT)
            }
            (None, Width::Inches(_, true)) if !self.on_drop_center() => (102.0, 0.03, INCH_ASPECT),
            (None, _) => return None,
        };
        Some(NominalDiameter {
            value: self.rim_diameter() + self.section() * (2.0 * aspect / 100.0),
            tolerance,
            citation: Citation::of(key, Standing::FromMemory),
        })
    }

    fn on_drop_center(&self) -> bool {
        DROP_CENTER.contains(&self.rim_code)
    }
}

impl std::str::FromStr for Designation {
    type Err = DesignationError;

    /// Reads a size; spaces and case do not matter.
    ///
    /// ```
    /// use model::tire::designation::Designation;
    /// let size: Designation = "315/80R22.5".parse()?;
    /// assert!((size.nominal_diameter().unwrap().value.as_mm() - 1075.5).abs() < 0.1);
    /// # Ok::<(), model::tire::designation::DesignationError>(())
    /// ```
    fn from_str(text: &str) -> Result<Self, DesignationError> {
        let form = || DesignationError::Form { text: text.to_owned() };
        let compact: String = text.split_whitespace().collect::<String>().to_ascii_uppercase();
        let size = compact.strip_prefix("LT").unwrap_or(&compact);
        let at = size.find(['R', 'D', '-']).ok_or_else(form)?;
        let (section, rim) = size.split_at(at);
        let construction =
            if rim.starts_with('R') { Construction::Radial } else { Construction::Bias };
        let rim_code = rim_code(text, &rim[1..])?;
        let (width, aspect) = match section.split_once('/') {
            Some((width, aspect)) => (width, Some(number(aspect).ok_or_else(form)?)),
            None => (section, None),
        };
        let decimals = width.split_once('.').map_or(0, |(_, decimals)| decimals.len());
        let width = number(width).ok_or_else(form)?;
        let parsed = Self {
            width: if width >= 100.0 {
                Width::Millimeters(width)
            } else {
                Width::Inches(width, decimals == 2)
            },
            aspect_pct: aspect,
            construction,
            rim_code,
        };
        parsed.check(text, width)
    }
}

impl Designation {
    fn check(self, text: &str, width: f64) -> Result<Self, DesignationError> {
        let text = || text.to_owned();
        let step_of_5 = |value: f64| value % 5.0 == 0.0;
        if let Some(aspect) = self.aspect_pct
            && !(step_of_5(aspect) && (25.0..=100.0).contains(&aspect))
        {
            return Err(DesignationError::Aspect { text: text(), aspect });
        }
        match self.width {
            Width::Millimeters(mm) if !(step_of_5(mm) && (145.0..=1200.0).contains(&mm)) => {
                Err(DesignationError::Width { text: text(), width })
            }
            Width::Millimeters(_) if self.aspect_pct.is_none() => {
                Err(DesignationError::NoAspect { text: text(), width })
            }
            Width::Inches(inches, _) if !(4.0..=65.0).contains(&inches) => {
                Err(DesignationError::Width { text: text(), width })
            }
            Width::Inches(..) if self.aspect_pct.is_some() && self.rim_code < 45.0 => {
                Err(DesignationError::InchWithAspect { text: text() })
            }
            _ => Ok(self),
        }
    }
}

fn rim_code(text: &str, rim: &str) -> Result<f64, DesignationError> {
    let end = rim.find(|c: char| !c.is_ascii_digit() && c != '.').unwrap_or(rim.len());
    let (code, suffix) = rim.split_at(end);
    let code = number(code).ok_or_else(|| DesignationError::Form { text: text.to_owned() })?;
    if !RIM_CODES.contains(&code) {
        return Err(DesignationError::Rim { text: text.to_owned(), rim: code });
    }
    if !SUFFIXES.contains(&suffix) {
        return Err(DesignationError::Suffix { text: text.to_owned(), suffix: suffix.to_owned() });
    }
    Ok(code)
}

/// A plain decimal number without sign or exponent.
fn number(text: &str) -> Option<f64> {
    let plain = text.bytes().all(|b| b.is_ascii_digit() || b == b'.');
    if plain { text.parse().ok() } else { None }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    fn parse(text: &str) -> Result<Designation, DesignationError> {
        text.parse()
    }

    #[test]
    fn sizes_as_molded() {
        use Construction::{Bias, Radial};
        use SizeClass::{Conventional, MetricOrWide};
        for (text, width_mm, aspect, construction, rim_mm, class) in [
            ("11R22.5", 279.4, None, Radial, 571.5, Conventional),
            ("315/80R22.5", 315.0, Some(80.0), Radial, 571.5, MetricOrWide),
            ("12.00R24", 304.8, None, Radial, 609.6, Conventional),
            ("10.00-20", 254.0, None, Bias, 508.0, Conventional),
            ("425/65 R 22.5", 425.0, Some(65.0), Radial, 571.5, MetricOrWide),
            ("14.00r20", 355.6, None, Radial, 508.0, Conventional),
            ("27.00R49", 685.8, None, Radial, 1244.6, Conventional),
            ("LT235/85R16", 235.0, Some(85.0), Radial, 406.4, MetricOrWide),
            ("9R17.5HC", 228.6, None, Radial, 444.5, Conventional),
            ("15R22.5", 381.0, None, Radial, 571.5, MetricOrWide),
            ("50/80R57", 1270.0, Some(80.0), Radial, 1447.8, Conventional),
        ] {
            let size = parse(text).unwrap();
            assert!((size.section().as_mm() - width_mm).abs() < 1e-9, "{text}");
            assert_eq!(size.aspect_pct(), aspect, "{text}");
            assert_eq!(size.construction(), construction, "{text}");
            assert!((size.rim_diameter().as_mm() - rim_mm).abs() < 1e-9, "{text}");
            assert_eq!(size.size_class(), class, "{text}");
        }
    }

    // Overall diameters of catalogs (recalled) and of a supplier sheet (read: 11.00R20, 12.00R20).
    #[test]
    fn table_diameters_within_their_tolerance() {
        for (text, mm) in [
            ("315/80R22.5", 1076.0),
            ("385/65R22.5", 1072.0),
            ("425/65R22.5", 1124.0),
            ("11R22.5", 1052.0),
            ("11R24.5", 1105.0),
            ("12R22.5", 1084.0),
            ("11.00R20", 1090.0),
            ("12.00R20", 1129.0),
            ("12.00R24", 1226.0),
            ("14.00R20", 1250.0),
            ("16.00R20", 1343.0),
        ] {
            let found = parse(text).unwrap().nominal_diameter().unwrap();
            let error = found.value.as_mm() / mm - 1.0;
            assert!(error.abs() <= found.tolerance, "{text}: {error}");
        }
        assert_eq!(parse("26.5R25").unwrap().nominal_diameter(), None);
        assert_eq!(parse("18R22.5").unwrap().nominal_diameter(), None);
    }

    #[test]
    fn impossible_sizes_say_why() {
        use DesignationError as E;
        assert!(matches!(parse("315R22.5"), Err(E::NoAspect { .. })));
        assert!(matches!(parse("11/80R22.5"), Err(E::InchWithAspect { .. })));
        assert!(matches!(parse("315/80R23"), Err(E::Rim { .. })));
        assert!(matches!(parse("317/80R22.5"), Err(E::Width { .. })));
        assert!(matches!(parse("1R22.5"), Err(E::Width { .. })));
        assert!(matches!(parse("315/82R22.5"), Err(E::Aspect { .. })));
        assert!(matches!(parse("315/800R22.5"), Err(E::Aspect { .. })));
        assert!(matches!(parse("11R22.5 LR G"), Err(E::Suffix { .. })));
        for text in ["", "11", "R22.5", "11R", "11 22.5", "1e1R22.5", "11..5R22.5", "truck tire"] {
            assert!(matches!(parse(text), Err(E::Form { .. })), "{text}");
        }
    }

    proptest! {
        #[test]
        fn no_text_panics(text in ".{0,24}") {
            let _ = parse(&text);
        }

        #[test]
        fn metric_sizes_turn_round(width in 29..240u32, aspect in 5..20u32, rim in 0..4usize) {
            let (width, aspect, rim) = (width * 5, aspect * 5, DROP_CENTER[rim]);
            let size = parse(&format!("{width}/{aspect}R{rim}")).unwrap();
            prop_assert_eq!(size.aspect_pct(), Some(f64::from(aspect)));
            prop_assert!((size.section().as_mm() - f64::from(width)).abs() < 1e-9);
            let d = size.nominal_diameter().unwrap().value.as_mm();
            let h = f64::from(width) * f64::from(aspect) / 100.0;
            prop_assert!((d - rim * 25.4 - 2.0 * h).abs() < 1e-6);
        }
    }
}
