using System.Text.Json;

namespace FixScore.Reading.Profiles;

/// <summary>Where a number was taken from.</summary>
enum SourceStanding
{
    /// <summary>Read in the source itself.</summary>
    Read,

    /// <summary>Read in a secondary source.</summary>
    Secondary,

    /// <summary>From memory.</summary>
    Memory,

    /// <summary>The author's own.</summary>
    Own,
}

/// <summary>Reads <c>sources</c>: each points at something in what carries it. They are for people; no score depends on them.</summary>
static class SourcesReader
{
    public static void Read(ObjectReader carrier, ProfileBinding binding) => carrier.Objects("sources", source =>
    {
        var at = source.Text("at");
        if (source.Has("at") && !carrier.Resolves(at))
            binding.Error(source.Pointer.Child("at"), "source-points-nowhere", "'{at}' points at nothing here.", "A JSON Pointer into what carries the sources.", ("at", at));
        source.Text("locator");
        source.Word<SourceStanding>("standing");
        source.SkipRemarks();
        return source;
    });
}
