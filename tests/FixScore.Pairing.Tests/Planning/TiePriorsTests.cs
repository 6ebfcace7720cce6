using System.Text;

namespace FixScore.Pairing.Tests.Planning;

/// <summary>The format and its bounds are our own; the built-in guesses are invented and say so.</summary>
public sealed class TiePriorsTests
{
    [Fact]
    public void What_is_given_is_taken_and_the_rest_is_as_built_in()
    {
        var priors = Read("""{ "about": "Bench book", "roles": { "battery": 0.4, "camera": 0.25 } }""");
        Assert.Equal(("Bench book", 0.4m, 0.25m), (priors.About, priors.Of("battery"), priors.Of("camera")));
        Assert.Equal((TiePriors.BuiltIn.Other, TiePriors.BuiltIn.Other), (priors.Other, priors.Of("hinge")));
    }

    [Fact]
    public void Nothing_given_is_said_to_be_given()
    {
        var priors = Read("""{ "other": 0.3 }""");
        Assert.Equal(("Given with the call.", 0.3m, 0.3m), (priors.About, priors.Other, priors.Of("battery")));
    }

    [Theory]
    [InlineData("0.001")]
    [InlineData("0.999")]
    public void The_ends_of_the_range_belong_to_it(string probability)
    {
        var number = decimal.Parse(probability, System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(number, Read($$"""{ "other": {{probability}} }""").Other);
        Assert.Equal(number, TiePriors.BuiltIn.With("battery", number).Of("battery"));
    }

    [Theory]
    [InlineData("""{ "other": 0.0009 }""", "The probability of 'other' must be from 0.001 to 0.999: a plan must leave room for either outcome.")]
    [InlineData("""{ "roles": { "battery": 0.9991 } }""", "The probability of 'battery' must be from 0.001 to 0.999: a plan must leave room for either outcome.")]
    [InlineData("""{ "other": "0.5" }""", "'other' has no number.")]
    [InlineData("""{ "other": 1e400 }""", "'other' has no number.")]
    [InlineData("""{ "about": 7 }""", "'about' is not one of 'about' (text), 'roles' (object) and 'other' (number).")]
    [InlineData("""{ "roles": [] }""", "'roles' is not one of 'about' (text), 'roles' (object) and 'other' (number).")]
    [InlineData("""{ "others": 0.5 }""", "'others' is not one of 'about' (text), 'roles' (object) and 'other' (number).")]
    [InlineData("[]", "It is no JSON object.")]
    [InlineData("{\n\"other\": }", "It is no JSON (line 2).")]
    [InlineData("""{ "other": 0.2, "other": 0.3 }""", "A member stands twice in one object.")]
    [InlineData("""{ "about": "\ud83d" }""", "A text holds half of a surrogate pair.")]
    public void What_is_no_such_document_is_told(string text, string message) =>
        Assert.Equal(message, Assert.Throws<FormatException>(() => Read(text)).Message);

    [Fact]
    public void Another_probability_for_one_role_leaves_the_others()
    {
        var changed = Read("""{ "about": "Bench book", "roles": { "battery": 0.4 }, "other": 0.1 }""").With("camera", 0.5m);
        Assert.Equal(("Bench book", 0.4m, 0.5m, 0.1m), (changed.About, changed.Of("battery"), changed.Of("camera"), changed.Other));
        Assert.Throws<FormatException>(() => changed.With("camera", 1m));
    }

    [Fact]
    public void The_built_in_guesses_say_that_they_are_invented()
    {
        Assert.Contains("nvented", TiePriors.BuiltIn.About, StringComparison.Ordinal);
        Assert.InRange(TiePriors.BuiltIn.Other, 0.001m, 0.999m);
    }

    static TiePriors Read(string text) => TiePriors.Read(Encoding.UTF8.GetBytes(text));
}
