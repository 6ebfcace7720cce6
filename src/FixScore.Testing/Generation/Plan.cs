using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Testing;

/// <summary>A part of a generated device. Later parts lie on top of earlier ones and come off first.</summary>
/// <param name="Role">Role, and id.</param>
/// <param name="Carrier">The earlier part it is fixed to; <c>null</c> for the base.</param>
/// <param name="Integral">Whether it is never meant to come off its carrier.</param>
/// <param name="Opened">Whether an operation takes it out.</param>
sealed record PlannedPart(string Role, string? Carrier, bool Integral, bool Opened);

/// <summary>How a generated device is stacked. Whatever waits for something waits for a part further up, so nothing waits for itself.</summary>
/// <param name="Parts">The parts, base first.</param>
sealed record Plan(ImmutableArray<PlannedPart> Parts)
{
    /// <summary>Roles that no part has.</summary>
    public IEnumerable<string> Unused => Roles.Known.Where(role => Parts.All(part => part.Role != role));

    /// <summary>Parts on top of the one at <paramref name="index"/> that an operation takes out.</summary>
    public ImmutableArray<string> Above(int index) => [.. Parts.Skip(index + 1).Where(part => part.Opened).Select(part => part.Role)];

    public static Plan Draw(Dice dice)
    {
        var roles = dice.Shuffled(Roles.Known)[..dice.Between(3, 8)];
        if (!roles.Contains(Roles.Mainboard) && dice.Chance(80)) roles = roles.SetItem(dice.Between(0, 1), Roles.Mainboard);
        return new([.. roles.Select((role, index) => Part(dice, roles, role, index))]);
    }

    static PlannedPart Part(Dice dice, ImmutableArray<string> roles, string role, int index)
    {
        if (index == 0) return new(role, null, false, false);
        var integral = role != Roles.Mainboard && dice.Chance(10);
        return new(role, roles[dice.Between(0, index - 1)], integral, !integral && dice.Chance(85));
    }
}
