namespace FixScore.Testing;

/// <summary>Whatever the scale, and whatever a profile may set, an answer keeps the laws of a single answer.</summary>
static class ScaleLaws
{
    public static void Check(Bench bench)
    {
        foreach (var sample in bench.Samples)
        {
            foreach (var scale in bench.Options.Scales) bench.Judge(sample, scale);
            foreach (var values in Settings(bench)) bench.Judge(sample, bench.Scale, values);
        }
        if (!bench.EverScored)
            bench.Report(ConformanceCodes.NeverScored, "", "No sample made the criterion give a score: add samples with what it reads.");
    }

    static IEnumerable<OptionValues> Settings(Bench bench)
    {
        var defaults = OptionValues.DefaultsOf(bench.Criterion.Info, bench.Scale);
        return bench.Criterion.Info.Options.SelectMany(option => Others(option).Select(value => defaults.With(option, value)));
    }

    static IEnumerable<object> Others(Option option) => option switch
    {
        FlagOption flag => [!flag.Default],
        NumberOption number => [number.Min, number.Max],
        CountOption count => [count.Min, count.Max],
        IChoiceOption choice => choice.Words.Select(word => choice.ValueOf(word)!),
        _ => [],
    };
}
