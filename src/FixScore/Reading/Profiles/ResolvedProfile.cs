using System.Collections.Immutable;
using System.Text.Json.Nodes;
using FixScore.Canonical;

namespace FixScore.Reading.Profiles;

/// <summary>A profile with its bases merged in, still JSON.</summary>
/// <param name="Json">The resolved profile: neither <c>extends</c> nor <c>nodes</c>.</param>
/// <param name="Bases">The profiles merged in, nearest first.</param>
sealed record ResolvedProfile(JsonObject Json, ImmutableArray<ProfileReference> Bases)
{
    public string Digest => Canonical.Digest.Of(JsonTree.ToElement(Json), "$schema");
}
