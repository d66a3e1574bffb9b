using System.Text.Json.Serialization;

namespace Pawl.Reports.Comparing;

/// <summary>On which sides a thing is.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<PresenceWord>))]
public enum PresenceWord
{
    [JsonStringEnumMemberName("both")]
    Both,

    /// <summary>In the head only.</summary>
    [JsonStringEnumMemberName("added")]
    Added,

    /// <summary>In the base only.</summary>
    [JsonStringEnumMemberName("removed")]
    Removed,
}

/// <summary>What became of a check, in the order of how much it matters.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<EffectKind>))]
public enum EffectKind
{
    /// <summary>Fails, and did not before.</summary>
    [JsonStringEnumMemberName("newly_fails")]
    NewlyFails,

    /// <summary>Was evaluated, and still applies, and is not evaluated.</summary>
    [JsonStringEnumMemberName("no_longer_evaluated")]
    NoLongerEvaluated,

    /// <summary>Was evaluated, and no longer applies or has lost its subject or rule.</summary>
    [JsonStringEnumMemberName("no_longer_judged")]
    NoLongerJudged,

    /// <summary>Holds by a concession only, and did not need one before.</summary>
    [JsonStringEnumMemberName("newly_conceded")]
    NewlyConceded,

    /// <summary>Newly applies, and is not evaluated.</summary>
    [JsonStringEnumMemberName("newly_open")]
    NewlyOpen,

    /// <summary>The same outcome with less margin.</summary>
    [JsonStringEnumMemberName("margin_lost")]
    MarginLost,

    /// <summary>The same outcome with more margin.</summary>
    [JsonStringEnumMemberName("margin_gained")]
    MarginGained,

    /// <summary>Conforms, and was not evaluated before or was not there.</summary>
    [JsonStringEnumMemberName("newly_judged")]
    NewlyJudged,

    /// <summary>Conforms or is conceded, and failed before; or conforms without the concession that it needed.</summary>
    [JsonStringEnumMemberName("mended")]
    Mended,
}

/// <summary>What can make a comparison fail.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<ThresholdWord>))]
public enum ThresholdWord
{
    [JsonStringEnumMemberName("new_failure")]
    NewFailure,

    [JsonStringEnumMemberName("worse_verdict")]
    WorseVerdict,

    [JsonStringEnumMemberName("lost_margin")]
    LostMargin,

    [JsonStringEnumMemberName("lost_coverage")]
    LostCoverage,
}
