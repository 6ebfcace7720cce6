using System.Collections.Immutable;
using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Reporting.Pictures;

/// <summary>What is drawn, before it has a place.</summary>
/// <param name="Case">The record.</param>
/// <param name="Bands">Layers from outside inwards.</param>
/// <param name="Routes">Routes that are drawn, in the order asked for.</param>
/// <param name="Joints">Joints between parts that are drawn.</param>
/// <param name="Targets">The parts that routes were asked for, with what was found; all of them, drawn or not.</param>
/// <param name="Notes">What is left out and what is not known, in sentences.</param>
sealed record PictureScene(
    TeardownCase Case, ImmutableArray<PictureBand> Bands, ImmutableArray<PictureRoute> Routes, ImmutableArray<PictureJoint> Joints,
    ImmutableArray<RouteTarget> Targets, ImmutableArray<string> Notes)
{
    public TeardownRecord Record => Case.Record;

    /// <summary>Parts that are drawn, from outside inwards.</summary>
    public IEnumerable<PicturePart> Parts => Bands.SelectMany(band => band.Parts);
}

/// <summary>Parts that come free after equally many steps.</summary>
/// <param name="Title">How deep it lies.</param>
/// <param name="Parts">The parts that are drawn, in order.</param>
/// <param name="Folded">How many more parts lie here and are only counted.</param>
sealed record PictureBand(string Title, ImmutableArray<PicturePart> Parts, int Folded);

/// <summary>A part that is drawn.</summary>
/// <param name="Part">The part.</param>
/// <param name="IsTarget">Whether a route leads to it.</param>
/// <param name="Hazards">What about it can hurt, each once.</param>
/// <param name="LooseJoints">How many joints of it are only counted.</param>
sealed record PicturePart(Part Part, bool IsTarget, ImmutableArray<Hazard> Hazards, int LooseJoints);

/// <summary>A part that a route was asked for.</summary>
sealed record RouteTarget(Part Part, Route Route);

/// <summary>A route that is drawn.</summary>
/// <param name="Target">The part it leads to, and the way.</param>
/// <param name="Visits">Parts that leave on the way, each once, by the operation that does it.</param>
sealed record PictureRoute(RouteTarget Target, ImmutableArray<RouteVisit> Visits);

/// <summary>A part that leaves on a route.</summary>
/// <param name="Part">Id of the part.</param>
/// <param name="Number">The operation by its place on the route, from 1.</param>
/// <param name="IsShifted">Whether it is only shifted aside.</param>
sealed record RouteVisit(string Part, int Number, bool IsShifted);

/// <summary>Joints that are drawn as one line.</summary>
/// <param name="Words">The kind and how many.</param>
/// <param name="Ids">Ids of the joints.</param>
/// <param name="Form">The form of the line.</param>
/// <param name="Parts">Ids of the parts it holds, as far as they are drawn; two at least.</param>
sealed record PictureJoint(string Words, ImmutableArray<string> Ids, JointForm Form, ImmutableArray<string> Parts);
