using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Testing;

static class SupplyMembers
{
    static readonly Place<Document> Documents =
        RecordRoot.Place.Each("documentation", r => r.Documentation, (r, list) => r with { Documentation = list });

    static readonly Place<Spare> Spares = RecordRoot.Place.Each("spares", r => r.Spares, (r, spares) => r with { Spares = spares });

    static readonly Place<Support> Support = RecordRoot.Place.One("support", r => r.Support, (r, support) => r with { Support = support });

    static readonly Place<Observation> Observations =
        RecordRoot.Place.Each("observations", r => r.Observations, (r, list) => r with { Observations = list });

    static readonly Place<Remark> Findings = RecordRoot.Place.Each("findings", r => r.Findings, (r, findings) => r with { Findings = findings });

    static readonly Place<EvidenceItem> Evidence = RecordRoot.Place.Each("evidence", r => r.Evidence, (r, list) => r with { Evidence = list });

    public static ImmutableArray<Member> All =>
    [
        RecordRoot.Place.Open("documentation", r => r with { Documentation = default }), Documents.Itself,
        Documents.Known("subject"), Documents.Known("parts"),
        Documents.Open("audience", d => d with { Audience = default }),
        Documents.Open("cost", d => d with { Cost = default }),
        Documents.Open("years", d => d with { Years = null }),
        RecordRoot.Place.Open("spares", r => r with { Spares = default }), Spares.Itself,
        Spares.Known("part"), Spares.Known("onlyBundledWith"),
        Spares.Open("audience", s => s with { Audience = default }),
        Spares.Open("years", s => s with { Years = null }),
        Spares.Open("deliveryDays", s => s with { DeliveryDays = null }),
        Spares.Open("price", s => s with { Price = null }),
        .. PriceMembers.Of(Spares.One("price", s => s.Price, (s, price) => s with { Price = price })),
        Spares.Open("fastenersIncluded", s => s with { FastenersIncluded = null }),
        RecordRoot.Place.Open("support", r => r with { Support = null }),
        Support.Open("securityUpdateYears", s => s with { SecurityUpdateYears = null }),
        Support.Open("correctiveUpdateYears", s => s with { CorrectiveUpdateYears = null }),
        Support.Open("functionalityUpdateYears", s => s with { FunctionalityUpdateYears = null }),
        Support.Open("countedFrom", s => s with { CountedFrom = default }),
        RecordRoot.Place.Open("observations", r => r with { Observations = default }), Observations.Itself,
        Observations.Known("name"), Observations.Known("value"), Observations.Known("unit", o => o.Unit is not null), Observations.Known("parts"),
        RecordRoot.Place.Open("findings", r => r with { Findings = default }), Findings.Itself,
        Findings.Known("topic"), Findings.Known("text"), Findings.Known("about"),
        RecordRoot.Place.Known("evidence", r => r.Evidence.IsRecorded), Evidence.Itself,
        Evidence.Known("id"), Evidence.Known("kind"), Evidence.Known("ref"),
        Evidence.Known("sha256", e => e.Sha256 is not null), Evidence.Known("retrieved", e => e.Retrieved is not null),
    ];

    /// <summary>The observations of a name, which a record may hold or not.</summary>
    public static Member Observation(string name) => RecordRoot.Place.Open($"observations/{name}", record =>
        record.Observations.Any(each => each.Name == name)
            ? record with { Observations = [.. record.Observations.Where(each => each.Name != name)] }
            : record);
}
