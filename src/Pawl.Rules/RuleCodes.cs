namespace Pawl.Rules;

/// <summary>Every code that reading a rule pack can give, beside those of reading YAML. Never reused, never renamed.</summary>
public static class RuleCodes
{
    // The pack.
    public const string DuplicatePack = "rule/duplicate-pack";
    public const string MalformedVersion = "rule/malformed-version";
    public const string EmptyFolder = "rule/empty-folder";
    public const string MissingFolder = "rule/missing-folder";
    public const string OutsideRoot = "rule/outside-root";
    public const string UnreadableFile = "rule/unreadable-file";

    // The rule.
    public const string DuplicateId = "rule/duplicate-id";
    public const string MalformedId = "rule/malformed-id";
    public const string CannotWeaken = "rule/cannot-weaken";
    public const string IdleOverride = "rule/idle-override";
    public const string MissingApprover = "rule/missing-approver";
    public const string MissingMend = "rule/missing-mend";
    public const string MissingReason = "rule/missing-reason";
    public const string MissingSource = "rule/missing-source";
    public const string MissingWhy = "rule/missing-why";
    public const string OverrideKey = "rule/override-key";
    public const string ThinReason = "rule/thin-reason";
    public const string UnknownRule = "rule/unknown-rule";
    public const string UnknownSubject = "rule/unknown-subject";
    public const string UnsureError = "rule/unsure-error";
    public const string Weakened = "rule/weakened";

    // The limits.
    public const string ConflictingLimits = "rule/conflicting-limits";
    public const string EmptyWindow = "rule/empty-window";
    public const string MalformedTable = "rule/malformed-table";
    public const string MissingLimit = "rule/missing-limit";
    public const string NeverApplies = "rule/never-applies";
    public const string NeverFails = "rule/never-fails";
    public const string TableTooDeep = "rule/table-too-deep";
    public const string UnknownWord = "rule/unknown-word";

    // The run.
    public const string AppliedToNothing = "rule/applied-to-nothing";

    // The expressions.
    public const string DimensionMismatch = "rule/dimension-mismatch";
    public const string ExpressionSyntax = "rule/expression-syntax";
    public const string ExpressionTooLong = "rule/expression-too-long";
    public const string KindMismatch = "rule/kind-mismatch";
    public const string NotAnExpression = "rule/not-an-expression";
    public const string UnknownFunction = "rule/unknown-function";
    public const string UnknownQuantity = "rule/unknown-quantity";
    public const string UnknownRole = "rule/unknown-role";
    public const string UnknownUnit = "rule/unknown-unit";

    // The examples.
    public const string MalformedExample = "rule/malformed-example";
    public const string WrongExample = "rule/wrong-example";
}
