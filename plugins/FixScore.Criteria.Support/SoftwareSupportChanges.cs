using System.Text.Json.Nodes;

namespace FixScore.Criteria.Support;

/// <summary>Design changes for <see cref="SoftwareSupportCriterion"/>: updates of all kinds asked for, for as long as the next better bands ask.</summary>
static class SoftwareSupportChanges
{
    public static IEnumerable<DesignChange> Of(DeviceContext context)
    {
        var facts = SoftwareSupportFacts.Of(context.Case.Record.Support, context.Get(SoftwareSupportOptions.Kinds), context.Get(SoftwareSupportOptions.CountedFrom));
        if (!facts.Kinds.All(kind => Member(kind.Kind) is not null)) return [];
        var now = new YearPoints(context).Of(facts.Years).Low;
        return context.Get(SoftwareSupportOptions.Bands).Entries.Where(band => band.Points > now && band.Limit > facts.Years.Low)
            .OrderBy(band => band.Limit).Select(band => Longer(facts, band.Limit));
    }

    static DesignChange Longer(SoftwareSupportFacts facts, decimal years)
    {
        var at = Pointer.Root.Child("support");
        var patch = facts.IsRecorded ? DesignPatch.Empty : DesignPatch.Empty.Set(Pointer.Root, "support", new JsonObject());
        patch = facts.Kinds.Where(kind => !facts.IsCountedAsAsked || (kind.Years?.Min ?? 0) < years)
            .Aggregate(patch, (all, kind) => all.Set(at, Member(kind.Kind)!, years));
        if (!facts.IsCountedAsAsked) patch = patch.Set(at, "countedFrom", Word.Of(facts.Asked!.Value));
        var id = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"updates-for-{years:0.##}-years");
        return patch.As(id.Replace('.', '-'), Reason.Of(
            "more-updates", "Promise updates of the kinds {kinds} for {years}.", facts.IsRecorded ? [at] : [],
            ("kinds", string.Join(", ", facts.Kinds.Select(kind => kind.Kind))), ("years", Value.Of(years, "years"))));
    }

    static string? Member(string kind) => kind switch
    {
        "security" => "securityUpdateYears",
        "corrective" => "correctiveUpdateYears",
        "functionality" => "functionalityUpdateYears",
        _ => null,
    };
}
