//! The stored form of an issued plan, `airtide.issued/1`.

use std::path::{Path, PathBuf};

use model::date::Date;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_json::Value;
use survey::{Folder, WriteError};

use super::{FOLDER, Hash};

/// A survey file that an issued plan rests on.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct InputFile {
    /// Path in the survey.
    pub path: String,
    /// Hash of its bytes.
    pub hash: Hash,
    /// Hash of its values, whatever its comments and spacing; `null` for what is no TOML.
    pub values_hash: Option<Hash>,
}

/// A plan as issued. `Frozen` is the plan document: here any JSON, typed where keys are known.
///
/// Within a schema number keys are only added.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct IssuedPlan<Frozen = Value> {
    /// `airtide.issued/1`.
    pub schema: String,
    /// Name of the file without its ending: haul and number.
    pub id: String,
    /// Number among the issued plans of the haul.
    pub number: u32,
    /// Day of issue.
    #[serde(with = "day")]
    #[schemars(with = "String")]
    pub date: Date,
    /// Person who answers for it.
    pub responsible: String,
    /// Haul.
    pub haul: String,
    /// Combination.
    pub combination: String,
    /// Fleet numbers of the units it is assigned to.
    pub units: Vec<String>,
    /// First day it may be driven by.
    #[serde(with = "day")]
    #[schemars(with = "String")]
    pub valid_from: Date,
    /// Last day; `null` until another is issued.
    #[serde(with = "last_day")]
    #[schemars(with = "Option<String>")]
    pub valid_until: Option<Date>,
    /// Program and version that made it.
    pub program: String,
    /// Every survey file the haul uses, by path.
    pub inputs: Vec<InputFile>,
    /// SHA-256 of the lines `digits`, two spaces, `path` of the inputs, in their order.
    pub inputs_hash: Hash,
    /// Hash of the checked values of the haul, as the program that made it writes them.
    pub values_hash: Hash,
    /// The plan document.
    pub plan: Frozen,
    /// SHA-256 of this document without this key, in the canonical form of RFC 8785.
    pub plan_hash: Hash,
}

impl<Frozen> IssuedPlan<Frozen> {
    /// Path in the survey.
    pub fn file(&self) -> String {
        format!("{FOLDER}/{}.json", self.id)
    }

    /// Whether it may be driven by on a day, if no other plan takes its place.
    pub fn covers(&self, day: Date) -> bool {
        self.valid_from <= day && self.valid_until.is_none_or(|last| day <= last)
    }
}

impl IssuedPlan {
    /// Writes it into a survey, where no file of its name may be yet.
    ///
    /// # Errors
    /// [`WriteError`] if there is one, even if it came meanwhile, or the system does not let it.
    pub fn write(&self, survey: &Path) -> Result<PathBuf, WriteError> {
        let path = survey.join(FOLDER).join(format!("{}.json", self.id));
        survey::create(&path, self.text().as_bytes())?;
        Ok(path)
    }

    /// The text of its file.
    pub fn text(&self) -> String {
        format!("{:#}\n", self.to_json())
    }

    pub(super) fn to_json(&self) -> Value {
        serde_json::to_value(self).expect("its keys are text and its numbers are finite")
    }
}

/// The hash an issued plan should have; `document` is the file as read.
pub(super) fn plan_hash(document: &Value) -> Hash {
    let mut document = document.clone();
    if let Value::Object(keys) = &mut document {
        keys.shift_remove("plan_hash");
    }
    Hash::of_json(&document)
}

impl InputFile {
    pub(super) fn of(path: &str, bytes: &[u8]) -> Self {
        Self {
            path: path.to_owned(),
            hash: Hash::of_bytes(bytes),
            values_hash: survey::written_values(path, bytes).as_ref().map(Hash::of_json),
        }
    }

    /// The files of these paths that the folder holds, in order of path.
    pub(super) fn all<'a>(
        folder: &Folder,
        paths: impl IntoIterator<Item = &'a String>,
    ) -> Vec<Self> {
        let bytes = |path: &'a String| Some(Self::of(path, folder.bytes(path)?));
        paths.into_iter().filter_map(bytes).collect()
    }
}

pub(super) fn inputs_hash(inputs: &[InputFile]) -> Hash {
    let line = |file: &InputFile| format!("{}  {}\n", file.hash.digits(), file.path);
    Hash::of_bytes(inputs.iter().map(line).collect::<String>().as_bytes())
}

/// Days as `2027-03-01`.
mod day {
    use model::date::Date;
    use serde::{Deserialize, Deserializer, Serializer, de::Error};

    #[expect(clippy::trivially_copy_pass_by_ref, reason = "serde gives fields by reference")]
    pub(super) fn serialize<S: Serializer>(day: &Date, to: S) -> Result<S::Ok, S::Error> {
        to.collect_str(day)
    }

    pub(super) fn deserialize<'de, D: Deserializer<'de>>(from: D) -> Result<Date, D::Error> {
        String::deserialize(from)?.parse().map_err(D::Error::custom)
    }
}

/// The same where there may be none.
mod last_day {
    use model::date::Date;
    use serde::{Deserialize, Deserializer, Serialize, Serializer, de::Error};

    #[expect(
        clippy::ref_option,
        clippy::trivially_copy_pass_by_ref,
        reason = "serde gives fields by reference"
    )]
    pub(super) fn serialize<S: Serializer>(day: &Option<Date>, to: S) -> Result<S::Ok, S::Error> {
        day.map(|day| day.to_string()).serialize(to)
    }

    pub(super) fn deserialize<'de, D: Deserializer<'de>>(
        from: D,
    ) -> Result<Option<Date>, D::Error> {
        let text = Option::<String>::deserialize(from)?;
        text.map(|text| text.parse().map_err(D::Error::custom)).transpose()
    }
}
