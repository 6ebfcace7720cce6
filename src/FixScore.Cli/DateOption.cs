using System.Globalization;

namespace FixScore.Cli;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;
using System.CommandLine.Parsing;

/// <summary>Options that take a day, always written 2026-01-31, whatever the culture or calendar of the machine.</summary>
static class DateOption
{
    const string Form = "yyyy-MM-dd";

    public static Option<DateOnly> Of(string name, string description) => new(name)
    {
        Description = description, HelpName = "DATE",
        // The clock is read here alone: a default for people, not a result.
        DefaultValueFactory = _ => DateOnly.FromDateTime(DateTime.Today),
        CustomParser = result => Parse(result) ?? default,
    };

    /// <summary>One that may be left out and then has no day.</summary>
    public static Option<DateOnly?> Optional(string name, string description) =>
        new(name) { Description = description, HelpName = "DATE", CustomParser = Parse };

    public static string Text(DateOnly date) => date.ToString(Form, CultureInfo.InvariantCulture);

    static DateOnly? Parse(ArgumentResult result)
    {
        if (DateOnly.TryParseExact(result.Tokens[0].Value, Form, CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)) return date;
        result.AddError($"'{result.Tokens[0].Value}' is not a day. Write it as {Form.ToUpperInvariant()}, such as 2026-01-31.");
        return null;
    }
}
