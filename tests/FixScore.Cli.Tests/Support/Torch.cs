namespace FixScore.Cli.Tests.Support;

/// <summary>A small device whose routes can be counted by hand: each kind of answer once.</summary>
static class Torch
{
    public static byte[] Record
    {
        get
        {
            using var stream = typeof(Torch).Assembly.GetManifestResourceStream("torch.json")!;
            var bytes = new byte[stream.Length];
            stream.ReadExactly(bytes);
            return bytes;
        }
    }
}
