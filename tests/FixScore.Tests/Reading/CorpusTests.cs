namespace FixScore.Tests.Reading;

/// <summary>The reader finds in each file of the corpus just what is wrong with it.</summary>
public sealed class CorpusTests
{
    public static TheoryData<string> Names => [.. Corpus.Files.Select(file => file.File)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Just_what_is_wrong_is_found_where_it_is(string name)
    {
        var file = Corpus.Named(name);
        var stated = file.Problems.Where(problem => problem.Needs is null).Select(problem => $"{problem.Severity} {problem.Pointer}");
        var found = file.Read().Problems.Select(problem => $"{Word.Of(problem.Problem.Severity)} {problem.Problem.At}");
        Assert.Equal(stated.Order(StringComparer.Ordinal), found.Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void There_is_a_value_unless_something_is_an_error(string name)
    {
        var (value, problems) = Corpus.Named(name).Read();
        Assert.Equal(problems.All(problem => problem.Problem.Severity != Severity.Error), value is not null);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_problem_says_what_where_and_what_to_do(string name) => Assert.All(Corpus.Named(name).Read().Problems, problem =>
    {
        Assert.Matches("^[a-z0-9.-]+$", problem.Problem.Code);
        Assert.NotEmpty(problem.Problem.Message);
        Assert.NotEmpty(problem.Problem.Hint);
        Assert.DoesNotContain('{', problem.Problem.Message);
        Assert.DoesNotContain('{', problem.Problem.Hint);
        Assert.True(problem is { Line: >= 1, Column: >= 1, Length: >= 1 });
    });
}
