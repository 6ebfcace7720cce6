using FixScore.Records;

namespace FixScore.Testing;

public sealed partial class RecordBuilder
{
    /// <summary>Changes the device model.</summary>
    public RecordBuilder Device(Func<Device, Device> change) =>
        With(record => record with { Device = change(record.Device) });

    /// <summary>Adds a unit to <c>unit-a</c> and <c>unit-b</c>, such as a loose spare used in trials.</summary>
    public RecordBuilder Unit(string id, OneOf<UnitSource> source = default, Func<AssessedUnit, AssessedUnit>? configure = null)
    {
        var unit = Changed(new AssessedUnit { Id = id, Source = source }, configure);
        return With(record => record with
        {
            Assessment = record.Assessment with { Units = Plus(record.Assessment.Units, unit) },
        });
    }

    /// <summary>Adds a part.</summary>
    /// <param name="id">Its id, a slug.</param>
    /// <param name="role">Its role; the id when left out. It decides whether the part is inert.</param>
    /// <param name="on">Id of the part it rides on.</param>
    /// <param name="configure">Changes the part.</param>
    public RecordBuilder Part(string id, string? role = null, string? on = null, Func<Part, Part>? configure = null)
    {
        var part = Changed(new Part { Id = id, Role = role ?? id, On = on, Inert = Roles.IsInert(role ?? id) }, configure);
        return With(record => record with { Parts = Plus(record.Parts, part) });
    }

    /// <summary>Says which roles were looked for and are not in the device.</summary>
    public RecordBuilder Absent(params ReadOnlySpan<string> roles)
    {
        foreach (var role in roles) With(record => record with { Absent = Plus(record.Absent, role) });
        return this;
    }
}
