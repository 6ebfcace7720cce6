using Xunit.Sdk;

namespace FixScore.Packages.Tests;

/// <summary>Packages are compared with those of the last release: shown on a small library that is built as ours are.</summary>
public sealed class BaselineTests
{
    const string Project = "src/Acme.Joints";

    const string Joint = """
        namespace Acme.Joints;

        /// <summary>A joint.</summary>
        public sealed class Joint
        {
            /// <summary>Screws in it.</summary>
            public int Screws => 4;
        }
        """;

    [Fact]
    public void A_package_that_lost_a_public_member_is_refused_and_an_unchanged_one_is_not()
    {
        var folder = Directory.CreateDirectory(Path.Combine(Repository.Copy, Project)).FullName;
        File.WriteAllText(Path.Combine(folder, "Acme.Joints.csproj"), """<Project Sdk="Microsoft.NET.Sdk" />""");
        File.WriteAllText(Path.Combine(folder, "Joint.cs"), Joint);
        Pack("released");
        Assert.Contains("is not in", Pack("new", "-p:FixScoreBaseline=../../plugins"), StringComparison.Ordinal);
        Assert.DoesNotContain("is not in", Pack("same", "-p:FixScoreBaseline=released"), StringComparison.Ordinal);
        File.WriteAllText(Path.Combine(folder, "Joint.cs"), Joint.Replace("public int", "internal int", StringComparison.Ordinal));
        var refusal = Assert.ThrowsAny<XunitException>(() => Pack("less", "-p:FixScoreBaseline=released")).Message;
        Assert.Contains("CP0002", refusal, StringComparison.Ordinal);
        Assert.Contains("Acme.Joints.Joint.Screws", refusal, StringComparison.Ordinal);
    }

    static string Pack(string output, params string[] more) =>
        Repository.Run(Path.Combine(Repository.Copy, Project), "dotnet", ["pack", "-o", output, "--nologo", "-v", "minimal", .. more]);
}
