using FixScore;
using FixScore.Criteria.Adhesives;
using FixScore.Criteria.Documentation;
using FixScore.Criteria.Fasteners;
using FixScore.Criteria.Modularity;
using FixScore.Criteria.Pairing;

var installed = Catalogue.Of(new FastenersPlugin(), new AdhesivesPlugin(), new ModularityPlugin(), new PairingPlugin(), new DocumentationPlugin());
var library = ProfileLibrary.OfFolders("scoring-profiles");
var owner = ProfileFile.Load("scoring-profiles/owner-first.json", installed, library);
var workshop = ProfileFile.Load("scoring-profiles/workshop-first.json", installed, library);

foreach (var file in args)
{
    var record = RecordFile.Load(file, installed);
    var (mine, theirs) = (Scorer.Score(record, owner).Shown, Scorer.Score(record, workshop).Shown);
    Console.WriteLine($"{record.Record.Device.Model}: {mine.Low} to {mine.High} for owners, {theirs.Low} to {theirs.High} for workshops");
}
