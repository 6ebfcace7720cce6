using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Ecodesign;

/// <summary>The device as the regulation sees it: which part of Annex II it falls under, and its parts by role.</summary>
sealed class EcodesignDevice(RequirementContext context)
{
    public const string Smartphone = "smartphone", SlateTablet = "slate-tablet";

    public TeardownCase Case { get; } = context.Case;

    public TeardownRecord Record => Case.Record;

    public CancellationToken Cancellation => context.Cancellation;

    public bool IsTablet => Record.Device.Kind == SlateTablet;

    /// <summary>Where a point stands: in Part B or D, which is open for other kinds of device.</summary>
    public string Article(string point) => Article(point, point);

    /// <summary>Where a point stands that has different numbers in Parts B and D.</summary>
    public string Article(string inB, string inD) => Record.Device.Kind switch
    {
        Smartphone => $"Annex II B {inB}",
        SlateTablet => $"Annex II D {inD}",
        _ when inB == inD => $"Annex II B/D {inB}",
        _ => $"Annex II B {inB}, D {inD}",
    };

    /// <summary>A requirement about spares, which are owed only some time after release.</summary>
    public Requirement OfSpares(string rule, string point, Func<Answer> judge) =>
        new(rule, Article(point), () => EcodesignScope.WhyNoSparesYet(context) is { } why ? Answer.NotApplicable(why) : judge());

    /// <summary>The answer for all parts of a role. What the device does not have is not asked for.</summary>
    public Answer ForAll(string role, Func<Part, Answer> judge)
    {
        Part[] parts = [.. Record.Parts.Where(part => part.Role == role)];
        if (parts.Length > 0) return Answer.Each(parts.Select(judge));
        if (Record.Absent.Contains(role)) return Answer.NotApplicable(PartReasons.Absent(role));
        return !Record.Device.Foldable && role is ListedParts.Hinge or ListedParts.ProtectiveFoil
            ? Answer.NotApplicable(PartReasons.NotFoldable(role))
            : Answer.Unknown(PartReasons.NotRecorded(role));
    }
}
