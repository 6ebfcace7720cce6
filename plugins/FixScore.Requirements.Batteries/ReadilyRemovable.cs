using System.Collections.Immutable;
using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Batteries;

/// <summary>Article 11(1): the end user can take the whole battery out with tools on sale, without heat and without solvent.</summary>
/// <remarks>
/// A specialised tool is allowed only when it comes free with the product, a proprietary one never. Heat is the action, or a
/// tool that heats; melting solder is heat. The battery itself must come out unharmed and by itself, not as one with the
/// main board, display, cover or frame. Single cells are not told apart: a part of role <c>battery</c> is a whole battery.
/// </remarks>
static class ReadilyRemovable
{
    // Not a part of a battery: what is replaced with it would be thrown away with it (our reading of "readily removable").
    static readonly ImmutableArray<string> NoPartOfABattery = [Roles.Mainboard, Roles.DisplayAssembly, "back-cover", "frame"];

    public static Requirement Of(BatteryDevice batteries) => new("readily-removable", "Art. 11(1)", () => batteries.WithInterplay(Judge(batteries)));

    public static Answer Judge(BatteryDevice batteries) => batteries.ForAll(battery => Judge(batteries, battery));

    static Answer Judge(BatteryDevice batteries, Part battery)
    {
        var group = batteries.GroupOf(battery);
        Part[] others = [.. group.Parts.Where(part => NoPartOfABattery.Contains(part.Role))];
        return others.Length > 0
            ? Answer.Of(false, BatteryReasons.ReplacedTogether(batteries.Case, battery, others))
            : WayAnswers.To(batteries.Case, battery, new RemovalRule(batteries.Record, group).Aspects, batteries.Cancellation);
    }
}
