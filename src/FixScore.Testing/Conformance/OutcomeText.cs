using System.Globalization;
using System.Text;

namespace FixScore.Testing;

/// <summary>Everything an answer says as one text, so that answers can be compared and differences shown.</summary>
static class OutcomeText
{
    public static string Of(IEnumerable<Judgement> judgements)
    {
        var text = new StringBuilder();
        foreach (var each in judgements) Add(text, each);
        return text.ToString();
    }

    static void Add(StringBuilder text, Judgement judgement)
    {
        text.Append(judgement.Part).Append(": ");
        if (judgement.Outcome is not { } outcome)
        {
            text.Append("fails, ").Append(judgement.Fault).Append('\n');
            return;
        }
        text.Append(Word.Of(outcome.Kind)).Append(' ').Append(Of(outcome.Score)).Append('\n');
        foreach (var reason in outcome.Reasons) Add(text, reason);
        foreach (var missing in outcome.Missing) text.Append("  missing ").Append(missing.At).Append(' ').Append(missing.What).Append('\n');
    }

    static void Add(StringBuilder text, Reason reason)
    {
        text.Append("  ").Append(reason.Code).Append(' ').Append(reason.Text);
        foreach (var (name, value) in reason.Values) text.Append(' ').Append(name).Append('=').Append(Of(value));
        foreach (var pointer in reason.Pointers) text.Append(" at ").Append(pointer);
        text.Append(reason.Points is { } points ? $" for {Of(points)}" : "").Append('\n');
    }

    static string Of(Value value) => $"{Word.Of(value.Kind)}:{value.Text}{Of(value.Number)}{value.Unit}";

    static string Of(Interval interval) => $"[{Of(interval.Low)}, {Of(interval.High)}]";

    static string Of(decimal number) => number.ToString("0.############################", CultureInfo.InvariantCulture);
}
