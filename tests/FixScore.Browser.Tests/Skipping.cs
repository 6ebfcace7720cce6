namespace FixScore.Browser.Tests;

/// <summary>A test that needs a browser; skipped where there is none.</summary>
sealed class BrowserFactAttribute : FactAttribute
{
    public BrowserFactAttribute() => Skip = Chromium.Lacking;
}

/// <summary>Cases that need a browser; skipped where there is none.</summary>
sealed class BrowserTheoryAttribute : TheoryAttribute
{
    public BrowserTheoryAttribute() => Skip = Chromium.Lacking;
}

/// <summary>A test that needs the Nu Html Checker; skipped where it or Java is missing.</summary>
sealed class NuCheckerFactAttribute : FactAttribute
{
    public NuCheckerFactAttribute() => Skip = (Installed.Java, Installed.NuChecker) is (not null, not null) ? null
        : "The Nu Html Checker is not installed: npm install --prefix artifacts/checker vnu-jar, and Java.";
}

/// <summary>Cases that need HTML Tidy; skipped where it is missing.</summary>
sealed class TidyTheoryAttribute : TheoryAttribute
{
    public TidyTheoryAttribute() => Skip = Installed.Tidy is null ? "HTML Tidy is not installed: apt-get install tidy." : null;
}
