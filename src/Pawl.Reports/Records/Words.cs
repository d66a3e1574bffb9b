using System.Text.Json.Serialization;

namespace Pawl.Reports.Records;

/// <summary>What the record says of the variant as a whole.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<VerdictWord>))]
public enum VerdictWord
{
    /// <summary>Every rule at error severity that applies is evaluated, and none fails.</summary>
    [JsonStringEnumMemberName("conforms")]
    Conforms,

    /// <summary>As <see cref="Conforms"/>, and at least one rule would fail without its concession.</summary>
    [JsonStringEnumMemberName("conforms_under_concession")]
    ConformsUnderConcession,

    /// <summary>No rule at error severity fails, and at least one that applies could not be evaluated.</summary>
    [JsonStringEnumMemberName("incomplete")]
    Incomplete,

    /// <summary>At least one rule at error severity fails.</summary>
    [JsonStringEnumMemberName("does_not_conform")]
    DoesNotConform,

    /// <summary>No rule was evaluated.</summary>
    [JsonStringEnumMemberName("not_judged")]
    NotJudged,
}

/// <summary>What came of one rule on one subject.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<OutcomeWord>))]
public enum OutcomeWord
{
    [JsonStringEnumMemberName("conforms")]
    Conforms,

    [JsonStringEnumMemberName("fails")]
    Fails,

    [JsonStringEnumMemberName("under_concession")]
    UnderConcession,

    [JsonStringEnumMemberName("not_evaluated")]
    NotEvaluated,

    [JsonStringEnumMemberName("not_applicable")]
    NotApplicable,
}

/// <summary>How bad a failure is.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<SeverityWord>))]
public enum SeverityWord
{
    [JsonStringEnumMemberName("note")]
    Note,

    [JsonStringEnumMemberName("warning")]
    Warning,

    [JsonStringEnumMemberName("error")]
    Error,
}

/// <summary>What a change of a shipped rule does to it.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<EffectWord>))]
public enum EffectWord
{
    [JsonStringEnumMemberName("tightened")]
    Tightened,

    [JsonStringEnumMemberName("weakened")]
    Weakened,

    /// <summary>Counts as weakened.</summary>
    [JsonStringEnumMemberName("not_comparable")]
    NotComparable,
}

/// <summary>How sure a formula or a limit is.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<CertaintyWord>))]
public enum CertaintyWord
{
    [JsonStringEnumMemberName("closed_form")]
    ClosedForm,

    [JsonStringEnumMemberName("published")]
    Published,

    [JsonStringEnumMemberName("memory")]
    Memory,

    [JsonStringEnumMemberName("common_practice")]
    CommonPractice,

    [JsonStringEnumMemberName("declared")]
    Declared,
}

/// <summary>Where a quantity comes from.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<OriginWord>))]
public enum OriginWord
{
    [JsonStringEnumMemberName("computed")]
    Computed,

    [JsonStringEnumMemberName("declared")]
    Declared,

    [JsonStringEnumMemberName("assumed")]
    Assumed,
}
