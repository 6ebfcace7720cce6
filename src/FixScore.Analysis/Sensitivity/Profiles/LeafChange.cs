namespace FixScore.Analysis.Sensitivity.Profiles;

/// <summary>Makes a profile that differs in its leaves.</summary>
static class LeafChange
{
    /// <summary>The profile with another policy for what is unknown.</summary>
    public static Profile WithUnknown(this Profile profile, UnknownPolicy policy) => Of(profile, leaf => leaf with { Unknown = policy });

    /// <summary>The profile with the points of all bands and levels moved by a factor.</summary>
    public static Profile WithPoints(this Profile profile, decimal factor) =>
        factor == 1m ? profile : Of(profile, leaf => leaf with { Options = Moved(leaf.Options, factor, leaf.Scale) });

    /// <summary>Whether a node or one below it, that more than gates look at, makes points by bands or levels.</summary>
    public static bool HasBands(ProfileNode node) => !node.GateOnly && node switch
    {
        GroupNode group => group.Of.Any(HasBands),
        LeafNode leaf => leaf.Options.All.Any(option => option.Value is Bands or Levels),
        _ => false,
    };

    /// <summary>The profile with each leaf changed.</summary>
    public static Profile Of(Profile profile, Func<LeafNode, LeafNode> change) => profile with { Root = Of(profile.Root, change) };

    static ProfileNode Of(ProfileNode node, Func<LeafNode, LeafNode> change) => node is GroupNode group
        ? group with { Of = [.. group.Of.Select(child => Of(child, change))] }
        : change((LeafNode)node);

    static OptionValues Moved(OptionValues options, decimal factor, Scale scale) =>
        options.All.Aggregate(options, (moved, option) => moved.With(option.Key, Moved(option.Value, factor, scale)));

    static object Moved(object value, decimal factor, Scale scale) => value switch
    {
        Bands bands => Bands.Of(bands.Form, [.. bands.Entries.Select(band => band with { Points = BandVariation.Moved(band.Points, factor, scale) })]),
        Levels levels => Levels.Of([.. levels.Entries.Select(level => level with { Points = BandVariation.Moved(level.Points, factor, scale) })]),
        _ => value,
    };
}
