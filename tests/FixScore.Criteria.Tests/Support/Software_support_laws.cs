using FixScore.Criteria.Support;

namespace FixScore.Criteria.Tests.Support;

public sealed class Software_support_laws
{
    static readonly SoftwareSupportCriterion Criterion = new();

    static readonly Gen<Records.Support> Supports = Gen.Select(
        Gen.Int[0, 100], Gen.Int[0, 100], Gen.Int[0, 100], Gen.Enum<CountedFrom>(), (security, corrective, functionality, from) => new Records.Support
        {
            SecurityUpdateYears = security / 10m,
            CorrectiveUpdateYears = corrective / 10m,
            FunctionalityUpdateYears = functionality / 10m,
            CountedFrom = from,
        });

    static readonly Gen<(Option, object)[]> Settings = Gen.Select(
        Gen.Enum<YearFractions>(), Gen.Enum<SupportStart>(), Gen.Enum<WhenNoLevel>(), (fractions, start, noLevel) => new (Option, object)[]
        {
            (SoftwareSupportOptions.Fractions, fractions), (SoftwareSupportOptions.CountedFrom, start), (Options.NoLevel, noLevel),
        });

    [Fact]
    public void Taking_an_observation_away_only_widens() => Gen.Select(Supports, Settings, Gen.Int[1, 15]).Sample((support, settings, mask) =>
        Assert.True(Score(Opened(support, mask), settings).Contains(Score(support, settings))));

    [Fact]
    public void A_range_contains_what_it_may_be() => Gen.Select(Supports, Settings, Gen.Int[0, 40], Gen.Int[0, 40]).Sample((support, settings, below, above) =>
    {
        var years = support.SecurityUpdateYears!.Value.Min!.Value;
        var range = support with { SecurityUpdateYears = new(Math.Max(0, years - below / 10m), years + above / 10m) };
        Assert.True(Score(range, settings).Contains(Score(support, settings)));
    });

    [Fact]
    public void A_longer_promise_never_lowers_the_score() => Gen.Select(Supports, Gen.Enum<YearFractions>(), Gen.Int[1, 30]).Sample((support, fractions, more) =>
    {
        (Option, object)[] settings = [(SoftwareSupportOptions.Fractions, fractions), (Options.NoLevel, WhenNoLevel.Lowest)];
        var longer = support with { SecurityUpdateYears = support.SecurityUpdateYears!.Value.Min + more / 10m is { } years ? years : null };
        Assert.True(Score(support, settings).Low <= Score(longer, settings).Low);
    });

    static Interval Score(Records.Support support, (Option, object)[] settings) =>
        Criterion.On(Sample.Record(Sample.Part("frame")) with { Support = support }, settings).Known();

    static Records.Support Opened(Records.Support support, int mask) => new()
    {
        SecurityUpdateYears = (mask & 1) > 0 ? null : support.SecurityUpdateYears,
        CorrectiveUpdateYears = (mask & 2) > 0 ? null : support.CorrectiveUpdateYears,
        FunctionalityUpdateYears = (mask & 4) > 0 ? null : support.FunctionalityUpdateYears,
        CountedFrom = (mask & 8) > 0 ? default : support.CountedFrom,
    };
}
