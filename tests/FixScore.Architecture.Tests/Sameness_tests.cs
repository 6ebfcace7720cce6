namespace FixScore.Architecture.Tests;

/// <summary>A score is the same on every machine, at every time, for everyone: what could make it differ is not used.</summary>
public sealed class Sameness_tests
{
    /// <summary>What may not be used, as a member or as a whole type, and why.</summary>
    static readonly (string What, string Why)[] Banned =
    [
        ("System.DateTime.get_Now", "a clock"), ("System.DateTime.get_UtcNow", "a clock"), ("System.DateTime.get_Today", "a clock"),
        ("System.DateTimeOffset.get_Now", "a clock"), ("System.DateTimeOffset.get_UtcNow", "a clock"),
        ("System.TimeProvider.get_System", "a clock"), ("System.Diagnostics.Stopwatch.*", "a clock"),
        ("System.TimeZoneInfo.get_Local", "where the machine stands"),
        ("System.Globalization.CultureInfo.get_CurrentCulture", "who reads"), ("System.Globalization.CultureInfo.get_CurrentUICulture", "who reads"),
        ("System.Environment.*", "the machine"), ("System.Runtime.InteropServices.RuntimeInformation.*", "the machine"),
        ("System.Random.*", "chance"), ("System.Guid.NewGuid", "chance"), ("System.Security.Cryptography.RandomNumberGenerator.*", "chance"),
        ("System.Math.Pow", "differs between platforms"), ("System.Math.Exp", "differs between platforms"), ("System.Math.Log", "differs between platforms"),
        ("System.Math.Log2", "differs between platforms"), ("System.Math.Log10", "differs between platforms"), ("System.Math.Sqrt", "binary floating point"),
        ("System.Math.Cbrt", "binary floating point"), ("System.Decimal.ToDouble", "binary floating point"), ("System.Double.*", "binary floating point"), ("System.Single.*", "binary floating point"),
        ("System.Collections.Generic.HashSet`1.GetEnumerator", "no order"), ("System.Collections.Generic.Dictionary`2.GetEnumerator", "no order"),
        ("System.Collections.Generic.Dictionary`2.get_Values", "no order"), ("System.Collections.Generic.Dictionary`2.get_Keys", "no order"),
        ("System.Threading.Tasks.Parallel.*", "no order"),
        ("floating point", "binary floating point"),
    ];

    /// <summary>Uses that are allowed, each with its reason.</summary>
    static readonly (string Use, string Why)[] Allowed =
    [
        ("FixScore.Canonical.CanonicalNumber uses floating point", "RFC 8785 defines the text of a number by its IEEE 754 double"),
        ("FixScore.Canonical.CanonicalNumber uses System.Double.IsFinite", "RFC 8785 refuses what is no number"),
        ("FixScore.Checks.CheckedRecord uses System.Collections.Generic.Dictionary`2.get_Keys", "words of a hint, in the order of the record: nothing is removed"),
        ("FixScore.Reading.Profiles.GateReader uses System.Collections.Generic.Dictionary`2.get_Keys", "words of a hint, in the order of the profile: nothing is removed"),
        ("FixScore.Reading.Profiles.OverReader uses System.Collections.Generic.Dictionary`2.get_Keys", "words of a hint, in the order of the profile: nothing is removed"),
        ("FixScore.CriterionFaultException uses System.Environment.get_NewLine", "text of an exception, never part of a document"),
        ("FixScore.InvalidDocumentException uses System.Environment.get_NewLine", "text of an exception, never part of a document"),
        ("FixScore.Pairing.PartPosterior uses floating point", "probabilities after trials, of which no score is made: only + - x / in a fixed order, and square roots, which IEEE 754 defines"),
        ("FixScore.Pairing.Posterior.Enumeration uses floating point", "probabilities after trials, of which no score is made: only + - x / in a fixed order, and square roots, which IEEE 754 defines"),
        ("FixScore.Pairing.Posterior.Factor uses floating point", "probabilities after trials, of which no score is made: only + - x / in a fixed order, and square roots, which IEEE 754 defines"),
        ("FixScore.Pairing.Posterior.Reckoning uses floating point", "probabilities after trials, of which no score is made: only + - x / in a fixed order, and square roots, which IEEE 754 defines"),
        ("FixScore.Pairing.Posterior.Sampling uses floating point", "probabilities after trials, of which no score is made: only + - x / in a fixed order, and square roots, which IEEE 754 defines"),
        ("FixScore.Pairing.Posterior.Sampling uses System.Math.Sqrt", "probabilities after trials, of which no score is made: only + - x / in a fixed order, and square roots, which IEEE 754 defines"),
        ("FixScore.Pairing.Posterior.SplitMix uses floating point", "probabilities after trials, of which no score is made: only + - x / in a fixed order, and square roots, which IEEE 754 defines"),
        ("FixScore.RecordLines uses System.Threading.Tasks.Parallel.For", "each line has its place in a list: the order of results is that of the lines"),
    ];

    /// <summary>Not written by anyone: the compiler puts it into every method with <c>yield</c>.</summary>
    const string OfIterators = "System.Environment.get_CurrentManagedThreadId";

    static readonly string[] Rooms = [.. House.Rooms.Where(room => House.IsPlugin(room) || room is "FixScore.Abstractions" or "FixScore" or "FixScore.Pairing" or "FixScore.Disassembly")];

    public static TheoryData<string> ScorePath => [.. Rooms];

    [Theory]
    [MemberData(nameof(ScorePath))]
    public void The_score_path_uses_nothing_that_differs(string room)
    {
        var found = CodeReader.Uses(House.PathOf(room), use => IsBanned(use.What)).Except(Allowed.Select(each => each.Use));
        Assert.True(found.IsEmpty, string.Join('\n', found));
    }

    [Fact]
    public void Every_exception_is_still_needed() =>
        Assert.Empty(Allowed.Select(each => each.Use).Except(Rooms.SelectMany(room => CodeReader.Uses(House.PathOf(room), use => IsBanned(use.What)))));

    [Fact]
    public void The_reader_finds_what_this_method_uses()
    {
        var now = DateTime.UtcNow.Ticks * 0.5;
        var found = CodeReader.Uses(typeof(Sameness_tests).Assembly.Location, use => IsBanned(use.What));
        Assert.Contains("FixScore.Architecture.Tests.Sameness_tests uses System.DateTime.get_UtcNow", found);
        Assert.Contains("FixScore.Architecture.Tests.Sameness_tests uses floating point", found);
        Assert.True(now > 0);
    }

    static bool IsBanned(string what) => what != OfIterators && Banned.Any(each => each.What.EndsWith(".*", StringComparison.Ordinal)
        ? what.StartsWith(each.What[..^1], StringComparison.Ordinal)
        : what == each.What);
}
