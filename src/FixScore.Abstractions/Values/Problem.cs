namespace FixScore;

/// <summary>How bad a problem is.</summary>
public enum Severity
{
    /// <summary>The document cannot be used.</summary>
    Error,

    /// <summary>It can be used, but something in it is probably a slip.</summary>
    Warning,

    /// <summary>Something worth knowing.</summary>
    Hint,
}

/// <summary>Something wrong with a record or profile: data first, text from it.</summary>
/// <param name="Severity">How bad it is.</param>
/// <param name="At">Where.</param>
/// <param name="Why">The code, the facts and the text.</param>
/// <param name="Hint">What to do.</param>
public sealed record Problem(Severity Severity, Pointer At, Reason Why, string Hint)
{
    /// <summary>The code, a slug that stays the same when texts improve.</summary>
    public string Code => Why.Code;

    /// <summary>The text in the invariant culture.</summary>
    public string Message => Why.Text;

    /// <summary>A problem in one call; the text may hold <c>{names}</c> of the values.</summary>
    public static Problem Of(
        Severity severity, Pointer at, string code, string template, string hint, params ReadOnlySpan<(string Name, Value Value)> values) =>
        new(severity, at, Reason.Of(code, template, [at], values), hint);
}
