namespace FixScore.Criteria.Support;

/// <summary>Points for years, with parts of a year dropped or interpolated.</summary>
sealed class YearPoints(CriterionContext context)
{
    public Interval Of(Interval years) => context.Get(SoftwareSupportOptions.Fractions) == YearFractions.Floor
        ? context.Points(SoftwareSupportOptions.Bands, new Interval(Math.Floor(years.Low), Math.Floor(years.High)))
        : Interpolated(context.Get(SoftwareSupportOptions.Bands), years);

    // Steps turned into a line keep the end where they stop: what lies beyond it has no level.
    Interval Interpolated(Bands bands, Interval years)
    {
        var line = Bands.Of(BandForm.At, bands.Entries);
        var (least, most) = bands.Form switch
        {
            BandForm.AtLeast => (line.Entries[0].Limit, SoftwareSupportFacts.Endless),
            BandForm.AtMost => (0, line.Entries[^1].Limit),
            _ => (0, SoftwareSupportFacts.Endless),
        };
        if (years.High < least || years.Low > most) return NoLevel;
        var points = line.Of(new(Math.Max(years.Low, least), Math.Min(years.High, most)), NoLevel);
        return years.Low < least || years.High > most ? points.Hull(NoLevel) : points;
    }

    Interval NoLevel => context.Get(Options.NoLevel) == WhenNoLevel.Lowest ? context.Scale.Min : context.Scale.Whole;
}
