using FixScore.Records;

namespace FixScore;

/// <summary>Where each entry of a record stands. Entries are told apart by identity: equal ones may stand twice.</summary>
sealed class EntryPointers
{
    readonly Dictionary<RecordEntry, Pointer> pointers = new(ReferenceEqualityComparer.Instance);

    public EntryPointers(TeardownRecord record)
    {
        Add(Pointer.Root.Child("assessment").Child("units"), record.Assessment.Units);
        AddParts(record);
        Add("joints", record.Joints);
        Add("tools", record.Tools);
        Add("consumables", record.Consumables);
        AddOperations(record);
        Add("milestones", record.Milestones);
        Add("sequences", record.Sequences);
        AddTrials(record);
        Add("documentation", record.Documentation);
        Add("spares", record.Spares);
        Add("observations", record.Observations);
        Add("findings", record.Findings);
        Add("evidence", record.Evidence);
    }

    public Pointer Of(RecordEntry entry) => pointers.TryGetValue(entry, out var pointer)
        ? pointer
        : throw new ArgumentException("The entry is not one of this record.", nameof(entry));

    void AddParts(TeardownRecord record)
    {
        Add("parts", record.Parts);
        foreach (var part in record.Parts)
        {
            Add(Of(part).Child("perUnit"), part.PerUnit);
            Add(Of(part).Child("specs"), part.Specs);
        }
    }

    void AddOperations(TeardownRecord record)
    {
        Add("operations", record.Operations);
        foreach (var operation in record.Operations)
        {
            Add(Of(operation).Child("footage"), operation.Footage);
            Add(Of(operation).Child("outcomes"), operation.Outcomes);
        }
    }

    void AddTrials(TeardownRecord record)
    {
        Add("swaps", record.Swaps);
        foreach (var trial in record.Swaps) Add(Of(trial).Child("checks"), trial.Checks);
        Add("locks", record.Locks);
        foreach (var trial in record.Locks) Add(Of(trial).Child("losses"), trial.Losses);
    }

    void Add(string list, IReadOnlyList<RecordEntry> entries) => Add(Pointer.Root.Child(list), entries);

    void Add(Pointer list, IReadOnlyList<RecordEntry> entries)
    {
        for (var i = 0; i < entries.Count; i++) pointers.TryAdd(entries[i], list.Child(i));
    }
}
