using FixScore.Records;

namespace FixScore.Checks;

/// <summary>Parts and joints that contradict themselves.</summary>
static class PartCheck
{
    public static IEnumerable<Problem> Check(CheckedRecord record) =>
        AbsentAndPresent(record).Concat(Carriers(record)).Concat(SelfJoints(record)).Concat(IntegralUndone(record));

    static IEnumerable<Problem> AbsentAndPresent(CheckedRecord record)
    {
        var present = record.Record.Parts.DistinctBy(part => part.Role, StringComparer.Ordinal).ToDictionary(part => part.Role, part => part.Id, StringComparer.Ordinal);
        for (var i = 0; i < record.Record.Absent.Count; i++)
        {
            var role = record.Record.Absent[i];
            if (present.TryGetValue(role, out var part))
                yield return Problem.Of(Severity.Error, Pointer.Root.Child("absent").Child(i), "role-absent-and-present",
                    "The role '{role}' is said to be absent, but '{part}' has it.", "Remove one of them.", ("role", role), ("part", part));
        }
    }

    static IEnumerable<Problem> Carriers(CheckedRecord record) =>
        from circle in Cycles.Of(record.Record.Parts.Select(part => KeyValuePair.Create(part.Id, part.On is { } carrier ? new[] { carrier } : [])))
        select Problem.Of(Severity.Error, record.At(record.Find<Part>(circle[0])!).Child("on"), "on-in-a-circle",
            circle.Length == 1 ? "'{part}' rides on itself." : "'{part}' rides on itself, by way of '{carrier}'.", "A part rides on what takes it along.",
            ("part", circle[0]), ("carrier", circle[^1]));

    static IEnumerable<Problem> SelfJoints(CheckedRecord record) =>
        from joint in record.Record.Joints
        where joint.Joins.Distinct(StringComparer.Ordinal).Count() < joint.Joins.Length
        select Problem.Of(Severity.Error, record.At(joint).Child("joins"), "joint-joins-itself",
            "The joint '{joint}' names a part twice.", "A joint holds different parts together.", ("joint", joint.Id));

    static IEnumerable<Problem> IntegralUndone(CheckedRecord record) =>
        from operation in record.Record.Operations
        from pair in operation.Undoes.Select((id, index) => (Joint: record.Find<Joint>(id), Index: index))
        where pair.Joint is { Integral: true }
        select Problem.Of(Severity.Warning, record.At(operation).Child("undoes").Child(pair.Index), "integral-undone",
            "The joint '{joint}' is integral; undoing it is ignored.", "Drop 'integral' when it can be undone, or drop it here.", ("joint", pair.Joint!.Id));
}
