namespace FixScore.Fuzz.Findings;

/// <summary>Every problem says what, where and what to do; there is a value or an error.</summary>
static class ProblemCheck
{
    public static void Read<T>(ReadResult<T> result, byte[] text, Traces traces) where T : class
    {
        var hasError = result.Problems.Any(each => each.Problem.Severity == Severity.Error);
        FaultException.Unless(result.IsValid != hasError, "There is neither a value nor an error, or both.");
        traces.Add(result.IsValid ? "valid" : "refused");
        var lines = text.AsSpan().Count((byte)'\n') + 1;
        foreach (var located in result.Problems)
        {
            Said(located.Problem, traces);
            FaultException.Unless(located.Line >= 1 && located.Line <= lines, $"The problem {located.Problem.Code} is at line {located.Line} of {lines}.");
            FaultException.Unless(located.Column >= 1 && located.Column <= text.Length + 1, $"The problem {located.Problem.Code} is at column {located.Column}.");
            FaultException.Unless(located.Length >= 1, $"The problem {located.Problem.Code} has no length.");
        }
    }

    /// <summary>A problem by itself.</summary>
    public static void Said(Problem problem, Traces traces)
    {
        FaultException.Unless(IsSlug(problem.Code), $"'{problem.Code}' is no code.");
        FaultException.Unless(IsPointer(problem.At.Text), $"'{problem.At}' of {problem.Code} is no JSON Pointer.");
        FaultException.Unless(problem.Message.Length > 0, $"The problem {problem.Code} says nothing.");
        FaultException.Unless(problem.Hint.Length > 0, $"The problem {problem.Code} has no hint.");
        traces.Add(problem.Code, problem.At);
    }

    static bool IsSlug(string code) => code.Length > 0 && code.All(letter => char.IsAsciiLetterLower(letter) || char.IsAsciiDigit(letter) || letter is '-' or '.');

    // RFC 6901, section 3.
    static bool IsPointer(string text)
    {
        if (text.Length > 0 && text[0] != '/') return false;
        for (var i = 0; i < text.Length; i++)
            if (text[i] == '~' && (i + 1 == text.Length || text[i + 1] is not ('0' or '1'))) return false;
        return true;
    }
}
