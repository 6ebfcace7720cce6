using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace FixScore;

/// <summary>Why: a code, the facts by name, and where they stand in the record. Text is made from these last.</summary>
/// <param name="Code">Names the reason among those of its author, a slug.</param>
/// <param name="Template">English text with <c>{names}</c> of values in it.</param>
/// <param name="Values">The facts, in the order given; names are unique.</param>
/// <param name="Pointers">The entries of the record that show it.</param>
/// <param name="Points">Points that this reason alone stands for; <c>null</c> when it does not stand for points.</param>
public sealed record Reason(
    string Code,
    string Template,
    ImmutableArray<NamedValue> Values,
    ImmutableArray<Pointer> Pointers,
    Interval? Points = null)
{
    /// <summary>A reason in one call.</summary>
    public static Reason Of(string code, string template, IEnumerable<Pointer> at, params ReadOnlySpan<(string Name, Value Value)> values)
    {
        var named = ImmutableArray.CreateBuilder<NamedValue>(values.Length);
        foreach (var (name, value) in values) named.Add(new(name, value));
        return new(code, template, named.MoveToImmutable(), [.. at]);
    }

    /// <summary>The text in the invariant culture, as score documents hold it.</summary>
    public string Text => ToString(CultureInfo.InvariantCulture);

    /// <summary>The text for people, numbers written as <paramref name="culture"/> does. A name without a value stays as it is.</summary>
    public string ToString(CultureInfo culture)
    {
        var rest = Template.AsSpan();
        var text = new StringBuilder(rest.Length + 32);
        for (var open = rest.IndexOf('{'); open >= 0; open = rest.IndexOf('{'))
        {
            var close = rest.IndexOf('}');
            if (close < open) break;
            text.Append(rest[..open]).Append(Filled(rest[open..(close + 1)], culture));
            rest = rest[(close + 1)..];
        }
        return text.Append(rest).ToString();
    }

    // One pass over the template: a value that itself holds braces (a part may be named anything) stays as it is.
    string Filled(ReadOnlySpan<char> braced, CultureInfo culture)
    {
        foreach (var (name, value) in Values)
            if (braced[1..^1].SequenceEqual(name)) return value.ToString(culture);
        return braced.ToString();
    }
}

/// <summary>A fact and its name.</summary>
/// <param name="Name">Name of the fact, camelCase.</param>
/// <param name="Value">The fact.</param>
public readonly record struct NamedValue(string Name, Value Value);
