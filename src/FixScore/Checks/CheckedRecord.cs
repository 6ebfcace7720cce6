using FixScore.Records;

namespace FixScore.Checks;

/// <summary>What entry an id names.</summary>
[Flags]
enum Named
{
    Nothing = 0,
    Part = 1,
    Joint = 2,
    Tool = 4,
    Unit = 8,
    Operation = 16,
    Milestone = 32,
    Consumable = 64,
    Evidence = 128,
    Other = 256,
    Anything = 511,
}

/// <summary>A record under check: its entries by id and by place.</summary>
sealed class CheckedRecord
{
    readonly Lazy<EntryPointers> pointers;
    readonly Lazy<PartGroups> groups;
    readonly Lazy<HashSet<string>> boards;
    readonly Dictionary<string, NamedEntry> byId = new(StringComparer.Ordinal);

    public CheckedRecord(TeardownRecord record)
    {
        Record = record;
        pointers = new(() => new EntryPointers(record));
        groups = new(() => PartGroups.Of(record));
        boards = new(() => record.Parts.Where(part => part.Role == Roles.Mainboard).Select(part => GroupOf(part.Id)).ToHashSet(StringComparer.Ordinal));
        foreach (var entry in NamedEntries()) byId.TryAdd(entry.Id, entry);
    }

    public TeardownRecord Record { get; }

    /// <summary>The groups that hold a main board, as <see cref="GroupOf"/> names them.</summary>
    public IReadOnlySet<string> BoardGroups => boards.Value;

    public Pointer At(RecordEntry entry) => pointers.Value.Of(entry);

    /// <summary>Names the group of a part: the id of its first part.</summary>
    public string GroupOf(string part) => groups.Value.Of(part).Parts[0].Id;

    public T? Find<T>(string id) where T : NamedEntry => byId.GetValueOrDefault(id) as T;

    public Named KindOf(string id) => byId.GetValueOrDefault(id) switch
    {
        null => Named.Nothing,
        Part => Named.Part,
        Joint => Named.Joint,
        Tool => Named.Tool,
        AssessedUnit => Named.Unit,
        Operation => Named.Operation,
        Milestone => Named.Milestone,
        Consumable => Named.Consumable,
        EvidenceItem => Named.Evidence,
        _ => Named.Other,
    };

    public IEnumerable<string> IdsOf(Named kinds) => byId.Keys.Where(id => (KindOf(id) & kinds) != 0);

    /// <summary>Every entry that has an id, in the order of the format.</summary>
    public IEnumerable<NamedEntry> NamedEntries() =>
        ((IEnumerable<NamedEntry>)Record.Assessment.Units)
            .Concat(Record.Parts).Concat(Record.Joints).Concat(Record.Tools).Concat(Record.Consumables)
            .Concat(Record.Operations).Concat(Record.Milestones).Concat(Record.Sequences)
            .Concat(Record.Swaps).Concat(Record.Locks).Concat(Record.Evidence);
}
