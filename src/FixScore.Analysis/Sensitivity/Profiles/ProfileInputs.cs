namespace FixScore.Analysis.Sensitivity.Profiles;

/// <summary>Which number of a draw decides what. A choice without another way has no number. Immutable and thread safe.</summary>
sealed class ProfileInputs(ProfileChoices choices)
{
    readonly int _rule = choices.Lines.Nodes.Length;

    public int Count => _rule + 1 + Further.Count();

    /// <summary>The choices as the profile makes them.</summary>
    public Chosen Given => new(0, 0, HasGates: true, Unmoved());

    /// <summary>The inputs beside weights and rule, in the order of their numbers.</summary>
    public IEnumerable<RankShiftInput> Further =>
    [
        .. choices.Banded.Select(line => new RankShiftInput($"bands of {choices.Lines.Nodes[line].Id}", InputKind.Bands, choices.Factors.Length)),
        .. choices.Gates.IsEmpty ? [] : (RankShiftInput[])[new("gates", InputKind.Gates, 2)],
        new("unknown", InputKind.Unknown, choices.Unknown.Length),
        .. choices.Readings.Length == 1 ? [] : (RankShiftInput[])[new("readings", InputKind.Readings, choices.Readings.Length)],
    ];

    public int Rule(ReadOnlySpan<double> drawn, int ways) => DrawnRule.Way(drawn[_rule], ways);

    public Chosen At(ReadOnlySpan<double> drawn)
    {
        var (factors, next) = (Unmoved(), _rule + 1);
        foreach (var line in choices.Banded) factors[line] = DrawnRule.Way(drawn[next++], choices.Factors.Length);
        var hasGates = !choices.Gates.IsEmpty && DrawnRule.Way(drawn[next++], 2) == 1;
        var unknown = DrawnRule.Way(drawn[next++], choices.Unknown.Length);
        return new(choices.Readings.Length == 1 ? 0 : DrawnRule.Way(drawn[next], choices.Readings.Length), unknown, hasGates, factors);
    }

    int[] Unmoved()
    {
        var factors = new int[choices.Lines.Nodes.Length];
        Array.Fill(factors, choices.Unmoved);
        return factors;
    }
}

/// <summary>One way through the choices of a profile.</summary>
/// <param name="Reading">Number of the reading.</param>
/// <param name="Unknown">Number of the policy for what is unknown.</param>
/// <param name="HasGates">Whether gates cap.</param>
/// <param name="Factors">For each line the number of the factor of its bands.</param>
readonly record struct Chosen(int Reading, int Unknown, bool HasGates, int[] Factors);
