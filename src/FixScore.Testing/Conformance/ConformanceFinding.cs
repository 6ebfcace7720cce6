namespace FixScore.Testing;

/// <summary>A law that a criterion breaks: data first, text from it.</summary>
/// <param name="Sample">Id of the record that shows it, with what was taken from it; empty for what the criterion says of itself.</param>
/// <param name="Why">The code, one of <see cref="ConformanceCodes"/>, the facts and the text.</param>
public sealed record ConformanceFinding(string Sample, Reason Why)
{
    /// <summary>The code, one of <see cref="ConformanceCodes"/>.</summary>
    public string Code => Why.Code;

    /// <summary>The text in the invariant culture.</summary>
    public string Text => Why.Text;

    /// <inheritdoc/>
    public override string ToString() => Sample.Length == 0 ? $"{Code}: {Text}" : $"{Code}: {Text} ({Sample})";
}
