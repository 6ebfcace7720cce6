using System.Globalization;

namespace FixScore.Mutants.Trying;

/// <summary>What became of a mutant.</summary>
enum Verdict { Started, Noticed, TooLong, Crashed, Survived, NotReached }

static class Verdicts
{
    /// <summary>Whether no test noticed the mutant.</summary>
    public static bool IsLeft(this Verdict verdict) => verdict is Verdict.Survived or Verdict.NotReached;
}

/// <summary>What one worker has to do and has done, in two files that outlive it.</summary>
sealed class Journal(string folder, string name)
{
    readonly string todo = Path.Combine(folder, $"todo-{name}.txt");
    readonly string done = Path.Combine(folder, $"done-{name}.txt");
    readonly Lock gate = new();

    public string Name => name;

    public void Asks(IEnumerable<int> mutants) => File.WriteAllLines(todo, mutants.Select(mutant => mutant.ToString(CultureInfo.InvariantCulture)));

    public void Starts(int mutant) => Says(mutant, Verdict.Started, "");

    public void Says(int mutant, Verdict verdict, string test)
    {
        lock (gate) File.AppendAllText(done, string.Create(CultureInfo.InvariantCulture, $"{mutant}\t{verdict}\t{test.ReplaceLineEndings(" ")}\n"));
    }

    /// <summary>The last word on each mutant.</summary>
    public Dictionary<int, (Verdict Verdict, string Test)> Said() => !File.Exists(done) ? [] : File.ReadLines(done)
        .Select(line => line.Split('\t')).GroupBy(cells => int.Parse(cells[0], CultureInfo.InvariantCulture))
        .ToDictionary(group => group.Key, group => (Enum.Parse<Verdict>(group.Last()[1]), group.Last()[2]));

    public IReadOnlyList<int> Left()
    {
        var said = Said();
        return [.. File.ReadLines(todo).Select(line => int.Parse(line, CultureInfo.InvariantCulture)).Where(mutant => !said.ContainsKey(mutant))];
    }

    /// <summary>A mutant that was started when the worker ended has ended the worker.</summary>
    public void WorkerEnded()
    {
        foreach (var (mutant, _) in Said().Where(pair => pair.Value.Verdict == Verdict.Started)) Says(mutant, Verdict.Crashed, "");
    }
}
