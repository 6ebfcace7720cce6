namespace FixScore.Records;

/// <summary>What is done in an operation.</summary>
public enum OperationAction
{
    /// <summary>Loosening screws.</summary>
    Unscrew,

    /// <summary>Opening clips.</summary>
    Unclip,

    /// <summary>Parting a connector.</summary>
    Unplug,

    /// <summary>Levering apart.</summary>
    Pry,

    /// <summary>Pulling off or out.</summary>
    Pull,

    /// <summary>Peeling off.</summary>
    Peel,

    /// <summary>Cutting a bond.</summary>
    CutAdhesive,

    /// <summary>Warming something up.</summary>
    Heat,

    /// <summary>Wetting a bond with solvent.</summary>
    ApplySolvent,

    /// <summary>Cleaning.</summary>
    Clean,

    /// <summary>Taking off residue.</summary>
    RemoveResidue,

    /// <summary>Melting solder.</summary>
    Desolder,

    /// <summary>Lifting out.</summary>
    Lift,

    /// <summary>Sliding out.</summary>
    Slide,

    /// <summary>Folding aside.</summary>
    FoldAside,

    /// <summary>Discharging a store of energy.</summary>
    Discharge,

    /// <summary>Pushing out.</summary>
    PushOut,

    /// <summary>None of these.</summary>
    Other,
}
