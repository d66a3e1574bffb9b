namespace Pawl.Reports.Sheets;

/// <summary>Whom a sheet is for.</summary>
public enum SheetRole
{
    /// <summary>The fitter: order of work, torques, temperatures, shims, oil.</summary>
    Assembly,

    /// <summary>The inspector: every toleranced feature with its limits, and places for readings.</summary>
    Inspection,

    /// <summary>The machinist: one part a sheet.</summary>
    Part,

    /// <summary>The reviewer: verdict, deviations, concessions, what is not evaluated, files.</summary>
    Audit,
}

/// <summary>Names of the roles.</summary>
public static class SheetRoles
{
    /// <summary>As the command line takes them, in the order of <see cref="SheetRole"/>.</summary>
    public static readonly ImmutableArray<string> Names = ["assembly", "inspection", "part", "audit"];

    /// <summary>The name of a role.</summary>
    public static string NameOf(SheetRole role) => Names[(int)role];

    /// <summary>The role of that name; null when there is none.</summary>
    public static SheetRole? Find(string name) => Names.IndexOf(name) is >= 0 and var number ? (SheetRole)number : null;
}
