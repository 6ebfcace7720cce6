using FixScore;
using FixScore.Criteria.Adhesives;
using FixScore.Criteria.Documentation;
using FixScore.Criteria.Fasteners;
using FixScore.Criteria.Modularity;
using FixScore.Criteria.Pairing;

if (args is not [var recordFile, var profileFile, .. var rest])
{
    Console.Error.WriteLine("NativeScore RECORD PROFILE [DOCUMENT]: scores a record, says why, and writes the score document.");
    return 2;
}

var installed = Catalogue.Of(new FastenersPlugin(), new AdhesivesPlugin(), new ModularityPlugin(), new PairingPlugin(), new DocumentationPlugin());
try
{
    var record = RecordFile.Load(recordFile, installed);
    var score = Scorer.Score(record, ProfileFile.Load(profileFile, installed));
    Console.WriteLine(FormattableString.Invariant($"{record.Record.Id}: {score.Shown.Low} to {score.Shown.High} points"));
    foreach (var line in score.Nodes)
        foreach (var why in line.Reasons)
            Console.WriteLine($"{line.Title}: {why.Text}");
    if (rest is [var document, ..]) File.WriteAllBytes(document, score.ToJson());
    return 0;
}
catch (Exception failure) when (failure is InvalidDocumentException or IOException)
{
    Console.Error.WriteLine(failure.Message);
    return 3;
}
