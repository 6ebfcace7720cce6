using FixScore.Fuzz.Findings;

namespace FixScore.Fuzz.Targets;

/// <summary>Something that takes what people hand in.</summary>
abstract class Target
{
    /// <summary>Its name on the command line.</summary>
    public abstract string Name { get; }

    /// <summary>Inputs that are right.</summary>
    public abstract byte[][] Seeds { get; }

    /// <summary>Tries an input; throws whatever must not be.</summary>
    /// <param name="input">The input.</param>
    /// <param name="share">A number that decides which of the longer ways the input goes as well; the same input with the same number does the same.</param>
    /// <param name="traces">What it led to.</param>
    public abstract void Try(byte[] input, int share, Traces traces);

    public static Target Named(string name) => name switch
    {
        "record" => new RecordTarget(),
        "profile" => new ProfileTarget(),
        "score" => new ScoreTarget(),
        _ => new SettingsTarget(),
    };
}
