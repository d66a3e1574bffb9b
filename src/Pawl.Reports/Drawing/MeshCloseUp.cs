using System.Xml.Linq;
using Pawl.Mechanics;
using Pawl.Mechanics.Gears;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Drawing;

/// <summary>One mesh about its pitch point: teeth that touch there, the line of action with the path of contact, clearances.</summary>
internal sealed class MeshCloseUp
{
    private const double Width = 720, Top = 44, FrameHeight = 400, Bottom = 22;
    private const double ModulesHigh = 7.4;

    private readonly Parts _parts;
    private readonly MeshPart _mesh;
    private readonly GearPart _low, _high;
    private readonly double _scale, _lowRadius, _highRadius, _side;
    private readonly bool _lowDrives, _isDriverKnown;
    private readonly List<XElement> _content = [];
    private readonly List<string> _said = [];

    private MeshCloseUp(Parts parts, MeshPart mesh)
    {
        (_parts, _mesh) = (parts, mesh);
        (_low, _high) = mesh.First.IsInternal ? (mesh.Second, mesh.First) : (mesh.First, mesh.Second);
        (_lowRadius, _highRadius) = (mesh.PitchRadius(_low), mesh.PitchRadius(_high));
        var transverse = Math.Abs(_low.Outline.ReferenceDiameter) / _low.Teeth;
        _scale = FrameHeight / (ModulesHigh * Math.Max(transverse, _low.Module));
        var driver = Parts.Text(mesh.Subject, "driving_gear");
        _isDriverKnown = driver == _low.Name || driver == _high.Name;
        _lowDrives = driver != _high.Name;
        _side = (Turning() < 0 ? -1 : 1) * (_lowDrives ? 1 : -1);
    }

    public static IEnumerable<Figure> Of(ConformanceRecord record)
    {
        var parts = Parts.Of(record);
        foreach (var mesh in parts.Meshes)
        {
            Figure? figure = null;
            try
            {
                figure = new MeshCloseUp(parts, mesh).Draw();
            }
            catch (OutsideValidityException)
            {
                // What has no geometry has no figure.
            }

            if (figure is not null)
                yield return figure;
        }
    }

    /// <summary>Quantities of a mesh that say that teeth meet where they must not, with what is wrong.</summary>
    public static IEnumerable<(SubjectRecord? Subject, string Quantity, string Text)> Interferences(Parts parts, MeshPart mesh)
    {
        foreach (var gear in new[] { mesh.First, mesh.Second })
        {
            var own = parts.InMesh(mesh, gear);
            yield return (own, "tip_clearance", $"tip of {gear.Name} meets the root");
            yield return (own, "tip_clearance_factor", $"little room at the tip of {gear.Name}");
            yield return (own, "form_margin", $"contact reaches the fillet of {gear.Name}");
            yield return (own, "curvature_at_start", $"contact below the base circle of {gear.Name}");
        }

        yield return (mesh.Subject, "involute_clearance", "involute interference");
        yield return (mesh.Subject, "tip_interference_clearance", "tips clash as the teeth part");
        yield return (mesh.Subject, "trimming_clearance", "tips clash when the planet goes in along the radius");
        yield return (mesh.Subject, "operating_backlash", "play of the teeth");
        yield return (mesh.Subject, "transverse_contact_ratio", "contact ratio");
    }

    /// <summary>Speed of the lower gear seen from the carrier; 1 where it is not known.</summary>
    private double Turning()
    {
        var body = _parts.Subject($"bodies.{_low.Body}");
        if (_low.OnPlanet)
            return Parts.Number(body, "spin_ratio") ?? 1;
        var carrier = _parts.Planets.FirstOrDefault(set => set.Bodies.Contains(_high.Body))?.Carrier;
        return Parts.Number(body, "speed_ratio") is { } own ? own - (Parts.Number(_parts.Subject($"bodies.{carrier}"), "speed_ratio") ?? 0) : 1;
    }

    private Figure Draw()
    {
        var frame = new XElement(
            "svg", new XAttribute("x", "0"), new XAttribute("y", Svg.Number(Top)), new XAttribute("width", Svg.Number(Width)), new XAttribute("height", Svg.Number(FrameHeight)));
        var (low, high) = MeshPlace.Touching(_low.Outline, _high.Outline, _mesh.WorkingAngle, left: _side > 0);
        Gear(_high, "metal", HighAxis, high);
        Gear(_low, "solid", -_lowRadius, low);
        Circles();
        Path();
        foreach (var element in _content)
            frame.Add(element);
        _content.Clear();
        _content.Add(frame);
        _content.Add(Svg.Rectangle("faint", 0.5, Top, Width - 1, FrameHeight));
        var bottom = Words();
        return new()
        {
            Id = $"mesh-{Parts.NameOf(_mesh.Subject.Path)}",
            Section = FigureSection.Meshes,
            Title = $"Teeth of {_low.Name} and {_high.Name} touching at the pitch point",
            Description = string.Join("; ", _said) + ". Transverse section to scale at nominal dimensions, as cut with the middle of the thickness allowance.",
            Width = Width,
            Height = bottom,
            Content = [.. _content],
        };
    }

    private double HighAxis => _high.IsInternal ? -_highRadius : _highRadius;

    private double X(double x) => (Width / 2) + (x * _scale);

    private double Y(double y) => (FrameHeight / 2) - (y * _scale);

    private void Gear(GearPart gear, string css, double axis, double turn)
    {
        var reach = (Width / 2 / _scale) + (2 * gear.Module);
        var toPitch = gear.IsInternal || gear == _low ? Math.PI / 2 : -Math.PI / 2;
        var pitch = 2 * gear.Outline.HalfPitch;
        var first = (int)Math.Round((toPitch - turn) / pitch);
        var half = (int)Math.Min(gear.Teeth, Math.Ceiling(reach / gear.RootRadius / pitch) + 2);
        var whole = (2 * half) + 1 >= gear.Teeth;
        var (from, to) = whole ? (0, gear.Teeth - 1) : (first - half, first + half);
        var tooth = Svg.Thinned([.. gear.Outline.Tooth(24).Select(p => (p.X * _scale, p.Y * _scale))], 0.05);
        List<(double X, double Y)> points = [];
        for (var k = from; k <= to; k++)
        {
            var (sine, cosine) = Math.SinCos(turn + (pitch * k));
            foreach (var (x, y) in tooth)
                points.Add((X(0) + (x * cosine) - (y * sine), Y(axis) - ((x * sine) + (y * cosine))));
        }

        if (!whole)
        {
            if (gear.IsInternal)
            {
                for (var k = 0; k <= 24; k++)
                {
                    var angle = turn + (pitch * (to + 0.5 - ((to - from + 1) * k / 24.0)));
                    points.Add((X(gear.Outside * Math.Cos(angle)), Y(axis + (gear.Outside * Math.Sin(angle)))));
                }
            }
            else
            {
                points.Add((X(0), Y(axis)));
            }
        }

        var data = Svg.Relative(points, closed: true);
        if (whole && gear.IsInternal)
            data += Svg.CircleData(X(0), Y(axis), gear.Outside * _scale);
        _content.Add(Svg.Path($"{css} even", data));
    }

    private void Circles()
    {
        foreach (var (gear, axis, radius) in new[] { (_low, -_lowRadius, _lowRadius), (_high, HighAxis, _highRadius) })
        {
            Arc("centre", axis, radius);
            Arc("hidden", axis, Math.Abs(gear.Outline.BaseDiameter) / 2);
            Arc("thin", axis, gear.TipRadius);
            Arc("thin", axis, gear.RootRadius);
        }

        _content.Add(Svg.Line("centre", X(0), 0, X(0), FrameHeight));
    }

    /// <summary>The part of a circle that the frame shows.</summary>
    private void Arc(string css, double axis, double radius)
    {
        var half = Math.Min(Math.PI, Math.Asin(Math.Min(1, Width / 2 / _scale / radius)) + 0.02);
        if (radius < Width / 2 / _scale)
        {
            _content.Add(Svg.Circle(css, X(0), Y(axis), radius * _scale));
            return;
        }

        var middle = axis < 0 ? Math.PI / 2 : -Math.PI / 2;
        var (a, b) = (middle - half, middle + half);
        _content.Add(Svg.Path(
            css,
            $"M{Svg.Number(X(radius * Math.Cos(a)))} {Svg.Number(Y(axis + (radius * Math.Sin(a))))}"
            + $"A{Svg.Number(radius * _scale)} {Svg.Number(radius * _scale)} 0 0 0 {Svg.Number(X(radius * Math.Cos(b)))} {Svg.Number(Y(axis + (radius * Math.Sin(b))))}"));
    }

    /// <summary>Line of action, base tangent points, path of contact A to E.</summary>
    private void Path()
    {
        var sine = Math.Sin(_mesh.WorkingAngle);
        var normal = (X: -_side * Math.Cos(_mesh.WorkingAngle), Y: sine);
        (double X, double Y) On(double along) => (X(along * normal.X), Y(along * normal.Y));
        var tangentLow = -_lowRadius * sine;
        var tangentHigh = _high.IsInternal ? -_highRadius * sine : _highRadius * sine;
        var far = (Width + FrameHeight) / _scale;
        var (start, end) = (_high.IsInternal ? Math.Max(-far, Math.Min(tangentLow, tangentHigh)) : Math.Max(-far, tangentLow), _high.IsInternal ? far : Math.Min(far, tangentHigh));
        var ((x1, y1), (x2, y2)) = (On(start), On(end));
        _content.Add(Svg.Line("thin", x1, y1, x2, y2));

        // Where the tips leave the line of action; the tip of the driven gear begins the contact.
        var tipLow = tangentLow + Curvature(_low);
        var tipHigh = _high.IsInternal ? tangentHigh + Curvature(_high) : tangentHigh - Curvature(_high);
        var (a, e) = _lowDrives ? (tipHigh, tipLow) : (tipLow, tipHigh);
        var pitch = Parts.Number(_mesh.Subject, "transverse_base_pitch", "mm") ?? (2 * _low.Outline.HalfPitch * Math.Abs(_low.Outline.BaseDiameter) / 2);
        var sense = Math.Sign(e - a);
        var ((ax, ay), (ex, ey)) = (On(a), On(e));
        _content.Add(Svg.Line("accent path", ax, ay, ex, ey));
        List<(string Name, double At)> points = [("A", a), ("E", e), ("C", 0)];
        if (Math.Abs(e - a) > pitch && Math.Abs(e - a) < 2 * pitch)
            points.AddRange([("B", e - (sense * pitch)), ("D", a + (sense * pitch))]);
        foreach (var (name, at) in points)
            Point(name, On(at), normal, above: name is "A" or "E" or "C");
        Point("T₁", On(tangentLow), normal, above: false);
        Point("T₂", On(tangentHigh), normal, above: false);
        var reach = (Low: Math.Abs(tangentLow), Length: Math.Abs(e - a));
        _said.Add($"{_mesh.Name}, {(_mesh.IsInternal ? "internal" : "external")}, centre distance {Number(_mesh.Centre)} mm, working pressure angle {Number(_mesh.WorkingAngle * 180 / Math.PI)}°");
        _said.Add($"contact from A, {Number(Math.Abs(a))} mm before the pitch point C, to E, {Number(Math.Abs(e))} mm behind it, over {Number(reach.Length)} mm; base pitch {Number(pitch)} mm; base tangent point T₁ of {_low.Name} {Number(reach.Low)} mm from C");
        if (_parts.Broken(_mesh.Subject, "involute_clearance") is not null || _parts.Broken(_parts.InMesh(_mesh, _low), "curvature_at_start") is not null)
        {
            var (x, y) = On(tipHigh);
            _content.Add(Svg.Cross(x, y, 9));
        }
    }

    private static double Curvature(GearPart gear)
    {
        var sign = gear.IsInternal ? -1 : 1;
        var tip = Parts.Number(gear.Subject, "active_tip_diameter", "mm") ?? (2 * gear.TipRadius);
        return Math.Abs(PathOfContact.CurvatureAt(sign * Math.Min(tip, gear.IsInternal ? double.MaxValue : 2 * gear.TipRadius), gear.Outline.BaseDiameter));
    }

    private void Point(string name, (double X, double Y) at, (double X, double Y) normal, bool above)
    {
        if (at.X is < 4 or > Width - 4 || at.Y is < 4 or > FrameHeight - 4)
            return;
        _content.Add(Svg.Circle("dot", at.X, at.Y, 2.6));
        var off = above ? -1 : 1;
        var (dx, dy) = (13 * normal.Y * off * Math.Sign(normal.X), 13 * Math.Abs(normal.X) * off);
        _content.Add(Svg.Text("middle mark", at.X - dx, at.Y + dy + 4, name));
    }

    /// <summary>Names, senses, clearances and what is broken, about the frame.</summary>
    private double Words()
    {
        var ratio = Parts.Value(_mesh.Subject, "transverse_contact_ratio") is { Nominal: not null } contact ? $"ε_α {Figures.Nominal(contact)}" : "";
        var heads = new[]
        {
            $"{_high.Name}, z = {Phrase.Whole(_high.Teeth)}, above; {_low.Name}, z = {Phrase.Whole(_low.Teeth)}, below{(_isDriverKnown ? $"; {(_lowDrives ? _low.Name : _high.Name)} drives" : "")}",
            string.Join("    ", new[]
            {
                $"a {Of("centre_distance")}", $"α_wt {Of("working_pressure_angle")}", ratio, $"play {Of("operating_backlash")}",
            }.Where(static text => text.Length > 0 && !text.EndsWith('–'))),
        };
        _content.Add(Svg.Text("", 4, 16, heads[0]));
        _content.Add(Svg.Text("soft", 4, 34, heads[1]));
        _said.Add(heads[0]);
        _said.Add(heads[1].Replace("    ", ", ", StringComparison.Ordinal));

        // The sense at the pitch point is one for both.
        var toLeft = _side * (_lowDrives ? 1 : -1) > 0;
        var (tail, tip) = toLeft ? (-16.0, -66.0) : (16.0, 66.0);
        if (_isDriverKnown)
        {
            foreach (var y in new[] { Top + 16, Top + FrameHeight - 16 })
                _content.Add(Svg.Arrow("accent", (Width / 2) + tail, y, (Width / 2) + tip, y, 9));
        }

        Clearance(_low, (Width / 2) + 10, -_lowRadius + _low.TipRadius, HighAxis + ((_high.IsInternal ? 1 : -1) * _high.RootRadius), Top + 40);
        Clearance(_high, (Width / 2) + 10, HighAxis + ((_high.IsInternal ? 1 : -1) * _high.TipRadius), -_lowRadius + _low.RootRadius, Top + FrameHeight - 32);
        var yText = Top + FrameHeight + 18;
        foreach (var (subject, quantity, text) in Interferences(_parts, _mesh))
        {
            if (_parts.Broken(subject, quantity) is not { } broken || Parts.Value(subject, quantity) is not { } value)
                continue;
            var line = $"✕ {text}: {Figures.Of(value)} ({broken.Rule}, {Labels.Of(broken.Outcome)})";
            _content.Add(Svg.Text(broken.Outcome == OutcomeWord.Fails ? "fails" : "conceded", 4, yText, line));
            _said.Add(line[2..]);
            yText += 16;
        }

        _content.Add(Svg.Text("soft", 4, yText, "A, E begin and end of contact · B, D of single contact · C pitch point · T₁, T₂ base tangent points"));
        _content.Add(Svg.Text("soft", 4, yText + 15, "Circles: thin tip and root, dashed base, dash-dotted working pitch · arrows: sense of turning, from the carrier"));
        return yText + Bottom + 3;
    }

    /// <summary>The distance from a tip to the mate's root on the line of centres.</summary>
    private void Clearance(GearPart gear, double x, double tip, double root, double textY)
    {
        if (Parts.Value(_parts.InMesh(_mesh, gear), "tip_clearance") is not { Nominal: not null } value)
            return;
        var broken = _parts.Broken(_parts.InMesh(_mesh, gear), "tip_clearance") ?? _parts.Broken(_parts.InMesh(_mesh, gear), "tip_clearance_factor");
        var (from, to) = (Y(tip) + Top, Y(root) + Top);
        var css = broken is null ? "accent" : "fails";
        _content.Add(Svg.Line(css, Width / 2, from, Width / 2, to));
        foreach (var y in new[] { from, to })
            _content.Add(Svg.Line("thin", (Width / 2) - 7, y, (Width / 2) + 7, y));
        if (broken is not null)
            _content.Add(Svg.Cross(Width / 2, (from + to) / 2));
        var text = $"{(broken is null ? "" : "✕ ")}tip of {gear.Name} to root {Figures.Nominal(value)}";
        _content.Add(Svg.Path("thin", [(Width / 2, (from + to) / 2), (x + 60, textY - 4), (x + 78, textY - 4)]));
        _content.Add(Svg.Text(broken is null ? "halo" : "fails halo", x + 82, textY, text));
        _said.Add(text.Replace("✕ ", "", StringComparison.Ordinal));
    }

    private string Of(string quantity) => Parts.Value(_mesh.Subject, quantity) is { Nominal: not null } value ? Figures.Nominal(value) : "–";

    private static string Number(double value) => Figures.Of(new ValueRecord { Nominal = value });
}
