using System.Globalization;

namespace FixScore.Testing.Tests;

public sealed class SamenessTests
{
    [Fact]
    public void An_answer_that_changes_when_repeated_is_found()
    {
        var calls = 0;
        Assert.Contains(ConformanceCodes.ChangesWhenRepeated, ConformanceTests.Codes(Stub.Judging(context =>
            Outcome.Scored(context.Scale.Whole, Reason.Of("call", "Call {number}.", [], ("number", calls++))))));
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void A_text_that_follows_the_culture_is_found(string culture)
    {
        var codes = ConformanceTests.Codes(Stub.Judging(context =>
            Outcome.Scored(context.Scale.Whole, Reason.Of("text", "{text}", [], ("text", Text(culture))))));

        Assert.Equal([ConformanceCodes.ChangesWithCulture], codes);
    }

    [Fact]
    public void The_culture_of_the_caller_is_put_back()
    {
        var before = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);
        CriterionConformance.Check(Stub.Good);

        Assert.Equal(before, (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture));
    }

    [Fact]
    public void An_answer_that_changes_with_the_thread_is_found()
    {
        var home = Environment.CurrentManagedThreadId;
        Assert.Equal([ConformanceCodes.ChangesWithThread], ConformanceTests.Codes(Stub.Judging(context =>
            Outcome.Scored(context.Scale.Whole, Reason.Of("thread", Environment.CurrentManagedThreadId == home ? "Home." : "Away.", [])))));
    }

    static string Text(string culture) => CultureInfo.CurrentCulture.Name == culture ? "other" : "same";
}
