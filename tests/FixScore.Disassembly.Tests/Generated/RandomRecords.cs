using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Disassembly.Tests.Generated;

/// <summary>Small records from seeds that mix everything the format says about taking apart.</summary>
/// <remarks>A hidden order of operations keeps most of them possible; one condition in ten looks at anything.</remarks>
sealed class RandomRecords
{
    static readonly JointKind[] Kinds = [JointKind.Screw, JointKind.Adhesive, JointKind.Connector];

    readonly Random random;
    readonly Part[] parts;
    readonly Joint[] joints;
    readonly RandomWork work;

    RandomRecords(int seed, int mostParts, int mostOperations)
    {
        random = new(seed);
        parts = [.. Enumerable.Range(0, Math.Min(random.Next(3, mostParts + 1), random.Next(3, mostParts + 1))).Select(Part)];
        joints = [.. Enumerable.Range(0, random.Next(parts.Length - 1, parts.Length + 2)).Select(Joint)];
        work = new(random, parts, joints, mostOperations);
    }

    /// <summary>The record of a seed.</summary>
    public static TeardownRecord Of(int seed, int mostParts = 6, int mostOperations = 9) => new RandomRecords(seed, mostParts, mostOperations).Record();

    TeardownRecord Record() => new()
    {
        Id = "record",
        Device = new() { Maker = "Maker", Model = "Model", Kind = "smartphone" },
        Assessment = new() { Assessor = "workshop", Date = new(2026, 1, 15), Units = [new() { Id = "a" }, new() { Id = "b" }] },
        Parts = EntryList.Of(parts.ToImmutableArray()),
        Joints = EntryList.Of(joints.ToImmutableArray()),
        Tools = EntryList.Of(RandomWork.Tools),
        Operations = EntryList.Of(work.Operations.ToImmutableArray()),
        Milestones = EntryList.Of(work.Milestones.ToImmutableArray()),
        Evidence = [new() { Id = "film", Kind = EvidenceKind.Video, Ref = "film.mp4" }],
    };

    Part Part(int number) => new()
    {
        Id = $"p{number}",
        Role = $"role-{number}",
        On = number > 0 && Chance(0.25) ? $"p{random.Next(number)}" : null,
        Reach = Chance(0.03) ? Reach.NotPossible : Reach.NotTried,
    };

    Joint Joint(int number)
    {
        var joins = Shuffled(parts)[..(Chance(0.12) ? 3 : 2)];
        var integral = Chance(0.1);
        return new()
        {
            Id = $"j{number}",
            Joins = [.. joins.Select(part => part.Id)],
            Kind = Chance(0.15) ? JointKind.Contact : Kinds[random.Next(Kinds.Length)],
            Integral = integral,
            Under = Chance(0.25) ? [.. parts.Except(Chance(0.97) ? joins : []).Where(_ => Chance(0.3)).Select(part => part.Id)] : [],
        };
    }

    T[] Shuffled<T>(T[] from)
    {
        T[] all = [.. from];
        random.Shuffle(all);
        return all;
    }

    bool Chance(double share) => random.NextDouble() < share;
}
