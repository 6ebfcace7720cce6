using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Pairing.Tests;

/// <summary>Random records with swap trials: half of them follow a hidden set of tied parts, half follow nothing.</summary>
sealed class RandomTrials
{
    static readonly string[] Units = ["a", "b", "c"];
    static readonly string[] Functions = ["f", "g", "h"];
    static readonly SwapResult[] Worse = [SwapResult.Notice, SwapResult.Warning, SwapResult.Degraded, SwapResult.Refused];

    readonly Random random;
    readonly ImmutableArray<Part> parts;
    readonly ImmutableArray<Joint> joints;
    readonly HashSet<string>? tied;

    RandomTrials(int seed, int mostParts)
    {
        random = new(seed);
        var others = Enumerable.Range(0, random.Next(1, mostParts)).Select(i => Bench.Part($"p{i}") with { Inert = Chance(0.12) });
        parts = Chance(0.9) ? [Bench.Board, .. others] : [.. others];
        joints = Chance(0.4) && parts.Length > 2 ? [Bench.Integral(Pick(parts).Id, Pick(parts).Id)] : [];
        tied = Chance(0.5) ? [.. parts.Where(_ => Chance(0.25)).Select(part => part.Id)] : null;
    }

    public static TeardownRecord Of(int seed, int mostParts = 10, int mostTrials = 8) => new RandomTrials(seed, mostParts).Record(mostTrials);

    TeardownRecord Record(int mostTrials) =>
        Bench.Device(parts, joints, Enumerable.Range(0, random.Next(1, mostTrials)).Select(i => Trial($"t{i}")));

    SwapTrial Trial(string id)
    {
        var host = Pick(Units);
        var installed = Installed(host);
        return new()
        {
            Id = id,
            Host = host,
            Installed = installed,
            LockState = Chance(0.85) ? LockState.Locked : null,
            Checks = [.. Functions[..random.Next(1, 4)].Select(function => Check(function, installed))],
        };
    }

    ImmutableArray<InstalledPart> Installed(string host)
    {
        var share = Chance(0.15) ? 0 : random.NextDouble();
        var unit = parts.ToDictionary(part => part.Id, _ => Pick(Units));
        foreach (var joint in joints) unit[joint.Joins[1]] = unit[joint.Joins[0]];
        return [.. parts.Where(part => unit[part.Id] != host && Chance(share)).Select(part => new InstalledPart(part.Id, unit[part.Id]))];
    }

    FunctionCheck Check(string function, ImmutableArray<InstalledPart> installed)
    {
        EntryList<string> implicates = Chance(0.5) ? default : [.. parts.Where(_ => Chance(0.5)).Select(part => part.Id)];
        return new() { Function = function, Implicates = implicates, Result = Result(implicates, installed) };
    }

    OneOf<SwapResult> Result(EntryList<string> implicates, ImmutableArray<InstalledPart> installed)
    {
        if (Chance(0.08)) return SwapResult.Untested;
        if (Chance(0.05)) return new(SwapResult.Works, Pick(Worse));
        var flagged = tied is not null && Chance(0.97)
            ? installed.Any(each => tied.Contains(each.Part) && (!implicates.IsRecorded || implicates.Contains(each.Part)))
            : Chance(0.4);
        if (!flagged) return SwapResult.Works;
        return Chance(0.1) ? new OneOf<SwapResult>(Pick(Worse), Pick(Worse)) : Pick(Worse);
    }

    bool Chance(double share) => random.NextDouble() < share;

    T Pick<T>(IReadOnlyList<T> from) => from[random.Next(from.Count)];
}
