namespace FixScore.Testing;

/// <summary>Checks that a criterion keeps the laws on which every score rests.</summary>
/// <remarks>
/// <para>It describes itself; it never throws; it stays inside the scale; it says why, at places the record has; it gives
/// the same answer again, in any culture and on any thread; better records get no less; what it suggests applies and never lowers its own score; and knowing less of what it reads
/// only widens the score, where unknown is the whole scale and a question that does not arise may become anything.</para>
/// <para>Laws are tried on samples, so an empty report is evidence, not proof. The same criterion and options give the
/// same report, unless the criterion itself does not. Sets the culture of the calling thread for a while. Thread safe.</para>
/// </remarks>
public static class CriterionConformance
{
    /// <summary>Tries a criterion. At most three findings of a code are listed.</summary>
    /// <param name="criterion">The criterion.</param>
    /// <param name="options">On what to try it; the defaults when left out.</param>
    /// <exception cref="ArgumentException">The options name no scale.</exception>
    /// <example>In a test: <c>CriterionConformance.Check(new PartMarking()).ThrowIfAny();</c></example>
    public static ConformanceReport Check(ICriterion criterion, ConformanceOptions? options = null)
    {
        if (options is { Scales.IsDefaultOrEmpty: true }) throw new ArgumentException("At least one scale is needed.", nameof(options));
        var bench = new Bench(criterion, options ?? new());
        if (!DescribesItself(bench)) return new("", bench.Findings);
        DescriptionLaws.Check(bench);
        ScaleLaws.Check(bench);
        SamenessLaws.Check(bench);
        WideningLaws.Check(bench);
        MonotoneLaws.Check(bench);
        AdviceLaws.Check(bench);
        return new(criterion.Info.Id, bench.Findings);
    }

    static bool DescribesItself(Bench bench)
    {
        try
        {
            if (bench.Criterion.Info is { Options.IsDefault: false, Id: not null }) return true;
            bench.Report(ConformanceCodes.Undescribed, "", "Info, its id or its options are not there.");
        }
        catch (Exception failure)
        {
            bench.Report(ConformanceCodes.Throws, "", "Info failed: {fault}", ("fault", failure.Message));
        }
        return false;
    }
}
