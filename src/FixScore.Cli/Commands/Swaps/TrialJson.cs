using System.Collections.Immutable;
using System.Text.Json;
using FixScore.Cli.Files;
using FixScore.Pairing;

namespace FixScore.Cli.Commands.Swaps;

/// <summary>Forms that the JSON of trials shares: words that may be unknown, and findings.</summary>
static class TrialJson
{
    public static void Strings(this Utf8JsonWriter json, ImmutableArray<string> strings)
    {
        json.WriteStartArray();
        foreach (var each in strings) json.WriteStringValue(each);
        json.WriteEndArray();
    }

    public static void Context(this Utf8JsonWriter json, SwapContext context)
    {
        json.WriteStartObject("context");
        json.WordOrNull("lockState", context.LockState);
        json.WriteString("software", context.Software);
        json.WordOrNull("procedure", context.Procedure);
        json.WriteEndObject();
    }

    public static void WordOrNull<T>(this Utf8JsonWriter json, string name, T? word) where T : struct, Enum =>
        json.WriteString(name, word is { } known ? Word.Of(known) : null);

    /// <summary>A word, a list of those it can be, or <c>null</c> when nothing was observed.</summary>
    public static void Observed<T>(this Utf8JsonWriter json, string name, OneOf<T> word) where T : struct, Enum
    {
        if (word.IsUnknown) json.WriteNull(name);
        else if (word.IsExact) json.WriteString(name, Word.Of(word.Stated[0]));
        else json.Words(name, [.. word.Stated.Select(Word.Of)]);
    }

    /// <summary>A number, its known ends when it is a range, or <c>null</c>.</summary>
    public static void Observed(this Utf8JsonWriter json, string name, Quantity? quantity)
    {
        if (quantity is not { IsExact: false } range)
        {
            json.Exact(name, quantity?.Min);
            return;
        }
        json.WriteStartObject(name);
        if (range.Min is { } min) json.Exact("min", min);
        if (range.Max is { } max) json.Exact("max", max);
        json.WriteEndObject();
    }

    public static void Flag(this Utf8JsonWriter json, string name, bool? flag)
    {
        if (flag is { } known) json.WriteBoolean(name, known);
        else json.WriteNull(name);
    }

    public static void Findings(this Utf8JsonWriter json, string name, ImmutableArray<TrialFinding> findings)
    {
        json.WriteStartArray(name);
        foreach (var finding in findings)
        {
            json.WriteStartObject();
            json.Finding(finding);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    public static void Finding(this Utf8JsonWriter json, TrialFinding finding)
    {
        json.WriteString("code", finding.Code);
        json.WriteString("text", finding.Text);
        json.Words("trials", finding.Trials);
        json.Words("pointers", [.. finding.Why.Pointers.Select(pointer => pointer.Text)]);
    }
}
