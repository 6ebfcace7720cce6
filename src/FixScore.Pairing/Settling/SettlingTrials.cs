using System.Collections.Immutable;
using FixScore.Pairing.Inference;
using FixScore.Pairing.Planning;
using FixScore.Records;

namespace FixScore.Pairing;

/// <summary>For each part that trials leave open, the weakest further trial that settles it, whatever comes of it.</summary>
/// <remarks>
/// A trial in which only one part, or the group that is always swapped with it, is foreign, and in which nothing is left
/// untested, clears it when all works; a flag proves it, since nothing else can be to blame, once a control shows that
/// the host does not flag by itself. No trial with more foreign parts asks less. Immutable and thread safe; rule of our own.
/// </remarks>
public sealed class SettlingTrials : IFact<SettlingTrials>
{
    SettlingTrials(ImmutableArray<SettlingTrial> trials) => Trials = trials;

    /// <summary>Trials by context, then in the order of the record's parts; none for contexts that contradict themselves, or where there are no two devices of one model code.</summary>
    public ImmutableArray<SettlingTrial> Trials { get; }

    /// <inheritdoc/>
    public static SettlingTrials From(TeardownCase source, CancellationToken cancellation)
    {
        var foreign = new ForeignParts(source.Record, source.Derive<PartGroups>());
        return new([.. source.Derive<PairingVerdicts>().Contexts.Where(context => context.IsConsistent).SelectMany(context => In(source.Record, context, foreign))]);
    }

    static IEnumerable<SettlingTrial> In(TeardownRecord record, ContextVerdicts context, ForeignParts foreign)
    {
        if (PlanUnits.Of(record, context.Context) is not ({ } host, { } donor)) yield break;
        foreach (var verdict in context.Parts.Where(verdict => !verdict.Part.Inert && verdict.OfGroup.Verdict is Verdict.Suspect or Verdict.Untested))
        {
            var group = foreign.CandidatesOfGroup(verdict.Part);
            if (group.IsEmpty || group[0] != verdict.Part.Id) continue;
            var flagged = verdict.OfGroup.Flags.Select(flag => flag.Check.Function).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToImmutableArray();
            yield return new(context.Context, group, host.Id, donor.Id, flagged, NeedsControl(context, foreign, host.Id), verdict.OfGroup.Verdict);
        }
    }

    static bool NeedsControl(ContextVerdicts context, ForeignParts foreign, string host) =>
        !context.Trials.Any(trial => trial.Host == host && foreign.In(trial).IsEmpty);
}

/// <summary>A trial that settles a part whatever comes of it. Immutable.</summary>
/// <param name="Context">The context to make it in.</param>
/// <param name="Parts">Ids of what is to be foreign: the part, or its whole group, which is then settled as one; no trial can part its members.</param>
/// <param name="Host">Id of the unit it is put into.</param>
/// <param name="Donor">Id of the unit it comes from.</param>
/// <param name="Flagged">Functions that were flagged so far and may be its doing: check these first, then every other; ordinal by name.</param>
/// <param name="NeedsControl">Whether the host was not checked with its own parts in this context: do that first, or a flag may be the host's own fault.</param>
/// <param name="Now">What trials say of it so far: suspect or untested.</param>
public sealed record SettlingTrial(
    SwapContext Context, ImmutableArray<string> Parts, string Host, string Donor, ImmutableArray<string> Flagged, bool NeedsControl, Verdict Now);
