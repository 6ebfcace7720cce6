using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Testing;

static class OperationMembers
{
    static readonly Place<Operation> Operations =
        RecordRoot.Place.Each("operations", r => r.Operations, (r, operations) => r with { Operations = operations });

    static readonly Place<OperationOutcome> Outcomes =
        Operations.Each("outcomes", o => EntryList.Of(o.Outcomes), (o, list) => o with { Outcomes = list.AsArray() });

    static readonly Place<Tool> Tools = RecordRoot.Place.Each("tools", r => r.Tools, (r, tools) => r with { Tools = tools });

    static readonly Place<Consumable> Consumables =
        RecordRoot.Place.Each("consumables", r => r.Consumables, (r, consumables) => r with { Consumables = consumables });

    static readonly Place<Milestone> Milestones =
        RecordRoot.Place.Each("milestones", r => r.Milestones, (r, milestones) => r with { Milestones = milestones });

    static readonly Place<Sequence> Sequences =
        RecordRoot.Place.Each("sequences", r => r.Sequences, (r, sequences) => r with { Sequences = sequences });

    public static ImmutableArray<Member> All =>
    [
        RecordRoot.Place.Open("operations", WithoutOperations), Operations.Itself, .. Known(Operations,
            "id", "action", "orTools", "after", "undoes", "moves", "holdsBy", "removes", "damages", "phase", "consumes", "footage"),
        Operations.Known("directlyAfter", o => o.DirectlyAfter is not null), Operations.Known("caution", o => o.Caution is not null),
        Operations.Open("tools", o => o.Tools.IsRecorded ? o with { Tools = default, OrTools = [] } : o),
        // The format uses an operation without a time only where no fully timed route exists, so that losing one time
        // may leave another, exact route: only losing all of them must widen.
        Operations.OpenAllAtOnce("seconds", o => o with { Seconds = null, WaitSeconds = null }),
        Operations.OpenAllAtOnce("waitSeconds", o => o with { WaitSeconds = null }),
        Operations.OpenAllAtOnce("reassemblySeconds", o => o with { ReassemblySeconds = null }),
        Operations.Open("hazards", o => o with { Hazards = default }),
        Operations.Open("environment", o => o with { Environment = default }),
        Operations.Open("skill", o => o with { Skill = default }),
        Operations.Open("outcomes", o => o.Outcomes.IsEmpty ? o : o with { Outcomes = [] }),
        Outcomes.Itself, .. Known(Outcomes, "unit", "result", "damages"),
        RecordRoot.Place.Open("tools", WithoutTools), Tools.Itself, .. Known(Tools, "id", "name", "suppliedWith", "heatC", "solvent"),
        Tools.Open("class", t => t with { Class = new([.. Enum.GetValues<ToolClass>()]) }),
        RecordRoot.Place.Known("consumables", r => r.Consumables.IsRecorded), Consumables.Itself, .. Known(Consumables, "id", "name"),
        Consumables.Open("kind", c => c with { Kind = null }),
        Consumables.Open("price", c => c with { Price = null }),
        .. PriceMembers.Of(Consumables.One("price", c => c.Price, (c, price) => c with { Price = price })),
        RecordRoot.Place.Known("milestones", r => r.Milestones.IsRecorded), Milestones.Itself, .. Known(Milestones, "id", "when"),
        RecordRoot.Place.Open("sequences", r => r with { Sequences = default }), Sequences.Itself,
        .. Known(Sequences, "id", "part", "by", "unit", "operations"),
    ];

    // What names an operation goes with it, else its id would dangle.
    public static TeardownRecord WithoutOperations(TeardownRecord record) =>
        record.Operations.IsRecorded ? record with { Operations = default, Milestones = default, Sequences = default, Findings = default } : record;

    static TeardownRecord WithoutTools(TeardownRecord record) => !record.Tools.IsRecorded ? record : record with
    {
        Tools = default,
        Operations = !record.Operations.IsRecorded ? default
            : [.. record.Operations.Select(operation => operation with { Tools = default, OrTools = [] })],
        Findings = default,
    };

    static IEnumerable<Member> Known<T>(Place<T> place, params IEnumerable<string> names) where T : class =>
        names.Select(name => place.Known(name));
}
