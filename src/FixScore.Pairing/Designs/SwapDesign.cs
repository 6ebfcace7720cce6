using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Pairing.Designs;

/// <summary>A plan of trials fixed beforehand: which parts of a second unit are put into the host together.</summary>
/// <remarks>
/// All trials of a design use the same host and the same second unit, so that parts swapped together stay together. Name one
/// part of each group of parts that are replaced together: the others ride along. Immutable and thread safe.
/// </remarks>
/// <param name="Parts">Ids of the parts under suspicion, in the order given.</param>
/// <param name="Trials">For each trial the ids of the parts to put in, in the order of <paramref name="Parts"/>; empty for a control.</param>
public sealed record SwapDesign(ImmutableArray<string> Parts, ImmutableArray<ImmutableArray<string>> Trials)
{
    /// <summary>What to install, trial by trial, when all parts come from one unit: as <see cref="SwapTrial.Installed"/> has it.</summary>
    public ImmutableArray<ImmutableArray<InstalledPart>> From(string unit) =>
        [.. Trials.Select(trial => trial.Select(part => new InstalledPart(part, unit)).ToImmutableArray())];

    /// <summary>A design from one code for each part: trial t swaps the parts with bit t set.</summary>
    internal static SwapDesign OfCodes(ImmutableArray<string> parts, int trials, IReadOnlyList<long> codes) => new(
        parts,
        [.. Enumerable.Range(0, trials).Select(trial => parts.Where((_, i) => (codes[i] >> trial & 1) != 0).ToImmutableArray())]);

    internal static ImmutableArray<string> Checked(IEnumerable<string> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var ids = parts.ToImmutableArray();
        return ids.Distinct(StringComparer.Ordinal).Count() == ids.Length
            ? ids
            : throw new ArgumentException("A part is named twice.", nameof(parts));
    }
}
