namespace FixScore.Reading;

/// <summary>What one reading shares: the problems found so far and the names asked for.</summary>
sealed class ReadingContext
{
    /// <summary>More problems than this help nobody, and a text can hold millions.</summary>
    public const int MostProblems = 1000;

    readonly List<Problem> problems = [];
    bool more;

    /// <summary>The problems; the last one says when there are more.</summary>
    public IReadOnlyList<Problem> Problems => more ? [.. problems, TooMany] : problems;

    /// <summary>Names asked of the objects being read, innermost last.</summary>
    public List<string> Asked { get; } = [];

    public bool HasErrors { get; private set; }

    /// <summary>Whether no further problem changes anything.</summary>
    public bool IsSettled => HasErrors && more;

    public void Error(Pointer at, string code, string template, string hint, params ReadOnlySpan<(string, Value)> values) =>
        Add(Severity.Error, at, code, template, hint, values);

    public void Warn(Pointer at, string code, string template, string hint, params ReadOnlySpan<(string, Value)> values) =>
        Add(Severity.Warning, at, code, template, hint, values);

    public void AddRange(IEnumerable<Problem> found)
    {
        foreach (var problem in found)
        {
            if (HasRoomFor(problem.Severity)) problems.Add(problem);
            if (IsSettled) return;
        }
    }

    void Add(Severity severity, Pointer at, string code, string template, string hint, ReadOnlySpan<(string, Value)> values)
    {
        if (HasRoomFor(severity)) problems.Add(Problem.Of(severity, at, code, template, hint, values));
    }

    bool HasRoomFor(Severity severity)
    {
        HasErrors |= severity == Severity.Error;
        more |= problems.Count == MostProblems;
        return !more;
    }

    Problem TooMany => Problem.Of(
        HasErrors ? Severity.Error : Severity.Warning, Pointer.Root, "too-many-problems", "There are more than {most} problems; the rest is not shown.",
        "Mend these first.", ("most", MostProblems));
}
