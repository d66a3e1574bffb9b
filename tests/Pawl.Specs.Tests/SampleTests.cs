using System.Text;
using Pawl.Quantities;
using Pawl.Specs.Text;

namespace Pawl.Specs.Tests;

public sealed class SampleTests
{
    [Fact]
    public void The_sample_reads_without_a_complaint()
    {
        var load = Sample.Loader().Load("r180.yaml");

        Assert.Empty(load.Diagnostics);
        Assert.NotNull(load.Spec);
        Assert.False(load.IsBase);
        Assert.Equal(["family.yaml"], load.Extends);
    }

    // A length in %·m is one to the reader, and none that the schema knows.
    [Fact]
    public void The_schema_judges_beside_the_reader_only_when_asked()
    {
        var text = Encoding.UTF8.GetBytes(Sample.Text.Replace("axial_position: 35 mm", "axial_position: 3.5 %·m", StringComparison.Ordinal));
        ImmutableArray<string> catalogues = ["catalogue/materials.yaml", "catalogue/lubricants.yaml"];

        Assert.Empty(new SpecLoader(Sample.Folder, catalogues).Load("r180.yaml", text).Diagnostics);
        Assert.Equal(DiagnosticCodes.Schema, Assert.Single(new SpecLoader(Sample.Folder, catalogues, validate: true).Load("r180.yaml", text).Diagnostics).Code);
    }

    [Fact]
    public void Every_key_of_the_sample_reaches_the_model()
    {
        var spec = Sample.Loader().Load("r180.yaml").Spec!;

        Assert.Equal(("Tarn 180", "R180", "C"), (spec.Gearbox.Family.Value, spec.Gearbox.Variant.Value, spec.Gearbox.Revision!.Value));
        Assert.Equal(1.8, spec.Ratio!.Target.Value, tolerance: 1e-15);
        Assert.Equal("9/5", spec.Ratio.Target.Text);
        Assert.Equal(0.002, spec.Ratio.Tolerance!.Value.Coherent, tolerance: 1e-15);
        Assert.Equal("same", spec.Ratio.Sense!.Value);
        Assert.Equal(190_000, spec.Duty!.Input!.Torque!.Value.Coherent, tolerance: 1e-6);
        Assert.Equal(8200 * Math.PI / 30, spec.Duty.Input.Speed!.Value.Coherent, tolerance: 1e-9);
        Assert.Equal("both", spec.Duty.Input.Direction!.Value);
        Assert.Equal(4000 * 3600.0, spec.Duty.ServiceLife!.Value.Coherent);
        Assert.Equal(1.25, spec.Duty.ApplicationFactor!.Value);
        Assert.Equal((80, -15, 110), (spec.Duty.Oil!.Running!.Value.Coherent, spec.Duty.Oil.Coldest!.Value.Coherent, spec.Duty.Oil.Hottest!.Value.Coherent));
        Assert.Equal([0.2, 0.8], spec.Duty.Spectrum.Select(bin => Math.Round(bin.Share.Value.Coherent, 12)));
        Assert.Equal("m", spec.Tolerances!.General!.Value);

        var train = spec.Train!;
        Assert.Equal(("input_shaft", "carrier", "housing"), (train.Input.Value, train.Output.Value, Assert.Single(train.Fixed).Value));
        Assert.Equal("iso", train.InternalProfileShift!.Value);
        var housing = train.Bodies.Find("housing")!;
        Assert.Equal(("cast-aluminium", false, 75), (housing.Material!.Value, housing.Floating!.Value, housing.Running!.Value.Coherent));
        var planets = train.Planets.Find("long_pinion")!;
        Assert.Equal(("carrier", 3, "identical", true, "axial"), (planets.Carrier.Value, planets.Count.Value, planets.Steps!.Value, planets.MarksOutward!.Value, planets.Insertion!.Value));
        Assert.Equal([0, 120, 240], planets.Positions.Select(angle => Math.Round(angle.Value.Value)));
        Assert.Equal(0.35e-3, planets.Mass!.Value.Coherent, tolerance: 1e-12);

        Assert.Equal(["input_sun", "long", "short", "fixed_sun"], train.Gears.Entries.Select(gear => gear.Name.Value));
        var gear = train.Gears.Find("input_sun")!;
        Assert.Equal(("input_shaft", 30, 2.5, 0.10), (gear.On.Value, gear.Teeth.Value, gear.Module!.Value.Coherent, gear.ProfileShift!.Value));
        Assert.Equal((1, 1.25, 0.38), (gear.Addendum!.Value, gear.Dedendum!.Value, gear.RootFillet!.Value));
        Assert.Equal(Math.PI / 9, gear.PressureAngle!.Value.Coherent, tolerance: 1e-12);
        Assert.Equal(new Tolerance.Deviations(-0.1, 0.1), gear.FaceWidth!.Value.Tolerance);
        Assert.Equal(Tolerance.General.Instance, gear.AxialPosition!.Value.Tolerance);
        Assert.Equal(new Tolerance.ToleranceClass("h", 8), gear.TipDiameter!.Value.Tolerance);
        Assert.Equal((69.3, 0.2, 4.5, 8), (gear.RootDiameter!.Value.Nominal.Value, gear.TipChamfer!.Value.Nominal.Value, gear.BallDiameter!.Value.Value, gear.RimThickness!.Value.Nominal.Value));
        Assert.Equal((-0.06, -0.1), (gear.ThicknessAllowance!.Upper.Value.Coherent, gear.ThicknessAllowance.Lower.Value.Coherent));
        Assert.Equal(("carburised-9310", "case-hardened"), (gear.Material!.Value, gear.Surface!.Value));

        var mesh = train.Meshes[0];
        Assert.Equal(["input_sun", "long"], mesh.Gears.Select(name => name.Value));
        Assert.Equal(new Tolerance.ToleranceClass("js", 6), mesh.CentreDistance!.Value.Tolerance);
        Assert.Equal((0.06, 99.2, 0.03, 0.2), (mesh.Friction!.Value, mesh.Efficiency!.Value.Value, mesh.MinBacklash!.Value.Coherent, mesh.MaxBacklash!.Value.Coherent));

        var concession = Assert.Single(spec.Concessions);
        Assert.Equal(("mesh/tip-clearance", "meshes.input_sun~long", "A. Reviewer"), (concession.Rule.Value, concession.Subject.Value, concession.ApprovedBy.Value));
        Assert.Equal(new DateOnly(2027, 3, 31), concession.Expires.Value);
        Assert.Equal(-0.05, concession.WorstMargin!.Value.Coherent, tolerance: 1e-15);

        var material = spec.Catalogue.Materials.Find("carburised-9310")!;
        Assert.Equal((206_000, 0.3), (material.ElasticModulus!.Value.Coherent, material.PoissonRatio!.Value));
        Assert.Equal(11.5e-6, material.ThermalExpansion!.Value.Coherent, tolerance: 1e-12);
        Assert.Equal(100, spec.Catalogue.Lubricants.Find("gear-oil-vg100")!.Viscosity40!.Value.Coherent);
    }

    // The hash comes from sha256sum-like arithmetic of the base library over the bytes on disk, not from the loader.
    [Fact]
    public void Every_file_read_is_kept_with_its_hash_in_the_order_of_paths()
    {
        var spec = Sample.Loader().Load("r180.yaml").Spec!;

        Assert.Equal(
            ["catalogue/lubricants.yaml", "catalogue/materials.yaml", "family.yaml", "r180.yaml", Sample.ShippedSteels], spec.FilesRead.Select(file => file.Path));
        Assert.All(spec.FilesRead, file => Assert.Equal(
            Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(OnDisk(file.Path)))), file.Sha256));

        static string OnDisk(string path) =>
            path == Sample.ShippedSteels ? Path.Combine(Sample.Repository(), "rules", "catalogue", "steels.yaml") : Path.Combine(Sample.Folder, path);
    }

    [Fact]
    public void A_family_file_is_a_base_and_is_not_judged()
    {
        var load = Sample.Loader().Load("family.yaml");

        Assert.True(load.IsBase);
        Assert.Null(load.Spec);
        Assert.Empty(load.Diagnostics);
    }

    [Fact]
    public void Many_threads_read_the_same_as_one()
    {
        var loader = Sample.Loader();
        var loads = new SpecLoad[64];
        Parallel.For(0, loads.Length, i => loads[i] = loader.Load("r180.yaml"));

        Assert.All(loads, load => Assert.Empty(load.Diagnostics));
        Assert.All(loads, load => Assert.Same(loads[0].Spec!.Catalogue, load.Spec!.Catalogue));
    }
}
