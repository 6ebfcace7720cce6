namespace FixScore.Records;

/// <summary>What was done after a swap, before the checks.</summary>
public enum SwapProcedure
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>The part was calibrated.</summary>
    Calibration,

    /// <summary>The maker was notified.</summary>
    Notification,

    /// <summary>The maker authorised the part.</summary>
    Authorisation,

    /// <summary>The device was reset.</summary>
    Reset,
}
