using System.Collections.Immutable;

namespace FixScore.Reading.Profiles;

/// <summary>What the parts of one profile share while they are read.</summary>
sealed class ProfileBinding(Catalogue catalogue, ReadingContext context)
{
    public Catalogue Catalogue { get; } = catalogue;

    public ReadingContext Context { get; } = context;

    public Dictionary<string, PartSet> PartSets { get; } = new(StringComparer.Ordinal);

    /// <summary>Whether the sets could not be read, so that any name may be one.</summary>
    public bool PartSetsUnreadable { get; set; }

    /// <summary>Nodes read so far, by id, with their places; a node that stands under an <c>over</c> of a group knows it.</summary>
    public Dictionary<string, (ProfileNode? Node, Pointer At, Over? Over)> Nodes { get; } = new(StringComparer.Ordinal);

    public void Error(Pointer at, string code, string template, string hint, params ReadOnlySpan<(string, Value)> values) =>
        Context.Error(at, code, template, hint, values);

    public void Warn(Pointer at, string code, string template, string hint, params ReadOnlySpan<(string, Value)> values) =>
        Context.Warn(at, code, template, hint, values);
}

/// <summary>What surrounds a node.</summary>
/// <param name="Scale">The scale from above.</param>
/// <param name="IsRoot">Whether it is the root.</param>
/// <param name="Under">How the group above adds up; <c>null</c> at the root.</param>
/// <param name="Over">The <c>over</c> it stands under; <c>null</c> for none.</param>
sealed record Surroundings(Scale Scale, bool IsRoot, Aggregate? Under, Over? Over);
