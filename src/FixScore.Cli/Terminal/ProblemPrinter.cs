using System.Globalization;

namespace FixScore.Cli.Terminal;

/// <summary>Prints problems to standard error: where, what, the line with carets under it, what to do.</summary>
sealed class ProblemPrinter(Streams streams)
{
    const int Most = 200;
    const int Window = 76;

    public void Print(string file, IReadOnlyList<LocatedProblem> problems)
    {
        foreach (var problem in problems.Take(Most)) Print(file, problem);
        if (problems.Count > Most) streams.Error.WriteLine($"... and {(problems.Count - Most).ToString(CultureInfo.InvariantCulture)} more problems in {file}.");
    }

    public void Print(string file, Problem problem) => Print(file, new LocatedProblem(problem, 0, 0));

    void Print(string file, LocatedProblem located)
    {
        var problem = located.Problem;
        var place = located.Line > 0 ? string.Create(CultureInfo.InvariantCulture, $":{located.Line}:{located.Column}") : "";
        var severity = problem.Severity == Severity.Error ? "" : Word.Of(problem.Severity) + " ";
        var pointer = problem.At == Pointer.Root ? "" : $" ({problem.At})";
        streams.Error.WriteLine(Plain.Text($"{file}{place} {severity}{problem.Code} {problem.Message}{pointer}", 1000));
        if (located.Source.Length > 0) Carets(located);
        if (problem.Hint.Length > 0) streams.Error.WriteLine("  " + Plain.Text(problem.Hint, 1000));
    }

    void Carets(LocatedProblem located)
    {
        var column = located.Column - 1;
        if (column > located.Source.Length) return;
        var from = column < 60 ? 0 : column - 40;
        var to = Math.Min(located.Source.Length, from + Window);
        var length = Math.Clamp(located.Length, 1, Math.Max(1, to - column));
        streams.Error.WriteLine("  " + Plain.Text(located.Source[from..to].Replace('\t', ' ')));
        streams.Error.WriteLine("  " + new string(' ', column - from) + new string('^', length));
    }
}
