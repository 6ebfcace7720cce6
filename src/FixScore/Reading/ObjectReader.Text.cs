using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;

namespace FixScore.Reading;

sealed partial class ObjectReader
{
    delegate string? TextRule(string text);

    public string Text(string name) => Checked(name, true, AnyText) ?? "";

    public string? TextOrNull(string name) => Checked(name, false, AnyText);

    public string Slug(string name) => Checked(name, true, Slugs.Check) ?? "";

    public string? SlugOrNull(string name) => Checked(name, false, Slugs.Check);

    public string Matching(string name, Func<string, bool> matches, string wanted, bool required = true) =>
        Checked(name, required, text => matches(text) ? null : wanted) ?? "";

    public string? MatchingOrNull(string name, Func<string, bool> matches, string wanted) =>
        Checked(name, false, text => matches(text) ? null : wanted);

    public DateOnly? DateOrNull(string name) => Date(name, false);

    public DateOnly Date(string name) => Date(name, true) ?? default;

    /// <summary>A time from the start of the footage, <c>h:mm:ss</c>.</summary>
    public TimeSpan Timecode(string name)
    {
        var time = TimeSpan.Zero;
        Checked(name, true, text => Timecodes.TryParse(text, out time) ? null : "a time like 0:04:35 (h:mm:ss)");
        return time;
    }

    /// <summary>A list of slugs; <c>default</c> when the member is missing.</summary>
    public ImmutableArray<string> SlugList(string name, bool required = false, int least = 0) => Texts(name, Slugs.Check, required, least);

    /// <summary>A list of slugs; empty when the member is missing.</summary>
    public ImmutableArray<string> Ids(string name) => SlugList(name) is { IsDefault: false } ids ? ids : [];

    /// <summary>A list of texts; empty when the member is missing.</summary>
    public ImmutableArray<string> Texts(string name) => Texts(name, AnyText, false, 0) is { IsDefault: false } texts ? texts : [];

    ImmutableArray<string> Texts(string name, TextRule rule, bool required, int least) =>
        List(name, (JsonElement value, Place at, out string item) => TryText(value, at, rule, out item), required, least);

    DateOnly? Date(string name, bool required)
    {
        DateOnly date = default;
        var text = Checked(name, required, each =>
            DateOnly.TryParseExact(each, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out date) ? null : "a date like 2026-03-31");
        return text is null ? null : date;
    }

    string? Checked(string name, bool required, TextRule rule)
    {
        if (!TryGet(name, required, out var value)) return null;
        return TryText(value, Member(name), rule, out var text) ? text : required ? "" : null;
    }

    /// <summary>Text that follows a rule; the rule says what it wants when the text does not.</summary>
    bool TryText(JsonElement value, Place at, TextRule rule, out string text)
    {
        text = "";
        if (value.ValueKind != JsonValueKind.String)
        {
            ReportType(at, "text");
            return false;
        }
        if (!TryDecode(value, at, out text)) return false;
        if (rule(text) is not { } wanted) return true;
        context.Error(at.Pointer, "wrong-text", "'{text}' is not {wanted}.", "Correct it.", ("text", Short(text)), ("wanted", wanted));
        return false;
    }

    bool TryDecode(JsonElement value, Place at, out string text)
    {
        try
        {
            text = value.GetString()!;
            return true;
        }
        catch (InvalidOperationException)
        {
            ReportSurrogate(at);
            text = "";
            return false;
        }
    }

    static string? AnyText(string text) => null;

    static string Short(string text) => text.Length <= 60 ? text : text[..60] + "...";
}
