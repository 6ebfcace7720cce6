namespace FixScore.Disassembly.Tests.Oracle;

/// <summary>All states that sequences of operations lead to, numbered; what was just done counts only where something must follow it directly.</summary>
sealed class StateSpace
{
    readonly Simulator simulator;
    readonly Dictionary<State, int> numbers = [];
    readonly List<State> states = [];
    readonly List<(int Operation, int Next)[]?> followers = [];
    readonly bool[] isAwaited;

    public StateSpace(Simulator simulator)
    {
        this.simulator = simulator;
        isAwaited = [.. simulator.Operations.Select(operation => simulator.Operations.Any(other => other.DirectlyAfter == operation.Id))];
        Start = Number(State.Start);
    }

    public int Start { get; }

    public State this[int number] => states[number];

    /// <summary>What can be done in a state, in the order of the record, and the state it leads to.</summary>
    public (int Operation, int Next)[] From(int number) => followers[number] ??=
    [
        .. Enumerable.Range(0, simulator.Operations.Length).Where(operation => simulator.CanBeDone(states[number], operation))
            .Select(operation => (operation, Number(simulator.After(states[number], operation)))),
    ];

    int Number(State state)
    {
        if (state.Last >= 0 && !isAwaited[state.Last]) state = state with { Last = -1 };
        if (numbers.TryGetValue(state, out var number)) return number;
        numbers.Add(state, states.Count);
        states.Add(state);
        followers.Add(null);
        return states.Count - 1;
    }
}
