using System.Text.Json;
using BenchmarkDotNet.Attributes;

namespace FixScore.Benchmarks;

/// <summary>Scoring a demo record with all reasons, against merely reading it. Aim: no more than 1 time the reading.</summary>
[MemoryDiagnoser]
public class ScoringBenchmarks
{
    readonly byte[] text = Demo.Records[0];
    readonly RecordDocument record = RecordFile.Read(Demo.Records[0]).OrThrow();
    readonly Profile balanced = Demo.Profile("bench-balanced");
    readonly Profile limiting = Demo.Profile("bench-limiting");

    [Benchmark(Baseline = true, Description = "read the record")]
    public object Read() => RecordFile.Read(text).OrThrow();

    [Benchmark(Description = "parse its JSON only")]
    public object Parse()
    {
        using var document = JsonDocument.Parse(text);
        return document.RootElement.ValueKind;
    }

    [Benchmark(Description = "score, balanced")]
    public object Balanced() => Scorer.Score(record, balanced);

    [Benchmark(Description = "score, limiting")]
    public object Limiting() => Scorer.Score(record, limiting);

    [Benchmark(Description = "write the score document")]
    public object Write() => score.ToJson();

    readonly ScoreDocument score = Scorer.Score(RecordFile.Read(Demo.Records[0]).OrThrow(), Demo.Profile("bench-balanced"));

    [Benchmark(Description = "read, score, write")]
    public object All() => Scorer.Score(RecordFile.Read(text).OrThrow(), balanced).ToJson();
}
