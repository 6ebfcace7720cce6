using System.Collections.Immutable;
using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Ecodesign.Rules;

/// <summary>1.1(5): how listed parts other than the battery can be replaced: the display and list (a) in a workshop, list (c) by end users.</summary>
/// <remarks>A charger is not taken out of the device and is left out.</remarks>
static class PartDisassembly
{
    static readonly ImmutableArray<string> ByProfessionals = [Roles.DisplayAssembly, .. ListedParts.Professionals.Remove(Roles.Battery)];
    static readonly ImmutableArray<string> ByEndUsers = ListedParts.EndUsers.RemoveRange([Roles.Battery, Roles.DisplayAssembly, ListedParts.Charger]);

    public static IEnumerable<Requirement> Of(EcodesignDevice device) =>
    [
        .. ByProfessionals.Select(role => Of(device, role, DisassemblyRule.ByProfessionals)),
        .. ByEndUsers.Select(role => Of(device, role, DisassemblyRule.ByEndUsers)),
    ];

    static Requirement Of(EcodesignDevice device, string role, DisassemblyRule rule) =>
        new($"disassembly.{role}", device.Article("1.1(5)"), () => ListedParts.Judge(device, role, part => rule.Judge(device, part)));
}
