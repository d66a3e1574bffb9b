using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>Bodies, planet sets and meshes.</summary>
internal static class TrainReader
{
    private static readonly string[] ShiftConventions = ["iso", "outward"];
    private static readonly string[] StepSettings = ["identical", "marked", "individual"];
    private static readonly string[] Insertions = ["axial", "radial"];

    public static TrainSpec? Read(MapReader reader, Catalogue? catalogue)
    {
        var input = reader.Name("input", required: true);
        var output = reader.Name("output", required: true);
        var @fixed = reader.Names("fixed", required: true);
        var bodies = reader.Named("bodies", (name, map) => Body(name, map, catalogue));
        var planets = reader.Named("planets", Planets);
        var convention = reader.Word("internal_profile_shift", ShiftConventions);
        var bodiesAreKnown = !reader.HasErrors;

        var gears = reader.Named("gears", (name, map) => GearReader.Read(name, map, catalogue), required: true);
        var meshes = reader.Items("meshes", Mesh, required: true);
        reader.Finish();

        References.CheckNames(reader, bodies, planets);
        if (bodiesAreKnown)
            References.CheckBodies(reader, input!, output!, @fixed, bodies, planets, gears);
        References.CheckMeshes(reader, gears, meshes);
        if (!reader.HasErrors)
            References.CheckEnds(reader, input!, output!, @fixed, bodies, planets, gears);

        return input is null || output is null || reader.HasErrors
            ? null
            : new()
            {
                Span = reader.Span,
                Input = input,
                Output = output,
                Fixed = @fixed,
                Bodies = new(bodies, body => body.Name.Value),
                Planets = new(planets, set => set.Name.Value),
                Gears = new(gears, gear => gear.Name.Value),
                Meshes = meshes,
                InternalProfileShift = convention,
            };
    }

    private static BodySpec Body(Stated<string> name, MapReader reader, Catalogue? catalogue)
    {
        var material = reader.Name("material");
        var floating = reader.Truth("floating");
        var mass = reader.Amount("mass", Dimension.OfMass, AmountRange.Positive);
        var massAt = reader.Amount("mass_at", Dimension.OfLength);
        var running = reader.Amount("running", Dimension.OfTemperature);
        reader.Finish();

        References.CheckMaterial(reader, "material", material, catalogue);
        return new() { Name = name, Material = material, Floating = floating, Mass = mass, MassAt = massAt, Running = running };
    }

    private static PlanetSetSpec? Planets(Stated<string> name, MapReader reader)
    {
        var carrier = reader.Name("carrier", required: true);
        var count = reader.Whole("count", Limits.FewestPlanets, Limits.MostPlanets, required: true);
        var positions = reader.Amounts("positions", Dimension.OfAngle);
        var steps = reader.Word("steps", StepSettings);
        var marksOutward = reader.Truth("marks_outward");
        var insertion = reader.Word("insertion", Insertions);
        var sharing = reader.Number("load_sharing", Limits.LeastLoadFactor, Limits.GreatestLoadFactor);
        var sharingProof = reader.Text("load_sharing_proof");
        var washers = reader.Truth("thrust_washers");
        var mass = reader.Amount("mass", Dimension.OfMass, AmountRange.Positive);
        reader.Finish();

        if (carrier?.Value == name.Value)
            reader.Report(SpecDiagnostics.SelfCarried(carrier.Span, reader.PathOf("carrier"), carrier.Value));
        if (count is not null && reader.Has("positions") && !reader.HasErrors && positions.Length != count.Value)
        {
            reader.Report(SpecDiagnostics.WrongCount(
                reader.KeySpan("positions"), reader.PathOf("positions"), $"one angle for each of {count.Value} planets", positions.Length,
                "Leave it out when the planets are equally spaced."));
        }

        return carrier is null || count is null
            ? null
            : new()
            {
                Name = name,
                Carrier = carrier,
                Count = count,
                Positions = positions,
                Steps = steps,
                MarksOutward = marksOutward,
                Insertion = insertion,
                LoadSharing = sharing,
                LoadSharingProof = sharingProof,
                ThrustWashers = washers,
                Mass = mass,
            };
    }

    private static MeshSpec? Mesh(MapReader reader)
    {
        var gears = reader.Names("gears", required: true);
        var centreDistance = reader.Toleranced("centre_distance", Dimension.OfLength, AmountRange.Positive);
        var friction = reader.Number("friction", Limits.LeastFriction, Limits.GreatestFriction);
        var efficiency = reader.Amount("efficiency", Dimension.Ratio, new Amount(0, Units.Percent), new Amount(100, Units.Percent));
        var misalignment = reader.Amount("misalignment", Dimension.OfLength, AmountRange.NotNegative);
        var faceLoad = reader.Number("face_load_factor", Limits.LeastLoadFactor, Limits.GreatestLoadFactor);
        var dynamic = reader.Number("dynamic_factor", Limits.LeastLoadFactor, Limits.GreatestLoadFactor);
        var leastBacklash = reader.Amount("least_backlash", Dimension.OfLength, AmountRange.NotNegative);
        var greatestBacklash = reader.Amount("greatest_backlash", Dimension.OfLength, AmountRange.NotNegative);
        reader.Finish();

        if (reader.Node("gears") is YamlList list && list.Items.Length != 2)
        {
            reader.Report(SpecDiagnostics.WrongCount(
                list.Span, reader.PathOf("gears"), "two gears", list.Items.Length, "A mesh joins two gears; give each pair an entry of its own."));
        }

        return reader.HasErrors || gears.Length != 2
            ? null
            : new()
            {
                Span = reader.Span,
                Gears = gears,
                CentreDistance = centreDistance,
                Friction = friction,
                Efficiency = efficiency,
                Misalignment = misalignment,
                FaceLoadFactor = faceLoad,
                DynamicFactor = dynamic,
                LeastBacklash = leastBacklash,
                GreatestBacklash = greatestBacklash,
            };
    }
}
