using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using FixScore.Reporting;
using FixScore.Reporting.Cards;
using FixScore.Reporting.Images;
using FixScore.Reporting.Paper;
using FixScore.Reporting.Reports;

namespace FixScore.Cli.Commands.Report;

/// <summary>Cards of a report: one for each device, and one for the ranking where there are several; wide and square, SVG and PNG.</summary>
static class WrittenCards
{
    public static ImmutableArray<PaperFile> Of(ReportInput input, CardScheme scheme, CultureInfo culture)
    {
        var ranked = Placing.Of(input.Judgements.Where(each => each.Score.Profile == input.Judgements[0].Score.Profile));
        return
        [
            .. from each in ranked
               from shape in Enum.GetValues<CardShape>()
               from file in Both($"{each.Judgement.Record.Id}.{Word.Of(shape)}", Card.Draw(each.Judgement, shape, culture, scheme), Card.Svg(each.Judgement, shape, culture, scheme))
               select file,
            .. from shape in Enum.GetValues<CardShape>()
               where ranked.Count > 1
               from file in Both($"ranking.{Word.Of(shape)}", Card.Draw(ranked, shape, culture, scheme), Card.Svg(ranked, shape, culture, scheme))
               select file,
        ];
    }

    static PaperFile[] Both(string name, Picture picture, string svg) => [new($"{name}.svg", Encoding.UTF8.GetBytes(svg)), new($"{name}.png", CardImage.Png(picture))];
}
