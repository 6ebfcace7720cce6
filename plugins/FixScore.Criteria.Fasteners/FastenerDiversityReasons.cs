using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Criteria.Fasteners;

/// <summary>What <see cref="FastenerDiversityCriterion"/> says.</summary>
sealed class FastenerDiversityReasons(TeardownCase source)
{
    public Reason NoScrews(decimal points) => Reason.Of(
        "no-screws", "None of the recorded joints that are meant to be undone is a screw.",
        [Pointer.Root.Child("joints")]) with { Points = points };

    public Reason Diversity(FastenerDiversityFacts facts, Interval points) => Reason.Of(
        "effective-types", "Screws of {types} recorded types, weighted by count, are as varied as {effective} types in equal numbers.",
        At(facts.Types.SelectMany(type => type.Joints)),
        ("types", facts.Types.Length), ("effective", facts.Effective)) with { Points = points };

    public IEnumerable<Reason> Drives(FastenerDiversityFacts facts) =>
        facts.Drives().Select(stated => DriveReason(stated.Drive, At(stated.Joints)));

    public IEnumerable<Reason> AlikeButForLength(FastenerDiversityFacts facts) => facts.AlikeButForLength().Select(alike => Reason.Of(
        "alike-but-for-length",
        "Screws of drive {drive}, {diameter} across, come in {lengths} lengths, {range}: easily mixed up when put back. "
        + "Note where each came from; one too long can crack a display or board or pierce a cell.",
        At(alike.SelectMany(type => type.Joints)),
        ("drive", alike[0].Look.Drive.Stated[0]),
        ("diameter", Value.Of(alike[0].Look.DiameterMm.Min!.Value, "mm")),
        ("lengths", alike.Length),
        ("range", Value.Of(new Interval(alike.Min(Length), alike.Max(Length)), "mm"))));

    public ImmutableArray<Missing> Missing(FastenerDiversityFacts facts) =>
        [.. facts.Types.SelectMany(type => type.Joints).SelectMany(joint => Open(joint).Select(what => new Missing(source.At(joint), what)))];

    static Reason DriveReason(string slug, IEnumerable<Pointer> at) => DriveStandards.Find(slug) switch
    {
        null => Reason.Of("drive-not-listed", "Drive {drive} is not in the list of drives; nothing is said about its standard.", at, ("drive", slug)),
        { Standard: null } drive => Reason.Of(
            "drive-without-standard", "Drive {drive} ({name}): no published standard ({standing}). {note}", at,
            ("drive", slug), ("name", drive.Name), ("standing", drive.Standing), ("note", drive.Note)),
        var drive => Reason.Of(
            "drive-standard", "Drive {drive} ({name}): {standard} ({standing}). {note}", at,
            ("drive", slug), ("name", drive.Name), ("standard", drive.Standard), ("standing", drive.Standing), ("note", drive.Note)),
    };

    static IEnumerable<string> Open(Joint joint)
    {
        if (!joint.Count.IsExact) yield return "count";
        if (joint.Screw?.Drive.IsExact != true) yield return "screw.drive";
        if (joint.Screw?.DiameterMm.IsExact != true) yield return "screw.diameterMm";
        if (joint.Screw?.LengthMm.IsExact != true) yield return "screw.lengthMm";
    }

    static decimal Length(ScrewType type) => type.Look.LengthMm.Min!.Value;

    IEnumerable<Pointer> At(IEnumerable<Joint> joints) => joints.Select(source.At);
}
