using FixScore;
using FixScore.Criteria.Adhesives;
using FixScore.Criteria.Documentation;
using FixScore.Criteria.Fasteners;
using FixScore.Criteria.Modularity;
using FixScore.Criteria.Pairing;

var installed = Catalogue.Of(new FastenersPlugin(), new AdhesivesPlugin(), new ModularityPlugin(), new PairingPlugin(), new DocumentationPlugin());
var record = RecordFile.Load("larkfield-slate-2.json", installed);
var profile = ProfileFile.Load("scoring-profiles/bench-balanced.json", installed);

var score = Scorer.Score(record, profile);

Console.WriteLine($"{score.Shown.Low} to {score.Shown.High} points");
foreach (var line in score.Nodes)
    foreach (var why in line.Reasons)
        Console.WriteLine($"{line.Title}: {why.Text}");
