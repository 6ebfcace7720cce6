using System.Collections.Immutable;
using System.Globalization;
using FixScore.Analysis.Improving;
using FixScore.Cli.Terminal;
using FixScore.Records;
using FixScore.Reporting;

namespace FixScore.Cli.Commands.Improve;

/// <summary>What a search found, as text: the target, the smallest sets, what each number of changes brings, what was not tried.</summary>
sealed class ImproveView(Canvas canvas, CultureInfo culture, Profile profile)
{
    const int MostShown = 3;
    const int FoldedAt = 16;

    readonly Shown shown = new(culture);

    public void Show(TeardownRecord record, Improvement found)
    {
        canvas.Heading($"{record.Device.Maker} {record.Device.Model} ({record.Id}) by {profile.Id}");
        canvas.Line($"now {Text(found.Now)}; to reach, at the low end: {Text(found.Target)}");
        canvas.Line();
        canvas.Line(Verdict(found));
        if (found.Sets is [{ Changes.IsEmpty: true }]) return;
        Sets(found);
        Front(found);
        NotTried(found);
    }

    void Sets(Improvement found)
    {
        foreach (var (index, set) in found.Sets.Take(MostShown).Index())
        {
            canvas.Line();
            canvas.Item(1, Mark(index), $"{Text(set.Total)}; gains {Gain(set, found.Now)}");
            foreach (var change in set.Changes) canvas.Item(3, "-", $"{change.Change.Why.ToString(culture)} ({change.Id})");
        }
        canvas.Line();
        if (found.Sets.Length <= MostShown) return;
        var shared = found.Sets.Skip(1).Aggregate(found.Sets[0].Changes.AsEnumerable(), (all, set) => all.Intersect(set.Changes)).Select(change => change.Id).ToArray();
        canvas.Line($"These reach furthest; --json lists all {found.Sets.Length}.{(shared.Length > 0 ? $" In every one of them: {string.Join(", ", shared)}." : "")}");
        canvas.Line();
    }

    void Front(Improvement found)
    {
        canvas.Heading("At best, by number of changes");
        canvas.Table([("Changes", true), ("Points", true), ("Gain", true), .. OfClass(("Class", false)), ("New in the set", false)],
            found.Front.Zip(found.Front.Prepend(null), (set, before) => Row(set, before, found.Now)), FoldedAt);
        canvas.Line($"{Count(found.Tried, "set")} of {Count(found.Candidates.Length, "change")} scored. A number of changes that brings nothing more is left out.");
        canvas.Line();
    }

    string[] Row(ImprovementSet set, ImprovementSet? before, ScoreTotal now) =>
    [
        set.Changes.Length.ToString(culture), shown.Points(set.Total.Shown), set.Changes.IsEmpty ? "" : Gain(set, now), .. OfClass(ClassOf(set.Total)),
        string.Join(", ", set.Changes.Except(before?.Changes ?? []).Select(change => change.Change.Id)),
    ];

    void NotTried(Improvement found)
    {
        if (!found.WithoutChanges.IsEmpty) canvas.Line($"No change is known for: {string.Join(", ", found.WithoutChanges)}.");
        foreach (var id in found.Unusable) canvas.Line($"{id} was suggested but does not apply: a fault of its criterion.");
        canvas.Line("A change is a what-if: the record as it would be of a changed device, scored again, routes and all. It is no finding about the device that was taken apart, nor says whether the changed one can be made, or be as durable or as safe.");
    }

    static string Verdict(Improvement found) => found switch
    {
        { Sets: [{ Changes.IsEmpty: true }] } => "It is reached as it is.",
        { IsReached: true, IsOptimal: true } => $"{Fewest(found)} smallest {(found.Sets.Length == 1 ? "set" : "sets")}, proven: no set with fewer changes reaches it.",
        { IsReached: true } when found.Sets[0].Changes.Length > found.LowerBound =>
            $"{Fewest(found)} set found step by step. Not settled whether fewer do: fewer than {found.LowerBound} do not. A greater --effort may tell.",
        { IsReached: true } => $"{Fewest(found)} {(found.Sets.Length == 1 ? "set" : "sets")} found before the effort was spent; no set with fewer changes reaches it, but there may be more of this size.",
        { IsOptimal: true } => "None of the known changes reach it, however they are combined.",
        _ => $"Not settled: no set found before the effort was spent; fewer than {found.LowerBound} changes do not reach it. A greater --effort may tell more.",
    };

    static string Fewest(Improvement found) => $"{Count(found.Sets[0].Changes.Length, "change")} {(found.Sets[0].Changes.Length == 1 ? "does" : "do")} it: {found.Sets.Length}";

    static string Count(int count, string what) => $"{count.ToString(CultureInfo.InvariantCulture)} {what}{(count == 1 ? "" : "s")}";

    static string Mark(int index) => $"{(index + 1).ToString(CultureInfo.InvariantCulture)}.";

    string Gain(ImprovementSet set, ScoreTotal now) => $"{shown.Number(set.Total.Shown.Low - now.Shown.Low)}";

    string Text(Target target) => target.Class ?? $"{shown.Number(target.Points!.Value)} points";

    string Text(ScoreTotal total) => $"{shown.Points(total.Shown)}{(total.Class is null ? "" : $", {ClassOf(total)}")}";

    static string ClassOf(ScoreTotal total) => total.Class is not { } range ? "" : range.Low == range.High ? range.Low : $"{range.Low} to {range.High}";

    ImmutableArray<T> OfClass<T>(T item) => profile.Classes.IsEmpty ? [] : [item];
}
