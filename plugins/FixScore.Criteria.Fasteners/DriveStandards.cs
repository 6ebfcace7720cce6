using System.Collections.Frozen;
using System.Text.Json;

namespace FixScore.Criteria.Fasteners;

/// <summary>A screw drive and the standard behind it.</summary>
/// <param name="Slug">The word in records.</param>
/// <param name="Name">The name people read.</param>
/// <param name="Standard">The standard; <c>null</c> when none is published.</param>
/// <param name="Note">What the standard is about, or what should be known.</param>
/// <param name="Standing"><c>read</c> when the number was checked against a publisher's listing, <c>memory</c> when not.</param>
sealed record DriveStandard(string Slug, string Name, string? Standard, string Note, string Standing);

/// <summary>The drives listed in <c>Data/drive-standards.json</c>, which is embedded.</summary>
static class DriveStandards
{
    static readonly FrozenDictionary<string, DriveStandard> BySlug =
        Read().ToFrozenDictionary(drive => drive.Slug, StringComparer.Ordinal);

    public static IEnumerable<DriveStandard> All => BySlug.Values.OrderBy(drive => drive.Slug, StringComparer.Ordinal);

    public static DriveStandard? Find(string slug) => BySlug.GetValueOrDefault(slug);

    static List<DriveStandard> Read()
    {
        using var data = typeof(DriveStandards).Assembly.GetManifestResourceStream("drive-standards.json")!;
        using var document = JsonDocument.Parse(data);
        return [.. document.RootElement.GetProperty("drives").EnumerateArray().Select(Drive)];
    }

    static DriveStandard Drive(JsonElement drive)
    {
        string Text(string member) => drive.GetProperty(member).GetString()!;
        return new(Text("slug"), Text("name"), drive.GetProperty("standard").GetString(), Text("note"), Text("standing"));
    }
}
