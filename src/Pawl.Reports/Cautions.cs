namespace Pawl.Reports;

/// <summary>What every report says to its reader, worded once.</summary>
public static class Cautions
{
    /// <summary>The cautions, in the order of a report.</summary>
    public static readonly ImmutableArray<string> All =
    [
        "This report is an aid to a competent reviewer. It approves nothing and replaces neither a test nor the review of a licensed engineer where local rules ask for one.",
        "The verdict covers the rules, subjects and inputs listed here and nothing else. What is not evaluated is not known to be safe.",
        "Several formulas are simplifications. Each derivation states its source and its range; limits marked as common practice or from memory have not been checked against a published source.",
        "Measurement uncertainty is not considered. Dimensions are taken at the worst case of the tolerances declared or assumed.",
        "Rotating machinery, stored energy, hot oil, lifting and press work can injure and kill. Guard moving parts, lock the drive out, let oil cool and springs and pressure down before work, and use lifting and pressing equipment rated for the load.",
        "Local codes, the data of the makers of bought parts, and licensed practice come before anything written here.",
    ];
}
