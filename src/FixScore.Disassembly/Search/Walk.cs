using System.Collections.Immutable;
using FixScore.Disassembly.Model;

namespace FixScore.Disassembly.Search;

/// <summary>Costs a sequence of operations, whoever made it, with the alternatives of tools that make the fewest steps.</summary>
static class Walk
{
    public static Way Of(Structure structure, ImmutableArray<Work> works, FirstTool firstTool)
    {
        var (least, most) = (Cheapest(works, firstTool, UnknownTools.BareHands), Cheapest(works, firstTool, UnknownTools.OwnTool));
        return new(
            [.. works.Select((work, index) => Stop(structure, work, most.Options[index], Hull(least.Costs[index], most.Costs[index])))],
            Hull(least.Costs.Sum(), most.Costs.Sum()));
    }

    static Stop Stop(Structure structure, Work work, int option, Interval steps) => new(
        work.Operation, work.Options[option].Tools, steps,
        [.. structure.Undone(work.Operation).Select(joint => structure.Joints[joint].Id)],
        [.. structure.Along([.. work.Operation.Removes, .. work.Operation.Moves]).SelectMany(group => structure.Groups[group].Parts).Select(part => part.Id)]);

    static Interval Hull(int one, int other) => new(Math.Min(one, other), Math.Max(one, other));

    // Ways to choose tools are kept in the order of the alternatives, one for each state of the bench; among equals the first stays.
    static (int[] Options, int[] Costs) Cheapest(ImmutableArray<Work> works, FirstTool firstTool, UnknownTools unknown)
    {
        var price = new StepPrice(works, null, firstTool, unknown);
        List<Choice> choices = [new(price.Start, 0, [], [])];
        for (var work = 0; work < works.Length; work++)
        {
            var next = choices.SelectMany(choice => Enumerable.Range(0, price.Options(work)).Select(option => choice.With(price, work, option))).ToArray();
            var best = next.GroupBy(choice => choice.Bench).Select(same => same.MinBy(choice => choice.Cost)!).ToHashSet();
            choices = [.. next.Where(best.Contains)];
        }
        var chosen = choices.MinBy(choice => choice.Cost)!;
        return (chosen.Options, chosen.Costs);
    }

    sealed class Choice(int bench, int cost, int[] options, int[] costs)
    {
        public int Bench => bench;

        public int Cost => cost;

        public int[] Options => options;

        public int[] Costs => costs;

        public Choice With(StepPrice price, int work, int option)
        {
            var (added, after) = price.Of(bench, work, option);
            return new(after, cost + (int)added, [.. options, option], [.. costs, (int)added]);
        }
    }
}
