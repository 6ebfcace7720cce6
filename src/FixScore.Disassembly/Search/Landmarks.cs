using FixScore.Disassembly.Model;

namespace FixScore.Disassembly.Search;

/// <summary>What every way to the goal must do: sets of operations, disjoint, of each of which one is done.</summary>
/// <remarks>
/// An operation's landmarks are itself and those of what it needs; a choice keeps only what all its branches share. The
/// greatest solution of these equations is sound also where needs go in circles. Source: landmarks of AND/OR graphs,
/// Keyder, Richter and Helmert, ECAI 2010 (from memory).
/// </remarks>
sealed class Landmarks
{
    // The equations take the square of this; a record beyond it is searched without a bound.
    const int MostNodes = 4_000;

    Landmarks(ulong[][] all) => All = all;

    /// <summary>The sets, those of one operation first.</summary>
    public ulong[][] All { get; }

    public static Landmarks Of(Plan plan) => plan.Works.Length + plan.Rows <= MostNodes ? Found(plan) : new([]);

    static Landmarks Found(Plan plan)
    {
        var goal = Solve(plan)[plan.Works.Length + plan.Goal];
        var (found, used) = (new List<ulong[]>(), new ulong[plan.Stride]);
        foreach (var single in goal.All().TakeWhile(each => each < plan.Works.Length)) Keep([single]);
        foreach (var row in goal.All().Select(each => each - plan.Works.Length).Where(row => row >= 0).OrderBy(row => Masks.Count(plan.Fact(row))))
            if (!Masks.Meet(plan.Fact(row), used)) Keep(Members(plan, row));
        return new([.. found]);

        void Keep(IEnumerable<int> members)
        {
            var mask = new ulong[plan.Stride];
            foreach (var member in members)
            {
                Masks.Add(mask, member);
                Masks.Add(used, member);
            }
            found.Add(mask);
        }
    }

    // Operations first, then rows; a row that is a fact is itself a landmark.
    static Bits[] Solve(Plan plan)
    {
        var (count, size) = (plan.Works.Length, plan.Works.Length + plan.Rows);
        Bits[] sets = [.. Enumerable.Range(0, size).Select(_ => Bits.Of(size, Enumerable.Range(0, size)))];
        for (var shrunk = true; shrunk;)
        {
            shrunk = false;
            for (var row = 0; row < plan.Rows; row++) shrunk |= Set(sets, count + row, OfRow(plan, sets, row));
            for (var work = 0; work < count; work++) shrunk |= Set(sets, work, OfWork(plan, sets, work));
        }
        return sets;
    }

    static bool Set(Bits[] sets, int index, Bits now)
    {
        if (sets[index].Same(now)) return false;
        sets[index] = now;
        return true;
    }

    static Bits OfWork(Plan plan, Bits[] sets, int work)
    {
        var own = sets[plan.Works.Length + plan.NeedOf[work]].Copy();
        own.Add(work);
        if (plan.Before[work] is >= 0 and var before) own.AddAll(sets[before]);
        return own;
    }

    static Bits OfRow(Plan plan, Bits[] sets, int row)
    {
        var parts = plan.IsFact(row) ? Members(plan, row) : [.. plan.Parts(row)];
        var offset = plan.IsFact(row) ? 0 : plan.Works.Length;
        var own = new Bits(plan.Works.Length + plan.Rows);
        if (plan.IsFact(row) || !plan.IsAll(row)) own = Common(sets, parts, offset);
        else foreach (var part in parts) own.AddAll(sets[offset + part]);
        if (plan.IsFact(row)) own.Add(plan.Works.Length + row);
        return own;
    }

    static Bits Common(Bits[] sets, int[] parts, int offset)
    {
        var size = sets.Length;
        var common = Bits.Of(size, Enumerable.Range(0, size));
        foreach (var part in parts) common.KeepOnly(sets[offset + part]);
        return common;
    }

    static int[] Members(Plan plan, int row) => [.. Enumerable.Range(0, plan.Works.Length).Where(work => Masks.Has(plan.Fact(row), work))];
}
