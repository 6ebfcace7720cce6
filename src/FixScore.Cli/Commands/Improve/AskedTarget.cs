using System.Globalization;
using FixScore.Analysis.Improving;
using FixScore.Cli.Terminal;

namespace FixScore.Cli.Commands.Improve;

/// <summary>Reads what is to be reached: a class in any case of letters, or points on the scale of the profile, written with a point.</summary>
static class AskedTarget
{
    /// <exception cref="UsageException">It is neither.</exception>
    public static Target Of(Profile profile, string word)
    {
        string[] classes = [.. profile.Classes.Select(each => each.Label)];
        if (Array.Find(classes, label => label.Equals(word, StringComparison.OrdinalIgnoreCase)) is { } label) return Target.OfClass(profile, label);
        var (least, most) = (profile.Scale.Min, profile.Scale.Max);
        if (!decimal.TryParse(word, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var points))
            throw new UsageException(classes.Length == 0
                ? $"'{word}' is no number of points, and {profile.Id} has no classes."
                : $"'{word}' is neither a class of {profile.Id} nor a number of points. {Suggestion.Hint(word, classes)}");
        return least <= points && points <= most
            ? Target.OfPoints(points)
            : throw new UsageException(string.Create(CultureInfo.InvariantCulture, $"{profile.Id} has points from {least:0.####} to {most:0.####}; {points:0.####} is none of them."));
    }
}
