using System.Text.Json;
using FixScore.Records;

namespace FixScore.Reading.Records;

static class RemarkReader
{
    public static Observation Observation(ObjectReader observation)
    {
        var kind = observation.KindOf("value");
        return observation.Entry(new Observation
        {
            Name = observation.Matching("name", IsVendorName, "a name like vendor.name"),
            Flag = kind is JsonValueKind.True or JsonValueKind.False ? observation.FlagOrNull("value") : null,
            Word = kind is JsonValueKind.String ? observation.Slug("value") : null,
            Number = kind is JsonValueKind.True or JsonValueKind.False or JsonValueKind.String
                ? null
                : observation.Quantity("value", negative: true, required: true),
            Unit = observation.TextOrNull("unit"),
            Parts = observation.Ids("parts"),
        });
    }

    public static Remark Remark(ObjectReader finding) => finding.Entry(new Remark
    {
        Topic = finding.Text("topic"),
        Text = finding.Text("text"),
        About = finding.Ids("about"),
    });

    public static EvidenceItem Evidence(ObjectReader evidence) => evidence.Entry(new EvidenceItem
    {
        Id = evidence.Slug("id"),
        Kind = evidence.Word<EvidenceKind>("kind"),
        Ref = evidence.Text("ref"),
        Sha256 = evidence.MatchingOrNull("sha256", IsSha256, "a SHA-256 of 64 lower-case hexadecimal digits"),
        Retrieved = evidence.DateOrNull("retrieved"),
    });

    static bool IsVendorName(string text) => Slugs.IsSlug(text) && text.Contains('.', StringComparison.Ordinal);

    static bool IsSha256(string text) => text.Length == 64 && text.All(char.IsAsciiHexDigitLower);
}
