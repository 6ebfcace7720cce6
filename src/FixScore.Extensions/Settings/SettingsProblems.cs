namespace FixScore.Settings;

/// <summary>Everything that can be wrong with settings.</summary>
static class SettingsProblems
{
    public static Problem FileUnreadable(string file, string why) => Error(Pointer.Root, "settings-unreadable",
        "The settings file {file} cannot be read: {why}.", "Correct the path or the file.", ("file", file), ("why", why));

    public static Problem KeyUnknown(Pointer at, string key, IReadOnlyList<string> known) => Error(at, "settings-key-unknown",
        "There is no setting '{key}'.", Suggestion.Hint(key, known), ("key", key));

    public static Problem WrongKind(Pointer at, string asked) => Error(at, "settings-wrong-kind",
        "Here {asked} is asked.", "Correct the value.", ("asked", asked));

    public static Problem FolderMissing(Stated folder) => Error(folder.At, "settings-folder-missing",
        "There is no folder {folder} of profiles.", "Correct the path; relative paths start from the base folder.", ("folder", folder.Text));

    public static Problem FolderUnreadable(Stated folder, string why) => Error(folder.At, "settings-folder-unreadable",
        "The folder {folder} of profiles cannot be read: {why}", "Check its rights.", ("folder", folder.Text), ("why", why));

    public static Problem PluginUnusable(StatedPlugin file, Problem why) => Error(file.At, why.Code,
        "The plugin file {file} cannot be used. {why}", why.Hint, ("file", file.Request.File), ("why", why.Message));

    public static Problem NotADigest(Pointer at) => Error(at, "settings-wrong-digest", "Here a SHA-256 in 64 hexadecimal digits is asked.", "Correct the value.");

    public static Problem ProfileUnknown(Stated profile, IReadOnlyList<string> known) => Error(profile.At, "settings-profile-unknown",
        "There is no profile '{profile}' to use by default.",
        known.Count == 0 ? "No profile is at hand: add a folder to 'profileFolders'." : Suggestion.Hint(profile.Text, known), ("profile", profile.Text));

    public static Problem ProfileInvalid(Stated profile, Problem why) => Error(profile.At, "settings-profile-invalid",
        "The default profile '{profile}' cannot be used: at {pointer}, {why}", why.Hint, ("profile", profile.Text), ("pointer", why.At == Pointer.Root ? "its top" : why.At.Text), ("why", why.Message));

    static Problem Error(Pointer at, string code, string template, string hint, params ReadOnlySpan<(string, Value)> values) =>
        Problem.Of(Severity.Error, at, code, template, hint, values);
}
