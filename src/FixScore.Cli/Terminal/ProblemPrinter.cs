using System.Globalization;

namespace FixScore.Cli.Terminal;

/// <summary>Prints problems to standard error: where, what, the line with carets under it, what to do.</summary>
sealed class ProblemPrinter(Streams streams)
{
    const int Most = 200;

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
        streams.Error.WriteLine(Plain.Text($"{file}{place} {severity}{problem.Code} {problem.Message} ({problem.At})", 1000));
        if (located.Source.Length > 0) Carets(located);
        streams.Error.WriteLine("  " + Plain.Text(problem.Hint, 1000));
    }

    // Tabs and wide characters keep their width above the carets because the blanks before them are copied from the line.
    void Carets(LocatedProblem located)
    {
        var column = located.Column - 1;
        if (column > located.Source.Length) return;
        var (from, to) = column < 60 ? (0, Math.Min(located.Source.Length, 76)) : (column - 40, Math.Min(located.Source.Length, column + 36));
        var line = located.Source[from..to];
        var lead = string.Concat(line.Take(column - from).Select(letter => letter == '\t' ? '\t' : ' '));
        var length = Math.Clamp(located.Length, 1, Math.Max(1, to - column));
        streams.Error.WriteLine("  " + Plain.Text(line.Replace('\t', ' ')));
        streams.Error.WriteLine("  " + lead.Replace('\t', ' ') + new string('^', length));
    }
}
