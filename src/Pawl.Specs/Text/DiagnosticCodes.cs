namespace Pawl.Specs.Text;

/// <summary>Every code that reading a spec, a catalogue or a project file can give. Never reused, never renamed.</summary>
public static class DiagnosticCodes
{
    // The text as YAML.
    public const string Alias = "yaml/alias";
    public const string ComplexKey = "yaml/complex-key";
    public const string ControlCharacter = "yaml/control-character";
    public const string DuplicateKey = "yaml/duplicate-key";
    public const string Empty = "yaml/empty";
    public const string Encoding = "yaml/encoding";
    public const string MergeKey = "yaml/merge-key";
    public const string SeveralDocuments = "yaml/several-documents";
    public const string Syntax = "yaml/syntax";
    public const string Tab = "yaml/tab";
    public const string Tag = "yaml/tag";
    public const string TooDeep = "yaml/too-deep";
    public const string TooLarge = "yaml/too-large";

    // One value.
    public const string EmptyText = "spec/empty-text";
    public const string MalformedAmount = "spec/malformed-amount";
    public const string MalformedTolerance = "spec/malformed-tolerance";
    public const string MissingKey = "spec/missing-key";
    public const string OtherFeature = "spec/other-feature";
    public const string MissingUnit = "spec/missing-unit";
    public const string NotADate = "spec/not-a-date";
    public const string NotAList = "spec/not-a-list";
    public const string NotAMap = "spec/not-a-map";
    public const string NotAName = "spec/not-a-name";
    public const string NotANumber = "spec/not-a-number";
    public const string NotATruthValue = "spec/not-a-truth-value";
    public const string NotAWholeNumber = "spec/not-a-whole-number";
    public const string NotFinite = "spec/not-finite";
    public const string NotText = "spec/not-text";
    public const string NullValue = "spec/null-value";
    public const string OutOfRange = "spec/out-of-range";
    public const string ToleranceNotAllowed = "spec/tolerance-not-allowed";
    public const string UnitMismatch = "spec/unit-mismatch";
    public const string UnknownKey = "spec/unknown-key";
    public const string UnknownUnit = "spec/unknown-unit";
    public const string UnknownWord = "spec/unknown-word";
    public const string WrongCount = "spec/wrong-count";

    // Values that must suit each other.
    public const string AllowanceOrder = "spec/allowance-order";
    public const string DuplicateName = "spec/duplicate-name";
    public const string ExclusiveKeys = "spec/exclusive-keys";
    public const string InternalPair = "spec/internal-pair";
    public const string MissingVariants = "spec/missing-variants";
    public const string NoCase = "spec/no-case";
    public const string NotInCatalogue = "spec/not-in-catalogue";
    public const string OneWay = "spec/one-way";
    public const string OtherVariants = "spec/other-variants";
    public const string OpenChain = "spec/open-chain";
    public const string RepeatedMesh = "spec/repeated-mesh";
    public const string SelfCarried = "spec/self-carried";
    public const string SelfMesh = "spec/self-mesh";
    public const string SpectrumSum = "spec/spectrum-sum";
    public const string TemperatureOrder = "spec/temperature-order";
    public const string UnknownBody = "spec/unknown-body";
    public const string UnknownGear = "spec/unknown-gear";
    public const string UnknownName = "spec/unknown-name";
    public const string WrongSign = "spec/wrong-sign";

    // Files.
    public const string CatalogueOverride = "spec/catalogue-override";
    public const string ExtendsCycle = "spec/extends-cycle";
    public const string ExtendsTooDeep = "spec/extends-too-deep";
    public const string FormatVersion = "spec/format-version";
    public const string MissingFile = "spec/missing-file";
    public const string OutsideRoot = "spec/outside-root";
    public const string Schema = "spec/schema";
    public const string UnreadableFile = "spec/unreadable-file";
}
