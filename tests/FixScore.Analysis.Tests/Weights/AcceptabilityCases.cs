using FixScore.Analysis.Weights;

namespace FixScore.Analysis.Tests.Weights;

/// <summary>Shares of places by hand with fractions: break points of lines, areas of polygons. Definitions: Lahdelma and Salminen (2001).</summary>
sealed record AcceptabilityCase(UnitTable Table, Fraction[][] Shares, Fraction[][] Central, Fraction[][] Wins)
{
    /// <summary>Break points at weights 2/7 (B and C), 3/7 (A and C) and 4/7 (A and B) of the first criterion.</summary>
    public static readonly AcceptabilityCase Two = new(
        Support.Table([0.9m, 0.2m], [0.6m, 0.6m], [0.1m, 0.8m]),
        [[Of(3, 7), Of(1, 7), Of(3, 7)], [Of(2, 7), Of(5, 7), 0], [Of(2, 7), Of(1, 7), Of(4, 7)]],
        [[Of(11, 14), Of(3, 14)], [Of(3, 7), Of(4, 7)], [Of(1, 7), Of(6, 7)]],
        [[Of(1, 2), Of(3, 7), Of(4, 7)], [Of(4, 7), Of(1, 2), Of(5, 7)], [Of(3, 7), Of(2, 7), Of(1, 2)]]);

    /// <summary>Three specialists and one all-rounder.</summary>
    public static readonly AcceptabilityCase Specialists = new(
        Support.Table([1, 0, 0], [0, 1, 0], [0, 0, 1], [0.5m, 0.5m, 0.5m]),
        [Specialist, Specialist, Specialist, [Of(1, 4), Of(3, 4), 0, 0]],
        [[Of(2, 3), Of(1, 6), Of(1, 6)], [Of(1, 6), Of(2, 3), Of(1, 6)], [Of(1, 6), Of(1, 6), Of(2, 3)], [Of(1, 3), Of(1, 3), Of(1, 3)]],
        [[Of(1, 2), Of(1, 2), Of(1, 2), Of(1, 4)], [Of(1, 2), Of(1, 2), Of(1, 2), Of(1, 4)], [Of(1, 2), Of(1, 2), Of(1, 2), Of(1, 4)], [Of(3, 4), Of(3, 4), Of(3, 4), Of(1, 2)]]);

    /// <summary>No symmetry.</summary>
    public static readonly AcceptabilityCase General = new(
        Support.Table([0.8m, 0.4m, 0.3m], [0.5m, 0.7m, 0.5m], [0.2m, 0.6m, 0.9m]),
        [[Of(9, 32), Of(9, 80), Of(97, 160)], [Of(11, 40), Of(97, 140), Of(9, 280)], [Of(71, 160), Of(109, 560), Of(81, 224)]],
        [[Of(31, 48), Of(25, 144), Of(13, 72)], [Of(137, 528), Of(523, 880), Of(193, 1320)], [Of(617, 3408), Of(4649, 17040), Of(1551, 2840)]],
        [[Of(1, 2), Of(3, 10), Of(3, 8)], [Of(7, 10), Of(1, 2), Of(19, 35)], [Of(5, 8), Of(16, 35), Of(1, 2)]]);

    public static TheoryData<string> Names => [nameof(Two), nameof(Specialists), nameof(General)];

    public static AcceptabilityCase Named(string name) => name switch { nameof(Two) => Two, nameof(Specialists) => Specialists, _ => General };

    static Fraction[] Specialist => [Of(1, 4), Of(1, 12), Of(1, 3), Of(1, 3)];

    static Fraction Of(int above, int below) => new(above, below);
}
