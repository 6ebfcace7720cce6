namespace Acme.Units;

/// <summary>A library that other people's plugins use, as it was at first.</summary>
public static class Share
{
    /// <summary>A share in tenths. The next version has no such thing.</summary>
    public static decimal Tenths(int tenths) => tenths / 10m;
}
