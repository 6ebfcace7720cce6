using Xunit.Abstractions;

namespace FixScore.Mutants.Trying;

/// <summary>Hears nothing.</summary>
sealed class Silence : Xunit.LongLivedMarshalByRefObject, IMessageSink
{
    public bool OnMessage(IMessageSinkMessage message) => true;
}

/// <summary>Keeps the tests that are found.</summary>
sealed class Discovered : Xunit.LongLivedMarshalByRefObject, IMessageSink
{
    public List<ITestCase> Cases { get; } = [];

    public ManualResetEventSlim Ended { get; } = new();

    public bool OnMessage(IMessageSinkMessage message)
    {
        if (message is ITestCaseDiscoveryMessage found) Cases.Add(found.TestCase);
        if (message is IDiscoveryCompleteMessage) Ended.Set();
        return true;
    }
}

/// <summary>Keeps the first failure and lets nothing run after it.</summary>
sealed class Outcome : Xunit.LongLivedMarshalByRefObject, IMessageSink
{
    public string? Failed { get; private set; }

    public ManualResetEventSlim Ended { get; } = new();

    public bool OnMessage(IMessageSinkMessage message)
    {
        if (message is ITestFailed failed) Failed ??= failed.Test.DisplayName;
        if (message is IErrorMessage or ITestClassCleanupFailure or ITestCleanupFailure) Failed ??= "around the tests";
        if (message is ITestAssemblyFinished) Ended.Set();
        return Failed is null;
    }
}
