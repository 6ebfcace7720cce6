namespace FixScore.Reporting.Cards;

/// <summary>What each line gives, as bars on one scale: the longer the way, the more the line weighs.</summary>
sealed class LineBars(Easel easel, CardGrid grid, CardText text)
{
    const int Gap = 24;

    /// <summary>Draws the lines below a heading that stands on the upper side of the room.</summary>
    public void Draw(Judgement judgement, Box room)
    {
        var lines = CardLines.Of(judgement);
        easel.Write(lines.Adds ? "What each line gives of the total" : "Each line on its own scale", room.X, room.Y, Face.Heading, grid.Subheading, Tone.Ink);
        var drawn = lines.Lines.Length <= grid.Rows ? lines.Lines.Length : grid.Rows - 1;
        var rows = Math.Min(lines.Lines.Length, grid.Rows);
        var step = Math.Min(grid.Label * 23 / 10, (room.Height - grid.Subheading / 2) / Math.Max(1, rows));
        var columns = Columns.Of(lines, judgement.Profile.Scale, text, grid, room);
        for (var row = 0; row < drawn; row++) Row(lines.Lines[row], columns, room.Y + grid.Subheading / 2 + row * step + step / 2, judgement.Profile.Scale);
        if (drawn < lines.Lines.Length)
            easel.Write($"and {lines.Lines.Length - drawn} more", room.X, room.Y + grid.Subheading / 2 + drawn * step + step / 2 + grid.Label / 3, Face.Plain, grid.Label, Tone.Soft);
    }

    void Row(CardLine line, Columns columns, int middle, ProfileScale scale)
    {
        var baseline = middle + grid.Label / 3;
        easel.Write(Paragraph.OneLine(line.Title, Face.Plain, grid.Label, columns.Track.X - columns.Left - Gap), columns.Left, baseline, Face.Plain, grid.Label, Tone.Ink);
        if (line.Most > line.Least) Bar(line, columns, middle);
        easel.Write(text.Range(line.Low, line.High, scale), columns.Points, baseline, Face.Plain, grid.Label, Tone.Ink, Anchor.End);
        easel.Write(Columns.Of(line, scale, text), columns.Most, baseline, Face.Plain, grid.Label, Tone.Soft, Anchor.End);
    }

    void Bar(CardLine line, Columns columns, int middle)
    {
        var (all, height) = (line.Most - line.Least, grid.Label * 3 / 4);
        var width = Math.Max(4, (int)decimal.Round(columns.Track.Width * all / columns.Longest));
        easel.Bar(columns.Track with { Y = middle - height / 2, Height = height, Width = width }, (line.Low - line.Least) / all, (line.High - line.Least) / all);
    }

    /// <summary>Where names, bars and numbers stand.</summary>
    sealed record Columns(int Left, Box Track, int Points, int Most, decimal Longest)
    {
        public static string Of(CardLine line, ProfileScale scale, CardText text) => $"of {text.Number(line.Most, scale)}";

        public static Columns Of(CardLines lines, ProfileScale scale, CardText text, CardGrid grid, Box room)
        {
            var most = Widest(lines, line => Of(line, scale, text), grid);
            var points = Widest(lines, line => text.Range(line.Low, line.High, scale), grid);
            var names = Math.Min(room.Width * 42 / 100, Widest(lines, line => Letters.Clean(line.Title), grid) + 1);
            var track = room.X + names + Gap;
            var end = room.Right - most - points - Gap / 2 - Gap;
            return new(room.X, new(track, 0, Math.Max(60, end - track), 0), room.Right - most - Gap / 2, room.Right,
                lines.Lines.Select(line => line.Most - line.Least).Append(0).Max());
        }

        static int Widest(CardLines lines, Func<CardLine, string> told, CardGrid grid) =>
            lines.Lines.Select(line => Advances.Of(told(line), Face.Plain, grid.Label)).DefaultIfEmpty(0).Max();
    }
}
