using System.Globalization;

namespace FixScore.Cli.Commands.Validate;

/// <summary>A file and what is wrong with it.</summary>
sealed record CheckedFile(string File, string Kind, IReadOnlyList<LocatedProblem> Problems)
{
    public bool HasErrors => Problems.Any(each => each.Problem.Severity == Severity.Error);

    public string Summary
    {
        get
        {
            var errors = Problems.Count(each => each.Problem.Severity == Severity.Error);
            var others = Problems.Count - errors;
            if (Problems.Count == 0) return $"a valid {Kind}, nothing to remark";
            return string.Create(CultureInfo.InvariantCulture, $"{(errors == 0 ? $"a valid {Kind}" : "not valid")}, {errors} {(errors == 1 ? "error" : "errors")}, {others} {(others == 1 ? "remark" : "remarks")}");
        }
    }
}
