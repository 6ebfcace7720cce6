using FixScore.Records;

namespace FixScore.Reading.Records;

static class PartReader
{
    public static Part Part(ObjectReader part)
    {
        var role = part.Slug("role");
        return part.Entry(new Part
        {
            Id = part.Slug("id"),
            Role = role,
            Name = part.TextOrNull("name"),
            On = part.SlugOrNull("on"),
            Inert = part.FlagOrNull("inert") ?? Roles.IsInert(role),
            Reach = part.OneOf<Reach>("reach") is { IsUnknown: false } reach ? reach : Reach.NotTried,
            PerUnit = part.Objects("perUnit", Marking).OrEmpty(),
            Specs = part.Objects("specs", Spec).OrEmpty(),
            Serialised = part.Object("serialised", Serialisation),
            Hazards = part.WordList<Hazard>("hazards"),
        });
    }

    static PartMarking Marking(ObjectReader marking) => marking.Entry(new PartMarking
    {
        Unit = marking.Slug("unit"),
        Marking = marking.TextOrNull("marking"),
        ModelCode = marking.TextOrNull("modelCode"),
    });

    static Spec Spec(ObjectReader spec) => spec.Entry(new Spec
    {
        Name = spec.Slug("name"),
        Value = spec.Quantity("value", negative: true, required: true) ?? default,
        Unit = spec.Text("unit"),
    });

    static Serialisation Serialisation(ObjectReader serialised) => new()
    {
        Notify = serialised.OneOf<SerialAction>("notify", required: true),
        Authorise = serialised.OneOf<SerialAction>("authorise", required: true),
        AccessDays = serialised.Quantity("accessDays"),
        Audience = serialised.OneOf<Audience>("audience"),
    };
}
