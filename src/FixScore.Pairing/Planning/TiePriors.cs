using System.Collections.Frozen;
using System.Text.Json;

namespace FixScore.Pairing;

/// <summary>How probable it is, before any trial, that software ties a part to the main board, by role.</summary>
/// <remarks>
/// <para>A plan of trials needs a guess to start from; no verdict and no score ever uses one. The built-in guesses are
/// invented, without source, and say so in <see cref="About"/>.</para>
/// <para>Written as JSON: <c>{"about": "...", "roles": {"battery": 0.4}, "other": 0.1}</c>; all three may be left out.
/// Immutable and thread safe.</para>
/// </remarks>
public sealed class TiePriors
{
    const decimal Least = 0.001m;

    // Of a member that stands twice people might read the one that does not hold.
    static readonly JsonDocumentOptions Strict = new() { AllowDuplicateProperties = false };

    readonly FrozenDictionary<string, decimal> roles;

    TiePriors(string about, FrozenDictionary<string, decimal> roles, decimal other) => (About, this.roles, Other) = (about, roles, other);

    /// <summary>The built-in guesses: invented.</summary>
    public static TiePriors BuiltIn { get; } = ReadBuiltIn();

    /// <summary>Where the numbers come from, for people.</summary>
    public string About { get; }

    /// <summary>The probability for every role that has none of its own.</summary>
    public decimal Other { get; }

    /// <summary>The probability for a role, from 0.001 to 0.999.</summary>
    public decimal Of(string role) => roles.GetValueOrDefault(role, Other);

    /// <summary>The same with another probability for one role.</summary>
    /// <exception cref="FormatException">The probability is below 0.001 or above 0.999.</exception>
    public TiePriors With(string role, decimal probability)
    {
        var changed = new Dictionary<string, decimal>(roles, StringComparer.Ordinal) { [role] = Checked(role, probability) };
        return new(About, changed.ToFrozenDictionary(StringComparer.Ordinal), Other);
    }

    /// <summary>Reads priors; what they leave out is as built in only for <c>other</c>.</summary>
    /// <exception cref="FormatException">It is no such document; the message says why.</exception>
    public static TiePriors Read(ReadOnlyMemory<byte> json)
    {
        try
        {
            using var document = JsonDocument.Parse(json, Strict);
            return Read(document.RootElement);
        }
        catch (JsonException failure)
        {
            throw new FormatException(failure.LineNumber is { } line ? $"It is no JSON (line {line + 1})." : "A member stands twice in one object.", failure);
        }
        catch (InvalidOperationException failure)
        {
            throw new FormatException("A text holds half of a surrogate pair.", failure);
        }
    }

    static TiePriors Read(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object) throw new FormatException("It is no JSON object.");
        var (about, other, roles) = ("Given with the call.", (decimal?)null, new Dictionary<string, decimal>(StringComparer.Ordinal));
        foreach (var member in root.EnumerateObject())
        {
            if (member is { Name: "about", Value.ValueKind: JsonValueKind.String }) about = member.Value.GetString()!;
            else if (member.Name == "other") other = Number(member);
            else if (member is { Name: "roles", Value.ValueKind: JsonValueKind.Object })
                foreach (var role in member.Value.EnumerateObject()) roles[role.Name] = Number(role);
            else throw new FormatException($"'{member.Name}' is not one of 'about' (text), 'roles' (object) and 'other' (number).");
        }
        return new(about, roles.ToFrozenDictionary(StringComparer.Ordinal), other ?? BuiltIn.Other);
    }

    static decimal Number(JsonProperty member) =>
        member.Value.ValueKind == JsonValueKind.Number && member.Value.TryGetDecimal(out var number)
            ? Checked(member.Name, number)
            : throw new FormatException($"'{member.Name}' has no number.");

    static decimal Checked(string name, decimal probability) =>
        probability is >= Least and <= 1 - Least ? probability
            : throw new FormatException($"The probability of '{name}' must be from 0.001 to 0.999: a plan must leave room for either outcome.");

    static TiePriors ReadBuiltIn()
    {
        using var stream = typeof(TiePriors).Assembly.GetManifestResourceStream("planning/priors.json")!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return Read(bytes);
    }
}
