using FixScore.Records;

namespace FixScore.Disassembly.Tests.Oracle;

/// <summary>Seconds of an operation: stated, else filmed; none when open at an end.</summary>
static class Timing
{
    public static (decimal Low, decimal High)? Of(Operation operation)
    {
        if (operation.Seconds is { } stated) return stated.Min is { } min && stated.Max is { } max ? (min, max) : null;
        var units = operation.Footage.Select(piece => piece.Unit).Distinct().Select(unit => operation.Footage
            .Where(piece => piece.Unit == unit).Sum(piece => (decimal)piece.To.TotalSeconds - (decimal)piece.From.TotalSeconds)).ToArray();
        return units.Length == 0 ? null : (units.Min(), units.Max());
    }

    public static decimal Middle(this (decimal Low, decimal High) time) => (time.Low + time.High) / 2;
}
