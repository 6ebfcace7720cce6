using Microsoft.Extensions.DependencyInjection;

namespace FixScore.Settings;

/// <summary>What the settings come to: criteria, profiles and the settings in force. Made once; finds all that is wrong at once.</summary>
sealed record Installation(FixScoreSettings Settings, Catalogue Catalogue, ProfileLibrary Library)
{
    public static Installation Of(StatedSettings stated, IServiceProvider provider)
    {
        var problems = stated.Problems.ToList();
        var library = Profiles(stated, problems);
        var catalogue = Criteria(stated, provider, problems);
        if (stated.Profile is { } profile) problems.AddRange(Check(profile, library, catalogue, mayBind: problems.Count == 0));
        if (problems.Count > 0) throw new InvalidSettingsException([.. problems]);
        var settings = new FixScoreSettings([.. stated.Folders.Select(each => each.Text)], stated.Profile?.Text, [.. stated.Plugins.Select(each => each.Request.File)]);
        return new(settings, catalogue, library);
    }

    static ProfileLibrary Profiles(StatedSettings stated, List<Problem> problems)
    {
        var library = ProfileLibrary.Empty;
        foreach (var folder in stated.Folders)
        {
            try
            {
                library = library.With(ProfileLibrary.OfFolders(folder.Text));
            }
            catch (DirectoryNotFoundException)
            {
                problems.Add(SettingsProblems.FolderMissing(folder));
            }
            catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
            {
                problems.Add(SettingsProblems.FolderUnreadable(folder, failure.Message));
            }
        }
        return library;
    }

    static Catalogue Criteria(StatedSettings stated, IServiceProvider provider, List<Problem> problems)
    {
        var builder = new CatalogueBuilder();
        foreach (var plugin in provider.GetServices<IPlugin>()) builder.Add(plugin);
        foreach (var criterion in provider.GetServices<ICriterion>()) builder.Add(criterion);
        foreach (var requirements in provider.GetServices<IRequirementSet>()) builder.Add(requirements);
        foreach (var check in provider.GetServices<IRecordCheck>()) builder.Add(check);
        foreach (var file in stated.Plugins)
        {
            try
            {
                builder.AddFile(file.Request, stated.Terms);
            }
            catch (PluginFileException failure)
            {
                problems.AddRange(failure.Problems.Select(problem => SettingsProblems.PluginUnusable(file, problem)));
            }
        }
        return builder.Build();
    }

    // A profile is bound only when all else is well: a missing plugin would make it look wrong.
    static IEnumerable<Problem> Check(Stated profile, ProfileLibrary library, Catalogue catalogue, bool mayBind)
    {
        if (library.Find(profile.Text) is not { } entry)
            return [SettingsProblems.ProfileUnknown(profile, [.. library.Entries.Select(each => each.Id).Distinct()])];
        if (!mayBind) return [];
        var result = ProfileFile.Read(entry.Text, catalogue, library);
        return result.IsValid ? [] : result.Problems.Where(each => each.Problem.Severity == Severity.Error).Select(each => SettingsProblems.ProfileInvalid(profile, each.Problem));
    }
}
