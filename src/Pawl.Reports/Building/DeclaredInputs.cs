using System.Globalization;
using Pawl.Reports.Records;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Reports.Building;

/// <summary>Everything that a spec declares, as written, in the order of the spec's own model.</summary>
internal static class DeclaredInputs
{
    public static ImmutableArray<InputRecord> Of(GearboxSpec spec)
    {
        var list = new Lister();
        list.Add("pawl", spec.Pawl);
        Each("extends", spec.Extends, list.Add);
        list.Add("gearbox.family", spec.Gearbox.Family);
        list.Add("gearbox.variant", spec.Gearbox.Variant);
        list.Add("gearbox.revision", spec.Gearbox.Revision);
        list.Add("gearbox.description", spec.Gearbox.Description);
        list.Add("ratio.target", spec.Ratio?.Target);
        list.Add("ratio.tolerance", spec.Ratio?.Tolerance);
        list.Add("ratio.sense", spec.Ratio?.Sense);
        Duty(list, spec.Duty);
        list.Add("tolerances.general", spec.Tolerances?.General);
        Train(list, spec.Train);
        Concessions(list, spec.Concessions);
        Catalogue(list, spec.Catalogue);
        return list.ToImmutable();
    }

    private static void Duty(Lister list, DutySpec? duty)
    {
        list.Add("duty.input.speed", duty?.Input?.Speed);
        list.Add("duty.input.torque", duty?.Input?.Torque);
        list.Add("duty.input.direction", duty?.Input?.Direction);
        list.Add("duty.service_life", duty?.ServiceLife);
        list.Add("duty.application_factor", duty?.ApplicationFactor);
        list.Add("duty.oil.lubricant", duty?.Oil?.Lubricant);
        list.Add("duty.oil.running", duty?.Oil?.Running);
        list.Add("duty.oil.coldest", duty?.Oil?.Coldest);
        list.Add("duty.oil.hottest", duty?.Oil?.Hottest);
        Each("duty.spectrum", duty?.Spectrum ?? [], (path, bin) =>
        {
            list.Add($"{path}.share", bin.Share);
            list.Add($"{path}.torque", bin.Torque);
            list.Add($"{path}.speed", bin.Speed);
        });
    }

    private static void Train(Lister list, TrainSpec? train)
    {
        if (train is null)
            return;

        list.Add("train.input", train.Input);
        list.Add("train.output", train.Output);
        Each("train.fixed", train.Fixed, list.Add);
        list.Add("train.internal_profile_shift", train.InternalProfileShift);
        foreach (var body in train.Bodies.Entries)
        {
            var path = $"train.bodies.{body.Name.Value}";
            list.Add($"{path}.material", body.Material);
            list.Add($"{path}.floating", body.Floating);
            list.Add($"{path}.running", body.Running);
        }

        foreach (var set in train.Planets.Entries)
        {
            var path = $"train.planets.{set.Name.Value}";
            list.Add($"{path}.carrier", set.Carrier);
            list.Add($"{path}.count", set.Count);
            Each($"{path}.positions", set.Positions, list.Add);
            list.Add($"{path}.steps", set.Steps);
            list.Add($"{path}.marks_outward", set.MarksOutward);
            list.Add($"{path}.insertion", set.Insertion);
            list.Add($"{path}.mass", set.Mass);
        }

        foreach (var gear in train.Gears.Entries)
            Gear(list, $"train.gears.{gear.Name.Value}", gear);

        Each("train.meshes", train.Meshes, (path, mesh) =>
        {
            Each($"{path}.gears", mesh.Gears, list.Add);
            list.Add($"{path}.centre_distance", mesh.CentreDistance);
            list.Add($"{path}.friction", mesh.Friction);
            list.Add($"{path}.efficiency", mesh.Efficiency);
            list.Add($"{path}.least_backlash", mesh.LeastBacklash);
            list.Add($"{path}.greatest_backlash", mesh.GreatestBacklash);
        });
    }

    private static void Gear(Lister list, string path, GearSpec gear)
    {
        list.Add($"{path}.on", gear.On);
        list.Add($"{path}.teeth", gear.Teeth);
        list.Add($"{path}.internal", gear.Internal);
        list.Add($"{path}.module", gear.Module);
        list.Add($"{path}.diametral_pitch", gear.DiametralPitch);
        list.Add($"{path}.pressure_angle", gear.PressureAngle);
        list.Add($"{path}.helix_angle", gear.HelixAngle);
        list.Add($"{path}.hand", gear.Hand);
        list.Add($"{path}.profile_shift", gear.ProfileShift);
        list.Add($"{path}.addendum", gear.Addendum);
        list.Add($"{path}.dedendum", gear.Dedendum);
        list.Add($"{path}.root_fillet", gear.RootFillet);
        list.Add($"{path}.face_width", gear.FaceWidth);
        list.Add($"{path}.axial_place", gear.AxialPlace);
        list.Add($"{path}.tip_diameter", gear.TipDiameter);
        list.Add($"{path}.root_diameter", gear.RootDiameter);
        list.Add($"{path}.tip_chamfer", gear.TipChamfer);
        list.Add($"{path}.thickness_allowance.upper", gear.ThicknessAllowance?.Upper);
        list.Add($"{path}.thickness_allowance.lower", gear.ThicknessAllowance?.Lower);
        list.Add($"{path}.ball_diameter", gear.BallDiameter);
        list.Add($"{path}.rim_thickness", gear.RimThickness);
        list.Add($"{path}.material", gear.Material);
        list.Add($"{path}.surface", gear.Surface);
    }

    private static void Concessions(Lister list, ImmutableArray<ConcessionSpec> concessions) =>
        Each("concessions", concessions, (path, concession) =>
        {
            list.Add($"{path}.rule", concession.Rule);
            list.Add($"{path}.subject", concession.Subject);
            list.Add($"{path}.reason", concession.Reason);
            list.Add($"{path}.approved_by", concession.ApprovedBy);
            list.Add($"{path}.expires", concession.Expires);
            list.Add($"{path}.worst_margin", concession.WorstMargin);
        });

    private static void Catalogue(Lister list, Catalogue catalogue)
    {
        foreach (var material in catalogue.Materials.Entries)
        {
            var path = $"materials.{material.Name.Value}";
            list.Add($"{path}.title", material.Title);
            list.Add($"{path}.elastic_modulus", material.ElasticModulus);
            list.Add($"{path}.poisson_ratio", material.PoissonRatio);
            list.Add($"{path}.thermal_expansion", material.ThermalExpansion);
            list.Add($"{path}.density", material.Density);
            list.Add($"{path}.source", material.Source);
            list.Add($"{path}.certainty", material.Certainty);
        }

        foreach (var lubricant in catalogue.Lubricants.Entries)
        {
            var path = $"lubricants.{lubricant.Name.Value}";
            list.Add($"{path}.title", lubricant.Title);
            list.Add($"{path}.kind", lubricant.Kind);
            list.Add($"{path}.viscosity_40", lubricant.Viscosity40);
            list.Add($"{path}.viscosity_100", lubricant.Viscosity100);
            list.Add($"{path}.source", lubricant.Source);
            list.Add($"{path}.certainty", lubricant.Certainty);
        }
    }

    /// <summary>Entries of a list, counted from 1 as people count them.</summary>
    private static void Each<T>(string path, ImmutableArray<T> entries, Action<string, T> add)
    {
        for (var i = 0; i < entries.Length; i++)
            add(string.Create(CultureInfo.InvariantCulture, $"{path}[{i + 1}]"), entries[i]);
    }

    private sealed class Lister
    {
        private readonly ImmutableArray<InputRecord>.Builder _inputs = ImmutableArray.CreateBuilder<InputRecord>();

        public void Add<T>(string path, Stated<T>? stated)
        {
            if (stated is null)
                return;
            _inputs.Add(new()
            {
                Path = path,
                Written = stated.Text,
                Place = new()
                {
                    File = stated.Span.File,
                    Line = stated.Span.Start.Line,
                    Column = stated.Span.Start.Column,
                    EndLine = stated.Span.End.Line,
                    EndColumn = stated.Span.End.Column,
                },
            });
        }

        public ImmutableArray<InputRecord> ToImmutable() => _inputs.DrainToImmutable();
    }
}
