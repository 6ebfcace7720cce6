using FixScore.Testing;

namespace FixScore.Criteria.Tests.Cost;

/// <summary>An invented phone for 400 EUR with tax: half an hour to free the battery, half an hour to put it together.</summary>
static class Priced
{
    public static RecordBuilder Phone(
        Func<Operation, Operation>? operation = null, Func<Spare, Spare>? spare = null, Price? device = null) => new RecordBuilder()
        .Device(each => each with { Price = device ?? Euro(400) })
        .Part("frame").Part("battery").Bond("glue", ["battery", "frame"])
        .Consumable("tape", tape => tape with { Price = Euro(5) }).Consumable("cloth")
        .Operation("pull", OperationAction.Pull, [], ["glue"], ["battery"], seconds: 1800, configure: pull =>
            (operation ?? (each => each))(pull with { WaitSeconds = 0, ReassemblySeconds = 1800 }))
        .Spare("battery", Audience.Public, each => (spare ?? (one => one))(each with { Price = Euro(60) }));

    public static Price Euro(Quantity amount, bool? tax = true) => new(amount, "EUR", tax);
}
