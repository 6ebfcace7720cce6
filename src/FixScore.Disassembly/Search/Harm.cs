using FixScore.Disassembly.Model;

namespace FixScore.Disassembly.Search;

/// <summary>What damage weighs when nothing frees a part without: parts first, then joints, then cost.</summary>
sealed class Harm
{
    readonly (ulong[] By, Int128 Weight)[] harmed;
    readonly int[][] byWork;

    Harm((ulong[] By, Int128 Weight)[] harmed, int count)
    {
        this.harmed = harmed;
        byWork = [.. Enumerable.Range(0, count).Select(work => Enumerable.Range(0, harmed.Length).Where(each => Masks.Has(harmed[each].By, work)).ToArray())];
    }

    /// <summary>No damage to weigh.</summary>
    public static Harm None(Plan plan) => new([], plan.Works.Length);

    /// <summary>Weighs damage above any cost.</summary>
    /// <param name="plan">The question.</param>
    /// <param name="price">The cost below it.</param>
    /// <param name="structure">Tells parts from joints.</param>
    public static Harm Of(Plan plan, Price price, Structure structure)
    {
        string[] ids = [.. plan.Works.SelectMany(work => work.Operation.Damages).Distinct(StringComparer.Ordinal)];
        var joint = price.Most + 1;
        var part = joint * (ids.Length + 1);
        return new([.. ids.Select(id => (By(plan, id), structure.IsPart(id) ? part : joint))], plan.Works.Length);
    }

    /// <summary>The weight of what this operation harms and nothing harmed before.</summary>
    public Int128 Added(ReadOnlySpan<ulong> done, int work)
    {
        var added = Int128.Zero;
        foreach (var each in byWork[work])
            if (!Masks.Meet(harmed[each].By, done)) added += harmed[each].Weight;
        return added;
    }

    static ulong[] By(Plan plan, string id)
    {
        var mask = new ulong[plan.Stride];
        for (var work = 0; work < plan.Works.Length; work++)
            if (plan.Works[work].Operation.Damages.Contains(id)) Masks.Add(mask, work);
        return mask;
    }
}
