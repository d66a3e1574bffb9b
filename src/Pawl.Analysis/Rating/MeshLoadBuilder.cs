using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Mechanics.Gears;
using Pawl.Mechanics.Materials;
using Pawl.Mechanics.Rating;
using Pawl.Specs.Model;
using D = Pawl.Analysis.Rating.DutyQuantities;
using G = Pawl.Analysis.Gears.GearQuantities;
using K = Pawl.Analysis.Rating.MeshLoadQuantities;
using M = Pawl.Analysis.Gears.MaterialQuantities;
using Q = Pawl.Analysis.Gears.MeshQuantities;
using T = Pawl.Analysis.Trains.TrainQuantities;

namespace Pawl.Analysis.Rating;

/// <summary>Forces, load factors and what both flanks share of the contact, of one mesh.</summary>
internal sealed class MeshLoadBuilder
{
    private readonly AnalysisContext _context;
    private readonly DutyBuilder _duty;
    private readonly MeshBuilder _mesh;

    private MeshLoadBuilder(AnalysisContext context, DutyBuilder duty, MeshBuilder mesh)
    {
        _context = context;
        _duty = duty;
        _mesh = mesh;
        (Pinion, Wheel) = mesh.IsInternal || mesh.First.Spec.Teeth.Value <= mesh.Second.Spec.Teeth.Value
            ? (mesh.First, mesh.Second)
            : (mesh.Second, mesh.First);
    }

    /// <summary>The gear with fewer teeth; in an internal pair the external one.</summary>
    public GearBuilder Pinion { get; }

    public GearBuilder Wheel { get; }

    /// <summary>Load factors at any load and speed; null when one of the rated ones is not evaluated.</summary>
    public LoadModel? Model { get; private set; }

    private Subject S => _mesh.Subject;

    private double ToothRatio => (double)Wheel.SignedTeeth / Pinion.SignedTeeth;

    public static MeshLoadBuilder Build(AnalysisContext context, DutyBuilder duty, MeshBuilder mesh, PlanetSetSpec? set, bool floating)
    {
        var load = new MeshLoadBuilder(context, duty, mesh);
        load.Sharing(set, floating);
        load.Forces();
        load.Factors();
        load.Contact();
        load.Film();
        load.BuildModel();
        load.Peak();
        return load;
    }

    private void Sharing(PlanetSetSpec? set, bool floating)
    {
        S.Add(Quantity.InCommon(K.RatedFaceWidth, _mesh[Q.CommonFaceWidth]));
        S.Add(set is null ? Quantity.Computed(K.PlanetCount, 1, []) : _context.Number(K.PlanetCount, set.Count));
        if (set?.LoadSharing is { } stated)
        {
            S.Add(_context.Number(K.LoadSharing, stated, ""));
            S.Add(Quantity.OfTruth(K.LoadSharingProven, AnalysisContext.Declared(stated), set.LoadSharingProof is not null, []));
            return;
        }

        S.Add(Derive.From(K.LoadSharing, S[K.PlanetCount], count => PlanetLoadSharing.Factor((int)count, floating)));
        if (set is not null)
            S.Add(Quantity.OfTruth(K.LoadSharingProven, Origin.Computed.Instance, false, []));
    }

    private void Forces()
    {
        var gear = _mesh.First;
        S.Add(Derive.From(K.TangentialForceHeaviest, _mesh[Q.TangentialForce], S[K.LoadSharing], (force, sharing) => force * sharing));
        S.Add(Derive.From(
            K.RadialForce, S[K.TangentialForceHeaviest], gear[G.TransversePressureAngle], _mesh[Q.WorkingPressureAngle], MeshForce.Radial));
        S.Add(Derive.From(K.AxialForce, S[K.TangentialForceHeaviest], gear[G.HelixAngle], MeshForce.Axial));
        S.Add(Derive.From(
            K.LineLoad, S[K.TangentialForceHeaviest], _duty[D.ApplicationFactor], S[K.RatedFaceWidth],
            (force, application, width) => force * application / width));
    }

    private void Factors()
    {
        var speed = _mesh[Q.PitchLineSpeed];
        var (pinionTeeth, ratio) = (Pinion.SignedTeeth, ToothRatio);
        S.Add(Derive.From(
            K.DynamicParameter, speed, Pinion[G.Teeth], Wheel[G.Teeth], (v, _, _) => DynamicFactor.Parameter(v, pinionTeeth, ratio)));
        S.Add(Derive.From(K.AccuracyGrade, Grade(Pinion), Grade(Wheel), Math.Max));
        S.Add(_mesh.Spec.DynamicFactor is { } dynamic
            ? _context.Number(K.DynamicFactor, dynamic, "")
            : Derive.From(
                K.DynamicFactor, S[K.DynamicParameter], S[K.LineLoad], S[K.AccuracyGrade], _mesh[Q.OverlapRatio],
                (s, load, grade, overlap) => DynamicFactor.MethodC(s, load, (int)grade, overlap)));
        S.Add(Derive.From(
            K.MeshStiffness, _mesh[Q.TransverseContactRatio], S[K.LineLoad],
            (ratio, load) => MeshStiffness.Transverse(MeshStiffness.SinglePair(load), ratio)));
        FaceLoad(speed);
        TransverseLoad(speed);
    }

    private static Quantity Grade(GearBuilder gear) => gear.Subject.Find(ToothQuantities.AccuracyGrade) ?? AnalysisContext.Missing(ToothQuantities.AccuracyGrade, $"train.gears.{gear.Name}.accuracy_grade");

    private void FaceLoad(Quantity speed)
    {
        if (_mesh.Spec.FaceLoadFactor is { } stated)
        {
            S.Add(_context.Number(K.FaceLoadFactor, stated, ""));
            return;
        }

        S.Add(_context.Amount(K.Misalignment, _mesh.Spec.Misalignment, $"misalignment or face_load_factor of the mesh {_mesh.Name}"));
        S.Add(Derive.From(
            K.RunInMisalignment, S[K.Misalignment], Pinion[M.ContactLimit], Wheel[M.ContactLimit], speed,
            (misalignment, pinion, wheel, v) =>
                LoadModel.MisalignmentRunIn(misalignment, v, (ClassOf(Pinion), pinion), (ClassOf(Wheel), wheel))));
        S.Add(Derive.From(
            K.FaceLoadFactor, S[K.RunInMisalignment], S[K.MeshStiffness], S[K.LineLoad], S[K.DynamicFactor],
            (misalignment, stiffness, load, dynamic) =>
                FaceLoadFactor.Contact(misalignment, MeshStiffness.AlongFace(stiffness), load * dynamic)));
    }

    private void TransverseLoad(Quantity speed)
    {
        S.Add(Derive.From(
            K.ContactRatioFactor, _mesh[Q.TransverseContactRatio], _mesh[Q.OverlapRatio], ContactFactors.ContactRatio));
        S.Add(Derive.From(
            K.BasePitchDeviation, Pinion[ToothQuantities.PitchDeviation], Wheel[ToothQuantities.PitchDeviation], Pinion[G.TransversePressureAngle],
            (pinion, wheel, angle) => FlankTolerance.BasePitch(Math.Max(pinion, wheel), angle)));
        var total = _mesh[Q.TotalContactRatio];
        var transverse = _mesh[Q.TransverseContactRatio];
        Quantity[] common =
        [
            S[K.MeshStiffness], S[K.BasePitchDeviation], S[K.LineLoad], S[K.DynamicFactor], S[K.FaceLoadFactor],
            Pinion[M.ContactLimit], Wheel[M.ContactLimit], speed,
        ];
        S.Add(Quantity.Compute(
            K.TransverseLoadFactor, [total, transverse, S[K.ContactRatioFactor], .. common],
            v => TransverseLoadFactor.Contact(Unlimited(v[0], v[3..]), v[0], v[1], v[2])));
        S.Add(Quantity.Compute(
            K.TransverseLoadFactorBending, [total, transverse, .. common],
            v => TransverseLoadFactor.Root(Unlimited(v[0], v[2..]), v[0], v[1])));
    }

    private double Unlimited(double total, ReadOnlySpan<double> v) => TransverseLoadFactor.Unlimited(
        v[0], v[1], LoadModel.PitchRunIn(v[1], v[7], (ClassOf(Pinion), v[5]), (ClassOf(Wheel), v[6])), v[2] * v[3] * v[4], total);

    private static MaterialClass ClassOf(GearBuilder gear) => gear.Material.Class
        ?? throw new OutsideValidityException($"the material of {gear.Name} has no class of ISO 6336-5");

    private void Contact()
    {
        var ratio = ToothRatio;
        S.Add(Derive.From(
            K.ZoneFactor, Pinion[G.TransversePressureAngle], _mesh[Q.WorkingPressureAngle], Pinion[G.BaseHelixAngle], ContactFactors.Zone));
        S.Add(Derive.From(
            K.ElasticityFactor, Pinion[M.ElasticModulus], Pinion[M.PoissonRatio], Wheel[M.ElasticModulus], Wheel[M.PoissonRatio],
            (e1, v1, e2, v2) => ContactFactors.Elasticity(new(e1, v1), new(e2, v2))));
        S.Add(Derive.From(K.HelixFactor, Pinion[G.HelixAngle], ContactFactors.HelixAngle));
        S.Add(Quantity.Compute(
            K.NominalContactStress,
            [
                _mesh[Q.TangentialForce], Pinion[G.ReferenceDiameter], S[K.RatedFaceWidth], Pinion[G.Teeth], Wheel[G.Teeth], S[K.ZoneFactor],
                S[K.ElasticityFactor], S[K.ContactRatioFactor], S[K.HelixFactor],
            ],
            v => ContactStress.Nominal(v[5] * v[6] * v[7] * v[8], v[0], v[1], v[2], ratio)));
        S.Add(Derive.From(
            K.ReducedRadius, Pinion[G.BaseDiameter], Wheel[G.BaseDiameter], _mesh[Q.WorkingPressureAngle],
            (pinion, wheel, angle) => LineContact.ReducedCurvatureAtPitchPoint(pinion, Wheel.Sign * wheel, angle)));

        var (limit1, limit2) = (Pinion[M.ContactLimit], Wheel[M.ContactLimit]);
        S.Add(Derive.From(
            K.LubricantFactor, _duty[D.Viscosity40], limit1, limit2, (v40, a, b) => ContactStrength.Lubricant(v40, Math.Min(a, b))));
        S.Add(Derive.From(
            K.SpeedFactor, _mesh[Q.PitchLineSpeed], limit1, limit2, (v, a, b) => ContactStrength.Velocity(v, Math.Min(a, b))));
        S.Add(Derive.From(
            K.RoughnessFactor, Pinion[M.FlankRz], Wheel[M.FlankRz], S[K.ReducedRadius], limit1, limit2,
            (rz1, rz2, radius, a, b) => ContactStrength.Roughness(rz1, rz2, radius, Math.Min(a, b))));
    }

    private void Film()
    {
        S.Add(Quantity.Compute(
            K.FilmThickness,
            [
                _duty[D.PressureViscosity], _duty[D.Viscosity], _duty[D.OilDensity], _mesh[Q.PitchLineSpeed], _mesh[Q.WorkingPressureAngle],
                Pinion[G.TransversePressureAngle], S[K.ReducedRadius], Pinion[M.ElasticModulus], Pinion[M.PoissonRatio], Wheel[M.ElasticModulus],
                Wheel[M.PoissonRatio], S[K.LineLoad], Pinion[G.BaseHelixAngle],
            ],
            v => FilmThickness.Min(
                v[0], Mechanics.Lubrication.Viscosity.Dynamic(v[1], v[2]), v[3] * Math.Cos(v[5]) * Math.Tan(v[4]), v[11] / Math.Cos(v[5]),
                v[6] / Math.Cos(v[12]), Elastic.Reduced(new(v[7], v[8]), new(v[9], v[10])))));
        S.Add(Derive.From(K.FilmRatio, S[K.FilmThickness], Pinion[M.FlankRa], Wheel[M.FlankRa], FilmThickness.Ratio));
        S.Add(Flash());
        S.Add(Derive.From(K.ContactTemperature, _duty[T.OilTemperature], S[K.FlashTemperature], (oil, rise) => oil + rise));
    }

    /// <summary>Walks the path of contact, so it is evaluated at nominal only.</summary>
    private Quantity Flash()
    {
        ImmutableArray<Quantity> inputs =
        [
            _mesh.Subject.Find(Q.Friction) ?? AnalysisContext.Missing(Q.Friction, $"friction of the mesh {_mesh.Name}"), S[K.LineLoad], S[K.DynamicFactor],
            S[K.FaceLoadFactor], S[K.TransverseLoadFactor], _mesh[Q.PitchLineSpeed], _mesh[Q.WorkingPressureAngle],
            Pinion[G.ActiveTipDiameter], Pinion[G.BaseDiameter], Pinion[G.ReferenceDiameter], Wheel[G.ActiveTipDiameter], Wheel[G.BaseDiameter],
            Pinion[G.Module], Pinion[G.HelixAngle], Pinion[G.TransversePressureAngle], Pinion[G.BaseHelixAngle], _mesh[Q.OverlapRatio],
            Pinion[M.ElasticModulus], Pinion[M.PoissonRatio], Wheel[M.ElasticModulus], Wheel[M.PoissonRatio],
        ];
        if (Quantity.MissingReasons(inputs) is { IsEmpty: false } reasons)
            return Quantity.NotEvaluated(K.FlashTemperature, inputs, reasons);

        try
        {
            var v = inputs.Select(input => input.Value.Nominal).ToArray();
            var sign = Wheel.Sign;
            var path = new ContactPath(
                v[8], sign * v[11], v[6], PathOfContact.CurvatureAt(v[7], v[8]), PathOfContact.CurvatureAt(sign * v[10], sign * v[11]),
                PathOfContact.TransverseBasePitch(ToothGeometry.TransverseModule(v[12], v[13]), v[14]), v[15], v[16]);
            var load = v[1] * v[2] * v[3] * v[4] / Math.Cos(v[14]);
            var greatest = FlashTemperature.Max(
                path, 2 * v[5] / v[9], load, v[0], Elastic.Reduced(new(v[17], v[18]), new(v[19], v[20])),
                FlashTemperature.ContactCoefficientOfSteel, FlashTemperature.ContactCoefficientOfSteel);
            return Quantity.Computed(K.FlashTemperature, greatest.Rise, inputs);
        }
        catch (OutsideValidityException outside)
        {
            return Quantity.NotEvaluated(K.FlashTemperature, inputs, outside.Message);
        }
    }

    private void BuildModel()
    {
        ReadOnlySpan<Quantity> needed =
        [
            S[K.LineLoad], S[K.DynamicFactor], S[K.FaceLoadFactor], S[K.TransverseLoadFactor], S[K.TransverseLoadFactorBending],
            S[K.BasePitchDeviation], Pinion[M.ContactLimit], Wheel[M.ContactLimit], Pinion[G.ToothDepth], Wheel[G.ToothDepth],
        ];
        foreach (var each in needed)
        {
            if (!each.IsEvaluated)
                return;
        }

        Model = new()
        {
            PinionTeeth = Pinion.SignedTeeth,
            ToothRatio = ToothRatio,
            Grade = S[K.AccuracyGrade] is { IsEvaluated: true, Value.Nominal: var grade } ? (int)grade : 0,
            OverlapRatio = _mesh[Q.OverlapRatio].Value.Nominal,
            TransverseContactRatio = _mesh[Q.TransverseContactRatio].Value.Nominal,
            TotalContactRatio = _mesh[Q.TotalContactRatio].Value.Nominal,
            ContactRatioFactor = S[K.ContactRatioFactor].Value.Nominal,
            Dynamic = _mesh.Spec.DynamicFactor?.Value,
            FaceContact = _mesh.Spec.FaceLoadFactor?.Value,
            Misalignment = S.Find(K.Misalignment)?.Value.Nominal ?? 0,
            BasePitchDeviation = S[K.BasePitchDeviation].Value.Nominal,
            Pinion = (ClassOf(Pinion), Pinion[M.ContactLimit].Value.Nominal),
            Wheel = (ClassOf(Wheel), Wheel[M.ContactLimit].Value.Nominal),
            Slenderness = S[K.RatedFaceWidth].Value.Nominal / Math.Max(Pinion[G.ToothDepth].Value.Nominal, Wheel[G.ToothDepth].Value.Nominal),
        };
    }

    private void Peak()
    {
        S.Add(Ratio(K.PeakLoadRatio, K.TransverseLoadFactor, factors => factors.Contact));
        S.Add(Ratio(K.PeakLoadRatioBending, K.TransverseLoadFactorBending, factors => factors.Root));
    }

    private Quantity Ratio(QuantityKind kind, QuantityKind transverse, Func<LoadFactors, double> product) => Quantity.Compute(
        kind,
        [
            _duty[D.PeakTorque], _duty[T.InputTorque], _duty[D.ApplicationFactor], S[K.DynamicFactor], S[K.FaceLoadFactor], S[transverse],
            S[K.LineLoad], _mesh[Q.PitchLineSpeed],
        ],
        v => LoadRatio(v[0] / (v[1] * v[2]), 1, v[6], v[7], product),
        turns: true);

    /// <summary>Load with its factors over the rated load with its own.</summary>
    /// <param name="load">Torque and application factor over the rated ones.</param>
    /// <param name="speed">Speed over the rated one.</param>
    /// <param name="lineLoad">The rated line load, N/mm.</param>
    /// <param name="pitchLineSpeed">The rated pitch line speed, mm/s.</param>
    /// <param name="product">The factors that count: of the contact or of the root.</param>
    public double LoadRatio(double load, double speed, double lineLoad, double pitchLineSpeed, Func<LoadFactors, double> product)
    {
        if (load <= 0)
            return 0;
        var model = Model ?? throw new OutsideValidityException($"the load factors of the mesh {_mesh.Name} are not known");
        return load * product(model.At(lineLoad * load, pitchLineSpeed * speed)) / product(model.At(lineLoad, pitchLineSpeed));
    }
}
