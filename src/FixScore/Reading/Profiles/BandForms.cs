namespace FixScore.Reading.Profiles;

static class BandForms
{
    /// <summary>The member that holds the limit of a band.</summary>
    public static string MemberOf(BandForm form) => form switch { BandForm.AtMost => "atMost", BandForm.AtLeast => "atLeast", _ => "at" };
}
