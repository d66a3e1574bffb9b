using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Mechanics.Materials;
using Pawl.Mechanics.Rating;
using D = Pawl.Analysis.Rating.DutyQuantities;
using G = Pawl.Analysis.Gears.GearQuantities;
using K = Pawl.Analysis.Rating.FlankQuantities;
using L = Pawl.Analysis.Rating.MeshLoadQuantities;
using M = Pawl.Analysis.Gears.MaterialQuantities;
using Q = Pawl.Analysis.Gears.MeshQuantities;
using T = Pawl.Analysis.Trains.TrainQuantities;

namespace Pawl.Analysis.Rating;

/// <summary>Pitting of one gear in one mesh.</summary>
internal sealed class FlankBuilder(DutyBuilder duty, MeshBuilder mesh, MeshLoadBuilder load, GearBuilder gear, GearMotion motion)
{
    private readonly Subject _s = mesh.Gear(gear);
    private readonly GearBuilder _mate = mesh.MateOf(gear)!;

    public void Add()
    {
        var (contacts, perInput) = (motion.Contacts, motion.SpeedPerInput);
        _s.Add(motion.Reasons.IsEmpty
            ? Derive.From(
                K.LoadCycles, duty[T.InputSpeed], duty[D.ServiceLife],
                (speed, life) => MeshForce.FlankCycles(contacts, speed * perInput, life))
            : Quantity.NotEvaluated(K.LoadCycles, [], motion.Reasons));
        _s.Add(SingleContact());
        var m = mesh.Subject;
        _s.Add(Quantity.Compute(
            K.ContactStress,
            [
                _s[K.SingleContactFactor], m[L.NominalContactStress], duty[D.ApplicationFactor], m[L.LoadSharing], m[L.DynamicFactor],
                m[L.FaceLoadFactor], m[L.TransverseLoadFactor],
            ],
            v => ContactStress.OfGear(v[1], v[0], v[2] * v[3] * v[4] * v[5] * v[6])));
        Strength();
        Safety();
    }

    private Quantity SingleContact()
    {
        ImmutableArray<Quantity> inputs =
        [
            gear[G.Teeth], _mate[G.Teeth], gear[G.ActiveTipDiameter], gear[G.BaseDiameter], _mate[G.ActiveTipDiameter], _mate[G.BaseDiameter],
            mesh[Q.WorkingPressureAngle], mesh[Q.TransverseContactRatio], mesh[Q.OverlapRatio],
        ];
        var (z, mateZ, sign, mateSign) = (gear.SignedTeeth, _mate.SignedTeeth, gear.Sign, _mate.Sign);
        return Quantity.Compute(K.SingleContactFactor, inputs, v =>
            sign < 0 ? ContactFactors.SinglePairOfInternalGear
            : v[8] >= 1 ? 1
            : ContactFactors.SinglePair(
                ContactFactors.SinglePairRatio(v[6], v[2], v[3], z, mateSign * v[4], mateSign * v[5], mateZ, v[7]), v[8]));
    }

    private void Strength()
    {
        var m = mesh.Subject;
        _s.Add(WorkHardening());
        _s.Add(Derive.From(K.SizeFactor, mesh[Q.Module], ContactStrength.Size));
        _s.Add(Quantity.Compute(
            K.ContactStrength,
            [gear[M.ContactLimit], m[L.LubricantFactor], m[L.SpeedFactor], m[L.RoughnessFactor], _s[K.WorkHardeningFactor], _s[K.SizeFactor]],
            v => ContactStrength.Limit(v[0], 1, v[1] * v[2] * v[3] * v[4] * v[5])));
    }

    /// <summary>A soft gear gains from a hard and smooth mate.</summary>
    private Quantity WorkHardening()
    {
        if (!(IsSoft(gear.Material.Class) && IsHard(_mate.Material.Class)))
            return Quantity.Computed(K.WorkHardeningFactor, 1, []);
        return Quantity.Compute(
            K.WorkHardeningFactor,
            [
                gear[M.SurfaceHardness], _mate[M.FlankRz], gear[M.FlankRz], mesh.Subject[L.ReducedRadius], mesh[Q.PitchLineSpeed],
                duty[D.Viscosity40],
            ],
            v => ContactStrength.WorkHardening(v[0], ContactStrength.RoughnessOnSoftWheel(v[1], v[2], v[3], v[4], v[5])));
    }

    private static bool IsSoft(MaterialClass? material) =>
        material is MaterialClass.Normalised or MaterialClass.CarbonThroughHardened or MaterialClass.AlloyThroughHardened;

    private static bool IsHard(MaterialClass? material) => material is not null && !IsSoft(material);

    private void Safety()
    {
        var m = mesh.Subject;
        if (gear.Material.Class is not { } material)
        {
            foreach (var kind in (ReadOnlySpan<QuantityKind>)[K.LifeFactor, K.ContactSafety, K.ContactLife, K.PeakContactSafety])
                _s.Add(Quantity.NotEvaluated(kind, [], gear[M.ContactLimit].Reasons));
            return;
        }

        var curve = new StaticCorner(LifeCurves.Flank(material, duty.PermitsPitting, duty.IsFullAtLongLife));
        _s.Add(Derive.From(
            K.LifeFactor, _s[K.LoadCycles], m[L.LubricantFactor], m[L.SpeedFactor], m[L.RoughnessFactor],
            (cycles, zl, zv, zr) => curve.Moved(1 / (zl * zv * zr)).FactorAt(cycles)));
        _s.Add(duty.Cases.IsEmpty
            ? Derive.From(
                K.ContactSafety, _s[K.ContactStrength], _s[K.LifeFactor], _s[K.ContactStress], (strength, life, stress) => strength * life / stress)
            : UnderSpectrum(K.ContactSafety, curve, CaseLoads.Safety));
        if (!duty.Cases.IsEmpty)
            _s.Add(UnderSpectrum(K.ContactDamage, curve, CaseLoads.DamageSum));
        _s.Add(UnderSpectrum(K.ContactLife, curve, CaseLoads.Life));
        _s.Add(Derive.From(
            K.PeakContactSafety, gear[M.ContactLimit], _s[K.WorkHardeningFactor], _s[K.ContactStress], m[L.PeakLoadRatio],
            (limit, hardening, stress, ratio) => limit * curve.StaticFactor * hardening / (stress * Math.Sqrt(ratio))));
    }

    /// <remarks>The static strength has no factors of film: its corner moves against the others by them.</remarks>
    private Quantity UnderSpectrum(QuantityKind kind, StaticCorner curve, SpectrumFormula formula)
    {
        var m = mesh.Subject;
        ImmutableArray<Quantity> own =
        [
            _s[K.ContactStress], _s[K.LoadCycles], _s[K.ContactStrength], duty[D.RequiredContactSafety], duty[D.ServiceLife], m[L.LubricantFactor], m[L.SpeedFactor],
            m[L.RoughnessFactor],
        ];
        var cases = new CaseLoads(duty, mesh, load, factors => factors.Contact);
        return Quantity.Compute(kind, [.. own, .. cases.Inputs], v =>
        {
            Span<DamageBin> bins = stackalloc DamageBin[cases.Count];
            for (var k = 0; k < bins.Length; k++)
                bins[k] = new(v[0] * Math.Sqrt(cases.LoadRatio(k)), v[1] * cases.CycleShare(k));
            return formula(bins, curve.Moved(1 / (v[5] * v[6] * v[7])), v[2], v[3], v[4]);
        });
    }
}
