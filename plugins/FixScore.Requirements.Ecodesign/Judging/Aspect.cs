using FixScore.Records;

namespace FixScore.Requirements.Judging;

/// <summary>One thing a law asks of every operation on the way to a part.</summary>
/// <param name="Code">Names it in codes of reasons, a slug.</param>
/// <param name="Keeps">Whether an operation keeps it; <c>null</c> when the record does not tell.</param>
/// <param name="Seen">What was observed of the operation, in a phrase.</param>
sealed record Aspect(string Code, Func<Operation, bool?> Keeps, Func<Operation, string> Seen);
