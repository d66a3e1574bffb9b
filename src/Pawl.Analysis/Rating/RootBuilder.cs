using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Mechanics.Materials;
using Pawl.Mechanics.Rating;
using D = Pawl.Analysis.Rating.DutyQuantities;
using F = Pawl.Analysis.Rating.FlankQuantities;
using G = Pawl.Analysis.Gears.GearQuantities;
using K = Pawl.Analysis.Rating.RootQuantities;
using L = Pawl.Analysis.Rating.MeshLoadQuantities;
using M = Pawl.Analysis.Gears.MaterialQuantities;
using Q = Pawl.Analysis.Gears.MeshQuantities;
using T = Pawl.Analysis.Trains.TrainQuantities;

namespace Pawl.Analysis.Rating;

/// <summary>Breakage at the root of one gear in one mesh.</summary>
internal sealed class RootBuilder(DutyBuilder duty, MeshBuilder mesh, MeshLoadBuilder load, GearBuilder gear, GearMotion motion)
{
    private readonly Subject _s = mesh.Gear(gear);
    private readonly GearBuilder _mate = mesh.MateOf(gear)!;

    public void Add()
    {
        // Own width and width in common vary apart here, so that the one may seem the lesser; what carries is the least.
        _s.Add(Derive.From(
            K.FaceWidth, Quantity.InCommon(G.FaceWidth, gear[G.FaceWidth]), mesh.Subject[L.RatedFaceWidth], mesh[Q.Module],
            (own, common, module) => own < common ? own : RootStress.FaceWidth(own, common, module)));
        Section();
        Factors();
        Stress();
        Strength();
        Safety();
    }

    private bool IsPeened => gear.Subject.Find(M.Peened) is { IsEvaluated: true, Truth: true };

    private void Section()
    {
        if (gear.IsInternal && gear.Spec.Cutter is null)
        {
            foreach (var kind in (ReadOnlySpan<QuantityKind>)[K.RootChord, K.BendingArm, K.RootRadius, K.LoadAngle])
            {
                _s.Add(Quantity.NotEvaluated(
                    kind, [], $"train.gears.{gear.Name}.cutter is not stated, and the root of an internal gear depends on its cutter"));
            }

            return;
        }

        var (z, sign) = (gear.SignedTeeth, gear.Sign);
        ImmutableArray<Quantity> tool = gear.IsInternal
            ? [gear[ToothQuantities.CutterTeeth], gear[ToothQuantities.CutterTipDiameter], gear[ToothQuantities.CutterTipRadius], gear[ToothQuantities.CutterProfileShift]]
            : [gear[G.Dedendum], gear[G.RootFillet]];
        ImmutableArray<Quantity> shape = [gear[G.Teeth], gear[G.Module], gear[G.PressureAngle], gear[G.HelixAngle], gear[G.ProfileShift], .. tool];
        ImmutableArray<Quantity> loaded = [.. shape, gear[G.ActiveTipDiameter], mesh[Q.TransverseContactRatio]];
        var tip = gear[G.ActiveTipDiameter].Value.Nominal;

        // Chord and radius come of the tool alone; where the force stands does not matter to them.
        _s.Add(Quantity.Compute(K.RootChord, shape, v => Of(v, sign * tip, 1).Chord));
        _s.Add(Quantity.Compute(K.RootRadius, shape, v => Of(v, sign * tip, 1).FilletRadius));
        _s.Add(Quantity.Compute(K.BendingArm, loaded, v => Of(v, sign * v[^2], v[^1]).LeverArm));
        _s.Add(Quantity.Compute(K.LoadAngle, loaded, v => Of(v, sign * v[^2], v[^1]).LoadAngle));

        RootSection Of(ReadOnlySpan<double> v, double tipDiameter, double contactRatio)
        {
            var tooth = new RatedTooth(z, v[1], v[2], v[3], v[4], tipDiameter);
            return sign < 0
                ? RootSections.ByPinionCutter(tooth, new((int)v[5], v[6], v[7], v[8]), contactRatio)
                : RootSections.ByRack(tooth, new(v[5], v[6]), contactRatio);
        }
    }

    private void Factors()
    {
        var m = mesh.Subject;
        _s.Add(Quantity.Compute(
            K.FormFactor,
            [
                _s[K.BendingArm], mesh[Q.Module], _s[K.LoadAngle], _s[K.RootChord], gear[G.PressureAngle], mesh[Q.TransverseContactRatio],
                mesh[Q.OverlapRatio], gear[G.BaseHelixAngle],
            ],
            v => RootFactors.Form(new(v[3], v[0], 1, 0, v[2]), v[1], v[4])
                * RootFactors.LoadDistribution(v[6], v[5] / (Math.Cos(v[7]) * Math.Cos(v[7])))));
        _s.Add(Derive.From(K.NotchParameter, _s[K.RootChord], _s[K.RootRadius], (chord, radius) => chord / (2 * radius)));
        _s.Add(Derive.From(
            K.StressCorrection, _s[K.RootChord], _s[K.BendingArm], _s[K.RootRadius],
            (chord, arm, radius) => RootFactors.StressCorrection(new(chord, arm, radius, 0, 0))));
        _s.Add(Derive.From(
            K.HelixFactor, mesh[Q.OverlapRatio], gear[G.HelixAngle], (overlap, beta) => RootFactors.HelixAngle(overlap, beta, RootEdition.Iso2019)));
        _s.Add(Rim());
        _s.Add(Derive.From(
            K.FaceLoadFactor, m[L.FaceLoadFactor], m[L.RatedFaceWidth], gear[G.ToothDepth], _mate[G.ToothDepth],
            (face, width, own, mate) => FaceLoadFactor.Root(face, width, Math.Max(own, mate))));
    }

    private Quantity Rim()
    {
        var thickness = gear.Subject.Find(G.RimThickness) ?? AnalysisContext.Missing(G.RimThickness, $"train.gears.{gear.Name}.rim_thickness");
        return gear.IsInternal
            ? Derive.From(K.RimFactor, thickness, gear[G.Module], RootFactors.RimOfInternal)
            : Derive.From(K.RimFactor, thickness, gear[G.ToothDepth], RootFactors.RimOfExternal);
    }

    private void Stress()
    {
        var m = mesh.Subject;
        _s.Add(Quantity.Compute(
            K.NominalRootStress,
            [
                mesh[Q.TangentialForce], _s[K.FaceWidth], mesh[Q.Module], _s[K.FormFactor], _s[K.StressCorrection], _s[K.HelixFactor],
                _s[K.RimFactor],
            ],
            v => RootStress.Nominal(v[0], v[1], v[2], v[3], v[4], v[5], v[6])));
        _s.Add(Quantity.Compute(
            K.RootStress,
            [
                _s[K.NominalRootStress], duty[D.ApplicationFactor], m[L.LoadSharing], m[L.DynamicFactor], _s[K.FaceLoadFactor],
                m[L.TransverseLoadFactorBending],
            ],
            v => RootStress.WithLoadFactors(v[0], v[1], v[2], v[3], v[4], v[5])));
    }

    private void Strength()
    {
        var reversal = motion.Reversal;
        _s.Add(motion.Reasons.IsEmpty
            ? Derive.From(
                K.LoadReversal, duty[T.InputTorque], duty[D.ReverseTorque],
                (torque, reverse) => RootStrength.StressRatio(reversal(reverse / torque)))
            : Quantity.NotEvaluated(K.LoadReversal, [], motion.Reasons));
        _s.Add(_s[K.LoadReversal] is { IsEvaluated: true } reversed
            ? Quantity.ComputedText(K.LoadedFlanks, reversed.Value.Nominal < 0 ? "both" : "one", [reversed])
            : Quantity.NotEvaluated(K.LoadedFlanks, [_s[K.LoadReversal]], _s[K.LoadReversal].Reasons));
        if (gear.Material.RootClass is not { } material)
        {
            foreach (var kind in (ReadOnlySpan<QuantityKind>)[K.MeanStressFactor, K.NotchSensitivity, K.SurfaceFactor, K.SizeFactor, K.BendingStrength])
                _s.Add(Quantity.NotEvaluated(kind, [], gear[M.BendingLimit].Reasons));
            return;
        }

        var peened = IsPeened;
        _s.Add(Derive.From(
            K.MeanStressFactor, _s[K.LoadReversal], _s[K.StressCorrection],
            (ratio, correction) => MeanStress(material, peened, ratio, correction, isStatic: false)));
        _s.Add(NotchSensitivity(material));
        _s.Add(Derive.From(
            K.SurfaceFactor, gear[M.RootRz], roughness => RootStrength.Surface(material, roughness * 1000)));
        _s.Add(Derive.From(K.SizeFactor, mesh[Q.Module], module => RootStrength.Size(material, module)));
        _s.Add(Quantity.Compute(
            K.BendingStrength,
            [gear[M.BendingLimit], _s[K.NotchSensitivity], _s[K.SurfaceFactor], _s[K.SizeFactor], _s[K.MeanStressFactor]],
            v => RootStress.Permissible(v[0], 1, v[1], v[2], v[3], v[4])));
    }

    /// <summary>Y_M of endurance; none beyond a Y_S at which M would be below zero.</summary>
    private static double MeanStress(MaterialClass material, bool peened, double ratio, double correction, bool isStatic) =>
        ratio == 0 ? 1 : RootStrength.MeanStress(ratio, RootStrength.MeanStressRatio(material, correction, peened, isStatic));

    private static bool AsksForYield(MaterialClass material) =>
        material is MaterialClass.Normalised or MaterialClass.CarbonThroughHardened or MaterialClass.AlloyThroughHardened;

    private Quantity NotchSensitivity(MaterialClass material)
    {
        if (!AsksForYield(material))
        {
            var layer = RootStrength.SlipLayer(material, null);
            return Derive.From(K.NotchSensitivity, _s[K.NotchParameter], q => RootStrength.NotchSensitivity(q, layer));
        }

        return gear.Subject.Find(M.YieldStrength) is { IsEvaluated: true } yield
            ? Derive.From(
                K.NotchSensitivity, _s[K.NotchParameter], yield,
                (q, strength) => RootStrength.NotchSensitivity(q, RootStrength.SlipLayer(material, strength)))
            : Derive.From(K.NotchSensitivity, _s[K.NotchParameter], RootStrength.NotchSensitivitySimplified);
    }

    private void Safety()
    {
        if (gear.Material.RootClass is not { } material)
        {
            foreach (var kind in (ReadOnlySpan<QuantityKind>)[K.LifeFactor, K.BendingSafety, K.BendingLife, K.PeakBendingSafety])
                _s.Add(Quantity.NotEvaluated(kind, [], gear[M.BendingLimit].Reasons));
            return;
        }

        var (curve, peened) = (new StaticCorner(LifeCurves.Root(material, duty.IsFullAtLongLife)), IsPeened);
        var yield = gear.Subject.Find(M.YieldStrength) is { IsEvaluated: true } known ? known.Value.Min : (double?)null;
        ImmutableArray<Quantity> relative =
        [
            _s[K.NotchSensitivity], _s[K.SurfaceFactor], _s[K.SizeFactor], _s[K.MeanStressFactor], _s[K.StressCorrection], _s[K.LoadReversal],
        ];
        _s.Add(Quantity.Compute(K.LifeFactor, [_s[F.LoadCycles], .. relative], v => Curve(v[1..]).FactorAt(v[0])));
        _s.Add(duty.Cases.IsEmpty
            ? Derive.From(
                K.BendingSafety, _s[K.BendingStrength], _s[K.LifeFactor], _s[K.RootStress], (strength, life, stress) => strength * life / stress)
            : UnderSpectrum(K.BendingSafety, CaseLoads.Safety));
        if (!duty.Cases.IsEmpty)
            _s.Add(UnderSpectrum(K.BendingDamage, CaseLoads.DamageSum));
        _s.Add(UnderSpectrum(K.BendingLife, CaseLoads.Life));
        _s.Add(Derive.From(
            K.PeakBendingSafety, gear[M.BendingLimit], _s[K.StressCorrection], _s[K.LoadReversal], _s[K.RootStress],
            mesh.Subject[L.PeakLoadRatioBending],
            (limit, correction, ratio, stress, peak) =>
                RootStress.Permissible(limit, curve.StaticFactor, Static(correction), 1, 1, MeanStress(material, peened, ratio, correction, isStatic: true))
                    / (stress * peak)));

        double Static(double correction) => AsksForYield(material) && yield is null
            ? Math.Min(1, correction / 2)
            : RootStrength.NotchSensitivityStatic(material, correction, yield);

        // The static corner has factors of its own; it moves against the endurance by what they differ.
        LifeCurve Curve(ReadOnlySpan<double> v)
        {
            var endurance = v[0] * v[1] * v[2] * v[3];
            var statics = Static(v[4]) * MeanStress(material, peened, v[5], v[4], isStatic: true);
            return curve.Moved(statics / endurance);
        }

        Quantity UnderSpectrum(QuantityKind kind, SpectrumFormula formula)
        {
            ImmutableArray<Quantity> own =
                [_s[K.RootStress], _s[F.LoadCycles], _s[K.BendingStrength], duty[D.RequiredBendingSafety], duty[D.ServiceLife], .. relative];
            var cases = new CaseLoads(duty, mesh, load, factors => factors.Root);
            return Quantity.Compute(kind, [.. own, .. cases.Inputs], v =>
            {
                Span<DamageBin> bins = stackalloc DamageBin[cases.Count];
                for (var k = 0; k < bins.Length; k++)
                    bins[k] = new(v[0] * cases.LoadRatio(k), v[1] * cases.CycleShare(k));
                return formula(bins, Curve(v[5..]), v[2], v[3], v[4]);
            });
        }
    }
}
