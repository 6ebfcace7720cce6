using System.Collections.Immutable;
using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Reporting.Sheet;

/// <summary>What must be at hand before work begins.</summary>
/// <param name="Tools">The tools in the order in which they are taken up.</param>
/// <param name="ToolsAreRecorded">Whether the tools of every operation are known.</param>
/// <param name="Bits">Screw drives and diameters, one for each pair.</param>
/// <param name="Consumables">What is used up on the way.</param>
/// <param name="ForReassembly">What the record's operations of reassembly use up; for the whole device.</param>
/// <param name="Renew">Joints that cannot simply be closed again.</param>
/// <param name="Waits">The longest waits with hands free, longest first, three at most.</param>
public sealed record SheetStock(
    ImmutableArray<Tool> Tools, bool ToolsAreRecorded, ImmutableArray<SheetBit> Bits, ImmutableArray<SheetUse> Consumables,
    ImmutableArray<Consumable> ForReassembly, ImmutableArray<SheetRenewal> Renew, ImmutableArray<SheetOperation> Waits);

/// <summary>A bit, by the screws it turns.</summary>
/// <param name="Drive">The drive; may be unknown.</param>
/// <param name="DiameterMm">Nominal thread diameter in millimetres; the size of the bit itself is not recorded.</param>
/// <param name="Joints">Ids of the joints it opens.</param>
public sealed record SheetBit(OneOf<string> Drive, Quantity DiameterMm, ImmutableArray<string> Joints);

/// <summary>A consumable and how often it is used.</summary>
/// <param name="Consumable">The consumable.</param>
/// <param name="Count">How many operations use it.</param>
public sealed record SheetUse(Consumable Consumable, int Count);

/// <summary>A joint that cannot simply be closed again.</summary>
/// <param name="Joint">The joint.</param>
/// <param name="Levels">What its level can be (Regulation (EU) 2023/1669 Annex I (16) to (19)); all of them when reuse is not recorded.</param>
public sealed record SheetRenewal(Joint Joint, ImmutableArray<FastenerLevel> Levels)
{
    /// <summary>Whether the record says what undoing leaves of it.</summary>
    public bool IsRecorded => !Joint.Reuse.IsUnknown;
}
