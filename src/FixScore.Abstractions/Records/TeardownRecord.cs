namespace FixScore.Records;

/// <summary>What one assessor observed while taking two identical units apart, swapping parts and putting them together.</summary>
/// <remarks>
/// Format <c>fixscore-record/1</c>. A list that was not recorded is unknown; an empty one says that there is none.
/// Immutable and thread safe.
/// </remarks>
public sealed record TeardownRecord
{
    /// <summary>The value of the member <c>format</c>.</summary>
    public const string Format = "fixscore-record/1";

    /// <summary>The id of the record.</summary>
    public required string Id { get; init; }

    /// <summary>The device model.</summary>
    public required Device Device { get; init; }

    /// <summary>Who assessed what, when, on which units.</summary>
    public required Assessment Assessment { get; init; }

    /// <summary>The parts; at least one.</summary>
    public required EntryList<Part> Parts { get; init; }

    /// <summary>Roles that were looked for and that this device does not have.</summary>
    public EntryList<string> Absent { get; init; }

    /// <summary>What holds the parts together.</summary>
    public EntryList<Joint> Joints { get; init; }

    /// <summary>The tools used.</summary>
    public EntryList<Tool> Tools { get; init; }

    /// <summary>What is used up.</summary>
    public EntryList<Consumable> Consumables { get; init; }

    /// <summary>What can be done to take the device apart and to put it together.</summary>
    public EntryList<Operation> Operations { get; init; }

    /// <summary>Named states that operations wait for.</summary>
    public EntryList<Milestone> Milestones { get; init; }

    /// <summary>Ways to a part that were published or filmed.</summary>
    public EntryList<Sequence> Sequences { get; init; }

    /// <summary>Trials with parts swapped between units.</summary>
    public EntryList<SwapTrial> Swaps { get; init; }

    /// <summary>Trials with the boot lock.</summary>
    public EntryList<LockTrial> Locks { get; init; }

    /// <summary>Documents that exist, or that were looked for and do not.</summary>
    public EntryList<Document> Documentation { get; init; }

    /// <summary>Spare parts on offer, or that were looked for and are not.</summary>
    public EntryList<Spare> Spares { get; init; }

    /// <summary>How long software is supported; <c>null</c> when unknown.</summary>
    public Support? Support { get; init; }

    /// <summary>Observations for criteria of others.</summary>
    public EntryList<Observation> Observations { get; init; }

    /// <summary>What was noticed and fits nowhere else.</summary>
    public EntryList<Remark> Findings { get; init; }

    /// <summary>Footage, photos and documents that show it.</summary>
    public EntryList<EvidenceItem> Evidence { get; init; }
}
