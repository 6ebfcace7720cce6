using System.Collections.Immutable;
using System.Numerics;

namespace FixScore.Pairing.Planning;

/// <summary>Finds few fixed trials that tell all possible sets of tied candidates apart.</summary>
/// <remarks>
/// One tied candidate or none: a binary code, which is best (separating systems, Katona 1966, from memory). More: trials
/// that part most pairs first, then needless ones are left out; few, but not proven fewest.
/// </remarks>
sealed class FixedPlanner(TieBelief belief, IRebuildCosts? rebuilds)
{
    readonly After start = Beginning.Of(belief);

    public FixedPlan Plan()
    {
        var knowledge = start.Knowledge;
        var sets = Hypotheses.Of(knowledge, FixedPlan.MostSets);
        var trials = sets is null ? Singles(knowledge) : knowledge.Most <= 1 ? Code(knowledge) : Parting(knowledge, sets);
        return new(
            [.. trials.Select(Ids)],
            sets is null ? [] : [.. sets.Select(tied => new FixedOutcome([.. trials.Select(trial => trial.Meets(tied))], Ids(tied | start.Tied)))],
            Math.Min(belief.AtMost, knowledge.Most + start.Tied.Size()),
            sets is null ? 0 : LogarithmUp(sets.Count),
            Seconds(trials));
    }

    static ulong[] Singles(Knowledge knowledge) => [.. knowledge.Open.Members().Select(Masks.Bit)];

    // Words with few ones first, so that few parts are moved.
    static ulong[] Code(Knowledge knowledge)
    {
        var members = knowledge.Open.Members().ToArray();
        var first = knowledge.Least > 0 || knowledge.Flags.Length > 0 ? 0 : 1;
        var length = LogarithmUp(members.Length + first);
        var words = Enumerable.Range(first, (1 << length) - first)
            .OrderBy(word => BitOperations.PopCount((uint)word)).ThenBy(word => word).Take(members.Length).ToArray();
        return [.. Enumerable.Range(0, length).Select(bit => members.Where((_, index) => (words[index] >> bit & 1) == 1).Union())];
    }

    static ulong[] Parting(Knowledge knowledge, List<ulong> sets)
    {
        var (taken, classes) = (new List<ulong>(), new List<List<ulong>> { sets });
        var options = Options(knowledge);
        while (classes.Count > 0)
        {
            taken.Add(options.MaxBy(trial => Parted(classes, trial)));
            classes = Split(classes, taken[^1]);
        }
        foreach (var each in taken.ToArray())
            if (taken.Where(other => other != each).Aggregate(new List<List<ulong>> { sets }, Split).Count == 0) taken.Remove(each);
        return [.. taken];
    }

    // All trials where they are few; else single candidates and those with the same remainder, as in the Chinese remainder sieve.
    static ulong[] Options(Knowledge knowledge)
    {
        const int FewEnough = 10;
        var members = knowledge.Open.Members().ToArray();
        return members.Length <= FewEnough
            ? [.. Enumerable.Range(1, (1 << members.Length) - 1).Select(choice => members.Where((_, index) => (choice >> index & 1) == 1).Union())]
            : [.. from modulus in Enumerable.Range(2, members.Length - 1)
                from remainder in Enumerable.Range(0, modulus)
                select members.Where((_, index) => index % modulus == remainder).Union(), .. Singles(knowledge)];
    }

    static long Parted(List<List<ulong>> classes, ulong trial) => classes.Sum(each =>
    {
        long met = each.Count(tied => tied.Meets(trial));
        return met * (each.Count - met);
    });

    static List<List<ulong>> Split(List<List<ulong>> classes, ulong trial) =>
        [.. classes.SelectMany(each => each.GroupBy(tied => tied.Meets(trial)).Select(part => part.ToList())).Where(part => part.Count > 1)];

    decimal? Seconds(ulong[] trials)
    {
        if (rebuilds is null) return null;
        var moves = new Moves(belief, rebuilds);
        return trials.Select((trial, index) => moves.Seconds(trial ^ (index == 0 ? 0 : trials[index - 1]))).Aggregate((decimal?)0, (sum, each) => sum + each);
    }

    static int LogarithmUp(int count) => count <= 1 ? 0 : BitOperations.Log2((uint)(count - 1)) + 1;

    ImmutableArray<string> Ids(ulong set) => [.. set.Members().Select(each => belief.Candidates[each].Id)];
}
