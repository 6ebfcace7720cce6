using System.Collections.Immutable;

namespace FixScore.Tests.Criteria;

/// <summary>One option of each kind.</summary>
static class EveryOption
{
    public static readonly Option<decimal> Share = Options.Number("share", 0.5m, 0m, 1m, "share", "A number.");
    public static readonly Option<int> Most = Options.Count("most", 3, 1, 20, "joints", "A whole number.");
    public static readonly Option<bool> Strict = Options.Flag("strict", false, "Yes or no.");
    public static readonly Option<Colour> Shade = Options.Choice("shade", Colour.DarkBlue, "A word.");
    public static readonly Option<Bands> Steps = Options.Bands("steps", Bands.AtMost((2, 1m), (6, 0.5m)), "kinds", "Bands.");
    public static readonly Option<Levels> Reuse =
        Options.Levels("reuse", Levels.Of(("reusable", 1m), ("removable", 0.5m)), "Levels.", "neither");
    public static readonly Option<ImmutableArray<string>> Ignored = Options.Words("ignored", ["gasket"], "Slugs.");

    public static readonly ICriterion Criterion =
        new DeviceCriterion("every-option", Share, Most, Strict, Shade, Steps, Reuse, Ignored, Options.NoLevel);
}

enum Colour
{
    DarkBlue,
    Red,
}
