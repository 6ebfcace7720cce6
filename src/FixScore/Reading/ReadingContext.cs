namespace FixScore.Reading;

/// <summary>What one reading shares: the problems found so far and the names asked for.</summary>
sealed class ReadingContext
{
    /// <summary>More problems than this help nobody, and a text can hold millions.</summary>
    public const int MostProblems = 1000;

    readonly List<Problem> problems = [];

    public IReadOnlyList<Problem> Problems => problems;

    /// <summary>Names asked of the objects being read, innermost last.</summary>
    public List<string> Asked { get; } = [];

    public bool HasErrors { get; private set; }

    /// <summary>Whether nothing is added any more.</summary>
    public bool IsFull => problems.Count > MostProblems;

    public void Error(Pointer at, string code, string template, string hint, params ReadOnlySpan<(string, Value)> values) =>
        Add(Severity.Error, at, code, template, hint, values);

    public void Warn(Pointer at, string code, string template, string hint, params ReadOnlySpan<(string, Value)> values) =>
        Add(Severity.Warning, at, code, template, hint, values);

    public void AddRange(IEnumerable<Problem> found)
    {
        foreach (var problem in found)
        {
            if (IsFull) return;
            Add(problem);
        }
    }

    void Add(Severity severity, Pointer at, string code, string template, string hint, ReadOnlySpan<(string, Value)> values)
    {
        if (!IsFull) Add(Problem.Of(severity, at, code, template, hint, values));
    }

    // The last place is kept to say that there is more.
    void Add(Problem problem)
    {
        HasErrors |= problem.Severity == Severity.Error;
        problems.Add(problems.Count < MostProblems ? problem : Problem.Of(Severity.Error, Pointer.Root, "too-many-problems",
            "There are more than {most} problems; the rest is not shown.", "Mend these first.", ("most", MostProblems)));
        HasErrors |= IsFull;
    }
}
