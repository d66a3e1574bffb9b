using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Mechanics.Assembly;
using Pawl.Quantities;
using Pawl.Specs.Model;
using G = Pawl.Analysis.Gears.GearQuantities;
using K = Pawl.Analysis.Trains.PlanetSetQuantities;

namespace Pawl.Analysis.Trains;

/// <summary>Planet sets that one carrier carries together: one set, or sets that mesh with each other.</summary>
internal sealed partial class PlanetSetBuilder
{
    private readonly AnalysisContext _context;
    private readonly TrainBuilder _train;
    private readonly ImmutableArray<PlanetSetSpec> _sets;
    private readonly ImmutableArray<MeshBuilder> _central;
    private readonly ImmutableArray<MeshBuilder> _pairs;
    private readonly Subject _subject;
    private PlanetPositions _positions = PlanetPositions.Equal(1);

    private PlanetSetBuilder(AnalysisContext context, TrainBuilder train, ImmutableArray<PlanetSetSpec> sets)
    {
        (_context, _train, _sets) = (context, train, sets);
        _central = [.. train.Meshes.Where(mesh => train.PlanetOf(mesh.First, mesh.Second) is { } planet && IndexOf(planet) >= 0)];
        _pairs =
        [
            .. train.Meshes.Where(mesh => IndexOf(mesh.First.Spec.On.Value) >= 0 && IndexOf(mesh.Second.Spec.On.Value) >= 0),
        ];
        _subject = context.Begin(
            SubjectKinds.PlanetSet, $"planets.{string.Join('~', sets.Select(set => set.Name.Value))}", sets[0].Name.Span);
        _subject.Relate("train", train.Subject);
    }

    private string Name => string.Join('~', _sets.Select(set => set.Name.Value));

    private int Count => _sets[0].Count.Value;

    public static void AddAll(AnalysisContext context, TrainSpec spec, TrainBuilder train, IReadOnlyDictionary<string, Subject> bodies)
    {
        foreach (var sets in Together(spec, train))
        {
            var group = new PlanetSetBuilder(context, train, sets);
            if (bodies.TryGetValue(sets[0].Carrier.Value, out var carrier))
                group._subject.Relate("carrier", carrier);
            group.Declare();
            group.Spacing();
            group.Circle();
            group.Neighbours();
            group.Balance(carrier);
        }
    }

    /// <summary>Planet sets joined by meshes between planets, in the order of the spec.</summary>
    private static List<ImmutableArray<PlanetSetSpec>> Together(TrainSpec spec, TrainBuilder train)
    {
        var groups = new List<List<PlanetSetSpec>>();
        foreach (var set in spec.Planets.Entries)
            groups.Add([set]);
        foreach (var mesh in train.Meshes)
        {
            if (train.PlanetSet(mesh.First.Spec.On.Value) is not { } first || train.PlanetSet(mesh.Second.Spec.On.Value) is not { } second)
                continue;
            var (one, other) = (groups.First(group => group.Contains(first)), groups.First(group => group.Contains(second)));
            if (one == other)
                continue;
            one.AddRange(other);
            groups.Remove(other);
        }

        return [.. groups.Select(group => group.ToImmutableArray())];
    }

    private int IndexOf(string body)
    {
        for (var k = 0; k < _sets.Length; k++)
        {
            if (_sets[k].Name.Value == body)
                return k;
        }

        return -1;
    }

    private int PlanetIndex(MeshBuilder mesh) => Math.Max(IndexOf(mesh.First.Spec.On.Value), IndexOf(mesh.Second.Spec.On.Value));

    private GearBuilder Planet(MeshBuilder mesh) => IndexOf(mesh.First.Spec.On.Value) >= 0 ? mesh.First : mesh.Second;

    private static GearBuilder Central(MeshBuilder mesh, GearBuilder planet) => mesh.MateOf(planet)!;

    private bool IsStepped
    {
        get
        {
            foreach (var set in _sets)
            {
                var counts = TeethInMesh(set.Name.Value);
                if (counts.Count > 1)
                    return true;
            }

            return false;
        }
    }

    private SortedSet<int> TeethInMesh(string body)
    {
        var counts = new SortedSet<int>();
        foreach (var mesh in _train.Meshes)
        {
            foreach (var gear in (ReadOnlySpan<GearBuilder>)[mesh.First, mesh.Second])
            {
                if (gear.Spec.On.Value == body)
                    counts.Add(gear.Spec.Teeth.Value);
            }
        }

        return counts;
    }

    private string StepsAs => _sets.Select(set => set.Steps?.Value).FirstOrDefault(steps => steps is not null) ?? "identical";

    private void Declare()
    {
        var s = _subject;
        var stated = _sets.Select(set => set.Positions).FirstOrDefault(positions => !positions.IsEmpty, []);
        s.Add(_context.Number(K.Count, _sets[0].Count));
        s.Add(stated.IsEmpty
            ? Quantity.OfTruth(K.EquallySpaced, new Origin.Assumed("equally spaced, for no positions are stated"), true, [])
            : Quantity.OfTruth(K.EquallySpaced, AnalysisContext.Declared(stated[0]), AreEqual(stated), []));
        s.Add(Quantity.OfTruth(K.Stepped, Origin.Computed.Instance, IsStepped, []));
        s.Add(IsStepped
            ? AnalysisContext.Text(K.Steps, _sets.Select(set => set.Steps).FirstOrDefault(steps => steps is not null), "identical", "identical in all planets, without timing marks")
            : Quantity.ComputedText(K.Steps, "single"));
        if (IsStepped)
        {
            s.Add(AnalysisContext.Truth(
                K.MarksOutward, _sets.Select(set => set.MarksOutward).FirstOrDefault(marks => marks is not null), false,
                "the assembly instruction does not point marks outward"));
        }

        s.Add(Quantity.Compute(
            K.LargestModule, [.. PlanetGears().Select(gear => gear[G.Module])], modules =>
            {
                var largest = 0.0;
                foreach (var module in modules)
                    largest = Math.Max(largest, module);
                return largest;
            }));
    }

    private static bool AreEqual(ImmutableArray<Specs.Text.Stated<Amount>> positions)
    {
        for (var k = 0; k < positions.Length; k++)
        {
            var ideal = positions[0].Value.Coherent + (Math.Tau * k / positions.Length);
            if (Math.Abs(Math.IEEERemainder(positions[k].Value.Coherent - ideal, Math.Tau)) > 1e-9)
                return false;
        }

        return true;
    }

    private ImmutableArray<GearBuilder> PlanetGears() => [.. _train.Gears.Where(gear => IndexOf(gear.Spec.On.Value) >= 0)];

    private void Spacing()
    {
        var s = _subject;
        if (Group() is not { } group)
        {
            foreach (var kind in (ReadOnlySpan<QuantityKind>)
                [K.SpacingDivisor, K.MinMeshAngle, K.SpacingRemainder, K.PermittedPositions, K.PositionMisfit, K.Phasing])
            {
                s.Add(Quantity.NotEvaluated(kind, [], $"a planet of {Name} meshes with no central gear"));
            }

            return;
        }

        var least = MinAngle(group);
        var equal = s[K.EquallySpaced].Truth;
        _positions = equal ? PlanetPositions.Equal(Count) : Declared(least);
        s.Add(Quantity.Computed(K.SpacingDivisor, least.PositionsPerTurn, Teeth()));
        s.Add(least.IsAnyAngle
            ? Quantity.Computed(K.MinMeshAngle, 0, [s[K.SpacingDivisor]])
            : Derive.From(K.MinMeshAngle, s[K.SpacingDivisor], divisor => Math.Tau / divisor));
        s.Add(Derive.From(K.SpacingRemainder, s[K.SpacingDivisor], s[K.Count], (divisor, count) => divisor % count));
        s.Add(Quantity.ComputedText(K.PermittedPositions, Angles(least.NearestToEqual(Count)), [s[K.SpacingDivisor], s[K.Count]]));
        s.Add(Misfit(least));
        Phase(group);
        if (IsStepped && StepsAs != "individual")
        {
            s.Add(Quantity.Computed(K.InsertionTrials, StepTiming.FewestInsertionTrials(group), Teeth()));
            s.Add(Quantity.OfTruth(
                K.MarksOutwardWork, Origin.Computed.Instance, StepTiming.SameMarkOutward(group, _positions), [.. Teeth(), s[K.Count]]));
        }
    }

    private PlanetGroup? Group()
    {
        try
        {
            return new(
                _sets.Length,
                [
                    .. _central.Select(mesh =>
                    {
                        var planet = Planet(mesh);
                        var central = Central(mesh, planet);
                        return new GroupMesh(PlanetIndex(mesh), planet.Spec.Teeth.Value, central.Spec.Teeth.Value, central.IsInternal);
                    }),
                ],
                [
                    .. _pairs.Select(mesh => new GroupPairMesh(
                        IndexOf(mesh.First.Spec.On.Value), mesh.First.Spec.Teeth.Value,
                        IndexOf(mesh.Second.Spec.On.Value), mesh.Second.Spec.Teeth.Value)),
                ]);
        }
        catch (OutsideValidityException)
        {
            // A planet that nothing ties to a central gear has no place to speak of.
            return null;
        }
    }

    /// <summary>The condition on the positions, with steps that turn until they are clamped where the spec has such.</summary>
    private MinMeshAngle MinAngle(PlanetGroup group) =>
        MinMeshAngle.Of(IsStepped && StepsAs == "individual" ? Clamped(group) : group);

    /// <summary>Every further step of every stepped planet set free to turn until it is clamped.</summary>
    private PlanetGroup Clamped(PlanetGroup group)
    {
        for (var body = 0; body < _sets.Length; body++)
        {
            foreach (var teeth in TeethInMesh(_sets[body].Name.Value).Skip(1))
                group = group.WithStepClampedInPlace(body, teeth);
        }

        return group;
    }

    private PlanetPositions Declared(MinMeshAngle least)
    {
        var stated = _sets.Select(set => set.Positions).First(positions => !positions.IsEmpty);
        return least.NearestTo([.. stated.Select(position => position.Value.Coherent)]);
    }

    private ImmutableArray<Quantity> Teeth() =>
        [.. _central.Concat(_pairs).SelectMany(mesh => (GearBuilder[])[mesh.First, mesh.Second]).Distinct().Select(gear => gear[G.Teeth])];

    private static string Angles(PlanetPositions positions) => string.Join(
        ", ", positions.Angles.Select(angle => Formatting.Significant(angle * 180 / Math.PI, 7) + "°"));

    private Quantity Misfit(MinMeshAngle least)
    {
        var stated = _sets.Select(set => set.Positions).FirstOrDefault(positions => !positions.IsEmpty, []);
        var worst = 0.0;
        for (var k = 0; k < Count; k++)
        {
            var position = stated.IsEmpty
                ? Math.Tau * k / Count
                : stated[k].Value.Coherent - stated[0].Value.Coherent;
            worst = Math.Max(worst, Math.Abs(least.Misfit(position)));
        }

        // A position that is right to a millionth of a tooth was meant to be right.
        var misfit = least.IsAnyAngle || worst < 1e-6 * least.Angle ? 0 : worst;
        return _central.IsEmpty
            ? Quantity.NotEvaluated(K.PositionMisfit, [], $"a planet of {Name} meshes with no central gear")
            : Derive.From(K.PositionMisfit, _central[0][MeshQuantities.CentreDistance], a => a * misfit);
    }

    private void Phase(PlanetGroup group)
    {
        var inPhase = 0;
        var said = new List<string>();
        foreach (var mesh in _central)
        {
            var central = Central(mesh, Planet(mesh));
            var phasing = MeshPhase.Classify(central.Spec.Teeth.Value, _positions);
            if (phasing == Phasing.InPhase && Count > 1)
                inPhase++;
            var phases = MeshPhase.Of(central.Spec.Teeth.Value, _positions);
            said.Add($"{central.Name} {Word(phasing)} ({string.Join(", ", phases.Select(phase => Formatting.Significant(phase, 3)))})");
        }

        _subject.Add(Quantity.ComputedText(K.Phasing, said.Count == 0 ? "no central mesh" : string.Join("; ", said), Teeth()));
        _subject.Add(Quantity.Computed(K.FactoringMeshes, inPhase, [.. Teeth(), _subject[K.Count]]));
    }

    private static string Word(Phasing phasing) => phasing switch
    {
        Phasing.InPhase => "in phase",
        Phasing.CounterPhased => "counter-phased",
        Phasing.Sequential => "sequential",
        _ => "irregular",
    };
}
