using System.Collections.Immutable;
using System.Text;

namespace FixScore.Scoring;

/// <summary>Finds answers that no document could hold. A criterion that is compiled with care gives none; one from elsewhere may.</summary>
static class OutcomeCheck
{
    /// <summary>What is wrong, named after the member of the answer; <c>null</c> when it can be written.</summary>
    public static string? Fault(Outcome outcome)
    {
        if (outcome.Missing.IsDefault || outcome.Missing.Any(each => each is null || !IsSound(each.What) || !IsSound(each.At.ToString()))) return "missing";
        if (outcome.Reasons.IsDefault || outcome.Reasons.Contains(null!)) return "reasons";
        return outcome.Reasons.Select(Fault).FirstOrDefault(fault => fault is not null);
    }

    static string? Fault(Reason reason)
    {
        if (!IsSound(reason.Code)) return "code";
        if (!IsSound(reason.Template)) return "template";
        if (reason.Pointers.IsDefault || !reason.Pointers.All(at => IsSound(at.ToString()))) return "pointers";
        return reason.Values.IsDefault || !AreNamed(reason.Values) ? "values" : null;
    }

    static bool AreNamed(ImmutableArray<NamedValue> values) =>
        values.All(value => IsSound(value.Name) && (value.Value.Kind != ValueKind.Word || IsSound(value.Value.Text)))
        && values.Select(value => value.Name).Distinct(StringComparer.Ordinal).Count() == values.Length;

    // Half of a surrogate pair has no UTF-8 form.
    static bool IsSound(string? text)
    {
        if (text is null) return false;
        for (ReadOnlySpan<char> rest = text; !rest.IsEmpty;)
        {
            if (Rune.DecodeFromUtf16(rest, out _, out var length) != System.Buffers.OperationStatus.Done) return false;
            rest = rest[length..];
        }
        return true;
    }
}
