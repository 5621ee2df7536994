//! Published cases against the code.
