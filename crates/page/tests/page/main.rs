//! The page as a browser would ask it, without a socket.

mod answers;
mod asked;
mod guarded;
mod papered;
mod practised;
