using FixScore.Records;

namespace FixScore.Cli.Commands.Routing.Classes;

/// <summary>Who can get the spare part and the instructions; the widest offer counts.</summary>
sealed class SupplyClasses(TeardownCase source, string part)
{
    // A record says that nobody outside can get something; whether the manufacturer itself can stays open.
    static readonly LetterRange NotForSale = new('D', 'E');

    readonly PartGroup group = source.Derive<PartGroups>().Of(part);

    public LetterRange? Of(ClassAspect aspect) =>
        aspect == ClassAspect.Spares ? Widest(source.Record.Spares, spare => group.Holds(spare.Part), spare => spare.Audience)
        : aspect == ClassAspect.Information ? Widest(source.Record.Documentation, IsInstruction, document => document.Audience)
        : null;

    // What a route needs is the instruction; other documents serve other work.
    bool IsInstruction(Document document) =>
        document.Subject == DocumentSubject.DisassemblyInstructions && (document.Parts.IsEmpty || document.Parts.Any(group.Holds));

    // A list without entries says that there is none; one that lacks this entry says nothing of it.
    static LetterRange? Widest<T>(EntryList<T> offers, Func<T, bool> isMeant, Func<T, OneOf<Audience>> audience) =>
        offers is { IsRecorded: true, Count: 0 } ? NotForSale
        : LetterRange.BestOf(offers.Where(isMeant).Select(offer => Letter(audience(offer))), new('A', 'E'));

    static LetterRange? Letter(OneOf<Audience> audience) => audience.IsUnknown ? null : LetterRange.Over(audience.Stated, each => each switch
    {
        Audience.Public => 'A',
        Audience.Repairers => 'B',
        Audience.Authorised => 'C',
        _ => NotForSale,
    });
}
