using System.Collections.Immutable;
using FixScore.Numbers;

namespace FixScore.Scoring;

/// <summary>Asks criteria. What they throw stays with their leaf.</summary>
sealed class LeafJudge(TeardownCase source, CancellationToken cancellation)
{
    readonly List<ScoreFault> faults = [];

    public IReadOnlyList<ScoreFault> Faults => faults;

    public Row Row(LeafNode leaf, string path, Surroundings around)
    {
        cancellation.ThrowIfCancellationRequested();
        try
        {
            return Judged(leaf, path, around, Ask(leaf, around));
        }
        catch (Exception failure) when (failure is not OperationCanceledException)
        {
            return Faulted(leaf, path, around, "criterion-threw", [new("exception", failure.GetType().Name)]);
        }
    }

    Outcome Ask(LeafNode leaf, Surroundings around) => leaf.Criterion.Item switch
    {
        IPartCriterion criterion => criterion.Judge(new(source, leaf.Scale, leaf.Options, around.Part!, around.Roles, cancellation)),
        IDeviceCriterion criterion => criterion.Judge(new(source, leaf.Scale, leaf.Options, cancellation)),
        _ => throw new InvalidOperationException("A criterion judges the device or its parts."),
    };

    Row Judged(LeafNode leaf, string path, Surroundings around, Outcome outcome)
    {
        if (outcome.Kind == OutcomeKind.Scored && !leaf.Scale.Whole.Contains(outcome.Score))
            return Faulted(leaf, path, around, "score-left-scale", [new("score", outcome.Score)]);
        if (OutcomeCheck.Fault(outcome) is { } member) return Faulted(leaf, path, around, "outcome-malformed", [new("member", member)]);
        var (value, state) = ValueOf(leaf, outcome);
        return Make(leaf, path, around, value, state,
            [.. outcome.Reasons.Select(ScoreReason.From)], outcome.Missing, outcome.Kind != OutcomeKind.Unknown && value.IsExact, isFaulted: false);
    }

    static (Interval Value, RowState State) ValueOf(LeafNode leaf, Outcome outcome) => outcome.Kind switch
    {
        OutcomeKind.Scored => (new(Rounding.ToSignificant(outcome.Score.Low), Rounding.ToSignificant(outcome.Score.High)), RowState.Counts),
        OutcomeKind.Unknown => leaf.Unknown switch
        {
            UnknownPolicy.Interval => (leaf.Scale.Whole, RowState.Counts),
            UnknownPolicy.Worst => (leaf.Scale.Min, RowState.Counts),
            _ => (leaf.Scale.Whole, RowState.SkippedAsUnknown),
        },
        _ => (leaf.Scale.Max, leaf.NotApplicable == NotApplicablePolicy.Top ? RowState.Counts : RowState.SkippedAsNotApplicable),
    };

    Row Faulted(LeafNode leaf, string path, Surroundings around, string code, ImmutableArray<NamedValue> values)
    {
        faults.Add(new(path, leaf.Criterion.Item.Info.Id, leaf.Criterion.Plugin.Id, code, values));
        return Make(leaf, path, around, leaf.Scale.Whole, RowState.Counts, [], [], isKnown: false, isFaulted: true);
    }

    static Row Make(LeafNode leaf, string path, Surroundings around, Interval value, RowState state,
        ImmutableArray<ScoreReason> reasons, ImmutableArray<Missing> missing, bool isKnown, bool isFaulted) =>
        new(leaf, path, around.Title, around.Weight, RowRule.Given)
        {
            Role = around.Role,
            GateOnly = around.GateOnly,
            Value = around.Carry is { } carry ? Carried(value, carry) : value,
            State = state,
            IsKnown = isKnown,
            IsFaulted = isFaulted,
            Reasons = reasons,
            Missing = missing,
            Options = leaf.Over is null ? leaf.Options : null,
        };

    static Interval Carried(Interval value, Carry carry) =>
        new(Rounding.To(value.Low, carry.Decimals, carry.Rounding), Rounding.To(value.High, carry.Decimals, carry.Rounding));
}
