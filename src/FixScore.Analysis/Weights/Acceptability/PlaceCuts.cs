using System.Collections.Immutable;

namespace FixScore.Analysis.Weights.Acceptability;

/// <summary>Cuts the space of weights where a unit ties with others, and measures the pieces by the place it has there.</summary>
sealed class PlaceCuts(WeightTable values, WeightCell all)
{
    readonly Fraction _size = all.Size();

    public (ImmutableArray<Fraction> Shares, ImmutableArray<Fraction>? Central) Places(int unit)
    {
        var pieces = Pieces(unit);
        var alike = Enumerable.Range(0, values.Units).Count(other => IsAlike(unit, other));
        var shares = new Fraction[values.Units];
        foreach (var (cell, above) in pieces)
            for (var place = above; place < above + alike; place++) shares[place] += cell.Size() / (_size * alike);
        return ([.. shares], Central([.. pieces.Where(piece => piece.Above == 0).Select(piece => piece.Cell)]));
    }

    public ImmutableArray<Fraction> Wins(int unit) =>
        [.. Enumerable.Range(0, values.Units).Select(other => IsAlike(unit, other) ? new Fraction(1, 2) : all.Where(values.Lead(unit, other)) is var won && won.IsFlat(values.Criteria) ? 0 : won.Size() / _size)];

    bool IsAlike(int unit, int other) => values.Lead(unit, other).All(lead => lead.Sign == 0);

    List<(WeightCell Cell, int Above)> Pieces(int unit)
    {
        List<(WeightCell Cell, int Above)> pieces = [(all, 0)];
        foreach (var other in Enumerable.Range(0, values.Units).Where(other => !IsAlike(unit, other)))
            pieces = [.. pieces.SelectMany(piece => Cut(piece, unit, other)).Where(piece => !piece.Cell.IsFlat(values.Criteria))];
        return pieces;
    }

    IEnumerable<(WeightCell Cell, int Above)> Cut((WeightCell Cell, int Above) piece, int unit, int other) =>
        [(piece.Cell.Where(values.Lead(unit, other)), piece.Above), (piece.Cell.Where(values.Lead(other, unit)), piece.Above + 1)];

    static ImmutableArray<Fraction>? Central(WeightCell[] cells)
    {
        if (cells.Length == 0) return null;
        var (moments, size) = (cells.Select(cell => cell.Moment()).ToArray(), cells.Select(cell => cell.Size()).Sum());
        return [.. Enumerable.Range(0, moments[0].Length).Select(i => moments.Select(moment => moment[i]).Sum() / size)];
    }
}
