using System.Globalization;
using System.Xml.Linq;
using FixScore.Reporting.Cards;

namespace FixScore.Reporting.Tests.Cards;

/// <summary>Cards to look at.</summary>
static class Deck
{
    public const string Markup = "</title></svg><script>alert(1)</script> \" ' & <text x='9999'>";
    public const string RightToLeft = "\u202Egnp.exe \u05E9\u05DC\u05D5\u05DD \u0645\u0631\u062D\u0628\u0627 \uFDFD\u2067";
    public const string Emoji = "\U0001F469\u200D\U0001F469\u200D\U0001F467\u200D\U0001F466 \U0001F1EA\U0001F1FA \U0001F600\uFE0F \U0001D54F";
    public const string Broken = "\u0000\u001b[2J \ud800 \uFFFE Z\u0300\u0301\u0302\u0303\u0304\u0305\u0306\u0307 \n\r\t\u2028 end";

    public static readonly string[] Names = [Markup, RightToLeft, Emoji, Broken, new('W', 10_000), string.Concat(Enumerable.Repeat("Wide Word ", 1_000)), new('\u0301', 10_000), " ", "\u2E3B\u2E3B\u12219\u12219"];

    public static readonly (CardShape Shape, CardScheme Scheme)[] Kinds =
        [.. from shape in Enum.GetValues<CardShape>() from scheme in Enum.GetValues<CardScheme>() select (shape, scheme)];

    public static IReadOnlyList<Placing> Ranked { get; } = Placing.Of(Bench.Demo[..4]);

    /// <summary>Every card of the demo, and rankings of many.</summary>
    public static IEnumerable<Picture> Tame => Kinds.SelectMany(kind => Bench.Demo.Select(each => Card.Draw(each, kind.Shape, CultureInfo.InvariantCulture, kind.Scheme))
        .Append(Card.Draw(Ranked, kind.Shape, CultureInfo.InvariantCulture, kind.Scheme))
        .Append(Card.Draw(Many(40), kind.Shape, CultureInfo.InvariantCulture, kind.Scheme)));

    /// <summary>Cards whose every text that a record or a profile can choose is hostile.</summary>
    public static IEnumerable<Picture> Hostile => from name in Names
                                                  from shape in Enum.GetValues<CardShape>()
                                                  let judgement = Named(Bench.Demo[1], name)
                                                  from picture in (Picture[])[Card.Draw(judgement, shape, CultureInfo.InvariantCulture), Card.Draw(Placing.Of([judgement, Named(Bench.Demo[2], name)]), shape, CultureInfo.InvariantCulture)]
                                                  select picture;

    public static IReadOnlyList<Placing> Many(int count) => Placing.Of(Enumerable.Range(0, count).Select(index => Bench.Demo[index % 4].With($"r{index}", new(index, index + 3))));

    public static Judgement Named(Judgement judgement, string name) => judgement with
    {
        Record = judgement.Record with { Device = judgement.Record.Device with { Maker = name, Model = name } },
        Profile = judgement.Profile with { Title = name, Notices = [name] },
        Score = judgement.Score with { Class = new(name, name), Nodes = [.. judgement.Score.Nodes.Select(node => node with { Title = name })] },
    };

    public static XElement Parsed(Picture picture) => XElement.Parse(picture.ToSvg());
}
