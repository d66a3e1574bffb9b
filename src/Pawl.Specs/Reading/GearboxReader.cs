using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>The merged tree of a variant as the typed model.</summary>
internal static class GearboxReader
{
    private static readonly string[] Senses = ["same", "reversed"];
    private static readonly string[] GeneralClasses = ["f", "m", "c", "v"];

    /// <summary>The spec, or null when a required part is missing; complaints go into <paramref name="diagnostics"/>.</summary>
    public static GearboxSpec? Read(
        YamlNode tree, string file, ImmutableArray<FileRead> filesRead, Catalogue? catalogue, ICollection<Diagnostic> diagnostics)
    {
        var reader = new MapReader(tree, "", diagnostics);
        var pawl = reader.Whole("pawl", Limits.Format, Limits.Format, required: true);
        var extends = reader.Texts("extends", orOne: true);
        var identity = reader.Map("gearbox", required: true) is { } gearbox ? Identity(gearbox) : null;
        var ratio = reader.Map("ratio") is { } ratioMap ? Ratio(ratioMap) : null;
        var duty = reader.Map("duty") is { } dutyMap ? DutyReader.Read(dutyMap, catalogue) : null;
        var tolerances = reader.Map("tolerances") is { } tolerancesMap ? Tolerances(tolerancesMap) : null;
        var train = reader.Map("train") is { } trainMap ? TrainReader.Read(trainMap, catalogue) : null;
        var bearings = reader.Named("bearings", (name, map) => BearingReader.Place(name, map, catalogue, train));
        var shafts = reader.Named("shafts", (name, map) => ShaftReader.Read(name, map, catalogue, train));
        var splines = reader.Named("splines", (name, map) => SplineReader.Read(name, map, catalogue, train));
        var interfaces = reader.Named("interfaces", (name, map) => InterfaceReader.Read(name, map, catalogue, train));
        var joints = reader.Named("joints", (name, map) => JointReader.Read(name, map, catalogue, train, reader.HasErrors ? default : bearings));
        var dowels = reader.Named("dowels", (name, map) => PinReader.Dowels(name, map, train, reader.HasErrors ? default : joints));
        var retainingRings = reader.Named("retaining_rings", (name, map) => PinReader.Ring(name, map, train, reader.HasErrors ? default : bearings));
        var planetPins = reader.Named("planet_pins", (name, map) => PinReader.Planet(name, map, catalogue, train));
        var oRings = reader.Named("o_rings", ORingReader.Read);
        var lipSeals = reader.Named("lip_seals", (name, map) => LipSealReader.Read(name, map, train));
        var fits = reader.Named("fits", (name, map) => FitReader.Read(name, map, catalogue, train));
        var centring = reader.Named("centring", (name, map) => CentringReader.Read(name, map, reader.HasErrors ? default : fits, bearings, train));
        var shims = reader.Named("shims", StackReader.ShimList);
        var stacks = reader.Named("stacks", (name, map) => StackReader.Read(name, map, catalogue, train, reader.HasErrors ? default : shims));
        var lubrication = reader.Map("lubrication") is { } lubricationMap ? LubricationReader.Read(lubricationMap, catalogue) : null;
        var concessions = reader.Items("concessions", Concession);
        reader.Finish();

        return pawl is null || identity is null || !reader.IsMap
            ? null
            : new()
            {
                File = file,
                FilesRead = filesRead,
                Catalogue = catalogue ?? Catalogue.Empty,
                Tree = tree,
                Pawl = pawl,
                Extends = extends,
                Gearbox = identity,
                Ratio = ratio,
                Duty = duty,
                Tolerances = tolerances,
                Train = train,
                Bearings = new(bearings, bearing => bearing.Name.Value),
                Shafts = new(shafts, shaft => shaft.Name.Value),
                Splines = new(splines, spline => spline.Name.Value),
                Interfaces = new(interfaces, each => each.Name.Value),
                Joints = new(joints, joint => joint.Name.Value),
                Dowels = new(dowels, set => set.Name.Value),
                RetainingRings = new(retainingRings, ring => ring.Name.Value),
                PlanetPins = new(planetPins, pin => pin.Name.Value),
                ORings = new(oRings, ring => ring.Name.Value),
                LipSeals = new(lipSeals, seal => seal.Name.Value),
                Fits = new(fits, fit => fit.Name.Value),
                Centring = new(centring, chain => chain.Name.Value),
                Stacks = new(stacks, stack => stack.Name.Value),
                Shims = new(shims, list => list.Name.Value),
                Lubrication = lubrication,
                Concessions = concessions,
            };
    }

    private static IdentitySpec? Identity(MapReader reader)
    {
        var family = reader.Text("family", required: true);
        var variant = reader.Text("variant", required: true);
        var revision = reader.Text("revision");
        var description = reader.Text("description");
        reader.Finish();

        return family is null || variant is null
            ? null
            : new() { Family = family, Variant = variant, Revision = revision, Description = description };
    }

    private static RatioSpec? Ratio(MapReader reader)
    {
        var target = reader.Fraction("target", Limits.LeastRatio, Limits.GreatestRatio, required: true);
        var tolerance = reader.Amount("tolerance", Dimension.Ratio, AmountRange.NotNegative);
        var sense = reader.Word("sense", Senses);
        reader.Finish();

        return target is null ? null : new() { Target = target, Tolerance = tolerance, Sense = sense };
    }

    private static TolerancesSpec Tolerances(MapReader reader)
    {
        var general = reader.Word("general", GeneralClasses);
        reader.Finish();
        return new() { General = general };
    }

    private static ConcessionSpec? Concession(MapReader reader)
    {
        var rule = reader.Text("rule", required: true);
        var subject = reader.Text("subject", required: true);
        var reason = reader.Text("reason", required: true);
        var approvedBy = reader.Text("approved_by", required: true);
        var expires = reader.Date("expires", required: true);
        var worstMargin = reader.Amount("worst_margin", Dimension.Ratio);
        reader.Finish();

        return rule is null || subject is null || reason is null || approvedBy is null || expires is null
            ? null
            : new()
            {
                Span = reader.Span,
                Rule = rule,
                Subject = subject,
                Reason = reason,
                ApprovedBy = approvedBy,
                Expires = expires,
                WorstMargin = worstMargin,
            };
    }
}
