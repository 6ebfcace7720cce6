using System.Collections.Immutable;
using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Reporting.Sheet;

/// <summary>A work order for taking parts out of a device and putting it together again, as data. Immutable, thread safe.</summary>
public sealed record SheetPlan
{
    /// <summary>The record that the work is planned from.</summary>
    public required TeardownRecord Record { get; init; }

    /// <summary>The parts asked for, in the order asked: on the sheet, or left out with the reason.</summary>
    public required ImmutableArray<SheetPart> Parts { get; init; }

    /// <summary>What to beware of, for what the work touches; the line about local rules is last.</summary>
    public required ImmutableArray<string> Cautions { get; init; }

    /// <summary>What to have ready.</summary>
    public required SheetStock Ready { get; init; }

    /// <summary>Functions to check before; common practice, no source.</summary>
    public required ImmutableArray<string> Before { get; init; }

    /// <summary>A label for each part that comes loose, for each unit.</summary>
    public required ImmutableArray<SheetLabel> Labels { get; init; }

    /// <summary>What to do, in order; empty when no part can be freed.</summary>
    public required ImmutableArray<SheetOperation> Operations { get; init; }

    /// <summary>Whether no order takes fewer steps, proven; for many parts the search stops at a good one.</summary>
    public required bool IsShortest { get; init; }

    /// <summary>Which screw comes from where, in the order in which they come out.</summary>
    public required ImmutableArray<SheetScrew> Screws { get; init; }

    /// <summary>The way back: the operations that took something apart, last first.</summary>
    public required ImmutableArray<SheetReturn> Reassembly { get; init; }

    /// <summary>Operations that the record names for reassembly, in its order; which joints they serve is not recorded.</summary>
    public required ImmutableArray<Operation> AlsoRecorded { get; init; }

    /// <summary>What the work costs in sealing.</summary>
    public required SheetSealing Sealing { get; init; }

    /// <summary>Functions to check after; common practice, no source.</summary>
    public required ImmutableArray<string> After { get; init; }

    /// <summary>Plans the work on several parts in one go. Parts that cannot be freed without damage, or not along with those before them, are left out.</summary>
    /// <param name="source">The record.</param>
    /// <param name="parts">Parts of the record.</param>
    /// <exception cref="KeyNotFoundException">A part is not in the record.</exception>
    public static SheetPlan Of(TeardownCase source, ImmutableArray<Part> parts) => new SheetPlanner(source, parts).Plan();
}

/// <summary>A part asked for.</summary>
/// <param name="Part">The part.</param>
/// <param name="Reachability">Whether it can be freed without damage.</param>
/// <param name="Why">Why it is not on the sheet; <c>null</c> when it is, or when it cannot be freed along with the others.</param>
/// <param name="IsOnSheet">Whether the operations free it.</param>
public sealed record SheetPart(Part Part, Reachability Reachability, Reason? Why, bool IsOnSheet);

/// <summary>A label for a part of a unit.</summary>
/// <param name="Unit">Id of the unit.</param>
/// <param name="Part">Id of the part.</param>
/// <param name="Text">What to write on it, such as <c>A-battery</c>.</param>
public sealed record SheetLabel(string Unit, string Part, string Text);

/// <summary>An operation on the sheet.</summary>
/// <param name="Number">Its place, from 1.</param>
/// <param name="Stop">What is done with which tools.</param>
/// <param name="IsAtOnce">Whether it must come directly after the one before, because heat cools.</param>
public sealed record SheetOperation(int Number, Stop Stop, bool IsAtOnce);

/// <summary>Screws of one joint.</summary>
/// <param name="Number">The operation they come out in.</param>
/// <param name="Joint">The joint.</param>
/// <param name="KeepApartFrom">Ids of joints whose screws have the same drive and diameter and another length, or one of the lengths is not recorded.</param>
public sealed record SheetScrew(int Number, Joint Joint, ImmutableArray<string> KeepApartFrom);

/// <summary>An operation undone.</summary>
/// <param name="Number">The operation.</param>
/// <param name="Stop">What was done.</param>
/// <param name="Renew">What cannot simply be used again.</param>
public sealed record SheetReturn(int Number, Stop Stop, ImmutableArray<SheetRenewal> Renew);

/// <summary>What the work costs in sealing.</summary>
/// <param name="IngressProtection">The code of IEC 60529 on the record; <c>null</c> when not recorded.</param>
/// <param name="Opened">Gaskets, adhesives and tapes that the work opens.</param>
public sealed record SheetSealing(string? IngressProtection, ImmutableArray<Joint> Opened);
