namespace FixScore.Records;

/// <summary>What a document is about.</summary>
public enum DocumentSubject
{
    /// <summary>How to tell the product and its parts apart.</summary>
    Identification,

    /// <summary>How to take it apart.</summary>
    DisassemblyInstructions,

    /// <summary>A view of all parts in place.</summary>
    ExplodedView,

    /// <summary>How parts are connected.</summary>
    WiringDiagram,

    /// <summary>The circuit of the boards.</summary>
    BoardSchematic,

    /// <summary>The components of the boards.</summary>
    ComponentList,

    /// <summary>The tools and test equipment needed.</summary>
    ToolsList,

    /// <summary>What fault codes mean.</summary>
    ErrorCodes,

    /// <summary>How to find a fault.</summary>
    Diagnostics,

    /// <summary>How to test after repair.</summary>
    TestProcedure,

    /// <summary>How to reset or reload the software.</summary>
    SoftwareReset,

    /// <summary>How to read stored failure records.</summary>
    FailureRecords,

    /// <summary>How to register as a repairer.</summary>
    RepairerRegistration,

    /// <summary>What to try first.</summary>
    Troubleshooting,

    /// <summary>How to calibrate parts.</summary>
    CalibrationProcedure,

    /// <summary>Which spare parts exist and how to order them.</summary>
    SparePartsList,

    /// <summary>How tight screws are.</summary>
    TorqueValues,

    /// <summary>What is dangerous and how to handle it.</summary>
    SafetyData,

    /// <summary>How to delete personal data.</summary>
    DataDeletion,
}
