namespace FixScore.Records;

/// <summary>The device model that was assessed.</summary>
public sealed record Device
{
    /// <summary>Who makes it.</summary>
    public required string Maker { get; init; }

    /// <summary>The model's name.</summary>
    public required string Model { get; init; }

    /// <summary>The regional version.</summary>
    public string? ModelCode { get; init; }

    /// <summary>The kind of device: <c>smartphone</c>, <c>slate-tablet</c>, <c>laptop</c> or another slug.</summary>
    public required string Kind { get; init; }

    /// <summary>Whether the display folds. Default: no.</summary>
    public bool Foldable { get; init; }

    /// <summary>When it came on the market.</summary>
    public DateOnly? Released { get; init; }

    /// <summary>The ingress protection code of IEC 60529, such as <c>IP68</c>.</summary>
    public string? IngressProtection { get; init; }

    /// <summary>What the device costs.</summary>
    public Price? Price { get; init; }
}

/// <summary>An amount of money. Amounts in different currencies are never compared.</summary>
/// <param name="Amount">The amount in units of the currency; not negative.</param>
/// <param name="Currency">ISO 4217 code, three capital letters.</param>
/// <param name="TaxIncluded">Whether tax is in it; <c>null</c> when unknown.</param>
public sealed record Price(Quantity Amount, string Currency, bool? TaxIncluded = null);
