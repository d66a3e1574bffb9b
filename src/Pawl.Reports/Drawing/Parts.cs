using Pawl.Mechanics;
using Pawl.Mechanics.Gears;
using Pawl.Reports.Records;

namespace Pawl.Reports.Drawing;

/// <summary>A gear as it is drawn. Lengths in mm, of an internal gear positive here, with the sign of ISO 21771 in its outline.</summary>
internal sealed class GearPart
{
    public required SubjectRecord Subject { get; init; }

    public required string Name { get; init; }

    public required string Body { get; init; }

    /// <summary>Whether it sits on a planet.</summary>
    public required bool OnPlanet { get; init; }

    public required ToothOutline Outline { get; init; }

    public required double Module { get; init; }

    /// <summary>Middle of its face along the axis; null when it is not stated.</summary>
    public double? At { get; init; }

    public double? FaceWidth { get; init; }

    public double? Rim { get; init; }

    public bool IsInternal => Outline.IsInternal;

    public int Teeth => Math.Abs(Outline.Teeth);

    public double TipRadius => Math.Abs(Outline.TipDiameter) / 2;

    public double RootRadius => Math.Abs(Outline.RootDiameter) / 2;

    /// <summary>How far it reaches from its axis.</summary>
    public double Outside => IsInternal ? RootRadius + (Rim ?? (3 * Module)) : TipRadius;

    /// <summary>Whether its face covers a place along the axis; unknown places are covered by all.</summary>
    public bool Covers(double? place) => place is not { } p || At is not { } at || FaceWidth is not { } width || Math.Abs(p - at) < width / 2;
}

/// <summary>Two gears in mesh as they are drawn.</summary>
internal sealed class MeshPart
{
    public required SubjectRecord Subject { get; init; }

    public required GearPart First { get; init; }

    public required GearPart Second { get; init; }

    /// <summary>Working centre distance, mm, above zero.</summary>
    public required double Centre { get; init; }

    /// <summary>Working transverse pressure angle, rad.</summary>
    public required double WorkingAngle { get; init; }

    public string Name => $"{First.Name} – {Second.Name}";

    public bool IsInternal => First.IsInternal || Second.IsInternal;

    /// <summary>Middle of the common face along the axis; null when a place is not stated.</summary>
    public double? Place
    {
        get
        {
            if (First is not { At: { } a, FaceWidth: { } wide } || Second is not { At: { } b, FaceWidth: { } broad })
                return null;
            return (Math.Max(a - (wide / 2), b - (broad / 2)) + Math.Min(a + (wide / 2), b + (broad / 2))) / 2;
        }
    }

    public GearPart MateOf(GearPart gear) => gear == First ? Second : First;

    public double PitchRadius(GearPart gear) => Math.Abs(MeshGeometry.WorkingPitchDiameter(gear.Outline.BaseDiameter, WorkingAngle)) / 2;
}

/// <summary>Planets that one carrier carries together.</summary>
internal sealed record PlanetParts
{
    public required SubjectRecord Subject { get; init; }

    /// <summary>Names of the planet bodies: one, or two that mesh with each other.</summary>
    public required ImmutableArray<string> Bodies { get; init; }

    public required string? Carrier { get; init; }

    public required int Count { get; init; }

    /// <summary>Places of the planets about the axis, rad, the first at 0.</summary>
    public required ImmutableArray<double> Angles { get; init; }

    /// <summary>By how much the second of a pair stands behind the first, rad.</summary>
    public double PairAngle { get; init; }

    /// <summary>Whether the steps of stepped planets are set one by one as they are put in.</summary>
    public bool StepsAreSet { get; init; }
}

/// <summary>A bearing between two bodies; lengths in mm, null where they are not stated.</summary>
internal sealed record BearingPart(string Name, string Shaft, string Housing, double? At, double? Width, double? Bore, double? Outside, string Kind, string Duty);

/// <summary>Gears, meshes, planets and bodies of a record, as far as they can be drawn.</summary>
internal sealed class Parts
{
    private const double MostLength = 1e5, LeastLength = 1e-3;
    private const int MostTeeth = 2000, MostPlanets = 500, MostGears = 100;
    private readonly Dictionary<string, SubjectRecord> _subjects = new(StringComparer.Ordinal);
    private readonly ILookup<string, FindingRecord> _broken;

    private Parts(ConformanceRecord record)
    {
        foreach (var subject in record.Subjects)
            _subjects.TryAdd(subject.Path, subject);
        _broken = record.Findings
            .Where(static f => f.Outcome is OutcomeWord.Fails or OutcomeWord.UnderConcession && f.Measured?.Quantity is not null)
            .ToLookup(static f => f.Measured!.Quantity!, StringComparer.Ordinal);
        Bodies = [.. record.Subjects.Where(static s => s.Kind == "body")];
        AllGears = record.Subjects.Count(static s => s.Kind == "gear");

        // More than this are no gearbox that one looks at, and each costs a figure.
        Gears = AllGears > MostGears ? [] : [.. record.Subjects.Where(static s => s.Kind == "gear").Select(Gear).OfType<GearPart>().DistinctBy(static g => g.Subject.Path)];
        var byPath = Gears.ToDictionary(static g => g.Subject.Path, StringComparer.Ordinal);
        Meshes = [.. record.Subjects.Where(static s => s.Kind == "mesh").Select(s => Mesh(s, byPath)).OfType<MeshPart>().Take(MostGears)];
        Passings = [.. record.Subjects.Where(static s => s.Kind == "passing")];
        Bearings = [.. record.Subjects.Where(static s => s.Kind == "bearing").Select(Bearing).OfType<BearingPart>()];
        Planets = [.. record.Subjects.Where(static s => s.Kind == "planet_set").Select(Planet).OfType<PlanetParts>()];
    }

    public static Parts Of(ConformanceRecord record) => new(record);

    public ImmutableArray<SubjectRecord> Bodies { get; }

    /// <summary>Gears whose teeth can be drawn.</summary>
    public ImmutableArray<GearPart> Gears { get; }

    /// <summary>Number of gears of the record, drawn or not.</summary>
    public int AllGears { get; }

    public ImmutableArray<MeshPart> Meshes { get; }

    public ImmutableArray<PlanetParts> Planets { get; }

    /// <summary>Pinions beside central gears that they do not mesh with.</summary>
    public ImmutableArray<SubjectRecord> Passings { get; }

    public ImmutableArray<BearingPart> Bearings { get; }

    public IEnumerable<BearingPart> BearingsIn(string body) => Bearings.Where(b => b.Housing == body);

    public SubjectRecord? Subject(string path) => _subjects.GetValueOrDefault(path);

    /// <summary>Subjects of a kind, in the order of the record.</summary>
    public IEnumerable<SubjectRecord> Subjects(string kind) => _subjects.Values.Where(s => s.Kind == kind);

    /// <summary>The gear of a mesh as a subject of its own.</summary>
    public SubjectRecord? InMesh(MeshPart mesh, GearPart gear) => Subject($"{mesh.Subject.Path}.{gear.Name}");

    /// <summary>A rule that a quantity breaks, under concession or not; null when none.</summary>
    public FindingRecord? Broken(SubjectRecord? subject, string quantity) =>
        subject is null ? null : _broken[$"{subject.Path}.{quantity}"].OrderBy(static f => f.Severity).ThenBy(static f => f.Rule, StringComparer.Ordinal).FirstOrDefault();

    /// <summary>A nominal number in the unit given; null where there is none.</summary>
    public static double? Number(SubjectRecord? subject, string name, string unit = "") =>
        Value(subject, name) is { Nominal: { } number } value && value.Unit == unit && double.IsFinite(number) ? number : null;

    public static string? Text(SubjectRecord? subject, string name) => Value(subject, name)?.Text;

    public static bool? Truth(SubjectRecord? subject, string name) => Value(subject, name)?.Truth;

    public static ValueRecord? Value(SubjectRecord? subject, string name)
    {
        if (subject is null)
            return null;
        foreach (var quantity in subject.Quantities)
        {
            if (quantity.Name == name)
                return quantity.Value;
        }

        return null;
    }

    public static string? Related(SubjectRecord subject, string role) =>
        subject.Related.FirstOrDefault(r => r.Role == role)?.Subject;

    /// <summary>The last name of a path: <c>sun</c> of <c>gears.sun</c>.</summary>
    public static string NameOf(string path) => path[(path.IndexOf('.', StringComparison.Ordinal) + 1)..];

    /// <summary>A length that can be drawn, mm.</summary>
    private static double? Length(SubjectRecord subject, string name) =>
        Number(subject, name, "mm") is { } value && value is >= LeastLength and <= MostLength ? value : null;

    private static double? Place(SubjectRecord subject, string name) => Number(subject, name, "mm") is { } value && Math.Abs(value) <= MostLength ? value : null;

    private static GearPart? Gear(SubjectRecord subject)
    {
        var isInternal = Text(subject, "kind") == "internal";
        if (Number(subject, "teeth") is not { } teeth || teeth is < 3 or > MostTeeth || teeth != Math.Floor(teeth)
            || Length(subject, "module") is not { } module || Number(subject, "pressure_angle", "°") is not { } pressure
            || Number(subject, "profile_shift") is not { } shift || Length(subject, "tip_diameter") is not { } tip
            || Length(subject, "root_diameter") is not { } root || Related(subject, "body") is not { } body)
            return null;
        var sign = isInternal ? -1 : 1;
        try
        {
            return new()
            {
                Subject = subject,
                Name = NameOf(subject.Path),
                Body = NameOf(body),
                OnPlanet = Truth(subject, "on_planet") == true,
                Module = module,
                At = Place(subject, "axial_position"),
                FaceWidth = Length(subject, "face_width"),
                Rim = Length(subject, "rim_thickness"),
                Outline = ToothOutline.Of(new()
                {
                    Teeth = sign * (int)teeth,
                    NormalModule = module,
                    NormalPressureAngle = pressure * Math.PI / 180,
                    HelixAngle = (Number(subject, "helix_angle", "°") ?? 0) * Math.PI / 180,
                    ProfileShift = shift,
                    ThicknessAllowance = Number(subject, "thickness_allowance", "mm") ?? 0,
                    TipDiameter = sign * tip,
                    RootDiameter = sign * root,
                    FormDiameter = isInternal ? sign * Length(subject, "root_form_diameter") : null,
                    RootRadiusFactor = Number(subject, "root_fillet") ?? 0,
                }),
            };
        }
        catch (OutsideValidityException)
        {
            return null;
        }
    }

    private static MeshPart? Mesh(SubjectRecord subject, Dictionary<string, GearPart> gears)
    {
        if (Related(subject, "first") is not { } first || Related(subject, "second") is not { } second
            || !gears.TryGetValue(first, out var one) || !gears.TryGetValue(second, out var two) || one == two || (one.IsInternal && two.IsInternal)
            || Length(subject, "centre_distance") is not { } centre || Number(subject, "working_pressure_angle", "°") is not { } angle
            || angle is <= 0.1 or >= 80)
            return null;
        return new() { Subject = subject, First = one, Second = two, Centre = centre, WorkingAngle = angle * Math.PI / 180 };
    }

    private static BearingPart? Bearing(SubjectRecord subject) =>
        Related(subject, "shaft") is { } shaft && Related(subject, "housing") is { } housing
            ? new(NameOf(subject.Path), NameOf(shaft), NameOf(housing), Place(subject, "axial_position"), Length(subject, "width"), Length(subject, "bore"), Length(subject, "outside"), Text(subject, "bearing_kind") ?? "", Text(subject, "axial_duty") ?? "")
            : null;

    private static PlanetParts? Planet(SubjectRecord subject)
    {
        if (Number(subject, "count") is not { } count || count is < 1 or > MostPlanets)
            return null;
        var number = (int)count;
        var angles = Truth(subject, "equally_spaced") == false && Angles(Text(subject, "positions")) is { } stated && stated.Length == number
            ? stated
            : [.. Enumerable.Range(0, number).Select(k => Math.Tau * k / number)];
        return new()
        {
            Subject = subject,
            Bodies = [.. NameOf(subject.Path).Split('~')],
            Carrier = Related(subject, "carrier") is { } carrier ? NameOf(carrier) : null,
            Count = number,
            Angles = angles,
            PairAngle = (Number(subject, "pair_angle", "°") ?? 0) * Math.PI / 180,
            StepsAreSet = Text(subject, "steps") == "individual",
        };
    }

    private static ImmutableArray<double>? Angles(string? text)
    {
        if (text is null)
            return null;
        var angles = ImmutableArray.CreateBuilder<double>();
        foreach (var part in text.Split(", "))
        {
            if (!part.EndsWith('°') || !double.TryParse(part[..^1], System.Globalization.NumberStyles.Float, System.Globalization.CultureInfo.InvariantCulture, out var degrees))
                return null;
            angles.Add(degrees * Math.PI / 180);
        }

        return angles.DrainToImmutable();
    }
}
