using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Disassembly.Tests.Generated;

/// <summary>Operations and milestones of a random record.</summary>
sealed class RandomWork
{
    static readonly OperationAction[] Actions = [OperationAction.Unscrew, OperationAction.Pry, OperationAction.Lift, OperationAction.Heat, OperationAction.Clean];

    readonly Random random;
    readonly Part[] parts;
    readonly Joint[] joints;
    readonly bool allTimed;
    readonly bool allTools;
    readonly double waiting;
    readonly List<Operation> done = [];

    public RandomWork(Random random, Part[] parts, Joint[] joints, int most)
    {
        (this.random, this.parts, this.joints) = (random, parts, joints);
        (allTimed, allTools, waiting) = (Chance(0.6), Chance(0.7), Chance(0.3) ? 0 : 0.25);
        var bare = Shuffled([.. Undoing(), .. Taking(), .. Alternatives()]);
        foreach (var operation in bare[..Math.Min(bare.Length, most)]) Add(operation with { Id = $"o{done.Count}" });
        Operations = Chance(0.5) ? [.. done] : Shuffled([.. done]);
    }

    public static ImmutableArray<Tool> Tools { get; } =
        [Tool("t0"), Tool("t1"), Tool("t2"), Tool("hot") with { HeatC = 90 }];

    public Operation[] Operations { get; }

    public List<Milestone> Milestones { get; } = [];

    static Tool Tool(string id) => new() { Id = id, Name = id, Class = ToolClass.Basic };

    IEnumerable<Operation> Undoing() => joints.Where(joint => Chance(joint.Kind == JointKind.Contact ? 0.2 : 0.9)).Select(joint => Bare() with { Undoes = [joint.Id] });

    IEnumerable<Operation> Taking() => parts.Where(_ => Chance(0.75)).Select(Take);

    IEnumerable<Operation> Alternatives() => Enumerable.Range(0, random.Next(3))
        .Select(_ => Chance(0.5) ? Take(parts[random.Next(parts.Length)]) : Bare() with { Undoes = [.. joints.Where(_ => Chance(0.4)).Select(joint => joint.Id)] });

    static Operation Bare() => new() { Id = "", Action = OperationAction.Other };

    Operation Take(Part part)
    {
        ImmutableArray<string> named = [part.Id, .. parts.Where(other => other != part && Chance(0.05)).Select(other => other.Id)];
        var touching = joints.Where(joint => joint.Joins.Intersect(named).Any()).ToArray();
        var operation = Bare() with { Undoes = [.. touching.Where(_ => Chance(0.2)).Select(joint => joint.Id)] };
        if (!Chance(0.18)) return operation with { Removes = named, Moves = [.. parts.Where(other => !named.Contains(other.Id) && Chance(0.01)).Select(other => other.Id)] };
        return operation with { Moves = named, HoldsBy = [.. touching.Where(joint => !operation.Undoes.Contains(joint.Id) && Chance(0.7)).Select(joint => joint.Id)] };
    }

    void Add(Operation bare)
    {
        var before = done.Count == 0 || !Chance(0.08) ? null : done[random.Next(done.Count)];
        done.Add(Timed(bare) with
        {
            Action = Chance(0.75) ? Actions[random.Next(3)] : Actions[random.Next(Actions.Length)],
            Tools = allTools || Chance(0.6) ? EntryList.Of(ToolSet()) : default,
            OrTools = Chance(0.2) ? [.. Enumerable.Range(0, random.Next(1, 3)).Select(_ => ToolSet())] : [],
            After = [.. Enumerable.Range(0, 2).Where(_ => Chance(waiting)).Select(_ => Condition(2))],
            DirectlyAfter = before?.Id,
            Damages = Chance(0.1) ? Things() : [],
            Phase = Chance(0.04) ? OperationPhase.Reassembly : OperationPhase.Disassembly,
            Outcomes = Chance(0.08) ? [new() { Unit = "a", Result = OutcomeResult.Damaged, Damages = Things() }] : [],
        });
        if (Chance(0.12)) Milestones.Add(new() { Id = $"m{Milestones.Count}", When = [Condition(1)] });
    }

    ImmutableArray<string> ToolSet() => [.. Shuffled([.. Tools])[..(Chance(0.2) ? 0 : Chance(0.8) ? 1 : 2)].Select(tool => tool.Id)];

    ImmutableArray<string> Things() => [Chance(0.6) ? parts[random.Next(parts.Length)].Id : joints[random.Next(joints.Length)].Id];

    Operation Timed(Operation operation) => random.Next(allTimed ? 8 : 11) switch
    {
        < 5 => operation with { Seconds = random.Next(1, 5) },
        < 7 => operation with { Seconds = new(random.Next(1, 3), random.Next(3, 6)) },
        7 => operation with { Footage = [.. Enumerable.Range(0, random.Next(1, 4)).Select(_ => Piece())] },
        8 => operation with { Seconds = Chance(0.5) ? new(2, null) : new(null, 2) },
        _ => operation,
    };

    Footage Piece()
    {
        var from = random.Next(100);
        return new() { Source = "film", Unit = Chance(0.5) ? "a" : "b", From = TimeSpan.FromSeconds(from), To = TimeSpan.FromSeconds(from + random.Next(1, 4)) };
    }

    Condition Condition(int depth) => random.Next(depth > 0 ? 10 : 7) switch
    {
        0 when Milestones.Count > 0 => new Condition.Done(Milestones[random.Next(Milestones.Count)].Id),
        < 2 when done.Count > 0 => new Condition.Done(done[random.Next(done.Count)].Id),
        < 4 => new Condition.Removed(Part(each => each.Removes)),
        4 => new Condition.Away(Part(each => each.Removes.AddRange(each.Moves))),
        < 7 => new Condition.Undone(Chance(0.1) || Earlier(each => each.Undoes) is not { } joint ? joints[random.Next(joints.Length)].Id : joint),
        < 9 => new Condition.AnyOf([.. Enumerable.Range(0, random.Next(1, 4)).Select(_ => Condition(depth - 1))]),
        _ => new Condition.AllOf([.. Enumerable.Range(0, random.Next(1, 3)).Select(_ => Condition(depth - 1))]),
    };

    string Part(Func<Operation, ImmutableArray<string>> named) =>
        Chance(0.1) || Earlier(named) is not { } part ? parts[random.Next(parts.Length)].Id : part;

    string? Earlier(Func<Operation, ImmutableArray<string>> named)
    {
        string[] all = [.. done.SelectMany(operation => named(operation))];
        return all.Length == 0 ? null : all[random.Next(all.Length)];
    }

    T[] Shuffled<T>(T[] from)
    {
        T[] all = [.. from];
        random.Shuffle(all);
        return all;
    }

    bool Chance(double share) => random.NextDouble() < share;
}
