using System.Globalization;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>Bolted joints and central nuts.</summary>
internal static class JointReader
{
    private const string Flange = "flange";

    private static readonly string[] Kinds = [Flange, "central-nut"];
    private static readonly string[] Heads = ["hexagon", "socket"];
    private static readonly string[] Strengths = ["4.6", "4.8", "5.6", "5.8", "6.8", "8.8", "9.8", "10.9", "12.9", "grade 2", "grade 5", "grade 8"];
    private static readonly string[] NutStrengths = ["5", "6", "8", "10", "12", "04", "05"];
    private static readonly string[] NutStyles = ["thin", "regular", "high"];
    private static readonly string[] FrictionClasses = ["A", "B", "C", "D", "E"];
    private static readonly string[] Rolled = ["before", "after"];
    private static readonly string[] Between = ["bare", "paint", "gasket", "sealant"];
    private static readonly string[] Orders = ["crosswise", "round", "any"];
    private static readonly string[] Coatings =
    [
        "none", "black oxide", "phosphate", "electroplated zinc", "electroplated zinc-nickel", "electroplated cadmium", "electroless nickel",
        "hard chromium", "zinc flake", "mechanical zinc", "hot-dip galvanised",
    ];

    private static readonly string[] Lockers =
    [
        "none", "anaerobic low strength", "anaerobic medium strength", "anaerobic high strength", "anaerobic high temperature",
        "pre-applied micro-encapsulated", "polyamide patch",
    ];

    private static readonly string[] Methods =
    [
        "yield controlled", "angle controlled", "hydraulic", "torque wrench with friction measured", "torque wrench with friction estimated",
        "power driver with friction estimated", "impact wrench", "by feel",
    ];

    public static JointSpec? Read(Stated<string> name, MapReader reader, Catalogue? catalogue, TrainSpec? train, ImmutableArray<BearingSpec> bearings)
    {
        var kind = reader.Word("kind", Kinds, required: true);
        var thread = Thread(reader, "thread", required: true);
        var central = kind is { Value: not Flange };
        var joint = kind is null || thread is null
            ? null
            : new JointSpec { Name = name, Kind = kind, Thread = thread };
        var read = (joint ?? new JointSpec { Name = name, Kind = name, Thread = name }) with
        {
            Strength = Term(reader, "strength", Strengths, "a property class or grade"),
            ProofStress = reader.Amount("proof_stress", Dimension.OfStress, AmountRange.Positive),
            Yield = reader.Amount("yield", Dimension.OfStress, AmountRange.Positive),
            Tensile = reader.Amount("tensile", Dimension.OfStress, AmountRange.Positive),
            Carries = reader.Name("carries"),
            Torque = reader.Amount("torque", Dimension.OfTorque, AmountRange.NotNegative),
            AxialForce = reader.Amount("axial_force", Dimension.OfForce, AmountRange.NotNegative),
            LeastAxialForce = reader.Amount("least_axial_force", Dimension.OfForce, AmountRange.NotNegative),
            ForceAcross = reader.Amount("force_across", Dimension.OfForce, AmountRange.NotNegative),
            Bearing = reader.Name("bearing"),
            Bolts = reader.Whole("bolts", Limits.FewestBolts, Limits.MostBolts),
            BoltCircle = reader.Amount("bolt_circle", Dimension.OfLength, AmountRange.Positive),
            Head = reader.Word("head", Heads),
            Face = reader.Amount("face", Dimension.OfLength, AmountRange.Positive),
            Hole = reader.Amount("hole", Dimension.OfLength, AmountRange.Positive),
            Length = reader.Amount("length", Dimension.OfLength, AmountRange.Positive),
            Shank = reader.Amount("shank", Dimension.OfLength, AmountRange.NotNegative),
            Width = reader.Amount("width", Dimension.OfLength, AmountRange.Positive),
            Clamped = reader.Items("clamped", map => Layer(map, catalogue, central), required: true),
            Shims = reader.Whole("shims", Limits.FewestLooseShims, Limits.MostLooseShims),
            Tapped = reader.Map("tapped") is { } tapped ? Tapped(tapped, catalogue) : null,
            Nut = reader.Map("nut") is { } nut ? Nut(nut) : null,
            Shaft = reader.Map("shaft", central) is { } shaft ? Shaft(shaft, catalogue) : null,
            Friction = reader.Map("friction") is { } friction ? Friction(friction) : null,
            Tightening = reader.Map("tightening") is { } tightening ? Tightening(tightening) : null,
            Coating = reader.Word("coating", Coatings),
            Bake = reader.Amount("bake", Dimension.OfTime, AmountRange.NotNegative),
            ThreadsRolled = reader.Word("threads_rolled", Rolled),
            Locker = reader.Word("locker", Lockers),
            LockerHottest = reader.Amount("locker_hottest", Dimension.OfTemperature),
            Roughness = reader.Amount("roughness", Dimension.OfLength, AmountRange.Positive),
            BetweenFaces = reader.Word("between_faces", Between),
            FaceFriction = reader.Number("face_friction", Limits.LeastFriction, Limits.GreatestFriction),
            SlipSafety = reader.Number("slip_safety", Limits.LeastSafety, Limits.GreatestSafety),
            LoadIntroduction = reader.Number("load_introduction", Limits.LeastShare, 1),
            AssemblyTemperature = reader.Amount("assembly_temperature", Dimension.OfTemperature),
        };
        reader.Finish();

        References.CheckBody(reader, "carries", read.Carries, train);
        if (!bearings.IsDefault)
            References.CheckEntry(reader, "bearing", read.Bearing, bearings.Select(bearing => bearing.Name.Value));
        Agrees(reader, read, thread is null ? null : ThreadNames.Diameter(thread.Value));
        return joint is null ? null : read;
    }

    private static void Agrees(MapReader reader, JointSpec read, double? diameter)
    {
        Excludes(read.Carries, "carries", read.Torque, "torque");
        Excludes(read.Tapped, "tapped", read.Nut, "nut");
        Excludes(read.Strength, "strength", read.Yield, "yield");
        if (!reader.HasErrors && reader.Node("clamped") is YamlList { Items.IsEmpty: true } grip)
            reader.Report(SpecDiagnostics.WrongCount(grip.Span, reader.PathOf("clamped"), "one layer or more", 0, "A joint without a grip clamps nothing."));
        if (read.Hole is { } hole)
        {
            if (read.Face is { } face && hole.Value.Coherent >= face.Value.Coherent)
                Outside("hole", hole, $"less than the face of {face.Text}");
            if (diameter is { } thread && hole.Value.Coherent < thread - 1e-9 && read.Kind.Value == Flange)
                Outside("hole", hole, $"at least the diameter of {read.Thread.Text}");
        }

        if (read.Shank is { } shank && read.Length is { } whole && shank.Value.Coherent >= whole.Value.Coherent)
            Outside("shank", shank, $"less than the length of {whole.Text}");
        if (read.LeastAxialForce is { } least && read.AxialForce is { } force && least.Value.Coherent > force.Value.Coherent)
            Outside("least_axial_force", least, $"no more than the axial force of {force.Text}");
        if (read.Length is not { } length || read.Clamped.IsEmpty)
            return;

        var thickness = read.Clamped.Sum(layer => layer.Thickness.Value.Nominal.Coherent);
        if (length.Value.Coherent <= thickness)
        {
            Outside("length", length, string.Create(CultureInfo.InvariantCulture, $"more than the clamped {thickness:0.###} mm"), "The bolt does not reach its thread.");
        }
        else if (read.Tapped is { Depth: { } depth } && length.Value.Coherent > thickness + depth.Value.Coherent + 1e-9)
        {
            Outside(
                "length", length, string.Create(CultureInfo.InvariantCulture, $"no more than the clamped {thickness:0.###} mm and the tapped depth of {depth.Text}"),
                "The bolt is longer than its hole: it would bottom and clamp nothing.");
        }

        void Outside(string key, Stated<Amount> found, string wanted, string? hint = null) =>
            reader.Report(SpecDiagnostics.OutOfRange(found.Span, reader.PathOf(key), found.Text, wanted, hint));

        void Excludes(object? one, string first, object? other, string second)
        {
            if (one is not null && other is not null)
                reader.Report(SpecDiagnostics.ExclusiveKeys(reader.KeySpan(second), reader.ObjectPath, first, second));
        }
    }

    private static Stated<string>? Thread(MapReader reader, string key, bool required = false)
    {
        if (reader.Text(key, required) is not { } thread)
            return null;
        if (ThreadNames.Diameter(thread.Value) is not null)
            return thread;
        reader.Report(SpecDiagnostics.UnknownTerm(
            thread.Span, reader.PathOf(key), thread.Value, "a thread of ISO 261 or ASME B1.1", Nearest.To(thread.Value, ThreadNames.All),
            "Write `M8`, `M8x1` or `1/2-20 UNF`; there are M3 to M60 and #6 to 1-1/2 in."));
        return null;
    }

    private static Stated<string>? Term(MapReader reader, string key, string[] terms, string wanted)
    {
        if (reader.Text(key) is not { } term)
            return null;
        if (terms.Contains(term.Value, StringComparer.Ordinal))
            return term;
        reader.Report(SpecDiagnostics.UnknownTerm(
            term.Span, reader.PathOf(key), term.Value, wanted, Near(term.Value, terms), $"Write one of: {string.Join(", ", terms)}."));
        return null;
    }

    // A class is short; one digit that differs is a third of it or more.
    private static string? Near(string word, string[] terms) =>
        Nearest.To(word, terms) ?? terms.FirstOrDefault(term => term.Split(' ', '.')[0] == word.Split('.', ',')[0] && word.Length > 1);

    private static ClampedLayerSpec? Layer(MapReader reader, Catalogue? catalogue, bool ring)
    {
        var part = reader.Text("part");
        var material = reader.Name("material", required: true);
        var thickness = reader.Toleranced("thickness", Dimension.OfLength, AmountRange.Positive, required: true);
        var outside = reader.Amount("outside", Dimension.OfLength, AmountRange.Positive, ring);
        var inside = reader.Amount("inside", Dimension.OfLength, AmountRange.NotNegative, ring);
        var pressure = reader.Amount("limiting_pressure", Dimension.OfStress, AmountRange.Positive);
        reader.Finish();
        References.CheckMaterial(reader, "material", material, catalogue);
        if (outside is not null && inside is not null && inside.Value.Coherent >= outside.Value.Coherent)
            reader.Report(SpecDiagnostics.OutOfRange(inside.Span, reader.PathOf("inside"), inside.Text, $"less than the outside of {outside.Text}"));
        return material is null || thickness is null
            ? null
            : new() { Part = part, Material = material, Thickness = thickness, Outside = outside, Inside = inside, LimitingPressure = pressure };
    }

    private static TappedHoleSpec? Tapped(MapReader reader, Catalogue? catalogue)
    {
        var material = reader.Name("material", required: true);
        var tensile = reader.Amount("tensile", Dimension.OfStress, AmountRange.Positive);
        var depth = reader.Amount("depth", Dimension.OfLength, AmountRange.Positive);
        var relief = reader.Amount("relief", Dimension.OfLength, AmountRange.NotNegative);
        var boss = reader.Amount("boss", Dimension.OfLength, AmountRange.Positive);
        var insert = reader.Map("insert") is { } map ? Insert(map) : null;
        reader.Finish();
        References.CheckMaterial(reader, "material", material, catalogue);
        return material is null ? null : new() { Material = material, Tensile = tensile, Depth = depth, Relief = relief, Boss = boss, Insert = insert };
    }

    private static ThreadInsertSpec? Insert(MapReader reader)
    {
        var thread = Thread(reader, "thread", required: true);
        var length = reader.Amount("length", Dimension.OfLength, AmountRange.Positive, required: true);
        reader.Finish();
        return thread is null || length is null ? null : new() { Thread = thread, Length = length };
    }

    private static NutSpec Nut(MapReader reader)
    {
        var strength = Term(reader, "strength", NutStrengths, "a property class of nuts");
        var style = reader.Word("style", NutStyles);
        var tensile = reader.Amount("tensile", Dimension.OfStress, AmountRange.Positive);
        var height = reader.Amount("height", Dimension.OfLength, AmountRange.Positive);
        var across = reader.Amount("across", Dimension.OfLength, AmountRange.Positive);
        reader.Finish();
        return new() { Strength = strength, Style = style, Tensile = tensile, Height = height, Across = across };
    }

    private static ClampingShaftSpec? Shaft(MapReader reader, Catalogue? catalogue)
    {
        var material = reader.Name("material", required: true);
        var diameter = reader.Amount("diameter", Dimension.OfLength, AmountRange.Positive, required: true);
        var bore = reader.Amount("bore", Dimension.OfLength, AmountRange.NotNegative);
        var cross = reader.Amount("cross_hole", Dimension.OfLength, AmountRange.NotNegative);
        var seat = reader.Toleranced("seat", Dimension.OfLength, AmountRange.Positive);
        reader.Finish();
        References.CheckMaterial(reader, "material", material, catalogue);
        if (bore is not null && diameter is not null && bore.Value.Coherent >= diameter.Value.Coherent)
            reader.Report(SpecDiagnostics.OutOfRange(bore.Span, reader.PathOf("bore"), bore.Text, $"less than the diameter of {diameter.Text}"));
        return material is null || diameter is null
            ? null
            : new() { Material = material, Diameter = diameter, Bore = bore, CrossHole = cross, Seat = seat };
    }

    private static JointFrictionSpec Friction(MapReader reader)
    {
        var @class = reader.Word("class", FrictionClasses);
        var least = reader.Number("least", Limits.LeastFriction, Limits.GreatestFriction);
        var greatest = reader.Number("greatest", Limits.LeastFriction, Limits.GreatestFriction);
        reader.Finish();
        if (@class is not null && (least is not null || greatest is not null))
            reader.Report(SpecDiagnostics.ExclusiveKeys(reader.KeySpan(least is not null ? "least" : "greatest"), reader.ObjectPath, "class", least is not null ? "least" : "greatest"));
        if (least is not null && greatest is not null && least.Value > greatest.Value)
            reader.Report(SpecDiagnostics.OutOfRange(least.Span, reader.PathOf("least"), least.Text, $"no more than the greatest of {greatest.Text}"));
        return new() { Class = @class, Least = least, Greatest = greatest };
    }

    private static TighteningSpec Tightening(MapReader reader)
    {
        var torque = reader.Amount("torque", Dimension.OfTorque, AmountRange.Positive);
        var method = reader.Word("method", Methods);
        var preload = reader.Amount("preload", Dimension.OfForce, AmountRange.Positive);
        var error = reader.Amount("wrench_error", Dimension.Ratio, AmountRange.NotNegative);
        var prevailing = reader.Amount("prevailing", Dimension.OfTorque, AmountRange.NotNegative);
        var order = reader.Word("order", Orders);
        var steps = reader.Amounts("steps", Dimension.Ratio, AmountRange.Positive);
        reader.Finish();
        if (error is not null && error.Value.Coherent >= 1)
            reader.Report(SpecDiagnostics.OutOfRange(error.Span, reader.PathOf("wrench_error"), error.Text, "less than 100 %"));
        if (torque is not null && prevailing is not null && prevailing.Value.Coherent >= torque.Value.Coherent)
            reader.Report(SpecDiagnostics.OutOfRange(prevailing.Span, reader.PathOf("prevailing"), prevailing.Text, $"less than the torque of {torque.Text}"));
        for (var i = 1; i < steps.Length; i++)
        {
            if (steps[i].Value.Coherent < steps[i - 1].Value.Coherent)
                reader.Report(SpecDiagnostics.OutOfRange(steps[i].Span, $"{reader.PathOf("steps")}[{i}]", steps[i].Text, $"at least the step before it, {steps[i - 1].Text}"));
        }

        if (!steps.IsEmpty && Math.Abs(steps[^1].Value.Coherent - 1) > 1e-9)
            reader.Report(SpecDiagnostics.OutOfRange(steps[^1].Span, $"{reader.PathOf("steps")}[{steps.Length - 1}]", steps[^1].Text, "100 % at last", "The last step is the whole torque."));
        return new() { Torque = torque, Method = method, Preload = preload, WrenchError = error, Prevailing = prevailing, Order = order, Steps = steps };
    }
}
