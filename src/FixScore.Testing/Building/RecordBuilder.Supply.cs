using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Testing;

public sealed partial class RecordBuilder
{
    /// <summary>Adds a document; who gets it and what it costs are unknown when left out.</summary>
    public RecordBuilder Document(
        DocumentSubject subject, OneOf<Audience> audience = default, OneOf<DocumentCost> cost = default,
        Func<Document, Document>? configure = null)
    {
        var document = Changed(new Document { Subject = subject, Audience = audience, Cost = cost }, configure);
        return With(record => record with { Documentation = Plus(record.Documentation, document) });
    }

    /// <summary>Adds a spare of a part; who gets it is unknown when left out.</summary>
    public RecordBuilder Spare(string part, OneOf<Audience> audience = default, Func<Spare, Spare>? configure = null)
    {
        var spare = Changed(new Spare { Part = part, Audience = audience }, configure);
        return With(record => record with { Spares = Plus(record.Spares, spare) });
    }

    /// <summary>Says how long software is supported.</summary>
    public RecordBuilder Support(Func<Support, Support> change) =>
        With(record => record with { Support = change(record.Support ?? new()) });

    /// <summary>Adds a number observed, with its unit and the parts it is about.</summary>
    public RecordBuilder Observe(string name, Quantity number, string? unit = null, params ImmutableArray<string> parts) =>
        Observe(new Observation { Name = name, Number = number, Unit = unit, Parts = parts });

    /// <summary>Adds a flag observed and the parts it is about.</summary>
    public RecordBuilder Observe(string name, bool flag, params ImmutableArray<string> parts) =>
        Observe(new Observation { Name = name, Flag = flag, Parts = parts });

    /// <summary>Adds a word observed, a slug.</summary>
    public RecordBuilder Observe(string name, string word) => Observe(new Observation { Name = name, Word = word });

    /// <summary>Adds an observation.</summary>
    public RecordBuilder Observe(Observation observation) =>
        With(record => record with { Observations = Plus(record.Observations, observation) });

    /// <summary>Adds evidence; <paramref name="file"/> is where it is kept.</summary>
    public RecordBuilder Evidence(string id, EvidenceKind kind, string file) =>
        With(record => record with { Evidence = Plus(record.Evidence, new() { Id = id, Kind = kind, Ref = file }) });

    /// <summary>Adds a remark.</summary>
    public RecordBuilder Remark(string topic, string text, params ImmutableArray<string> about) =>
        With(record => record with { Findings = Plus(record.Findings, new() { Topic = topic, Text = text, About = about }) });
}
