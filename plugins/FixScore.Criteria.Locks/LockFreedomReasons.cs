using System.Globalization;
using FixScore.Pairing;
using FixScore.Records;

namespace FixScore.Criteria.Locks;

/// <summary>What <see cref="LockFreedomCriterion"/> says.</summary>
sealed class LockFreedomReasons(TeardownCase source)
{
    public Missing AnyTrial() => new(
        Pointer.Root, source.Record.Locks.IsRecorded ? "locks: an attempt to open the boot lock" : "locks");

    public IEnumerable<Reason> Of(OpeningFacts facts, OpeningPoints points)
    {
        var (trial, at) = (facts.Trial, source.At(facts.Trial));
        yield return Reason.Of("opening", "In {trial} unit {unit} was to be unlocked: {outcome}.", [at],
            ("trial", trial.Id), ("unit", trial.Unit), ("outcome", Shown(trial.Outcome))) with { Points = points.Outcome };
        if (facts.MayBeOpen)
        {
            yield return Reason.Of("waiting", "Days of waiting that the maker imposes: {days}.", [at], ("days", Days(facts))) with { Points = points.Wait };
            yield return Reason.Of("wiping", "Opening the lock wipes the data: {wipes}.", [at], ("wipes", Shown(trial.WipesData))) with { Points = points.Wiping };
            yield return Reason.Of("warranty-notice", "The maker says that the warranty ends: {notice}.", [at], ("notice", Shown(trial.WarrantyNotice)))
                with { Points = points.Warranty };
        }
        foreach (var lost in facts.Losses) yield return Lost(trial, lost) with { Points = points.Of(lost) };
    }

    public IEnumerable<Missing> MissingOf(OpeningFacts facts)
    {
        var (trial, at) = (facts.Trial, source.At(facts.Trial));
        if (!trial.Outcome.IsExact) yield return new(at, "outcome");
        if (facts.MayBeOpen && trial.WaitDays?.IsExact != true) yield return new(at, "waitDays");
        if (facts.MayBeOpen && trial.WipesData is null) yield return new(at, "wipesData");
        if (facts.MayBeOpen && trial.WarrantyNotice is null) yield return new(at, "warrantyNotice");
        foreach (var lost in facts.Losses.Where(lost => !lost.Recovers.IsExact))
            yield return new(source.At(lost.Loss), lost.IsContradicted ? "recovers: another trial contradicts it" : "recovers");
    }

    Reason Lost(LockTrial trial, LostFunction lost) => Reason.Of(
        "function-lost",
        lost.IsContradicted
            ? "With the lock open {function} is lost ({trial}); when it comes back is unknown, for other trials contradict what is recorded: {recovers}."
            : "With the lock open {function} is lost ({trial}); when it comes back: {recovers}.",
        [source.At(lost.Loss)], ("trial", trial.Id), ("function", lost.Loss.Function), ("recovers", Shown(lost.Loss.Recovers)));

    static Value Days(OpeningFacts facts)
    {
        if (facts.WaitDays.High < decimal.MaxValue) return Value.Of(facts.WaitDays);
        return facts.WaitDays.Low == 0 ? "unknown" : string.Create(CultureInfo.InvariantCulture, $"{facts.WaitDays.Low:0.####} or more");
    }

    static Value Shown(bool? flag) => flag is { } known ? (Value)known : "unknown";

    static string Shown<T>(OneOf<T> word) where T : struct, Enum => word.IsUnknown ? "unknown" : string.Join(" or ", word.Stated.Select(Word.Of));
}
