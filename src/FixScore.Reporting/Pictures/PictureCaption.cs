using System.Collections.Immutable;
using FixScore.Records;
using FixScore.Reporting.Html;

namespace FixScore.Reporting.Pictures;

/// <summary>What stands below the picture: routes in words, forms of joints, what is left out, cautions.</summary>
sealed class PictureCaption
{
    const int Sample = 40;
    const int Indent = Measures.Margin + Sample + 12;
    const int Between = 8;

    readonly List<Markup> drawn = [];
    readonly PictureScene scene;
    readonly RouteWording wording;
    readonly int width;

    public PictureCaption(PictureScene scene, RouteWording wording, int top, int width, bool isAlone)
    {
        (this.scene, this.wording, this.width) = (scene, wording, width);
        Bottom = top + 14;
        // A page tells routes and cautions beside the picture.
        if (isAlone) Section("Routes", scene.Targets.Select(Route));
        Section("Lines of joints", scene.Joints.Select(joint => joint.Form).Distinct().Order().Select(Form));
        Section("What the picture leaves open", scene.Notes.Select(Note));
        if (isAlone) Section("Before anyone opens a device", SafetyText.For([scene.Record]).Select(Note));
    }

    public int Bottom { get; private set; }

    public Markup Drawn => Pen.Group("route-caption", drawn);

    void Section(string title, IEnumerable<Action> items)
    {
        Action[] all = [.. items];
        if (all.Length == 0) return;
        Bottom += 30;
        drawn.Add(Pen.Words("route-section", Measures.Margin, Bottom, title));
        Bottom += 6;
        foreach (var item in all) item();
    }

    Action Route(RouteTarget target) => () =>
    {
        Bottom += Between + 8;
        if (Index(target) is >= 0 and var index) drawn.Add(Pen.Line(RoutesDrawing.ClassOf(index), Measures.Margin, Bottom - 4, Measures.Margin + Sample, Bottom - 4));
        drawn.Add(Pen.Words("route-name route-target", Indent, Bottom, TextRoom.Fit(wording.Title(target), width - Indent - 2 * Measures.Margin, Measures.NameSize)));
        foreach (var line in wording.Lines(target)) Lines("route-text", line);
        foreach (var line in BoxLines.Hazards(wording.Hazards(target), width - Indent - Measures.Margin))
        {
            Bottom += Measures.LineHeight;
            drawn.Add(PartsDrawing.Hazards(new("", line), Indent, Bottom));
        }
    };

    int Index(RouteTarget target) => scene.Routes.Select(route => route.Target).ToImmutableArray().IndexOf(target);

    Action Form(JointForm form) => () =>
    {
        Bottom += Measures.LineHeight + 2;
        drawn.Add(Pen.Line(JointsDrawing.ClassOf(form), Measures.Margin, Bottom - 4, Measures.Margin + Sample, Bottom - 4));
        drawn.Add(Pen.Words("route-text", Indent, Bottom, JointForms.Says(form)));
    };

    Action Note(string note) => () => Lines("route-text", note);

    void Lines(string cssClass, string text)
    {
        foreach (var line in TextRoom.Wrap(text, width - Indent - Measures.Margin, Measures.SmallSize))
        {
            Bottom += Measures.LineHeight;
            drawn.Add(Pen.Words(cssClass, Indent, Bottom, line));
        }
    }
}
