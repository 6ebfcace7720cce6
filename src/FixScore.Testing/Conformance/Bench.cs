using System.Collections.Immutable;

namespace FixScore.Testing;

/// <summary>Where a criterion is tried: calls it, holds every answer to the laws of a single answer, and collects findings.</summary>
sealed class Bench(ICriterion criterion, ConformanceOptions options)
{
    const int MostOfACode = 3;

    readonly List<ConformanceFinding> findings = [];

    public ICriterion Criterion => criterion;

    public ConformanceOptions Options => options;

    public Scale Scale => options.Scales[0];

    /// <summary>Whether any answer was a score.</summary>
    public bool EverScored { get; private set; }

    public ImmutableArray<ConformanceFinding> Findings => [.. findings];

    public ImmutableArray<Sample> Samples { get; } =
    [
        .. options.Samples.Select(record => new Sample(record.Id, record)),
        .. RecordGenerator.Many(options.Generated, options.FirstSeed).Select(record => new Sample(record.Id, record)),
    ];

    /// <summary>The answers about a sample with the options' defaults; failures are reported and left out.</summary>
    public ImmutableArray<Judgement> Judge(Sample sample, Scale scale) =>
        Judge(sample, scale, OptionValues.DefaultsOf(criterion.Info, scale));

    /// <summary>The answers about a sample; failures are reported and left out.</summary>
    public ImmutableArray<Judgement> Judge(Sample sample, Scale scale, OptionValues values)
    {
        var answers = ImmutableArray.CreateBuilder<Judgement>();
        foreach (var each in Judgement.Of(criterion, sample, scale, values))
        {
            if (each.Outcome is not { } outcome)
            {
                Report(ConformanceCodes.Throws, sample.Name, "Judging {part} failed: {fault}", ("part", Of(each.Part)), ("fault", each.Fault!));
                continue;
            }
            EverScored |= outcome.Kind == OutcomeKind.Scored;
            OutcomeLaws.Check(this, sample, scale, outcome);
            answers.Add(each);
        }
        return answers.ToImmutable();
    }

    /// <summary>Notes a finding, unless its code is excepted or was shown by enough samples.</summary>
    public void Report(string code, string sample, string template, params ReadOnlySpan<(string Name, Value Value)> values)
    {
        var finding = new ConformanceFinding(sample, Reason.Of(code, template, [], values));
        if (options.Except.Contains(code) || findings.Count(each => each.Code == code) >= MostOfACode) return;
        if (!findings.Any(each => each.Code == code && each.Text == finding.Text)) findings.Add(finding);
    }

    /// <summary>A part as texts name it.</summary>
    public static string Of(string part) => part.Length == 0 ? "the device" : $"the part '{part}'";
}
