//! How a command ends, and the exit code that says so.

use std::process::ExitCode;

/// How a command that ran ended.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Outcome {
    /// Done, nothing wrong.
    Done,
    /// Done, and the input has problems or a limit is broken.
    Problems,
}

/// Why a command did not run to its end.
#[derive(Debug)]
pub enum Failure {
    /// The call is wrong.
    Call(anyhow::Error),
    /// The call is right, and there is no answer to it.
    Input(anyhow::Error),
    /// Whoever read the output went away.
    Unread,
}

impl Failure {
    /// A wrong call.
    pub fn call(error: impl Into<anyhow::Error>) -> Self {
        Self::Call(error.into())
    }

    /// An input without an answer.
    pub fn input(error: impl Into<anyhow::Error>) -> Self {
        Self::Input(error.into())
    }
}

impl From<std::io::Error> for Failure {
    fn from(error: std::io::Error) -> Self {
        match error.kind() {
            std::io::ErrorKind::BrokenPipe => Self::Unread,
            _ => Self::Input(anyhow::Error::new(error).context("the output cannot be written")),
        }
    }
}

/// The exit code of a command.
pub fn exit_code(result: &Result<Outcome, Failure>) -> ExitCode {
    match result {
        Ok(Outcome::Done) | Err(Failure::Unread) => ExitCode::SUCCESS,
        Ok(Outcome::Problems) | Err(Failure::Input(_)) => ExitCode::from(1),
        Err(Failure::Call(_)) => ExitCode::from(2),
    }
}
