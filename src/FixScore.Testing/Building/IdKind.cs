namespace FixScore.Testing;

/// <summary>What an id names.</summary>
[Flags]
enum IdKind
{
    Unit = 1,
    Part = 2,
    Joint = 4,
    Tool = 8,
    Consumable = 16,
    Operation = 32,
    Milestone = 64,
    Sequence = 128,
    Trial = 256,
    Evidence = 512,
    Anything = 1023,
}
