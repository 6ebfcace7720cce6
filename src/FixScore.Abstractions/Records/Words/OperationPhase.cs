namespace FixScore.Records;

/// <summary>Whether an operation takes apart or puts together.</summary>
public enum OperationPhase
{
    /// <summary>Taking apart.</summary>
    Disassembly,

    /// <summary>Putting together; never part of a route.</summary>
    Reassembly,
}
