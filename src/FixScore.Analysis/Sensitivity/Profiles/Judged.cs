using System.Collections.Immutable;
using System.Globalization;

namespace FixScore.Analysis.Sensitivity.Profiles;

/// <summary>What criteria said of one record: each is asked once for each scale, options and part, since by contract it then says the same again.</summary>
/// <remarks>Not thread safe: one record's runs own it.</remarks>
sealed class Judged
{
    readonly Dictionary<(string Rule, string Part, string Roles), Outcome> said = [];

    /// <summary>The profile with criteria that remember.</summary>
    public Profile Remembering(Profile profile) => LeafChange.Of(profile, leaf => leaf with { Criterion = leaf.Criterion with { Item = Remembering(leaf) } });

    ICriterion Remembering(LeafNode leaf)
    {
        var rule = $"{leaf.Criterion.Item.Info.Id} {Text(leaf.Scale.Min)} {Text(leaf.Scale.Max)} {string.Join(';', leaf.Options.All.Select(option => $"{option.Key.Name}={Text(option.Value)}"))}";
        return leaf.Criterion.Item switch
        {
            IPartCriterion criterion => new OfPart(this, rule, criterion),
            IDeviceCriterion criterion => new OfDevice(this, rule, criterion),
            var other => other,
        };
    }

    Outcome Once((string, string, string) asked, Func<Outcome> judge) => said.TryGetValue(asked, out var known) ? known : said[asked] = judge();

    static string Text(object value) => value switch
    {
        Bands bands => $"{bands.Form}:{string.Join(',', bands.Entries.Select(band => $"{Text(band.Limit)}>{Text(band.Points)}"))}",
        Levels levels => string.Join(',', levels.Entries.Select(level => $"{level.Word}>{Text(level.Points)}")),
        ImmutableArray<string> words => string.Join(',', words),
        _ => Convert.ToString(value, CultureInfo.InvariantCulture)!,
    };

    sealed class OfPart(Judged judged, string rule, IPartCriterion inner) : IPartCriterion
    {
        public CriterionInfo Info => inner.Info;

        public Outcome Judge(PartContext context) => judged.Once((rule, context.Part.Id, string.Join(',', context.Roles)), () => inner.Judge(context));
    }

    sealed class OfDevice(Judged judged, string rule, IDeviceCriterion inner) : IDeviceCriterion
    {
        public CriterionInfo Info => inner.Info;

        public Outcome Judge(DeviceContext context) => judged.Once((rule, "", ""), () => inner.Judge(context));
    }
}
