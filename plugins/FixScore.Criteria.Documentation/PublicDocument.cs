using System.Text.Json.Nodes;
using FixScore.Records;

namespace FixScore.Criteria.Documentation;

/// <summary>Documents as a maker that publishes them would have them.</summary>
static class PublicDocument
{
    public static Pointer List { get; } = Pointer.Root.Child("documentation");

    /// <summary>A new document about the whole device, free of charge.</summary>
    public static JsonObject Of(string subject, Audience audience, decimal? years)
    {
        var document = new JsonObject { ["subject"] = subject, ["audience"] = Word.Of(audience), ["cost"] = Word.Of(DocumentCost.Free) };
        if (years is { } known) document["years"] = known;
        return document;
    }

    /// <summary>A document that is there already, free of charge for more people and for at least as long.</summary>
    public static DesignPatch Change(TeardownCase source, Document document, Audience audience, decimal? years)
    {
        var (at, patch) = (source.At(document), DesignPatch.Empty);
        if (!document.Audience.Is(audience)) patch = patch.Set(at, "audience", Word.Of(audience));
        if (!document.Cost.Is(DocumentCost.Free)) patch = patch.Set(at, "cost", Word.Of(DocumentCost.Free));
        return years is { } wanted && (document.Years?.Min ?? 0) < wanted ? patch.Set(at, "years", wanted) : patch;
    }
}
