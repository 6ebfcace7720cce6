namespace FixScore.Analysis.Improving;

/// <summary>What a criterion of a leaf said about each set of changes that it may notice.</summary>
/// <param name="whatIf">The records with changes.</param>
/// <param name="leaf">The leaf.</param>
/// <param name="relevant">The candidates that the criterion may notice.</param>
sealed class LeafMemory(WhatIf whatIf, LeafNode leaf, UInt128 relevant)
{
    // About how many scorings take as long as judging all parts by routes that have to be searched.
    const int OfSearching = 40;

    static readonly Outcome Nothing = Outcome.Unknown(new Missing(Pointer.Root, ""));
    static readonly Outcome NotAsked = Outcome.NotApplicable(new("", "", [], []));

    readonly Dictionary<(UInt128 Set, string Roles, string Part), Outcome?> said = [];
    readonly Dictionary<(int Limit, string Roles, string Part), Outcome?> best = [];

    // A criterion that reads the work as a whole follows it to the parts.
    readonly bool searches = leaf.Criterion.Item.Info.Reads.Contains("operations");

    public UInt128 Relevant => relevant;

    public ICriterion AsCriterion => leaf.Criterion.Item is IPartCriterion ? new OfPart(this) : new OfDevice(this);

    Outcome Answer(string part, PartContext? context)
    {
        var asked = whatIf.Now;
        var answer = asked.Limits is { } limits && relevant != 0
            ? Best(part, context, limits[whatIf.BlockOf(relevant)])
            : Said(asked.Set & relevant, part, context);
        asked.IsAnswered &= answer is not null;
        return answer ?? Nothing;
    }

    Outcome? Said(UInt128 set, string part, PartContext? context)
    {
        var roles = Key(context);
        if (said.TryGetValue((set, roles, part), out var known)) return known;
        if (whatIf.CaseOf(set) is not { } changed) return said[(set, roles, part)] = null;
        whatIf.Count(searches ? OfSearching : 1);
        foreach (var (id, outcome) in Judge(changed, context)) said[(set, roles, id)] = Bare(outcome);
        return said[(set, roles, part)];
    }

    // All parts at once, so that the record need not be kept.
    IEnumerable<(string Part, Outcome Outcome)> Judge(TeardownCase changed, PartContext? context) => leaf.Criterion.Item is IPartCriterion criterion
        ? changed.Record.Parts.Where(part => context!.Roles.Contains(part.Role))
            .Select(part => (part.Id, criterion.Judge(new(changed, leaf.Scale, leaf.Options, part, context!.Roles, context.Cancellation))))
        : [("", ((IDeviceCriterion)leaf.Criterion.Item).Judge(new(changed, leaf.Scale, leaf.Options)))];

    // A part may be judged among several sets of roles.
    static string Key(PartContext? context) => context is null ? "" : string.Join(',', context.Roles);

    static Outcome Bare(Outcome outcome) => outcome.Kind switch
    {
        OutcomeKind.Scored => Outcome.Scored(outcome.Score),
        OutcomeKind.Unknown => Nothing,
        _ => NotAsked,
    };

    // The highest low end that so many changes bring; none where the question may arise with some and not with others.
    Outcome? Best(string part, PartContext? context, int limit)
    {
        if (best.TryGetValue((limit, Key(context), part), out var known)) return known;
        var answer = limit == 0 ? Low(Said(0, part, context)) : Best(part, context, limit - 1);
        if (answer is not null)
            foreach (var set in whatIf.Choices.Of(relevant, limit))
            {
                if (whatIf.IsExhausted || answer is null) return null;
                if (Said(set, part, context) is { } outcome) answer = Better(answer, Low(outcome));
            }
        return best[(limit, Key(context), part)] = answer;
    }

    static Outcome? Better(Outcome one, Outcome? other)
    {
        if (other is null || one.Kind != other.Kind) return null;
        return one.Kind == OutcomeKind.Scored && other.Score.Low > one.Score.Low ? other : one;
    }

    // An unknown answer counts as the lowest, unless the profile leaves it out.
    Outcome? Low(Outcome? outcome) => outcome switch
    {
        null => null,
        { Kind: OutcomeKind.Scored } => Outcome.Scored(outcome.Score.Low),
        { Kind: OutcomeKind.Unknown } when leaf.Unknown != UnknownPolicy.Skip => Outcome.Scored(leaf.Scale.Min),
        _ => outcome,
    };

    sealed class OfPart(LeafMemory memory) : IPartCriterion
    {
        public CriterionInfo Info => memory.Leaf.Criterion.Item.Info;

        public Outcome Judge(PartContext context) => memory.Answer(context.Part.Id, context);
    }

    sealed class OfDevice(LeafMemory memory) : IDeviceCriterion
    {
        public CriterionInfo Info => memory.Leaf.Criterion.Item.Info;

        public Outcome Judge(DeviceContext context) => memory.Answer("", null);
    }

    LeafNode Leaf => leaf;
}
