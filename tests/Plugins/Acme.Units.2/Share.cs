namespace Acme.Units;

/// <summary>The same library, one version on.</summary>
public static class Share
{
    /// <summary>A share in hundredths. The version before had no such thing.</summary>
    public static decimal Percent(int percent) => percent / 100m;
}
