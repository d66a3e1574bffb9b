using Pawl.Analysis.Bearings;
using Pawl.Analysis.Core;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Shafts;
using Pawl.Specs.Model;
using B = Pawl.Analysis.Trains.BodyQuantities;
using D = Pawl.Analysis.Rating.DutyQuantities;
using K = Pawl.Analysis.Shafts.ShaftQuantities;
using T = Pawl.Analysis.Trains.TrainQuantities;

namespace Pawl.Analysis.Shafts;

/// <summary>One shaft: its strength, twist, slopes and critical speed.</summary>
internal sealed class ShaftBuilder
{
    /// <summary>Greatest length of a slice of the shaft's own mass, mm.</summary>
    private const double Slice = 10;

    private readonly AnalysisContext _context;
    private readonly TrainSpec _trainSpec;
    private readonly HeldBodies? _held;
    private readonly Subject _body;
    private readonly ImmutableArray<string> _bendingReasons;

    private ShaftBuilder(AnalysisContext context, TrainSpec trainSpec, TrainBuilder train, HeldBodies? held, ShaftSpec spec, Subject body, LoadShares duty)
    {
        (_context, _trainSpec, _held, Spec, _body, Duty, Train) = (context, trainSpec, held, spec, body, duty, train);
        Subject = context.Begin(SubjectKinds.Shaft, $"shafts.{spec.Name.Value}", spec.Name.Span).Relate("train", train.Subject).Relate("body", body);
        Declare();
        Segments = [.. spec.Sections.Entries.Select(each => new ShaftSegment(
            each.Length.Value.Coherent, new(each.Outside.Value.Nominal.Coherent, each.Bore?.Value.Nominal.Coherent ?? 0)))];
        (Bending, _bendingReasons) = Bend();
    }

    public Subject Subject { get; }

    public ShaftSpec Spec { get; }

    public TrainBuilder Train { get; }

    public LoadShares Duty { get; }

    public ImmutableArray<ShaftSegment> Segments { get; }

    /// <summary>Null with <see cref="BendingReasons"/>.</summary>
    public BodyBending? Bending { get; }

    public ImmutableArray<string> BendingReasons => [.. _bendingReasons, .. Duty.Reasons];

    /// <summary>Axial force of the teeth at the rated torque, N.</summary>
    public double AxialTeeth => _held is null ? 0 : Math.Abs(_held.Forces.Of(Spec.Body.Value).AxialTeeth);

    /// <summary>Axial forces that stay, N.</summary>
    public double AxialLasting => _held?.Forces.Of(Spec.Body.Value).AxialLasting ?? 0;

    public static void AddAll(AnalysisContext context, TrainSpec trainSpec, TrainBuilder train, HeldBodies? held, IReadOnlyDictionary<string, Subject> bodies)
    {
        if (context.Spec.Shafts.Entries.IsEmpty)
            return;
        var duty = LoadShares.Of(context, train.Subject);
        foreach (var spec in context.Spec.Shafts.Entries)
        {
            var shaft = new ShaftBuilder(context, trainSpec, train, held, spec, bodies[spec.Body.Value], duty);
            shaft.Twist();
            shaft.Slopes();
            shaft.Whirl();
            ShaftSectionBuilder.AddAll(context, shaft);
        }
    }

    /// <summary>What bends it.</summary>
    public ImmutableArray<Quantity> Loads => [Subject[K.Body], Train.Subject[T.InputTorque], Train.Subject[D.ApplicationFactor]];

    public string Key(string key) => $"shafts.{Spec.Name.Value}.{key}";

    /// <summary>The greatest of a value over all states of the duty, in both directions of drive.</summary>
    public double Max(Func<double, double, double> value)
    {
        var greatest = 0.0;
        foreach (var share in Duty.States)
            greatest = Math.Max(greatest, Math.Max(value(share.Torque, share.Speed), Duty.Reverse == 0 ? 0 : value(-share.Torque * Duty.Reverse, share.Speed)));
        return greatest;
    }

    private void Declare()
    {
        var s = Subject;
        s.Add(AnalysisContext.Text(K.Body, Spec.Body, ""));
        s.Add(_context.Amount(K.Tensile, Spec.Tensile, Key("tensile")));
        s.Add(_context.Amount(K.Yield, Spec.Yield, Key("yield")));
        s.Add(AnalysisContext.Text(K.Steel, Spec.Steel, "tempered", "tempered, for no hard case is stated"));
        if (Spec.HeatTreatedDiameter is { } treated)
            s.Add(_context.Amount(K.HeatTreatedDiameter, treated, ""));
        s.Add(s.Find(K.HeatTreatedDiameter) is { } diameter
            ? Quantity.Compute(K.Technological, [diameter], v => ShaftFatigue.Technological(SteelOf(), v[0]))
            : _context.Assumed(K.Technological, 1, "1: the strengths are those of the part"));
        s.Add(_context.Number(K.RequiredStatic, Spec.StaticSafety, 1.5, "1.5, common practice, no source"));
        s.Add(_context.Number(K.RequiredFatigue, Spec.FatigueSafety, 1.5, "1.5, common practice, no source; the least of DIN 743 is 1.2"));
        s.Add(_body.Find(B.Torque) is { } torque
            ? Quantity.Compute(K.Torque, [torque], v => Math.Abs(v[0]))
            : Quantity.NotEvaluated(K.Torque, [], $"the torque inside {Spec.Body.Value} is not computed: neither input, output nor held"));
        var material = Spec.Material is { } id ? _context.Spec.Catalogue.Materials.Find(id.Value) : null;
        s.Add(Property(material, K.Modulus, material?.ElasticModulus, "elastic_modulus"));
        s.Add(material is null ? AnalysisContext.Missing(K.Poisson, Key("material")) : _context.Number(K.Poisson, material.PoissonRatio, OfCatalogue("poisson_ratio")));
        s.Add(Property(material, K.Density, material?.Density, "density"));
    }

    public ShaftSteel SteelOf() => Spec.Steel is { Value: "case-hardened" } ? ShaftSteel.CaseHardened : ShaftSteel.Tempered;

    private string OfCatalogue(string key) => $"{key} of material {Spec.Material!.Value} in the catalogue";

    private Quantity Property(MaterialSpec? material, QuantityKind kind, Specs.Text.Stated<Pawl.Quantities.Amount>? value, string key) =>
        material is null ? AnalysisContext.Missing(kind, Key("material")) : _context.Amount(kind, value, OfCatalogue(key));

    private (BodyBending?, ImmutableArray<string>) Bend()
    {
        if (Segments.IsEmpty)
            return (null, [$"{Key("sections")} is not stated"]);
        if (Spec.From is null)
            return (null, [$"{Key("from")} is not stated"]);
        if (!Subject[K.Modulus].IsEvaluated)
            return (null, Subject[K.Modulus].Reasons);
        if (_trainSpec.Fixed.Any(each => each.Value == Spec.Body.Value))
            return (null, [$"{Spec.Body.Value} is held; what bends it is not computed"]);
        return (BodyBending.Of(_held, Spec.Body.Value, Spec.From.Value.Coherent, Segments, Subject[K.Modulus].Value.Nominal, out var reasons), reasons);
    }

    private void Twist()
    {
        ImmutableArray<ShaftSegment> twisted = [.. Segments.Where((_, index) => Spec.Sections.Entries[index].CarriesTorque is not { Value: false })];
        if (Spec.MaxWindUp is { } expected)
            Subject.Add(_context.Amount(K.RequiredWindUp, expected, ""));
        ImmutableArray<Quantity> inputs = [Subject[K.Torque], Subject[K.Modulus], Subject[K.Poisson]];
        Subject.Add(Segments.IsEmpty
            ? Quantity.NotEvaluated(K.WindUp, inputs, $"{Key("sections")} is not stated")
            : Quantity.Compute(K.WindUp, inputs, v => ShaftTwist.Angle(twisted, ShaftTwist.Rigidity(v[1], v[2]), v[0])));
    }

    private void Slopes()
    {
        var bearings = _held?.Holding(Spec.Body.Value) ?? [];
        Subject.Add(Bent(K.BearingSlope, Loads, () => bearings.Max(place => SlopeAt(place.Support!.Position))));
        if (bearings.Any(place => place.Type is not null))
        {
            _context.Uses(SlopeLimits.TableId);
            Subject.Add(Bent(K.BearingSlopeShare, [Subject[K.BearingSlope]], () => bearings.Where(place => place.Type is not null)
                .Max(place => SlopeAt(place.Support!.Position) / SlopeLimits.OfBearing(place.Type!.Kind))));
        }

        ImmutableArray<double> gears = [.. Train.Gears.Where(gear => gear.Spec.On.Value == Spec.Body.Value).Select(TrainForces.PlaceOf).OfType<Quantity>().Select(place => place.Value.Nominal)];
        if (gears.IsEmpty)
            return;
        Subject.Add(Bent(K.GearSlope, Loads, () => gears.Max(SlopeAt)));
        Subject.Add(Bent(K.GearDeflection, Loads, () => gears.Max(place => Max((torque, speed) => Bending!.Deflection(place, torque, speed)))));

        double SlopeAt(double place) => Max((torque, speed) => Bending!.Slope(place, torque, speed));
    }

    /// <summary>A number that comes of the bent shaft, at nominal.</summary>
    public Quantity Bent(QuantityKind kind, ImmutableArray<Quantity> inputs, Func<double> formula)
    {
        if (Bending is null || !BendingReasons.IsEmpty)
            return Quantity.NotEvaluated(kind, inputs, BendingReasons);
        try
        {
            return Quantity.Computed(kind, formula(), inputs);
        }
        catch (OutsideValidityException outside)
        {
            return Quantity.NotEvaluated(kind, inputs, outside.Message);
        }
    }

    private void Whirl()
    {
        var speed = _body[B.Speed];
        var fastest = Duty.Fastest;
        Subject.Add(Quantity.Compute(K.Speed, [speed], v => Math.Abs(v[0]) * fastest));
        Subject.Add(Bent(K.CriticalSpeed, [Subject[K.Modulus], Subject[K.Density]], Critical));
        Subject.Add(Derive.From(K.CriticalShare, Subject[K.Speed], Subject[K.CriticalSpeed], (n, critical) => n / critical));
    }

    private double Critical()
    {
        if (!Subject[K.Density].IsEvaluated)
            throw new OutsideValidityException(Subject[K.Density].Reasons[0]);
        var start = Spec.From!.Value.Coherent;
        var masses = CriticalSpeed.OwnMass(start, Segments, Subject[K.Density].Value.Nominal, Slice);
        var own = masses.Sum(mass => mass.Mass);
        if (_trainSpec.Bodies.Find(Spec.Body.Value) is { Mass: { } stated, MassAt: { } at } && stated.Value.Coherent > own)
            masses = masses.Add(new(at.Value.Coherent, stated.Value.Coherent - own));
        ImmutableArray<ShaftSupport> supports = [.. _held!.SupportsOf(Spec.Body.Value).Select(each => new ShaftSupport(each.Position, false))];
        // A mass right over a bearing does not move, and whirls at no speed.
        masses = [.. masses.Where(mass => supports.All(support => Math.Abs(support.Position - mass.Position) > 1e-9))];
        var influences = CriticalSpeed.Influences(start, Segments, Subject[K.Modulus].Value.Nominal, supports, masses);
        return CriticalSpeed.Lowest(influences, [.. masses.Select(mass => mass.Mass)]);
    }
}
