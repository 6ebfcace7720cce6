using System.Text.RegularExpressions;

namespace FixScore.Reading.Profiles;

/// <summary>Semantic versions, after the grammar that semver.org 2.0.0 publishes.</summary>
static partial class SemanticVersion
{
    public static bool IsValid(string text) => Grammar().IsMatch(text);

    [GeneratedRegex(
        @"^(0|[1-9]\d*)\.(0|[1-9]\d*)\.(0|[1-9]\d*)(?:-((?:0|[1-9]\d*|\d*[a-zA-Z-][0-9a-zA-Z-]*)(?:\.(?:0|[1-9]\d*|\d*[a-zA-Z-][0-9a-zA-Z-]*))*))?(?:\+([0-9a-zA-Z-]+(?:\.[0-9a-zA-Z-]+)*))?\z",
        RegexOptions.CultureInvariant | RegexOptions.ECMAScript)]
    private static partial Regex Grammar();
}
