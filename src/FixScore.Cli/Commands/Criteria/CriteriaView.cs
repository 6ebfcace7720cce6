using FixScore.Reporting;

namespace FixScore.Cli.Commands.Criteria;

/// <summary>Criteria as text.</summary>
sealed class CriteriaView(CommandSession session)
{
    // Points of defaults are shares of the scale; on this one they read as percentages.
    static readonly Scale Example = new(0, 100);

    readonly Terminal.Canvas canvas = session.Canvas;
    readonly RuleText rules = new(session.Shown);

    public void Show(Catalogue catalogue)
    {
        foreach (var criterion in catalogue.Criteria) Show(criterion);
        canvas.Line("Points of defaults are given on a scale from 0 to 100; a profile has its own scale.");
    }

    void Show(Installed<ICriterion> criterion)
    {
        var info = criterion.Item.Info;
        canvas.Heading($"{info.Id}: {info.Title}");
        canvas.Item(1, "", $"Judges {(criterion.Item is IPartCriterion ? "parts" : "the device")} by {info.Measures}, in {info.Unit}; {(info.Direction == Direction.MoreIsBetter ? "more" : "less")} is better.");
        canvas.Item(1, "", $"Source: {info.Source}.");
        canvas.Item(1, "", $"From {criterion.Plugin.Id} {criterion.Plugin.Version}, rule {session.Shown.Number(info.RuleVersion)}. Reads {string.Join(", ", info.Reads)}.", quiet: true);
        foreach (var (option, value) in OptionValues.DefaultsOf(info, Example).All) Show(option, value);
        canvas.Line();
    }

    void Show(Option option, object value)
    {
        canvas.Item(1, "-", $"{option.Name}: {option.Text}");
        canvas.Item(3, "", $"{rules.Kind(option)}; by default {rules.Value(option, value)}", quiet: true);
    }
}
