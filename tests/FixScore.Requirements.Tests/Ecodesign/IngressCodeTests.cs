using FixScore.Requirements.Ecodesign;

namespace FixScore.Requirements.Tests.Ecodesign;

/// <summary>Ingress protection codes. Source: IEC 60529 (from memory): an X stands for a test not made; 9 is spray, which says nothing about immersion (7, 8).</summary>
public sealed class IngressCodeTests
{
    [Theory]
    [InlineData("IP67", true)]
    [InlineData("IP68", true)]
    [InlineData("ip68", true)]
    [InlineData("IP58", false)]
    [InlineData("IP66", false)]
    [InlineData("IP6X", null)]
    [InlineData("IPX8", null)]
    [InlineData("IP5X", false)]
    [InlineData("IP69", null)]
    [InlineData("67", null)]
    [InlineData("", null)]
    [InlineData(null, null)]
    public void Dust_tight_and_immersion(string? code, bool? reaches) => Assert.Equal(reaches, IngressCode.Of(code).Reaches(6, 7));

    [Theory]
    [InlineData("IP42", true)]
    [InlineData("IP69", true)]
    [InlineData("IP41", false)]
    [InlineData("IPX2", null)]
    public void Grains_and_drops(string code, bool? reaches) => Assert.Equal(reaches, IngressCode.Of(code).Reaches(4, 2));
}
