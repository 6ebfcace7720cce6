using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Testing;

static class DeviceMembers
{
    static readonly Place<Device> Device = RecordRoot.Place.One("device", r => r.Device, (r, device) => r with { Device = device });

    static readonly Place<Assessment> Assessment =
        RecordRoot.Place.One("assessment", r => r.Assessment, (r, assessment) => r with { Assessment = assessment });

    static readonly Place<AssessedUnit> Units = Assessment.Each("units", a => a.Units, (a, units) => a with { Units = units });

    public static ImmutableArray<Member> All =>
    [
        Device.Itself, Device.Known("maker"), Device.Known("model"), Device.Known("kind"), Device.Known("foldable"),
        Device.Open("modelCode", d => d with { ModelCode = null }),
        Device.Open("released", d => d with { Released = null }),
        Device.Open("ingressProtection", d => d with { IngressProtection = null }),
        Device.Open("price", d => d with { Price = null }),
        .. PriceMembers.Of(Device.One("price", d => d.Price, (d, price) => d with { Price = price })),
        Assessment.Itself, Assessment.Known("assessor"), Assessment.Known("date"), Assessment.Known("units"), Units.Itself,
        Units.Known("id"),
        Units.Open("modelCode", u => u with { ModelCode = null }),
        Units.Open("software", u => u with { Software = null }),
        Units.Open("source", u => u with { Source = default }),
    ];
}
