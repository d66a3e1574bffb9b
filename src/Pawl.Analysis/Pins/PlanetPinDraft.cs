using Pawl.Analysis.Bearings;
using Pawl.Analysis.Core;
using Pawl.Analysis.Joints;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Bearings;
using Pawl.Specs.Model;
using D = Pawl.Analysis.Rating.DutyQuantities;
using K = Pawl.Analysis.Pins.PlanetPinQuantities;
using T = Pawl.Analysis.Trains.TrainQuantities;

namespace Pawl.Analysis.Pins;

/// <summary>The pins of one planet set.</summary>
internal sealed class PlanetPinDraft
{
    private const double SteelModulus = 206_000;

    // Common practice, no source: needle and cylindrical rollers bear about so much.
    private const double UsualSlope = 3 * Math.PI / 10_800;

    private readonly Draft _draft;
    private readonly PlanetPinSpec _spec;
    private readonly Subject _train;
    private readonly Subject _s;

    private PlanetPinDraft(Draft draft, PlanetPinSpec spec, Subject train)
    {
        (_draft, _spec, _train) = (draft, spec, train);
        _s = draft.Begin(SubjectKinds.PlanetPin, $"planet_pins.{spec.Name.Value}", spec.Name.Span).Relate("train", train);
    }

    public static void AddAll(Draft draft, Subject subject, TrainDraft? train)
    {
        if (draft.Spec.PlanetPins.Entries.IsEmpty)
            return;
        var forces = train is null ? null : TrainForces.Build(draft, draft.Spec.Train!, train);
        foreach (var spec in draft.Spec.PlanetPins.Entries)
            new PlanetPinDraft(draft, spec, subject).Add(forces);
    }

    private bool Straddled => _spec.Held.Value == "straddled";

    private string Key(string key) => $"planet_pins.{_spec.Name.Value}.{key}";

    private double N(QuantityKind kind) => _s[kind].Value.Nominal;

    private PlanetPin Pin => new(N(K.Diameter), _spec.Bore?.Value.Coherent ?? 0);

    private double Width => _spec.LoadWidth.Value.Coherent;

    private double Span => _spec.Span?.Value.Coherent ?? throw Worked.Lacks(Key("span"));

    private double Gap => _spec.Gap?.Value.Coherent ?? throw Worked.Lacks(Key("gap"));

    private Quantity Add(QuantityKind kind, ImmutableArray<QuantityKind> inputs, Func<double> formula) =>
        _s.Add(Worked.Out(kind, [.. inputs.Select(input => _s[input])], formula));

    private void Add(TrainForces? forces)
    {
        _s.Add(Draft.Text(K.Planets, _spec.Planets, ""));
        _s.Add(Draft.Text(K.Held, _spec.Held, ""));
        _s.Add(Draft.Text(K.Secured, _spec.Secured, Key("secured")));
        _s.Add(_draft.Dimension(K.Diameter, _spec.Diameter, ""));
        _s.Add(_draft.Amount(K.Yield, _spec.Yield, Key("yield")));
        Forces(forces);
        Add(K.Bending, [K.Diameter, K.Force], () => Bending(N(K.Force)));
        Add(K.Shear, [K.Diameter, K.Force], () => Shear(N(K.Force)));
        Add(K.RatedSafety, [K.Diameter, K.Yield, K.Force], () => N(K.Yield) / Reduced(N(K.Force)));
        Add(K.PeakSafety, [K.Diameter, K.Yield, K.PeakForce], () => N(K.Yield) / Reduced(N(K.PeakForce)));
        Add(K.Slope, [K.Diameter, K.Force], () => Straddled
            ? Pin.StraddledSlope(N(K.Force), Span, Width, Modulus())
            : Pin.OverhungSlope(N(K.Force), Gap, Width, Modulus()));
        _s.Add(_draft.Amount(K.GreatestSlope, _spec.GreatestSlope, UsualSlope, "3′, common practice for needles and cylindrical rollers, no source"));
        _s.Add(_draft.Amount(K.CheekYield, _spec.CheekYield, Key("cheek_yield")));
        Add(K.CheekPressure, [K.Diameter, K.PeakForce], () => Pin.CheekPressure(
            Straddled ? N(K.PeakForce) / 2 : N(K.PeakForce), _spec.Cheek?.Value.Coherent ?? throw Worked.Lacks(Key("cheek"))));
        if (_spec.CheekHole is { } stated)
            _s.Add(Overlap(_s[K.Diameter], _draft.Dimension(K.CheekHole, stated, "")));
    }

    // Of a fit the nominal size may lie outside both tolerances: the middle stands for it.
    private Quantity Overlap(Quantity pin, Quantity hole)
    {
        _s.Add(hole);
        if (Quantity.MissingReasons([pin, hole]) is { IsEmpty: false } reasons)
            return Quantity.NotEvaluated(K.Overlap, [pin, hole], reasons);
        var (least, greatest) = (pin.Value.Least - hole.Value.Greatest, pin.Value.Greatest - hole.Value.Least);
        return Quantity.Bounded(K.Overlap, new((least + greatest) / 2, least, greatest), [pin, hole]);
    }

    private void Forces(TrainForces? forces)
    {
        var planet = _spec.Planets.Value;
        ImmutableArray<string> reasons = forces is null ? ["train is not stated"] : [.. forces.Of(planet).Reasons];
        ImmutableArray<Quantity> inputs = [_s[K.Planets], _train[T.InputTorque], _train[D.ApplicationFactor]];
        if (!reasons.IsEmpty)
        {
            _s.Add(Quantity.NotEvaluated(K.Force, inputs, reasons));
            _s.Add(Quantity.NotEvaluated(K.PeakForce, inputs, reasons));
            return;
        }

        var (teeth, orbit) = (InSize(forces!.Of(planet)), forces.OrbitForces.GetValueOrDefault(planet));
        _s.Add(Worked.Out(K.Force, inputs, () => teeth * _train[D.ApplicationFactor].Value.Nominal + orbit));
        ImmutableArray<Quantity> peak = [_s[K.Planets], _train[D.PeakTorque], _train[T.InputTorque]];
        _s.Add(Worked.Out(K.PeakForce, peak, () => teeth * _train[D.PeakTorque].Value.Nominal / _train[T.InputTorque].Value.Nominal + orbit));
    }

    /// <summary>Tooth forces of every plane as vectors, the planes in size: forces that pull apart in two planes bend the pin all the same.</summary>
    private static double InSize(BodyForces forces) => forces.TeethRadial.Concat(forces.TeethTangential)
        .GroupBy(load => Math.Round(load.Position))
        .Sum(plane => double.Hypot(plane.Sum(load => load.X), plane.Sum(load => load.Y)));

    private double Modulus()
    {
        if (_spec.Material is not { } id)
            return SteelModulus;
        return _draft.Spec.Catalogue.Materials.Find(id.Value)?.ElasticModulus?.Value.Coherent
            ?? throw Worked.Lacks($"elastic_modulus of material {id.Value} in the catalogue");
    }

    private double Bending(double force) =>
        Pin.BendingStress(Straddled ? PlanetPin.StraddledMoment(force, Span, Width) : PlanetPin.OverhungMoment(force, Gap, Width));

    private double Shear(double force) => Pin.ShearStress(Straddled ? force / 2 : force);

    private double Reduced(double force)
    {
        var (bending, shear) = (Bending(force), Shear(force));
        return Math.Sqrt(bending * bending + 3 * shear * shear);
    }
}
