using System.Globalization;
using System.Text.Json;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Machine;

/// <summary>Why a result of SARIF that fails needs no action now.</summary>
internal static class SarifSuppressions
{
    /// <summary>A concession, which stands in a spec.</summary>
    public static void Write(Utf8JsonWriter json, ConcessionRecord concession, Action<PlaceRecord> physical)
    {
        Begin(json, "inSource", "Concession " + FindingText.Of(concession), concession.Place, physical);
        json.WriteStartObject("properties");
        json.WriteString("reason", SafeText.Line(concession.Reason));
        json.WriteString("approvedBy", SafeText.Line(concession.ApprovedBy));
        json.WriteString("expires", concession.Expires.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        json.WriteNumber("worstMargin", concession.WorstMargin);
        json.WriteEndObject();
        End(json);
    }

    /// <summary>An entry of the baseline, which stands beside the specs.</summary>
    public static void Write(Utf8JsonWriter json, FindingRecord finding, KnownRecord known, Action<PlaceRecord> physical)
    {
        Begin(json, "external", $"Known finding, {Labels.BaselineOf(finding)}", known.Place, physical);
        End(json);
    }

    private static void Begin(Utf8JsonWriter json, string kind, string justification, PlaceRecord place, Action<PlaceRecord> physical)
    {
        json.WriteStartArray("suppressions");
        json.WriteStartObject();
        json.WriteString("kind", kind);
        json.WriteString("status", "accepted");
        json.WriteString("justification", justification);
        json.WriteStartObject("location");
        physical(place);
        json.WriteEndObject();
    }

    private static void End(Utf8JsonWriter json)
    {
        json.WriteEndObject();
        json.WriteEndArray();
    }
}
