using System.Collections.Immutable;
using FixScore.Pairing.Comparison;
using FixScore.Pairing.Inference;

namespace FixScore.Pairing;

/// <summary>What changes when the same swap is tried under other circumstances: lock state, procedure, source of the parts.</summary>
/// <remarks>
/// <para>Two trials are of the same swap when the same parts are foreign in them (<see cref="PairingVerdicts"/>) and came from
/// units of the same kind; a unit that hosts trials is a device. Hosts may differ, as what is tied is a property of the
/// model. All else must be equal, and observed where it is what is compared: a trial whose procedure is not known is no trial
/// without one.</para>
/// <para>Only checks with a certain result count, as for verdicts: what may be <c>works</c> or worse counts as untested, and so
/// does a flag that a control of the same host and context shows as well. Trials of one side that saw different results leave
/// a list of them.</para>
/// <para>Units of different model codes are not comparable; what they show is listed all the same, and marked.</para>
/// <para>Immutable and thread safe. Source: own judgement, no source.</para>
/// </remarks>
public sealed class ContextComparison : IFact<ContextComparison>
{
    ContextComparison(ImmutableArray<ComparedFunction> functions, ImmutableArray<PartAfterProcedure> parts) =>
        (Functions, Parts) = (functions, parts);

    /// <summary>Function by function: first lock states, then procedures, then sources, each in the order of the record.</summary>
    public ImmutableArray<ComparedFunction> Functions { get; }

    /// <summary>Parts tied without a procedure of the maker and either cleared or tied with it, where both contexts are consistent.</summary>
    public ImmutableArray<PartAfterProcedure> Parts { get; }

    /// <summary>All of it as findings, functions first.</summary>
    public IEnumerable<TrialFinding> Findings =>
        Functions.Select(each => each.Finding).Concat(Parts.Select(each => each.Finding));

    /// <inheritdoc/>
    public static ContextComparison From(TeardownCase source, CancellationToken cancellation)
    {
        var units = new UnitKinds(source.Record);
        var foreign = new ForeignParts(source.Record, source.Derive<PartGroups>());
        var seen = new ObservationReader(source.Record, foreign, units).Read();
        cancellation.ThrowIfCancellationRequested();
        return new(
            [.. Axis.All.SelectMany(axis => new SwapComparer(source, units, axis).Compare(seen))],
            [.. ProcedureEffects.Of(source)]);
    }
}
