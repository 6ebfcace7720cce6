using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Testing;

/// <summary>Small invented records that differ as much as devices do. Immutable; the same objects at every call.</summary>
/// <remarks>No value in them describes a device that exists.</remarks>
public static class SampleRecords
{
    /// <summary>One part, and nothing else is known.</summary>
    public static TeardownRecord Minimal { get; } = new RecordBuilder("minimal").Build();

    /// <summary>Entries in every list, and every observation that may be left out is left out.</summary>
    public static TeardownRecord EverythingUnknown { get; } = UnknownSample.Build();

    /// <summary>A tablet under glued glass: heat, solvent, cells that pull out, a display tied to the board.</summary>
    public static TeardownRecord GluedTablet { get; } = GluedSample.Build();

    /// <summary>A laptop of screws and plugs: common tools, public documents, spares with their fasteners.</summary>
    public static TeardownRecord ScrewedModular { get; } = ScrewedSample.Build();

    /// <summary>All of them, from least to most known.</summary>
    public static ImmutableArray<TeardownRecord> All { get; } = [Minimal, EverythingUnknown, GluedTablet, ScrewedModular];
}
