namespace FixScore.Requirements.Ecodesign;

/// <summary>The two numerals of an ingress protection code; <c>null</c> for an X or when there is none. Source: IEC 60529 (from memory).</summary>
readonly record struct IngressCode(int? Dust, int? Water)
{
    // Spray at high pressure and heat: says nothing about immersion.
    const int Jets = 9, FirstImmersion = 7;

    public static IngressCode Of(string? code) =>
        code is { Length: >= 4 } && code.StartsWith("IP", StringComparison.OrdinalIgnoreCase) ? new(Digit(code[2]), Digit(code[3])) : default;

    public bool? Reaches(int dust, int water) => Judging.Known.All(Dust >= dust ? true : Dust is null ? null : false, ReachesWater(water));

    bool? ReachesWater(int water) => Water switch
    {
        null => null,
        Jets when water >= FirstImmersion => null,
        _ => Water >= water,
    };

    static int? Digit(char letter) => char.IsAsciiDigit(letter) ? letter - '0' : null;
}
