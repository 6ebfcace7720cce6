namespace FixScore.Reading.Profiles;

/// <summary>Whether a group's aggregate fits its scale and its weights look meant.</summary>
static class GroupCheck
{
    public static void Check(GroupNode group, Pointer at, ProfileBinding binding)
    {
        AggregateFits(group.Aggregate, group.Scale, at.Child("aggregate"), binding);
        var counted = group.Of.Where(node => node.Weight is not null).ToArray();
        if (group.Aggregate == Aggregate.Sum) SumFits(counted.Select(node => (node.Weight!.Value, node.Scale)), group.Scale, at, binding);
        else if (group.Aggregate != Aggregate.Minimum) WeightsLookMeant(counted, at, binding);
    }

    /// <summary>Means of powers and reciprocals have no meaning below 0.</summary>
    public static void AggregateFits(Aggregate aggregate, Scale scale, Pointer at, ProfileBinding binding)
    {
        if (aggregate is Aggregate.WeightedGeometric or Aggregate.WeightedHarmonic && scale.Min < 0)
            binding.Error(at, "aggregate-below-zero", "'{aggregate}' cannot take a scale that reaches below 0.", "Choose another aggregate, or a scale from 0.",
                ("aggregate", Word.Of(aggregate)));
    }

    /// <summary>A sum stays on the scale whatever the scores of its terms.</summary>
    public static void SumFits(IEnumerable<(decimal Factor, Scale Scale)> terms, Scale scale, Pointer at, ProfileBinding binding)
    {
        if (Reach([.. terms]) is { } reach && scale.Whole.Contains(reach)) return;
        binding.Error(at, "sum-leaves-scale", "The sum can leave the scale from {min} to {max}.", "Correct the factors or the scales.",
            ("min", scale.Min), ("max", scale.Max));
    }

    // Factors and points are below 1e15, but their products need not fit into a decimal.
    static Interval? Reach((decimal Factor, Scale Scale)[] terms)
    {
        try
        {
            return new(terms.Sum(term => term.Factor * term.Scale.Min), terms.Sum(term => term.Factor * term.Scale.Max));
        }
        catch (OverflowException)
        {
            return null;
        }
    }

    static void WeightsLookMeant(ProfileNode[] counted, Pointer at, ProfileBinding binding)
    {
        var weights = counted.Select(node => node.Weight!.Value).ToArray();
        var sum = weights.Sum();
        if (sum != 1 && !weights.All(weight => weight == decimal.Truncate(weight)))
            binding.Warn(at.Child("of"), "weights-look-like-a-slip", "The weights are neither whole numbers nor do they add up to 1, but to {sum}.",
                "They count in proportion all the same.", ("sum", sum));
    }
}
