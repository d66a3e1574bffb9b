using System.Xml.Linq;
using Pawl.Mechanics;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Drawing;

/// <summary>The train seen along its axis, to scale, teeth in mesh: one view for each plane in which gears mesh.</summary>
internal sealed class TrainView
{
    private const double Width = 720, Middle = 250, Reach = 226, TextLeft = 512;

    private readonly Parts _parts;
    private readonly TrainScene _scene;
    private readonly ImmutableArray<MeshPart> _meshes;
    private readonly ImmutableArray<GearPart> _gears;
    private readonly double _scale;
    private readonly double _middleY = Reach + 14;
    private readonly double _right;
    private readonly string _id;
    private readonly ImmutableArray<XElement>.Builder _content = ImmutableArray.CreateBuilder<XElement>();
    private readonly List<(double X, double Y, string[] Lines, string Css)> _labels = [];
    private readonly List<string> _said = [];

    private TrainView(Parts parts, TrainScene scene, ImmutableArray<MeshPart> meshes, string id)
    {
        (_parts, _scene, _meshes, _id) = (parts, scene, meshes, id);
        var place = Average(meshes);
        _gears = [.. scene.Gears.Select(static g => g.Gear).Distinct()
            .Where(gear => meshes.Any(m => m.First == gear || m.Second == gear) || (place is not null && gear.At is not null && gear.Covers(place)))
            .OrderByDescending(static gear => gear.IsInternal)];
        var placed = Placed.ToArray();
        var (left, right) = (placed.Min(static g => g.X - g.Gear.Outside), placed.Max(static g => g.X + g.Gear.Outside));
        var high = placed.Max(static g => Math.Abs(g.Y) + g.Gear.Outside);
        var reach = Math.Max(high, Math.Max(Math.Abs(left), right));
        _scale = Reach / reach;
        _right = right * _scale;
    }

    public static IEnumerable<Figure> Of(ConformanceRecord record)
    {
        var parts = Parts.Of(record);
        var views = new List<Figure>();
        try
        {
            var scene = TrainScene.Of(parts);
            var planes = Planes(parts, scene);
            for (var k = 0; k < planes.Count; k++)
                views.Add(new TrainView(parts, scene, planes[k], $"train-along-axis{(planes.Count > 1 ? "-" + Phrase.Whole(k + 1) : "")}").Draw(k, planes.Count));
        }
        catch (OutsideValidityException)
        {
            // What has no geometry has no figure.
            views.Clear();
        }

        return views;
    }

    private IEnumerable<PlacedGear> Placed => _scene.Gears.Where(g => _gears.Contains(g.Gear));

    private static double? Average(ImmutableArray<MeshPart> meshes) => meshes.Select(static m => m.Place).Average();

    /// <summary>Meshes that lie in one plane across the axis, from the input's side on; those without a place join the plane of a gear of theirs.</summary>
    private static List<ImmutableArray<MeshPart>> Planes(Parts parts, TrainScene scene)
    {
        List<List<MeshPart>> planes = [];
        foreach (var mesh in parts.Meshes.OrderBy(static m => m.Place ?? double.MaxValue))
        {
            if (!scene.Meshes.Any(placed => placed.Mesh == mesh))
                continue;
            var plane = planes.Find(plane => plane.TrueForAll(other => InOnePlane(mesh, other)) && (mesh.Place is not null || plane.Exists(other => Share(mesh, other))));
            if (plane is null)
                planes.Add([mesh]);
            else
                plane.Add(mesh);
        }

        return [.. planes.Select(static plane => plane.ToImmutableArray())];
    }

    private static bool InOnePlane(MeshPart one, MeshPart other)
    {
        if (one.Place is not { } here || other.Place is not { } there)
            return !SharePlanet(one, other);
        return one.First.Covers(there) && one.Second.Covers(there) && other.First.Covers(here) && other.Second.Covers(here);
    }

    private static bool Share(MeshPart one, MeshPart other) => one.First == other.First || one.First == other.Second || one.Second == other.First || one.Second == other.Second;

    /// <summary>Two gears side by side on one planet cannot lie in one plane.</summary>
    private static bool SharePlanet(MeshPart one, MeshPart other) =>
        new[] { one.First, one.Second }.Any(a => new[] { other.First, other.Second }.Any(b => a != b && a.OnPlanet && a.Body == b.Body));

    private Figure Draw(int plane, int planes)
    {
        DrawBodies();
        DrawCircles();
        DrawClearances();
        DrawMisfits();
        DrawBroken();
        foreach (var gear in _gears)
            LabelGear(gear);
        var bottom = DrawLabels();
        var where = Average(_meshes) is { } place && planes > 1 ? $" at {Number(place)} mm" : "";
        var number = planes > 1 ? $", plane {Phrase.Whole(plane + 1)} of {Phrase.Whole(planes)}{where}" : "";
        return new()
        {
            Id = _id,
            Section = FigureSection.Train,
            Title = $"The train along its axis{number}: {string.Join(", ", _meshes.Select(static m => m.Name))}",
            Description = string.Join("; ", _said) + ". Teeth to scale at nominal dimensions, as cut with the middle of their thickness allowance; the turn of the first gear is chosen.",
            Width = Width,
            Height = Math.Max(_middleY + Reach + 14, bottom),
            Content = _content.DrainToImmutable(),
        };
    }

    private double X(double x) => Middle + (x * _scale);

    private double Y(double y) => _middleY - (y * _scale);

    private void DrawBodies()
    {
        for (var k = 0; k < _gears.Length; k++)
        {
            var gear = _gears[k];
            var id = $"{_id}.gear{Phrase.Whole(k + 1)}";
            var teeth = Svg.Relative(Outline(gear), closed: true);
            var (css, data) = gear.IsInternal
                ? ("metal", teeth + Svg.CircleData(0, 0, gear.Outside * _scale))
                : (gear.OnPlanet ? "solid" : "metal", teeth + Bore(gear));
            _content.Add(Svg.Definition(id, Svg.Path(data)));
            foreach (var placed in _scene.Gears.Where(g => g.Gear == gear))
                _content.Add(Svg.Moved(Svg.Use(css, id), X(placed.X), Y(placed.Y), Degrees(-(placed.Turn))));
            if (Parts.Text(_parts.Subject($"bodies.{gear.Body}"), "role") == "fixed" && gear.IsInternal)
                _content.Add(Ground(gear));
        }
    }

    private static double Degrees(double angle) => Math.Round(Math.IEEERemainder(angle, Math.Tau) * 180 / Math.PI, 2);

    /// <summary>The hole of a planet on its bearing, where the record states one.</summary>
    private string Bore(GearPart gear)
    {
        var bore = _parts.BearingsIn(gear.Body).Where(static b => b.Outside is not null).Select(static b => b.Outside!.Value / 2).DefaultIfEmpty(0).Max();
        return bore > 0 && bore < gear.RootRadius * 0.95 ? Svg.CircleData(0, 0, bore * _scale) : "";
    }

    private IEnumerable<(double X, double Y)> Outline(GearPart gear)
    {
        var tooth = gear.Outline.Tooth(10).Select(p => (X: p.X * _scale, Y: p.Y * _scale)).ToArray();
        var thin = Svg.Thinned(tooth, 0.06);
        for (var k = 0; k < gear.Teeth; k++)
        {
            var (sine, cosine) = Math.SinCos(2 * gear.Outline.HalfPitch * k);
            foreach (var (x, y) in thin.AsSpan()[..^1].ToArray())
                yield return ((x * cosine) - (y * sine), -((x * sine) + (y * cosine)));
        }
    }

    /// <summary>The sign of what is held: short strokes about the outside.</summary>
    private XElement Ground(GearPart gear)
    {
        const int Strokes = 72;
        var radius = gear.Outside * _scale;
        return Svg.Path("hatch", string.Concat(Enumerable.Range(0, Strokes).Select(k =>
        {
            var angle = Math.Tau * k / Strokes;
            var (x, y) = (Middle + (radius * Math.Cos(angle)), _middleY - (radius * Math.Sin(angle)));
            return $"M{Svg.Number(x)} {Svg.Number(y)}L{Svg.Number(x + (7 * Math.Cos(angle + 0.6)))} {Svg.Number(y - (7 * Math.Sin(angle + 0.6)))}";
        })));
    }

    private void DrawCircles()
    {
        foreach (var orbit in _gears.Where(static g => g.OnPlanet).Select(g => _scene.Orbit(g.Body)).OfType<double>().Distinct())
            _content.Add(Svg.Circle("centre", Middle, _middleY, orbit * _scale));
        const double Cross = 5;
        foreach (var (x, y) in Placed.Select(static g => (g.X, g.Y)).Distinct())
        {
            _content.Add(Svg.Path(
                "thin", $"M{Svg.Number(X(x) - Cross)} {Svg.Number(Y(y))}h{Svg.Number(2 * Cross)}M{Svg.Number(X(x))} {Svg.Number(Y(y) - Cross)}v{Svg.Number(2 * Cross)}"));
        }

        foreach (var mesh in _scene.Meshes.Where(m => _meshes.Contains(m.Mesh)).OrderBy(static m => m.Mesh.IsInternal))
        {
            if (mesh.First.Copy > 0 || mesh.Second.Copy > 0)
                continue;
            foreach (var gear in new[] { mesh.First, mesh.Second })
                _content.Add(Svg.Circle("centre", X(gear.X), Y(gear.Y), mesh.Mesh.PitchRadius(gear.Gear) * _scale));
        }

        foreach (var gear in Placed.Where(static g => g.Copy == 0))
            _content.Add(Svg.Circle("thin", X(gear.X), Y(gear.Y), gear.Gear.TipRadius * _scale));
    }

    /// <summary>The least gap between tips of planets that do not mesh, where it is the one that the record states.</summary>
    private void DrawClearances()
    {
        foreach (var set in _parts.Planets)
        {
            if (Parts.Value(set.Subject, "neighbour_clearance") is not { Nominal: { } clearance } value)
                continue;
            var planets = Placed.Where(g => set.Bodies.Contains(g.Gear.Body)).ToArray();
            var pairs = planets.SelectMany((one, k) => planets.Skip(k + 1).Select(other => (One: one, Other: other)))
                .Where(pair => pair.One.Copy != pair.Other.Copy || (pair.One.Gear.Body != pair.Other.Gear.Body && !_parts.Meshes.Any(m => (m.First == pair.One.Gear && m.Second == pair.Other.Gear) || (m.Second == pair.One.Gear && m.First == pair.Other.Gear))))
                .Where(pair => Math.Abs(Gap(pair.One, pair.Other) - clearance) < 1e-3 * Math.Max(1, Math.Abs(clearance)))
                .OrderBy(pair => pair.One.X + pair.Other.X).ToArray();
            if (pairs.Length == 0)
                continue;
            var (a, b) = pairs[0];
            var broken = _parts.Broken(set.Subject, "neighbour_clearance");
            var angle = Math.Atan2(b.Y - a.Y, b.X - a.X);
            var from = (X: a.X + (a.Gear.TipRadius * Math.Cos(angle)), Y: a.Y + (a.Gear.TipRadius * Math.Sin(angle)));
            var to = (X: b.X - (b.Gear.TipRadius * Math.Cos(angle)), Y: b.Y - (b.Gear.TipRadius * Math.Sin(angle)));
            _content.Add(Svg.Line(broken is null ? "accent" : "fails", X(from.X), Y(from.Y), X(to.X), Y(to.Y)));
            foreach (var (x, y) in new[] { from, to })
                _content.Add(Svg.Line("thin", X(x) - (6 * Math.Sin(angle)), Y(y) - (6 * Math.Cos(angle)), X(x) + (6 * Math.Sin(angle)), Y(y) + (6 * Math.Cos(angle))));
            var (mx, my) = (X((from.X + to.X) / 2), Y((from.Y + to.Y) / 2));
            if (broken is not null)
                _content.Add(Svg.Cross(mx, my));
            Label(mx, my, broken, $"planet clearance {Figures.Nominal(value)}", Figures.Limits(value));
        }
    }

    private static double Gap(PlacedGear one, PlacedGear other) =>
        Math.Sqrt(Math.Pow(one.X - other.X, 2) + Math.Pow(one.Y - other.Y, 2)) - one.Gear.TipRadius - other.Gear.TipRadius;

    private void DrawMisfits()
    {
        var worst = _scene.Meshes.Where(m => _meshes.Contains(m.Mesh) && Math.Abs(m.Misfit) > 0.01).ToArray();
        foreach (var mesh in worst)
        {
            var (x, y) = PitchPoint(mesh);
            _content.Add(Svg.Cross(X(x), Y(y), 9));
        }

        if (worst.Length > 0)
        {
            var (x, y) = PitchPoint(worst[0]);
            _labels.Add((X(x), Y(y), ["✕ planets do not go in: teeth", $"{Number(worst.Max(static m => Math.Abs(m.Misfit)) * 100)} % of a pitch off"], "fails"));
            _said.Add($"planets that do not go in stand up to {Number(worst.Max(static m => Math.Abs(m.Misfit)) * 100)} % of a pitch beside the gaps");
        }
    }

    private static (double X, double Y) PitchPoint(PlacedMesh mesh)
    {
        var outer = mesh.First.Gear.IsInternal ? mesh.Second : mesh.First;
        var other = outer == mesh.First ? mesh.Second : mesh.First;
        var angle = Math.Atan2(outer.Y - other.Y, outer.X - other.X) + (mesh.Mesh.IsInternal ? 0 : Math.PI);
        var radius = mesh.Mesh.PitchRadius(outer.Gear);
        return (outer.X + (radius * Math.Cos(angle)), outer.Y + (radius * Math.Sin(angle)));
    }

    /// <summary>What is broken in this plane: tips in roots, tips that clash, undercut, gears that are passed too closely.</summary>
    private void DrawBroken()
    {
        foreach (var mesh in _meshes)
        {
            if (_scene.Meshes.FirstOrDefault(m => m.Mesh == mesh) is not { } placed)
                continue;
            var (x, y) = PitchPoint(placed);
            (FindingRecord Finding, string Text)[] broken = [.. MeshCloseUp.Interferences(_parts, mesh)
                .Select(each => (Finding: _parts.Broken(each.Subject, each.Quantity), each.Text)).Where(static each => each.Finding is not null)
                .Select(static each => (each.Finding!, each.Text))];
            if (broken.Length == 0)
                continue;
            _content.Add(Svg.Cross(X(x), Y(y)));
            var more = broken.Length > 1 ? $", and {Phrase.Whole(broken.Length - 1)} more" : "";
            Label(X(x), Y(y), broken[0].Finding, $"{mesh.Name}: {broken[0].Text}{more}");
        }

        foreach (var passing in _parts.Passings)
        {
            var (pinion, passed) = (_gears.FirstOrDefault(g => g.Subject.Path == Parts.Related(passing, "pinion")), _gears.FirstOrDefault(g => g.Subject.Path == Parts.Related(passing, "passed")));
            if (pinion is null || passed is null || Parts.Value(passing, "passing_clearance") is not { Nominal: not null } value
                || Placed.FirstOrDefault(g => g.Gear == pinion) is not { } placed)
                continue;
            var broken = _parts.Broken(passing, "passing_clearance");
            var angle = Math.Atan2(placed.Y, placed.X) + (passed.IsInternal ? 0 : Math.PI);
            var (x, y) = (X(placed.X + (pinion.TipRadius * Math.Cos(angle))), Y(placed.Y + (pinion.TipRadius * Math.Sin(angle))));
            if (broken is not null)
                _content.Add(Svg.Cross(x, y));
            Label(x, y, broken, $"{pinion.Name} passes {passed.Name} at {Figures.Nominal(value)}", Figures.Limits(value));
        }
    }

    private void LabelGear(GearPart gear)
    {
        var copies = Placed.Where(g => g.Gear == gear).ToArray();
        if (copies.Length == 0)
            return;
        var (central, placed) = (!gear.OnPlanet, copies.OrderByDescending(static g => g.X + (1e-3 * g.Y)).First());
        var angle = gear.IsInternal ? 0.85 : central ? 0.5 : 0.2;
        var radius = gear.IsInternal ? gear.Outside - (0.3 * (gear.Outside - gear.RootRadius)) : gear.RootRadius * 0.82;
        var lines = new[]
        {
            $"{gear.Name}: z = {Phrase.Whole(gear.Teeth)}{(gear.IsInternal ? " internal" : "")}{(copies.Length > 1 ? $", {Phrase.Whole(copies.Length)} planets" : "")}",
            $"m {Number(gear.Module)}, tip ø {Number(2 * gear.TipRadius)}{Shift(gear)}",
        };
        var undercut = _parts.Broken(gear.Subject, "undercut_margin");
        var pointed = _parts.Broken(gear.Subject, "tip_thickness") ?? _parts.Broken(gear.Subject, "tip_thickness_factor");
        _said.Add($"{gear.Name} with {Phrase.Whole(gear.Teeth)} teeth, module {Number(gear.Module)} mm, tip diameter {Number(2 * gear.TipRadius)} mm, on {gear.Body}"
            + (copies.Length > 1 ? $", {Phrase.Whole(copies.Length)} times on a circle of radius {Number(_scene.Orbit(gear.Body) ?? 0)} mm" : ""));
        _labels.Add((X(placed.X + (radius * Math.Cos(angle))), Y(placed.Y + (radius * Math.Sin(angle))), lines, ""));
        var (tx, ty) = (X(placed.X + (gear.TipRadius * Math.Cos(-0.4))), Y(placed.Y + (gear.TipRadius * Math.Sin(-0.4))));
        if (undercut is not null)
        {
            _content.Add(Svg.Cross(tx, ty));
            Label(tx, ty, undercut, $"{gear.Name}: undercut");
        }

        if (pointed is not null)
        {
            _content.Add(Svg.Cross(tx, ty));
            Label(tx, ty, pointed, $"{gear.Name}: tip too thin");
        }
    }

    private static string Shift(GearPart gear) => Parts.Number(gear.Subject, "profile_shift") is { } x ? $", x {Number(x)}" : "";

    private void Label(double x, double y, FindingRecord? broken, string text, string limits = "")
    {
        var whole = limits.Length > 0 ? $"{text} ({limits})" : text;
        _said.Add(broken is null ? whole : $"{whole}, {Labels.Of(broken.Outcome)} by {broken.Rule}");
        var css = broken is null ? "" : broken.Outcome == OutcomeWord.Fails ? "fails" : "conceded";
        _labels.Add((x, y, Wrapped((broken is null ? "" : "✕ ") + text), css));
    }

    private static string[] Wrapped(string text)
    {
        const int Most = 29;
        if (text.Length <= Most || text.LastIndexOf(' ', Most) is not (> 0 and var at))
            return [text];
        return [text[..at], .. Wrapped(text[(at + 1)..])];
    }

    /// <summary>Texts in a column at the right, each with a line to what it names, in the order of height so that no lines cross needlessly.</summary>
    private double DrawLabels()
    {
        const double LineHeight = 14, Between = 9, Most = 24;
        var y = 20.0;
        foreach (var (px, py, lines, css) in _labels.OrderBy(static l => l.Y).Take((int)Most))
        {
            var height = LineHeight * lines.Length;
            y = Math.Max(y, Math.Min(py - (height / 2) + 10, _middleY + Reach - height));
            for (var k = 0; k < lines.Length; k++)
                _content.Add(Svg.Text(css.Length > 0 ? css : k > 0 ? "soft" : "", TextLeft, y + (LineHeight * k), Cut(lines[k])));
            _content.Add(Svg.Path("thin", [(TextLeft - 4, y - 4), (TextLeft - 14, y - 4), (px, py)]));
            _content.Add(Svg.Circle("dot", px, py, 1.8));
            y += height + Between;
        }

        return y + 6;
    }

    private static string Cut(string text) => text.Length <= 34 ? text : text[..33] + "…";

    private static string Number(double value) => Figures.Of(new ValueRecord { Nominal = value });
}
