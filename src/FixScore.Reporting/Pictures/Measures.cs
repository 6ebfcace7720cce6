namespace FixScore.Reporting.Pictures;

/// <summary>Sizes in pixels of the view box.</summary>
static class Measures
{
    public const int Margin = 24;
    public const int LeastWidth = 900;

    public const int TitleSize = 20;
    public const int NameSize = 13;
    public const int SmallSize = 12;
    public const int LineHeight = 17;

    /// <summary>The column that says how deep a layer lies.</summary>
    public const int DepthWidth = 116;

    public const int LanePitch = 28;
    public const int LaneLabel = 170;
    public const int LaneRoom = 128;
    public const int Station = 10;

    public const int BoxWidth = 252;
    public const int BoxPadding = 12;
    public const int BoxLeast = 30;
    public const int BoxGap = 8;
    public const int BandGap = 10;

    /// <summary>From a box's top to the middle of its name, where routes stop.</summary>
    public const int NameMiddle = 15;

    public const int JointLabel = 150;
    public const int JointPitch = 10;

    /// <summary>Room on a box's edge for a joint's end with its word, and for one without.</summary>
    public const int WordedPort = 17;
    public const int BarePort = 9;
}
