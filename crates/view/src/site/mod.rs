//! What the local page asks for and is answered, beyond the documents of the commands.

mod files;
mod home;
mod issue;
mod map;
mod now;
mod paper;
mod practice;
mod series;
mod strip;
mod trial;

pub use files::{
    EditView, FileDocument, FileProblemView, FileSaveRequest, FileView, FilesDocument,
};
pub use home::{ErrorDocument, HaulNameView, SiteDocument, UnitFormView, UnitsDocument};
pub use issue::IssueRequest;
pub use map::{MapDocument, MapPointView};
pub use now::{NowRequest, ReadingRequest};
pub use paper::{PaperKindView, PapersDocument};
pub use practice::{
    ActionRequest, AgainRequest, DriveDocument, DriveRequest, JudgeRequest, StepRequest,
};
pub use series::{SeriesDocument, SeriesView};
pub use strip::{ColumnsView, StripView};
pub use trial::{
    CalledView, HandSetRequest, MovedRequest, TrialDocument, TrialRequest, WhatIfRequest,
};
