using Pawl.Quantities;
using Pawl.Reports.Records;
using Scriban.Runtime;
using static Pawl.Reports.Markdown.MarkdownText;

namespace Pawl.Reports.Sheets;

/// <summary>What the machinist of one part needs.</summary>
internal sealed partial class SheetModel
{
    /// <summary>Gear data in the order of a drawing: ISO 1340, DIN 3966; from memory.</summary>
    private static readonly ImmutableArray<string> GearData =
    [
        "kind", "teeth", "module", "pressure_angle", "helix_angle", "addendum", "dedendum", "root_fillet", "profile_shift", "reference_diameter", "base_diameter",
        "tip_diameter", "root_diameter", "root_form_diameter", "tooth_depth", "face_width", "thickness_allowance", "span_teeth", "base_tangent_length", "ball_diameter",
        "dimension_over_balls", "accuracy_grade", "pitch_deviation", "profile_deviation", "helix_deviation", "tip_chamfer", "rim_thickness",
    ];

    private static readonly ImmutableArray<string> Treatment =
    [
        "material", "treatment", "quality", "surface_hardness", "core_hardness", "case_depth", "grinding_stock", "ordered_case_depth", "furnace_spread", "tempering", "superfinished", "quality_proven",
    ];

    public ScriptObject Part(string part)
    {
        var row = PartHead(part);
        var gear = _record.Subjects.FirstOrDefault(s => s.Kind == "gear" && s.Path == part);
        row["gear"] = gear is null ? new ScriptArray() : Data(gear, GearData);
        row["mates"] = List(gear is null ? [] : Subjects("mesh").Where(m => m.Related.Any(r => r.Subject == part)), (mesh, _) => Row(
            ("mate", string.Join(", ", mesh.Related.Where(r => r.Role is "first" or "second" && r.Subject != part).Select(r => Code(r.Subject)))),
            ("centre", Shown(mesh, "centre_distance")), ("backlash", Range(mesh, "backlash"))));
        row["treatment"] = gear is null ? Materials(part) : Data(gear, Treatment);
        row["on"] = gear?.Related.FirstOrDefault(static r => r.Role == "body") is { } body ? Code(body.Subject) : "";
        row["roughness"] = List(_record.Inputs.Where(i => IsRoughness(i.Path) && _partOf.Input(i.Path) == part), static (i, _) => Row(("path", Code(i.Path)), ("written", Escape(i.Written))));
        row["features"] = List(_features.Where(f => f.Part == part), static (feature, i) => FeatureRow(feature, Phrase.Whole(i + 1)));
        var known = _features.SelectMany(static f => f.Paths).ToHashSet(StringComparer.Ordinal);
        row["others"] = List(
            _record.Inputs.Where(i => !IsRoughness(i.Path) && !known.Contains(i.Path) && IsSize(i) && _partOf.Input(i.Path) == part), static (i, _) => Row(("path", Code(i.Path)), ("written", Escape(i.Written))));
        return row;
    }

    private ScriptArray Data(SubjectRecord subject, ImmutableArray<string> names) => List(
        names.Select(name => Find(subject, name)).OfType<QuantityRecord>(),
        (quantity, _) => Row(
            ("name", Escape(quantity.Title)), ("symbol", Escape(quantity.Symbol)),
            ("value", Measured(subject, quantity) ?? (quantity is { Origin: OriginWord.Computed, Value: { Min: not null, Max: not null } } ? Range(subject, quantity.Name) : Shown(subject, quantity.Name)))));

    /// <summary>The limits that stand among the features too, so that a sheet never says two things of one size.</summary>
    private string? Measured(SubjectRecord subject, QuantityRecord quantity) =>
        quantity.Origin == OriginWord.Computed && _features.FirstOrDefault(f => f.Part == subject.Path && f.Title == quantity.Title) is { Greatest.Length: > 0 } feature
            ? Escape(feature.Least.Length == 0 ? $"up to {feature.Greatest} {feature.Unit}" : $"{feature.Least}…{feature.Greatest} {feature.Unit}")
            : null;

    private ScriptArray Materials(string part)
    {
        List<(string Name, string Value)> rows = [];
        foreach (var input in _record.Inputs)
        {
            var key = input.Path[(input.Path.LastIndexOf('.') + 1)..];
            if (key is "material" or "treatment" or "tensile" or "yield" or "hole_material" or "shaft_material" && (key == "shaft_material" ? _partOf.OfShaft(input.Path[..input.Path.LastIndexOf('.')]) : _partOf.Input(input.Path)) == part)
                rows.Add((input.Path, input.Written));
        }

        return List(rows, static (row, _) => Row(("name", Code(row.Name)), ("symbol", ""), ("value", Escape(row.Value))));
    }

    private static bool IsRoughness(string path)
    {
        var key = path[(path.LastIndexOf('.') + 1)..];
        return key.Contains("roughness", StringComparison.Ordinal) || key.EndsWith("_rz", StringComparison.Ordinal) || key.EndsWith("_ra", StringComparison.Ordinal);
    }

    private static bool IsSize(InputRecord input) =>
        input.Path[(input.Path.LastIndexOf('.') + 1)..] is not ("axial_position" or "upper" or "lower" or "mass_at" or "mass_eccentricity" or "grinding_stock" or "furnace_spread" or "misalignment" or "at" or "from" or "to")
        && !input.Path.StartsWith("train.meshes", StringComparison.Ordinal)
        && Amount.TryParse(input.Written, out var amount, out _) && amount.Dimension == Dimension.OfLength;
}
