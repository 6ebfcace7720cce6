using System.Globalization;
using FixScore.Cli.Commands.Routing;
using FixScore.Cli.Terminal;
using FixScore.Pairing;

namespace FixScore.Cli.Commands.Swaps;

/// <summary>How probable ties are when checks mislead, context by context.</summary>
sealed class PosteriorView(Canvas canvas, CultureInfo culture)
{
    public void Show(TiePosteriors posteriors)
    {
        foreach (var context in posteriors.Contexts)
        {
            canvas.Heading($"How probable ties are, {context.Context}");
            canvas.Table(
                [("Part", false), ("Before", true), ("After", true), ("Error", true)],
                context.Parts.Select(part => (string[])[part.Part.Id, part.Before.ToString("0.###", culture), After(part), part.StandardError > 0 ? part.StandardError.ToString("0.0000", culture) : RouteText.Nothing]),
                Names.FoldedAt);
        }
        canvas.Line("Before the trials: an invented guess by role. Error rates are those given; no score uses this.");
        canvas.Line();
    }

    string After(PartPosterior part) => part.Probability is { } known ? known.ToString("0.0000", culture) : "undefined";
}
