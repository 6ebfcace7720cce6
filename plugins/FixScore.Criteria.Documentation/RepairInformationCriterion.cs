namespace FixScore.Criteria.Documentation;

/// <summary>Who gets the repair information, and at what cost: for everyone free, for professional repairers free, or for a fee.</summary>
/// <remarks>
/// <para>The level is <c>public-free</c> when every subject is public and free, where it is enough for subjects in
/// <c>boardSubjects</c> that professional repairers get them free; <c>professionals-free</c> when professional repairers get all
/// free; <c>professionals-reasonable-fee</c> when they get all, some for a reasonable fee. Otherwise there is no level and
/// <c>noLevel</c> decides. What only the maker's own network gets, or what costs any other fee, is out of reach. More is
/// better.</para>
/// <para>A subject has its best document; one written <c>a-or-b</c> is met by documents of either. Documents about some parts
/// cover these parts: a subject with a document about the whole device is judged by such documents, one without by the worst
/// of the parts that its documents name.</para>
/// <para>Unknown audience or cost gives the hull of all that is possible. A subject not listed in a list with entries may have
/// any level; an empty list says that there are no documents; without a list the answer is unknown. No subjects asked for: not
/// applicable.</para>
/// <para>Source: Regulation (EU) 2023/1669 Annex IV point 5, score for repair information; subjects: Regulation (EU) 2023/1670
/// Annex II B and D 1.1(2)(e). Thread safe.</para>
/// </remarks>
public sealed class RepairInformationCriterion : IDeviceCriterion, IDesignAdvisor
{
    /// <inheritdoc/>
    public CriterionInfo Info { get; } = new(
        "repair-information", 1, "Repair information", "who gets all of the repair information, and at what cost", "level",
        Direction.MoreIsBetter,
        "Regulation (EU) 2023/1669 Annex IV point 5, score for repair information; subjects: Regulation (EU) 2023/1670 Annex II 1.1(2)(e)",
        ["documentation", "documentation[].subject", "documentation[].audience", "documentation[].cost", "documentation[].parts"],
        RepairInformationOptions.All);

    /// <inheritdoc/>
    public Outcome Judge(DeviceContext context)
    {
        var facts = RepairInformationFacts.Of(
            context.Case.Record.Documentation, context.Get(RepairInformationOptions.Subjects), context.Get(RepairInformationOptions.BoardSubjects));
        if (facts.Subjects.IsEmpty) return Outcome.NotApplicable(RepairInformationReasons.NothingAsked());
        if (!facts.IsRecorded) return Outcome.Unknown(new Missing(Pointer.Root, "documentation"));
        var reasons = new RepairInformationReasons(context);
        if (facts.IsEmpty) return Outcome.Scored(reasons.PointsOf([InformationAccess.None]), reasons.NoDocuments());
        return Outcome.Scored(reasons.PointsOf(facts.Access), [reasons.Level(facts), .. facts.Subjects.Select(reasons.Of)]) with
        {
            Missing = [.. facts.Subjects.SelectMany(reasons.Missing)],
        };
    }

    /// <inheritdoc/>
    public IEnumerable<DesignChange> Suggest(DeviceContext context) => RepairInformationChanges.Of(context);
}
