using System.Text;

namespace FixScore.Fuzz.Findings;

/// <summary>What an input led to, as a set of traces: codes with the shape of their pointers. An input that leaves a new one is worth changing further.</summary>
sealed class Traces
{
    readonly HashSet<string> found = new(StringComparer.Ordinal);

    public IReadOnlyCollection<string> Found => found;

    /// <summary>All of them in one word, whatever their order.</summary>
    public string Together => string.Join(' ', found.Order(StringComparer.Ordinal));

    public void Clear() => found.Clear();

    public void Add(string code) => found.Add(code);

    public void Add(string code, Pointer at) => found.Add($"{code} {Shape(at.Text)}");

    // Which entry it was does not matter, nor a name that the input made up.
    static string Shape(string pointer)
    {
        var shape = new StringBuilder();
        foreach (var step in pointer.Split('/').Skip(1).Take(6))
            shape.Append('/').Append(step.Length > 24 || step.Any(letter => !char.IsAsciiLetter(letter)) ? "*" : step);
        return shape.ToString();
    }
}
