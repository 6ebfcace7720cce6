using System.Collections.Immutable;
using FixScore.Analysis.Sensitivity.Profiles;

namespace FixScore.Analysis.Sensitivity;

/// <summary>What makes ranks differ from those by a profile: its weights, its rule of aggregation, and the other choices of its maker. Stateless, so safe to use from any thread.</summary>
/// <remarks>
/// <para>Sources: Saisana, Saltelli and Tarantola, J. R. Statist. Soc. A 168, 2005; OECD and JRC, Handbook on Constructing
/// Composite Indicators, 2008, step 7: every choice in the making of an index is an uncertain input.</para>
/// <para>Inputs, each on its own, each way of a choice as likely as any other:</para>
/// <list type="bullet">
/// <item><description>the weight of each line directly below the total, from none to twice its weight; the rule of aggregation of
/// these lines: arithmetic, geometric, harmonic mean, minimum, and Copeland's outranking;</description></item>
/// <item><description>for each line with bands or levels their points, as <see cref="BandVariation"/> says; what only gates look at keeps its own;</description></item>
/// <item><description>gates off or on. A gate caps a score where it closes whatever open observations turn out to be; an outranking has no
/// points to cap. A gate that looks at the total closes as it does with the profile's weights;</description></item>
/// <item><description>what an unknown outcome counts for: as the profile says, or the same policy for all leaves, of those that differ from it;</description></item>
/// <item><description>the profile as it is, or under one other reading of a silent point; the first 50 that keep the lines below the total.</description></item>
/// </list>
/// <para>Of open values the middles are taken; a line that is left out of a score does not count for that record. The kernel scores a
/// record once for every way through bands (at one factor for all lines), policies and readings: 5 x 4 x 51 = 1,020 times at
/// most with the usual bands, as <see cref="RankShiftSensitivity.RunsPerRecord"/> says; a criterion is asked once for each of its options. Draws put together what these runs gave.</para>
/// </remarks>
public static class ProfileRankShift
{
    /// <summary>Estimates the indices; <c>null</c> when the total of the profile is no weighted arithmetic mean of several lines, or there is one record.</summary>
    /// <param name="records">The records, one for each device.</param>
    /// <param name="profile">The profile.</param>
    /// <param name="bands">How points of bands and levels vary; <c>null</c> for the usual way.</param>
    /// <param name="options">Samples, seed and threads; <c>null</c> for the usual ones.</param>
    /// <param name="cancellation">Cancels the run.</param>
    /// <exception cref="ProfileMismatchException">The profile is not for one of the devices.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Bands or options are out of their bounds.</exception>
    public static RankShiftSensitivity? Of(
        ImmutableArray<RecordDocument> records, Profile profile, BandVariation? bands = null, SobolOptions? options = null, CancellationToken cancellation = default)
    {
        var (sampling, variation) = ((options ?? new()).Checked(), (bands ?? new()).Checked());
        if (records.Length < 2 || ProfileChoices.Of(profile, variation) is not { } choices) return null;
        RankShiftInputs uncertain = new([.. choices.Lines.Weights.Select(weight => new Interval(0m, 2 * weight))], RankShiftInputs.UsualRules, []) { TableRules = [ScoreRules.Copeland] };
        var inputs = new ProfileInputs(choices);
        var model = new ProfileModel(choices, KernelRuns.Of(records, choices, sampling.Threads, cancellation), uncertain);
        return new([.. RankShiftSensitivity.OfWeightsAndRule(choices.Lines.Ids, uncertain), .. inputs.Further], SobolIndices.Of(model.Shift, inputs.Count, sampling))
        {
            RunsPerRecord = choices.Runs, Bands = choices.Banded.IsEmpty ? null : variation,
        };
    }
}
