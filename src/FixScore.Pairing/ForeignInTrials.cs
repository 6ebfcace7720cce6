using System.Collections.Immutable;
using FixScore.Pairing.Inference;
using FixScore.Records;

namespace FixScore.Pairing;

/// <summary>Which parts are foreign in each swap trial: those that can carry a code and come from another unit than the main board.</summary>
/// <remarks>As <see cref="PairingVerdicts"/> reads trials. Immutable and thread safe.</remarks>
public sealed class ForeignInTrials : IFact<ForeignInTrials>
{
    readonly ForeignParts foreign;

    ForeignInTrials(ForeignParts foreign) => this.foreign = foreign;

    /// <summary>The foreign parts of a trial with the units they come from, in the order of the record's parts; empty for a control.</summary>
    /// <param name="trial">A trial of the record.</param>
    public ImmutableArray<InstalledPart> Of(SwapTrial trial) => foreign.WithUnits(trial);

    /// <inheritdoc/>
    public static ForeignInTrials From(TeardownCase source, CancellationToken cancellation) =>
        new(new(source.Record, source.Derive<PartGroups>()));
}
