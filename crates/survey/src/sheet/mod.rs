//! Rows of a maker's load-inflation document, from text tables and workbooks.

mod encoding;

pub(crate) use encoding::decode;
