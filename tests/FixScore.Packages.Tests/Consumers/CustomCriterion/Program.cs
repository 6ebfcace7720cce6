using Acme;
using FixScore;

var installed = Catalogue.Of(new AcmePlugin());
var record = RecordFile.Load("larkfield-slate-2.json", installed);
var profile = ProfileFile.Load("marking-only.json", installed);
var score = Scorer.Score(record, profile);
Console.WriteLine($"{score.Shown.Low} to {score.Shown.High} points: {score.Nodes[^1].Reasons[0].Text}");
