using Pawl.Analysis.Core;
using Pawl.Analysis.Pins;
using Pawl.Analysis.Rating;
using Pawl.Specs.Model;

namespace Pawl.Analysis.Gears;

/// <summary>One mesh, as planet sets, the solver of the train and the rating need it. In an internal pair the ring is the second gear.</summary>
internal sealed class MeshBuilder
{
    private readonly Subject _first;
    private readonly Subject _second;

    private MeshBuilder(AnalysisContext context, MeshSpec spec, int index, GearBuilder first, GearBuilder second)
    {
        (Spec, First, Second) = (spec, first, second);
        Subject = context.Begin(SubjectKinds.Mesh, $"meshes.{Name}", spec.Span, spec, $"train.meshes[{index}]")
            .Relate("first", first.Subject).Relate("second", second.Subject).Relate("train", () => context.Find(SubjectKinds.Train, "train"));
        var (pinion, wheel) = IsInternal || first.Spec.Teeth.Value <= second.Spec.Teeth.Value ? (first, second) : (second, first);
        Subject.RelateAll("planet_bearings", () => context.Held is { } held
            ? held.Places.Where(place => place.Holds is not null && MeshTiltQuantities.PlanetsOf(Subject!).Contains(place.Holds))
                .Select(place => context.Find(SubjectKinds.Bearing, $"bearings.{place.Name}")!)
            : []);
        Subject.RelateAll("twisted_pins", () => context.Of(SubjectKinds.PlanetPin).Where(each => each.Model is PlanetPinSpec pin && MeshTiltQuantities.PlanetsOf(Subject!).Contains(pin.Planets.Value) && each.Find(PlanetPins.CarrierTwist) is not null));
        Subject.RelateOptional("pinion", () => pinion.Subject).RelateOptional("wheel", () => wheel.Subject);
        _first = OneGear(context, first, second);
        _second = OneGear(context, second, first);
    }

    public MeshSpec Spec { get; }

    public GearBuilder First { get; }

    public GearBuilder Second { get; }

    public Subject Subject { get; }

    public bool IsInternal => Second.IsInternal;

    /// <summary>Name in the train graph and in paths.</summary>
    public string Name => $"{Spec.Gears[0].Value}~{Spec.Gears[1].Value}";

    public Quantity this[QuantityKind kind] => Subject[kind];

    public GearBuilder? MateOf(GearBuilder gear) => gear == First ? Second : gear == Second ? First : null;

    public static MeshBuilder Build(AnalysisContext context, MeshSpec spec, int index, GearBuilder first, GearBuilder second) =>
        first.IsInternal ? new(context, spec, index, second, first) : new(context, spec, index, first, second);

    /// <summary>What is known of one gear of this mesh.</summary>
    public Subject Gear(GearBuilder gear) => gear == First ? _first : _second;

    private Subject OneGear(AnalysisContext context, GearBuilder gear, GearBuilder mate) =>
        context.Begin(SubjectKinds.MeshGear, $"{Subject.Path}.{gear.Name}", Spec.Span, new MeshGear(Spec, gear.Spec))
            .Relate("mesh", Subject).Relate("gear", gear.Subject).Relate("mate", mate.Subject)
            .Relate("train", () => context.Find(SubjectKinds.Train, "train"))
            .RelateOptional("first", () => Subject.Reach("first")).RelateOptional("pinion", () => Subject.Reach("pinion"))
            .RelateOptional("wheel", () => Subject.Reach("wheel"))
            .RelateOptional("peak", () => context.Find(SubjectKinds.MeshCase, $"{Subject.Path}.peak"))
            .RelateOptional("coast", () => context.Find(SubjectKinds.MeshCase, $"{Subject.Path}.coast"))
            .RelateAll("shares", () => Subject.ReachAll("shares"));
}

/// <summary>The body that holds the centres of a mesh: the carrier, or the housing between parallel shafts.</summary>
internal sealed record BodyCentres(string? Body, BodySpec? Spec)
{
    public static BodyCentres Of(Subject mesh)
    {
        var train = mesh.Context.Spec.Train!;
        var body = MeshQuantities.PlanetSetOf(mesh)?.Carrier.Value ?? Housing(train);
        return new(body, body is null ? null : train.Bodies.Find(body));
    }

    public Quantity Expansion(AnalysisContext context, QuantityKind kind)
    {
        if (Body is null)
            return Quantity.NotEvaluated(kind, [], "the body that holds the shafts is not clear: several bodies are fixed and none is named housing");
        return Spec?.Material is not { } material
            ? AnalysisContext.Missing(kind, $"train.bodies.{Body}.material")
            : context.Amount(
                kind,
                context.Spec.Catalogue.Materials.Find(material.Value)?.ThermalExpansion,
                $"materials.{material.Value}.thermal_expansion");
    }

    private static string? Housing(TrainSpec train) => train.Fixed.Length == 1
        ? train.Fixed[0].Value
        : train.Fixed.FirstOrDefault(static held => held.Value == "housing")?.Value;
}
