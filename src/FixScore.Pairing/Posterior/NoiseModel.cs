using System.Collections.Immutable;

namespace FixScore.Pairing;

/// <summary>How often a check misleads. Immutable and thread safe.</summary>
/// <param name="FalseClean">How often a tie goes unseen where it should show, 0 to below 1/2. Less is better.</param>
/// <param name="FalseFlag">How often a function misbehaves although no tie is to blame, 0 to below 1/2. Less is better.</param>
public sealed record ErrorRates(decimal FalseClean, decimal FalseFlag)
{
    /// <summary>No errors at all: what verdicts rest on.</summary>
    public static ErrorRates None { get; } = new(0, 0);

    /// <summary>How often a tie goes unseen.</summary>
    public decimal FalseClean { get; } = Checked(FalseClean);

    /// <summary>How often a function misbehaves by itself.</summary>
    public decimal FalseFlag { get; } = Checked(FalseFlag);

    static decimal Checked(decimal rate) =>
        rate is >= 0 and < 0.5m ? rate : throw new ArgumentOutOfRangeException(nameof(rate), rate, "An error rate is 0 to below 1/2.");
}

/// <summary>How often checks mislead, function by function. Immutable and thread safe.</summary>
/// <param name="Usual">For every function that has no rates of its own.</param>
public sealed record NoiseModel(ErrorRates Usual)
{
    /// <summary>No check ever misleads.</summary>
    public static NoiseModel None { get; } = new(ErrorRates.None);

    /// <summary>Functions that have rates of their own.</summary>
    public ImmutableSortedDictionary<string, ErrorRates> Functions { get; init; } = ImmutableSortedDictionary.Create<string, ErrorRates>(StringComparer.Ordinal);

    /// <summary>The rates of a function.</summary>
    public ErrorRates Of(string function) => Functions.GetValueOrDefault(function, Usual);
}
