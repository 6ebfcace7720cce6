using System.Text.Json;

namespace FixScore.Analysis.Generations;

/// <summary>Says a change in the words of the record.</summary>
static class ChangeText
{
    const int Longest = 160;

    static readonly string[] Left = ["id", "note", "evidence", "footage"];

    public static string Of(RecordChange change)
    {
        var what = $"{Noun(change)}{(change.Was is { } was ? $" (was {was})" : "")}";
        var member = Member(change);
        return change.Kind switch
        {
            ChangeKind.Added when member.Length == 0 => $"{what} is new: {Plain(change.New!)}.",
            ChangeKind.Removed when member.Length == 0 => $"{what} is gone: {Plain(change.Old!)}.",
            ChangeKind.Added => $"{what}: {member} is now {Plain(change.New!)}; before, it was not recorded.",
            ChangeKind.Removed => $"{what}: {member} was {Plain(change.Old!)}; now it is not recorded.",
            _ when member.Length == 0 => $"{what}: now {Plain(change.New!)}, was {Plain(change.Old!)}.",
            _ => $"{what}: {member} is now {Plain(change.New!)}, was {Plain(change.Old!)}.",
        };
    }

    static string Noun(RecordChange change) => change.Entry is { } entry
        ? $"{(change.Topic.EndsWith('s') ? change.Topic[..^1] : change.Topic)} {entry}"
        : change.Topic;

    static string Member(RecordChange change) => string.Join(' ', change.Path.Text.Split('/').Skip(change.Entry is null ? 2 : 3).Select(Words));

    // 'softensAtC' reads 'softens at C'.
    static string Words(string name) => string.Concat(name.Select((letter, i) => char.IsUpper(letter) && i > 0 && !char.IsUpper(name[i - 1]) ? $" {(i + 1 < name.Length ? char.ToLowerInvariant(letter) : letter)}" : $"{letter}"));

    static string Plain(string json)
    {
        using var document = JsonDocument.Parse(json);
        var text = Plain(document.RootElement);
        return text.Length <= Longest ? text : text[..(Longest - 1)] + "…";
    }

    static string Plain(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object when element.TryGetProperty("min", out var min) && element.TryGetProperty("max", out var max) => $"{Plain(min)} to {Plain(max)}",
        JsonValueKind.Object => string.Join(", ", element.EnumerateObject().Where(member => !Left.Contains(member.Name)).Select(member => $"{Words(member.Name)} {Plain(member.Value)}")),
        JsonValueKind.Array when element.GetArrayLength() == 0 => "none",
        JsonValueKind.Array => string.Join(" and ", element.EnumerateArray().Select(Plain)),
        JsonValueKind.True => "yes",
        JsonValueKind.False => "no",
        JsonValueKind.String => element.GetString()!,
        _ => element.GetRawText(),
    };
}
