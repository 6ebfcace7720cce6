namespace FixScore.Reading;

/// <summary>What one reading shares: the problems found so far and the names asked for.</summary>
sealed class ReadingContext
{
    public List<Problem> Problems { get; } = [];

    /// <summary>Names asked of the objects being read, innermost last.</summary>
    public List<string> Asked { get; } = [];

    public bool HasErrors => Problems.Exists(problem => problem.Severity == Severity.Error);

    public void Error(Pointer at, string code, string template, string hint, params ReadOnlySpan<(string, Value)> values) =>
        Problems.Add(Problem.Of(Severity.Error, at, code, template, hint, values));
}
