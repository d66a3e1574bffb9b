using System.Xml.Linq;
using Pawl.Mechanics;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Drawing;

/// <summary>The train in half-section as lines: shafts, gears at their radii and places, bearings, what is held, input and output.</summary>
/// <remarks>
/// Laid out from the graph alone: central bodies on the axis in lanes, planets at their radius, their second set below the axis. Where
/// places along the axis are not stated, planes of meshes stand side by side in the order of the record.
/// </remarks>
internal sealed class TrainSchematic
{
    private const double Width = 720, Left = 78, Right = 78, MostHigh = 230, Lane = 7, Gap = 6;

    private readonly Parts _parts;
    private readonly TrainScene _scene;
    private readonly Dictionary<GearPart, double> _at = [];
    private readonly Dictionary<string, double> _lanes = new(StringComparer.Ordinal);
    private readonly List<XElement> _content = [];
    private readonly List<XElement> _texts = [];
    private readonly List<string> _said = [];
    private readonly ImmutableArray<GearPart> _gears;
    private readonly ImmutableArray<BearingPart> _bearings;
    private readonly bool _areStated;
    private readonly double _from, _to, _scale, _axisY;
    private readonly bool _hasLower;

    private TrainSchematic(Parts parts)
    {
        (_parts, _scene) = (parts, TrainScene.Of(parts));
        _gears = [.. parts.Gears.Where(g => !g.OnPlanet || _scene.Orbit(g.Body) is not null)];
        _areStated = _gears.All(static g => g.At is not null);
        Place();
        _bearings = _areStated ? [.. parts.Bearings.Where(static b => b.At is not null)] : [];
        var places = _gears.SelectMany(g => new[] { _at[g] - Half(g), _at[g] + Half(g) }).Concat(_bearings.Select(static b => b.At!.Value)).ToArray();
        (_from, _to) = (places.Min(), places.Max());
        var length = Math.Max(1, _to - _from);
        (_from, _to) = (_from - (0.09 * length), _to + (0.09 * length));
        _hasLower = _gears.Any(IsLower);
        var high = _gears.Max(g => (_scene.Orbit(g.Body) ?? 0) + (g.IsInternal ? g.Outside : Radius(g, null)));
        _scale = Math.Min((Width - Left - Right) / (_to - _from), MostHigh / high);
        _axisY = (high * _scale) + 46;
    }

    public static IEnumerable<Figure> Of(ConformanceRecord record)
    {
        var parts = Parts.Of(record);
        Figure? figure = null;
        try
        {
            // A gear that cannot be drawn would leave a train that is none.
            if (parts.Meshes.Length > 0 && parts.Gears.Length == parts.AllGears)
                figure = new TrainSchematic(parts).Draw();
        }
        catch (OutsideValidityException)
        {
            // What has no geometry has no figure.
        }

        return figure is null ? [] : [figure];
    }

    private static double Half(GearPart gear) => (gear.FaceWidth ?? (8 * gear.Module)) / 2;

    /// <summary>Places of the gears: as stated, or side by side by planes.</summary>
    private void Place()
    {
        foreach (var gear in _gears.Where(_ => _areStated))
            _at[gear] = gear.At!.Value;
        if (_areStated)
            return;
        var step = 2.6 * _gears.Max(Half);
        List<List<GearPart>> planes = [];
        foreach (var mesh in _parts.Meshes)
        {
            var plane = planes.Find(p => p.Contains(mesh.First) || p.Contains(mesh.Second));
            if (plane is null)
                planes.Add(plane = []);
            plane.AddRange(new[] { mesh.First, mesh.Second }.Where(g => !plane.Contains(g)));
        }

        for (var k = 0; k < planes.Count; k++)
        {
            foreach (var gear in planes[k])
                _at.TryAdd(gear, step * k);
        }

        foreach (var gear in _gears)
            _at.TryAdd(gear, step * planes.Count);
    }

    private bool IsLower(GearPart gear) => _parts.Planets.Any(set => set.Bodies.IndexOf(gear.Body) > 0);

    private double Radius(GearPart gear, MeshPart? mesh) =>
        (mesh ?? _parts.Meshes.FirstOrDefault(m => m.First == gear || m.Second == gear))?.PitchRadius(gear) ?? (Math.Abs(gear.Outline.ReferenceDiameter) / 2);

    private double X(double at) => Left + ((Width - Left - Right - ((_to - _from) * _scale)) / 2) + ((at - _from) * _scale);

    private double Y(double radius) => _axisY - (radius * _scale);

    private string Role(string body) => Parts.Text(_parts.Subject($"bodies.{body}"), "role") ?? "";

    private bool IsFixed(string body) => Role(body) == "fixed";

    private Figure Draw()
    {
        _content.Add(Svg.Line("centre", 12, _axisY, Width - 12, _axisY));
        var central = _parts.Bodies.Select(static b => Parts.NameOf(b.Path)).Where(b => _scene.Orbit(b) is null).ToArray();
        foreach (var body in _parts.Bodies.Select(static b => Parts.NameOf(b.Path)).Where(b => _scene.Orbit(b) is not null))
            Planet(body);
        foreach (var body in central.OrderByDescending(b => Role(b) == "input").ThenBy(b => Role(b) == "output"))
        {
            if (IsFixed(body))
                Held(body);
            else
                Shaft(body);
        }

        foreach (var mesh in _parts.Meshes.Where(m => m.First.OnPlanet && m.Second.OnPlanet))
            Joined(mesh);
        var bottom = _hasLower ? (2 * _axisY) - 20 : _axisY + 44;
        var places = _areStated ? "" : "; places along the axis are not all stated, so planes stand in the order of the meshes";
        return new()
        {
            Id = "train-half-section",
            Section = FigureSection.Train,
            Title = "The train in half-section, as lines",
            Description = $"{string.Join("; ", _said)}{places}.",
            Width = Width,
            Height = bottom,
            Content = [.. _content, .. _texts],
        };
    }

    private void Line(string css, double x1, double y1, double x2, double y2) => _content.Add(Svg.Line(css, x1, y1, x2, y2));

    /// <summary>A gear: its face as a bar at its pitch radius and its web down to where it is held.</summary>
    private void Gear(GearPart gear, double y, double hub)
    {
        var (x, half) = (X(_at[gear]), Half(gear) * _scale);
        Line("body", x - half, y, x + half, y);
        Line("body", x, y, x, hub);
    }

    private void Label(double x, double y, string text, string css = "halo soft") => _texts.Add(Svg.Text(css, x, y, text));

    private void Planet(string body)
    {
        var orbit = _scene.Orbit(body)!.Value;
        var gears = _gears.Where(g => g.Body == body).ToArray();
        if (gears.Length == 0)
            return;
        var down = IsLower(gears[0]) ? -1 : 1;
        var axis = _axisY - (down * orbit * _scale);
        var (left, right) = (gears.Min(g => X(_at[g]) - (Half(g) * _scale)), gears.Max(g => X(_at[g]) + (Half(g) * _scale)));
        foreach (var side in new[] { -1, 1 })
            Line("body", left, axis + (side * Gap), right, axis + (side * Gap));
        foreach (var gear in gears)
        {
            var inner = _parts.Meshes.FirstOrDefault(m => (m.First == gear || m.Second == gear) && m.MateOf(gear) is { OnPlanet: false, IsInternal: false });
            var outer = _parts.Meshes.FirstOrDefault(m => (m.First == gear || m.Second == gear) && m.MateOf(gear).IsInternal);
            Gear(gear, axis + (down * ((Radius(gear, inner) * _scale) - 1.5)), axis + (down * Gap));
            Gear(gear, axis - (down * ((Radius(gear, outer) * _scale) - 1.5)), axis - (down * Gap));
            Label(X(_at[gear]) + 5, axis - (down * ((Radius(gear, outer) * _scale) - 14)) + (down > 0 ? 4 : -2), $"{gear.Name} {Phrase.Whole(gear.Teeth)}");
        }

        foreach (var bearing in _bearings.Where(b => b.Housing == body))
        {
            var x = X(bearing.At!.Value);
            var half = Math.Clamp((bearing.Width ?? 8) * _scale / 2, 3, 9);
            foreach (var side in new[] { -1, 1 })
                _content.Add(Svg.Rectangle("solid", x - half, axis + (side > 0 ? 1.5 : -Gap + 0.5), 2 * half, Gap - 2));
        }

        _said.Add($"planet {body} ({Phrase.Whole(_scene.Copies(body))} of them) at radius {Number(orbit)} mm with {string.Join(" and ", gears.Select(g => $"{g.Name} of {Phrase.Whole(g.Teeth)} teeth"))}");
    }

    /// <summary>A body that turns about the axis.</summary>
    private void Shaft(string body)
    {
        var gears = _gears.Where(g => g.Body == body).ToArray();
        var pins = _parts.Planets.Where(set => set.Carrier == body).SelectMany(static set => set.Bodies).Where(b => _scene.Orbit(b) is not null && _gears.Any(g => g.Body == b)).ToArray();
        var bearings = _bearings.Where(b => b.Shaft == body && _scene.Orbit(b.Housing) is null).ToArray();
        var role = Role(body);
        var middle = (X(_from) + X(_to)) / 2;
        List<double> on = [.. bearings.Select(b => X(b.At!.Value)), .. gears.Where(static g => !g.IsInternal).Select(g => X(_at[g]))];

        // Its outer end: where its bearings stand, the input else at the left and the output at the right.
        var atRight = bearings.Length > 0 && gears.Length + pins.Length > 0
            ? bearings.Average(b => X(b.At!.Value)) > gears.Select(g => X(_at[g])).Concat(pins.Select(p => Reach(p).Right)).Average()
            : role != "input";
        var end = atRight ? Math.Max(X(_to) + 8, on.DefaultIfEmpty(middle).Max()) : Math.Min(X(_from) - 8, on.DefaultIfEmpty(middle).Min());
        if (role is "input" or "output")
            on.Add(end);

        // A plate goes up to the pins of planets, or over to a ring, on the side of that end.
        List<(double X, double Y)> plates = [];
        foreach (var pin in pins)
        {
            var (left, right) = Reach(pin);
            var x = atRight ? right + 9 : left - 9;
            var orbit = _scene.Orbit(pin)!.Value * _scale;
            var y = _axisY - (_gears.Where(g => g.Body == pin).Any(IsLower) ? -orbit : orbit);
            Line("body", atRight ? left : x, y, atRight ? x : right, y);
            plates.Add((x, y));
        }

        foreach (var ring in gears.Where(static g => g.IsInternal))
        {
            var (y, x) = (Y(Radius(ring, null)) - 1.5, X(_at[ring]));
            var top = Y(ring.Outside) - 4;
            Gear(ring, y, top);
            RingLabel(ring, top);
            var far = atRight ? x + (Half(ring) * _scale) + 14 : x - (Half(ring) * _scale) - 14;
            Line("body", x, top, far, top);
            plates.Add((far, top));
        }

        var plate = plates.Count == 0 ? 0 : atRight ? plates.Max(static p => p.X) : plates.Min(static p => p.X);
        if (plates.Count > 0)
            on.Add(plate);
        if (on.Count == 0)
            return;
        var lane = LaneFor(body, on.Min(), on.Max());
        foreach (var (x, y) in plates)
        {
            Line("body", x, y, plate, y);
            Line("body", plate, y, plate, lane);
        }

        Line("body", on.Min(), lane, on.Max(), lane);
        foreach (var gear in gears.Where(static g => !g.IsInternal))
            Central(gear, lane);
        foreach (var bearing in bearings)
            Bearing(bearing, lane);
        Name(body, role, end, on, lane, atRight);
        _said.Add($"{body}{(role.Length > 0 ? $", {role}," : "")}{(pins.Length > 0 ? $" carries {string.Join(" and ", pins)}" : "")}{(gears.Length > 0 ? $" with {string.Join(" and ", gears.Select(static g => $"{g.Name} of {Phrase.Whole(g.Teeth)} teeth"))}" : "")}{(bearings.Length > 0 ? $" on {string.Join(", ", bearings.Select(static b => b.Name))}" : "")}");
    }

    /// <summary>An external gear on the axis, above it, and below it where it meshes there.</summary>
    private void Central(GearPart gear, double hub)
    {
        var meshes = _parts.Meshes.Where(m => m.First == gear || m.Second == gear).ToArray();
        if (!_hasLower || meshes.Length == 0 || meshes.Any(m => !IsLower(m.MateOf(gear))))
            Gear(gear, Y(Radius(gear, null)) + 1.5, hub);
        if (meshes.Any(m => IsLower(m.MateOf(gear))))
            Gear(gear, Y(-Radius(gear, null)) - 1.5, hub);
        var up = meshes.Length == 0 || meshes.Any(m => !IsLower(m.MateOf(gear)));
        Label(X(_at[gear]) + 5, up ? Y(Radius(gear, null)) + 16 : Y(-Radius(gear, null)) - 8, $"{gear.Name} {Phrase.Whole(gear.Teeth)}");
    }

    /// <summary>Lanes on the axis: bodies that run inside one another do not lie on each other.</summary>
    private double LaneFor(string body, double from, double to)
    {
        var lane = _axisY;
        while (_taken.Exists(t => Math.Abs(t.Lane - lane) < 1 && t.From < to + 4 && from < t.To + 4))
            lane -= Lane;
        _taken.Add((lane, from, to));
        _lanes[body] = lane;
        return lane;
    }

    private readonly List<(double Lane, double From, double To)> _taken = [];

    private (double Left, double Right) Reach(string planet)
    {
        var gears = _gears.Where(g => g.Body == planet).ToArray();
        return (gears.Min(g => X(_at[g]) - (Half(g) * _scale)), gears.Max(g => X(_at[g]) + (Half(g) * _scale)));
    }

    private void Held(string body)
    {
        foreach (var gear in _gears.Where(g => g.Body == body))
        {
            if (gear.IsInternal)
            {
                var top = Y(gear.Outside) - 4;
                Gear(gear, Y(Radius(gear, null)) - 1.5, top);
                Ground(X(_at[gear]), top, up: true);
                RingLabel(gear, top);
            }
            else
            {
                var hub = _axisY - (IsLowerOnly(gear) ? -16 : 16);
                Central(gear, hub);
                Ground(X(_at[gear]), hub, up: IsLowerOnly(gear));
            }

            _said.Add($"{gear.Name} of {Phrase.Whole(gear.Teeth)} teeth is held on {body}");
        }
    }

    private bool IsLowerOnly(GearPart gear) => _parts.Meshes.Where(m => m.First == gear || m.Second == gear) is var meshes && meshes.Any() && meshes.All(m => IsLower(m.MateOf(gear)));

    private void RingLabel(GearPart ring, double top) => Label(X(_at[ring]) + 7, top + 14, $"{ring.Name} {Phrase.Whole(ring.Teeth)}");

    /// <summary>The sign of what is held: a line with short strokes behind it.</summary>
    private void Ground(double x, double y, bool up)
    {
        const double Wide = 13;
        Line("body", x - Wide, y, x + Wide, y);
        var data = string.Concat(Enumerable.Range(0, 5).Select(k =>
            $"M{Svg.Number(x - Wide + 3 + (6 * k))} {Svg.Number(y)}l{(up ? "5 -6" : "-5 6")}"));
        _content.Add(Svg.Path("hatch", data));
    }

    /// <summary>A rolling bearing: a crossed square on its shaft, the ground or a stroke to what holds it.</summary>
    private void Bearing(BearingPart bearing, double lane)
    {
        var x = X(bearing.At!.Value);
        const double Size = 11;
        foreach (var side in _hasLower ? [1] : new[] { 1 })
        {
            var top = lane - 2 - (side * Size);
            _content.Add(Svg.Rectangle("solid", x - (Size / 2), top, Size, Size));
            _content.Add(Svg.Path("thin", $"M{Svg.Number(x - (Size / 2))} {Svg.Number(top)}l{Svg.Number(Size)} {Svg.Number(Size)}m{Svg.Number(-Size)} 0l{Svg.Number(Size)} {Svg.Number(-Size)}"));
            if (IsFixed(bearing.Housing))
            {
                Ground(x, top, up: true);
            }
            else
            {
                Line("hidden", x, top, x, top - 10);
                Label(x + 4, top - 4, $"in {bearing.Housing}");
            }
        }
    }

    private void Name(string body, string role, double end, List<double> on, double lane, bool atRight)
    {
        var speed = Parts.Value(_parts.Subject($"bodies.{body}"), "speed") is { Nominal: not null } value ? Figures.Nominal(value) : "";
        if (role is "input" or "output")
        {
            var outwards = role == "output";
            var (inner, outer) = (end + (atRight ? 6 : -6), end + (atRight ? 44 : -44));
            _content.Add(outwards ? Svg.Arrow("accent", inner, lane, outer, lane, 9) : Svg.Arrow("accent", outer, lane, inner, lane, 9));
            _texts.Add(Svg.Text(atRight ? "end" : "", atRight ? Width - 6 : 6, lane + 19, $"{role}: {body}"));
            _texts.Add(Svg.Text(atRight ? "end soft" : "soft", atRight ? Width - 6 : 6, lane + 33, speed));
            _said.Add($"{role} {body} at the {(atRight ? "right" : "left")}{(speed.Length > 0 ? $", {speed}" : "")}");
        }
        else
        {
            Label((on.Min() + on.Max()) / 2, lane + 14, $"{body}{(speed.Length > 0 ? $", {speed}" : "")}", "middle halo soft");
        }
    }

    /// <summary>Planets that mesh with each other, of which one is drawn below the axis.</summary>
    private void Joined(MeshPart mesh)
    {
        (GearPart Gear, bool Lower)[] both = [(mesh.First, IsLower(mesh.First)), (mesh.Second, IsLower(mesh.Second))];
        if (both[0].Lower == both[1].Lower || mesh.Place is null)
            return;
        var x = X(mesh.Place.Value) + 16;
        var ends = both.Select(each => _axisY - ((each.Lower ? -1 : 1) * ((_scene.Orbit(each.Gear.Body)!.Value - Radius(each.Gear, null)) * _scale))).ToArray();
        Line("hidden", x, ends[0], x, ends[1]);
        Label(x + 5, _axisY + 15, "in mesh");
        _said.Add($"{mesh.First.Name} and {mesh.Second.Name} mesh with each other");
    }

    private static string Number(double value) => Figures.Of(new ValueRecord { Nominal = value });
}
