//! language
