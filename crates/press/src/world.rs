//! What typst may see: the template, one document, the fonts.

use std::sync::LazyLock;

use typst::diag::{FileError, FileResult};
use typst::foundations::{Bytes, Datetime, Duration};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Library, LibraryExt, World};

use crate::fonts::FONTS;

const TEMPLATE: &str = include_str!("template.typ");

static LIBRARY: LazyLock<LazyHash<Library>> = LazyLock::new(|| LazyHash::new(Library::default()));
static MAIN: LazyLock<FileId> = LazyLock::new(|| id("/main.typ"));
static DATA: LazyLock<FileId> = LazyLock::new(|| id("/document.json"));
static SOURCE: LazyLock<Source> = LazyLock::new(|| Source::new(*MAIN, TEMPLATE.to_owned()));

fn id(path: &str) -> FileId {
    let path = VirtualPath::new(path).expect("the paths of this file are well formed");
    RootedPath::new(VirtualRoot::Project, path).intern()
}

/// The world of one document.
pub(crate) struct PaperWorld {
    data: Bytes,
}

impl PaperWorld {
    pub(crate) fn new(json: Vec<u8>) -> Self {
        Self { data: Bytes::new(json) }
    }
}

impl World for PaperWorld {
    fn library(&self) -> &LazyHash<Library> {
        &LIBRARY
    }

    fn book(&self) -> &LazyHash<FontBook> {
        &FONTS.book
    }

    fn main(&self) -> FileId {
        *MAIN
    }

    fn source(&self, id: FileId) -> FileResult<Source> {
        if id == *MAIN { Ok(SOURCE.clone()) } else { Err(FileError::AccessDenied) }
    }

    fn file(&self, id: FileId) -> FileResult<Bytes> {
        if id == *DATA { Ok(self.data.clone()) } else { Err(FileError::AccessDenied) }
    }

    fn font(&self, index: usize) -> Option<Font> {
        FONTS.all.get(index).cloned()
    }

    fn today(&self, _: Option<Duration>) -> Option<Datetime> {
        None
    }
}
