using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Batteries;

/// <summary>The batteries of a device.</summary>
sealed class BatteryDevice(RequirementContext context)
{
    public TeardownCase Case { get; } = context.Case;

    public TeardownRecord Record => Case.Record;

    public CancellationToken Cancellation => context.Cancellation;

    /// <summary>Kinds that have a battery rule of their own in Regulation (EU) 2023/1670.</summary>
    public bool HaveEcodesignRule => Record.Device.Kind is "smartphone" or "slate-tablet";

    /// <summary>The answer for all batteries; not applicable to a device that has none.</summary>
    public Answer ForAll(Func<Part, Answer> judge)
    {
        Part[] batteries = [.. Record.Parts.Where(part => part.Role == Roles.Battery)];
        if (batteries.Length > 0) return Answer.Each(batteries.Select(judge));
        return Record.Absent.Contains(Roles.Battery)
            ? Answer.NotApplicable(BatteryReasons.Absent())
            : Answer.Unknown(BatteryReasons.NotRecorded());
    }

    public PartGroup GroupOf(Part battery) => Case.Derive<PartGroups>().Of(battery.Id);

    /// <summary>Says that another law has a rule for the same, where it has; which of the two goes first is not ours to say.</summary>
    public Answer WithInterplay(Answer answer) =>
        HaveEcodesignRule && answer.Status != FindingStatus.NotApplicable ? answer with { Why = BatteryReasons.Interplay(answer.Why) } : answer;
}
