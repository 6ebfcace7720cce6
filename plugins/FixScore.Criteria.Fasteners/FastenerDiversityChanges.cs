using System.Collections.Immutable;
using System.Text.Json.Nodes;
using FixScore.Records;

namespace FixScore.Criteria.Fasteners;

/// <summary>Design changes for <see cref="FastenerDiversityCriterion"/>: one drive, one diameter, one length for all screws.</summary>
/// <remarks>The one that most screws have already. Which tools the work takes is left as recorded: with one drive it may be fewer.</remarks>
static class FastenerDiversityChanges
{
    public static IEnumerable<DesignChange> Of(DeviceContext context)
    {
        var types = FastenerDiversityFacts.Of(context.Case.Record).Types;
        if (types.Length < 2) return [];
        ImmutableArray<Joint> screws = [.. types.SelectMany(type => type.Joints).Where(joint => joint.Screw is not null)];
        return new[]
        {
            Alike(context.Case, screws, "drive", "", screw => screw.Drive.IsExact ? (JsonNode)screw.Drive.Stated[0] : null),
            Alike(context.Case, screws, "diameterMm", " mm across", screw => Exact(screw.DiameterMm)),
            Alike(context.Case, screws, "lengthMm", " mm long", screw => Exact(screw.LengthMm)),
        }.OfType<DesignChange>();
    }

    static DesignChange? Alike(TeardownCase source, ImmutableArray<Joint> screws, string member, string unit, Func<Screw, JsonNode?> valueOf)
    {
        var (values, others) = (screws.GroupBy(screw => valueOf(screw.Screw!)?.ToJsonString() ?? ""), screws);
        if (values.Where(value => value.Key.Length > 0).MaxBy(value => value.Sum(screw => screw.Count.Min ?? 0)) is not { } most) return null;
        others = [.. screws.Where(screw => !most.Contains(screw))];
        if (others.IsEmpty) return null;
        var value = valueOf(most.First().Screw!)!;
        var patch = others.Aggregate(DesignPatch.Empty, (all, screw) => all.Set(source.At(screw).Child("screw"), member, value.DeepClone()));
        return patch.As($"one-{Names[member]}", Reason.Of(
            $"one-{Names[member]}", "Make all screws alike in {what}: {value}{unit}, as most are; {others} joints change.", others.Select(source.At),
            ("what", Names[member]), ("value", value.ToString()), ("unit", unit), ("others", others.Length)));
    }

    static readonly ImmutableSortedDictionary<string, string> Names = ImmutableSortedDictionary.CreateRange(StringComparer.Ordinal,
        [new("drive", "drive"), new("diameterMm", "diameter"), new KeyValuePair<string, string>("lengthMm", "length")]);

    static JsonNode? Exact(Quantity size) => size.IsExact ? size.Min!.Value : null;
}
