using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Testing;

static class PartMembers
{
    static readonly Place<Part> Parts = RecordRoot.Place.Each("parts", r => r.Parts, (r, parts) => r with { Parts = parts });

    static readonly Place<PartMarking> Markings =
        Parts.Each("perUnit", p => EntryList.Of(p.PerUnit), (p, list) => p with { PerUnit = list.AsArray() });

    static readonly Place<Spec> Specs =
        Parts.Each("specs", p => EntryList.Of(p.Specs), (p, list) => p with { Specs = list.AsArray() });

    static readonly Place<Serialisation> Serialised =
        Parts.One("serialised", p => p.Serialised, (p, serialised) => p with { Serialised = serialised });

    static readonly Place<string> Absent = RecordRoot.Place.Each("absent", r => r.Absent, (r, absent) => r with { Absent = absent });

    public static ImmutableArray<Member> All =>
    [
        RecordRoot.Place.Known("parts"), Parts.Itself,
        Parts.Known("id"), Parts.Known("role"), Parts.Known("on", p => p.On is not null), Parts.Known("inert"), Parts.Known("reach"),
        Parts.Known("name", p => p.Name is not null),
        Parts.Open("hazards", p => p with { Hazards = default }),
        Parts.Open("perUnit", p => p.PerUnit.IsEmpty ? p : p with { PerUnit = [] }), Markings.Itself, Markings.Known("unit"),
        Markings.Open("marking", m => m with { Marking = null }),
        Markings.Open("modelCode", m => m with { ModelCode = null }),
        Parts.Open("specs", p => p.Specs.IsEmpty ? p : p with { Specs = [] }), Specs.Itself,
        Specs.Known("name"), Specs.Known("value"), Specs.Known("unit"),
        Parts.Open("serialised", p => p with { Serialised = null }),
        Serialised.Open("notify", s => s with { Notify = default }),
        Serialised.Open("authorise", s => s with { Authorise = default }),
        Serialised.Open("accessDays", s => s with { AccessDays = null }),
        Serialised.Open("audience", s => s with { Audience = default }),
        RecordRoot.Place.Open("absent", r => r with { Absent = default }), Absent.Itself,
    ];
}
