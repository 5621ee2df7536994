//! Ground whose strength is told twice, by halves, or by layers that are none.

/// What is wrong with what a leg says of its ground.
#[derive(Debug, Clone, PartialEq)]
pub enum GroundFault {
    /// Two measurements of one soil.
    ToldTwice {
        /// The key that is used elsewhere too.
        other: &'static str,
    },
    /// A season without a class of soil.
    SeasonAlone,
    /// A class of soil with neither a season nor a measurement.
    ClassAlone,
    /// No published strength of that class in that season.
    NoNumber,
    /// The aggregate is weaker than the soil under it.
    AggregateWeaker,
    /// Layers that make no pavement.
    Layers {
        /// What is wrong with them.
        message: String,
    },
    /// Least, expected and most saving are not in order.
    SavingOrder,
}
