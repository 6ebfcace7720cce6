using System.Collections.Immutable;
using FixScore.Pairing.Inference;
using FixScore.Records;

namespace FixScore.Pairing.Posterior;

/// <summary>Reckons the probabilities of one context after another.</summary>
sealed class Reckoning(TeardownRecord record, ForeignParts foreign, NoiseModel noise, TiePriors priors, ulong seed, int sweeps, CancellationToken cancellation)
{
    readonly ImmutableArray<Part> parts = [.. record.Parts.Where(part => foreign.Candidates.Contains(part.Id))];

    public ContextPosteriors Of(SwapContext context, ImmutableArray<SwapTrial> trials)
    {
        var factors = Factor.Of(StatementReader.Read(trials, foreign), trials, foreign.Candidates, noise);
        var before = parts.Select(part => (double)priors.Of(part.Role)).ToArray();
        var after = before.Select(prior => ((double?)prior, 0.0)).ToArray();
        foreach (var linked in Linked.Of(factors))
            foreach (var (place, found) in Found(linked, [.. linked.Parts.Select(part => before[part])]).Index())
                after[linked.Parts[place]] = found;
        // A flag that can be no part's doing goes with nothing, unless functions can misbehave by themselves.
        if (factors.Any(factor => factor.Parts.IsEmpty && factor.Missed == 0)) after = [.. after.Select(_ => ((double?)null, 0.0))];
        return new(context, [.. parts.Select((part, i) => new PartPosterior(part, priors.Of(part.Role), after[i].Item1, after[i].Item2))]);
    }

    IEnumerable<(double?, double)> Found(Linked linked, double[] before)
    {
        if (before.Length <= Enumeration.Most)
            return Enumeration.Of(linked.Factors, before) is { } exact ? exact.Select(each => ((double?)each, 0.0)) : before.Select(_ => ((double?)null, 0.0));
        // Where something is impossible a chain cannot get from one set to every other.
        if (linked.Factors.Any(factor => factor.Met == 0 || factor.Missed == 0)) return before.Select(_ => ((double?)null, 0.0));
        return Sampling.Of(linked.Factors, before, seed, sweeps, cancellation).Select(each => ((double?)each.Mean, each.Error));
    }
}
