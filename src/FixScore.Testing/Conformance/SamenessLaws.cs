using System.Globalization;

namespace FixScore.Testing;

/// <summary>The same record gives the same answer: again, in any culture, on any thread.</summary>
static class SamenessLaws
{
    // Turkish has its own upper case of i, Arabic (Saudi Arabia) its own calendar, German a decimal comma.
    static readonly string[] Cultures = ["tr-TR", "ar-SA", "de-DE"];

    public static void Check(Bench bench)
    {
        var first = bench.Samples.Select(sample => Answer(bench, sample)).ToArray();
        for (var i = first.Length - 1; i >= 0; i--)
            Compare(bench, bench.Samples[i], first[i], Answer(bench, bench.Samples[i]), ConformanceCodes.ChangesWhenRepeated, "when asked again");
        foreach (var name in Cultures)
            for (var i = 0; i < first.Length; i++)
                Compare(bench, bench.Samples[i], first[i], AnswerIn(name, bench, bench.Samples[i]), ConformanceCodes.ChangesWithCulture, $"in the culture {name}");
        var elsewhere = AnswersOnThreads(bench);
        for (var i = 0; i < first.Length; i++)
            Compare(bench, bench.Samples[i], first[i], elsewhere[i], ConformanceCodes.ChangesWithThread, "on another thread");
    }

    static void Compare(Bench bench, Sample sample, string first, string second, string code, string when)
    {
        if (string.Equals(first, second, StringComparison.Ordinal)) return;
        var at = first.Zip(second).TakeWhile(pair => pair.First == pair.Second).Count();
        bench.Report(code, sample.Name, "The answer differs {when}: '{first}' became '{second}'.",
            ("when", when), ("first", Around(first, at)), ("second", Around(second, at)));
    }

    static string Around(string text, int at) => text[Math.Max(0, at - 20)..Math.Min(text.Length, at + 20)].ReplaceLineEndings(" ");

    static string Answer(Bench bench, Sample sample) => OutcomeText.Of(
        Judgement.Of(bench.Criterion, sample.Afresh(), bench.Scale, OptionValues.DefaultsOf(bench.Criterion.Info, bench.Scale)));

    static string AnswerIn(string culture, Bench bench, Sample sample)
    {
        var (format, language) = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = Culture(culture);
            return Answer(bench, sample);
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (format, language);
        }
    }

    // A system without culture data still has a decimal comma to offer.
    static CultureInfo Culture(string name)
    {
        try
        {
            return CultureInfo.GetCultureInfo(name);
        }
        catch (CultureNotFoundException)
        {
            var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            (comma.NumberFormat.NumberDecimalSeparator, comma.NumberFormat.NumberGroupSeparator) = (",", ".");
            return comma;
        }
    }

    static string[] AnswersOnThreads(Bench bench)
    {
        var answers = new string[bench.Samples.Length];
        var threads = bench.Samples.Select((sample, i) => new Thread(() => answers[i] = Answer(bench, sample))).ToArray();
        foreach (var thread in threads) thread.Start();
        foreach (var thread in threads) thread.Join();
        return answers;
    }
}
