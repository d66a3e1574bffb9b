using System.Xml.Linq;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Drawing;

/// <summary>Where power flows: bodies and planets as boxes, what passes between them as bands as wide as the power.</summary>
/// <remarks>
/// What a central gear hands to its mesh is its torque there times its speed: P = P_roll · ω/(ω − ω_c) where it drives, less the loss
/// where it is driven; closed form. The carrier takes the rest of its planets' balance.
/// </remarks>
internal sealed class PowerFlow
{
    private const double Width = 720, Box = 140, BoxHeight = 62, RowHeight = 112, Side = 58, Widest = 34, Top = 26;
    private const int MostNodes = 40;

    private readonly Parts _parts;
    private readonly List<Node> _nodes = [];
    private readonly List<Edge> _edges = [];
    private readonly double _greatest;
    private readonly List<string> _said = [];
    private readonly List<string> _meshes = [];
    private readonly List<XElement> _bands = [];
    private readonly List<XElement> _boxes = [];
    private readonly List<XElement> _texts = [];

    private PowerFlow(Parts parts)
    {
        _parts = parts;
        foreach (var body in parts.Bodies)
        {
            var name = Parts.NameOf(body.Path);
            if (!parts.Planets.Any(set => set.Bodies.Contains(name)))
                _nodes.Add(new(name, body, External: Parts.Number(body, "power", "kW") ?? 0));
        }

        foreach (var set in parts.Planets)
            _nodes.Add(new(string.Join(" + ", set.Bodies), set.Subject, Set: set));
        foreach (var mesh in parts.Subjects("mesh"))
            AddMesh(mesh);
        foreach (var node in _nodes.Where(static n => n.Set is not null).ToArray())
            AddCarrier(node);
        _greatest = _edges.Select(static e => Math.Abs(e.Power)).Concat(_nodes.Select(static n => Math.Abs(n.External))).DefaultIfEmpty(0).Max();
    }

    public static IEnumerable<Figure> Of(ConformanceRecord record)
    {
        var flow = new PowerFlow(Parts.Of(record));
        return flow._edges.Count == 0 || flow._nodes.Count > MostNodes || flow._greatest is not (> 1e-9 and < 1e9) ? [] : [flow.Draw()];
    }

    private sealed record Node(string Name, SubjectRecord Subject, PlanetParts? Set = null, double External = 0)
    {
        public int Column { get; set; } = -1;

        public double X { get; set; }

        public double Y { get; set; }

        public double Loss { get; set; }
    }

    /// <summary>Power from one node to another; below zero it flows the other way.</summary>
    private sealed record Edge(Node From, Node To, double Power, string Text)
    {
        public Node Giver => Power >= 0 ? From : To;

        public Node Taker => Power >= 0 ? To : From;

        public double StartY { get; set; }

        public double EndY { get; set; }
    }

    private Node? NodeOf(string body) => _nodes.Find(n => n.Set?.Bodies.Contains(body) ?? n.Name == body);

    private double? SpeedRatio(string? body) => body is null ? null : Parts.Number(_parts.Subject($"bodies.{body}"), "speed_ratio");

    /// <summary>What the gears of a mesh take from their bodies and hand on.</summary>
    private void AddMesh(SubjectRecord mesh)
    {
        if (Parts.Number(mesh, "rolling_power", "kW") is not { } rolling || Parts.Number(mesh, "efficiency", "%") is not { } efficiency
            || Parts.Text(mesh, "driving_gear") is not { } driver
            || Parts.Related(mesh, "first") is not { } first || Parts.Related(mesh, "second") is not { } second)
            return;
        var (one, two) = (BodyOf(first), BodyOf(second));
        if (one is null || two is null || NodeOf(one) is not { } from || NodeOf(two) is not { } to)
            return;
        var lost = Math.Abs(rolling) * (1 - (efficiency / 100));
        var names = $"{Parts.NameOf(first)} – {Parts.NameOf(second)}";
        var text = $"mesh {names}: {driver} drives, rolling power {Number(Math.Abs(rolling))} kW, efficiency {Number(efficiency)} %{(Parts.Number(mesh, "tangential_force", "N") is { } force ? $", tangential force {Number(force)} N" : "")}";
        _said.Add(text);
        _meshes.Add(text);
        var planets = from.Set is not null ? from : to;
        planets.Loss += lost;
        if (from == to)
            return;
        if (from.Set is null && to.Set is null)
        {
            _edges.Add(new(driver == Parts.NameOf(first) ? from : to, driver == Parts.NameOf(first) ? to : from, Math.Abs(rolling), names));
            return;
        }

        var (central, gear) = from.Set is null ? (from, first) : (to, second);
        var carrier = SpeedRatio(planets.Set?.Carrier) ?? 0;
        if (central.Set is not null || SpeedRatio(central.Name) is not { } own || Math.Abs(own - carrier) < 1e-12)
            return;
        var share = own / (own - carrier);
        var power = driver == Parts.NameOf(gear) ? Math.Abs(rolling) * share : -((Math.Abs(rolling) - lost) * share);
        _edges.Add(new(central, planets, power, Parts.NameOf(gear)));
    }

    private string? BodyOf(string gear) => _parts.Subject(gear) is { } subject && Parts.Related(subject, "body") is { } body ? Parts.NameOf(body) : null;

    private void AddCarrier(Node planets)
    {
        var edges = _edges.Where(e => e.To == planets).ToArray();
        if (edges.Length == 0 || planets.Set?.Carrier is not { } name || NodeOf(name) is not { } carrier)
            return;
        _edges.Add(new(planets, carrier, edges.Sum(static e => e.Power) - planets.Loss, "pins"));
    }

    private Figure Draw()
    {
        var height = Place();
        Bands();
        foreach (var node in _nodes.Where(static n => n.Column >= 0))
            DrawNode(node);
        var y = height + 4;
        var train = _parts.Subject("train");
        var words = new[]
        {
            Parts.Value(train, "efficiency") is { Nominal: not null } efficiency ? $"efficiency of the meshes {Figures.Nominal(efficiency)}" : "",
            Parts.Value(train, "lost_power") is { Nominal: not null } lost ? $"lost in the meshes {Figures.Nominal(lost)}" : "",
            Parts.Value(train, "circulating_power") is { Nominal: { } most } ? $"greatest rolling power {Number(most)} of the input" : "",
        };
        var line = string.Join(" · ", words.Where(static w => w.Length > 0));
        if (line.Length > 0)
        {
            _texts.Add(Svg.Text("soft", 6, y, line));
            _said.Add(line);
            y += 16;
        }

        foreach (var mesh in _meshes.Take(MostNodes))
        {
            _texts.Add(Svg.Text("soft", 6, y, mesh));
            y += 15;
        }

        if (_parts.Broken(train, "circulating_power") is { } broken)
        {
            var text = $"✕ much rolling power ({broken.Rule}, {Labels.Of(broken.Outcome)})";
            _texts.Add(Svg.Text(broken.Outcome == OutcomeWord.Fails ? "fails" : "conceded", 6, y, text));
            _said.Add(text[2..]);
            y += 16;
        }

        if (_edges.Exists(IsCircling))
        {
            _texts.Add(Svg.Text("", 6, y, "↻ bands with a dashed edge: power that circulates and never leaves"));
            y += 16;
        }

        return new()
        {
            Id = "power-flow",
            Section = FigureSection.Train,
            Title = "Power flow",
            Description = string.Join("; ", _said) + ".",
            Width = Width,
            Height = y + 2,
            Content = [.. _bands, .. _boxes, .. _texts],
        };
    }

    /// <summary>Columns by distance from the input, rows within a column with what gives power above what only holds.</summary>
    private double Place()
    {
        var start = _nodes.Find(n => Parts.Text(n.Subject, "role") == "input" && _edges.Exists(e => e.From == n || e.To == n)) ?? _edges[0].From;
        start.Column = 0;
        Queue<Node> next = new([start]);
        while (next.TryDequeue(out var node))
        {
            foreach (var edge in _edges)
            {
                var other = edge.From == node ? edge.To : edge.To == node ? edge.From : null;
                if (other is { Column: < 0 })
                {
                    other.Column = node.Column + 1;
                    next.Enqueue(other);
                }
            }
        }

        var columns = _nodes.Where(static n => n.Column >= 0).GroupBy(static n => n.Column).OrderBy(static c => c.Key).ToArray();
        var most = columns.Max(static c => c.Count());
        var step = columns.Length > 1 ? (Width - (2 * Side) - Box) / (columns.Length - 1) : 0;
        foreach (var column in columns)
        {
            var nodes = column.OrderBy(static n => Parts.Text(n.Subject, "role") == "fixed").ThenBy(static n => n.Name, StringComparer.Ordinal).ToArray();
            for (var k = 0; k < nodes.Length; k++)
            {
                nodes[k].X = Side + (step * column.Key);
                nodes[k].Y = Top + (RowHeight * (k + ((most - nodes.Length) / 2.0)));
            }
        }

        return Top + (RowHeight * most) + 6;
    }

    private double Wide(double power) => Math.Max(1, Widest * Math.Abs(power) / _greatest);

    private void Bands()
    {
        var drawn = _edges.Where(static e => e.From.Column >= 0).ToArray();
        foreach (var node in _nodes.Where(static n => n.Column >= 0))
        {
            foreach (var right in new[] { false, true })
            {
                var here = drawn.Where(e => (e.From == node || e.To == node) && Other(e, node).Column > node.Column == right)
                    .OrderBy(e => Other(e, node).Y).ToArray();
                var y = node.Y + (BoxHeight / 2) - ((here.Sum(e => Wide(e.Power)) + (4 * (here.Length - 1))) / 2);
                foreach (var edge in here)
                {
                    var middle = y + (Wide(edge.Power) / 2);
                    if (edge.Giver == node)
                        edge.StartY = middle;
                    else
                        edge.EndY = middle;
                    y += Wide(edge.Power) + 4;
                }
            }
        }

        foreach (var edge in drawn)
            Band(edge);
    }

    private static Node Other(Edge edge, Node node) => edge.From == node ? edge.To : edge.From;

    private bool IsNothing(Edge edge) => Math.Abs(edge.Power) < 1e-6 * _greatest;

    /// <summary>Whether what an edge carries comes back to where it began.</summary>
    private bool IsCircling(Edge edge)
    {
        if (IsNothing(edge))
            return false;
        HashSet<Node> seen = [edge.Taker];
        Queue<Node> next = new(seen);
        while (next.TryDequeue(out var node))
        {
            foreach (var on in _edges.Where(e => e.Giver == node && !IsNothing(e)))
            {
                if (on.Taker == edge.Giver)
                    return true;
                if (seen.Add(on.Taker))
                    next.Enqueue(on.Taker);
            }
        }

        return false;
    }

    private void Band(Edge edge)
    {
        var forward = edge.Giver.Column < edge.Taker.Column;
        var (x1, x2) = (edge.Giver.X + (forward ? Box : 0), edge.Taker.X + (forward ? 0 : Box));
        if (edge.Giver.Column == edge.Taker.Column)
            x2 = edge.Taker.X;
        var (y1, y2, middle) = (edge.StartY, edge.EndY, (x1 + x2) / 2);
        var circles = IsCircling(edge);
        if (IsNothing(edge))
        {
            _bands.Add(Svg.Path("hidden", Curve(x1, y1, middle, x2, y2)));
        }
        else
        {
            var half = Wide(edge.Power) / 2;
            var head = (x2 > x1 ? 1 : -1) * Math.Min(10, 4 + half);
            _bands.Add(Svg.Path(
                circles ? "flow circles" : "flow",
                $"{Curve(x1, y1 - half, middle, x2 - head, y2 - half)}L{Svg.Number(x2 - head)} {Svg.Number(y2 - half - 3)}L{Svg.Number(x2)} {Svg.Number(y2)}"
                + $"L{Svg.Number(x2 - head)} {Svg.Number(y2 + half + 3)}L{Svg.Number(x2 - head)} {Svg.Number(y2 + half)}"
                + $"C{Svg.Number(middle)} {Svg.Number(y2 + half)} {Svg.Number(middle)} {Svg.Number(y1 + half)} {Svg.Number(x1)} {Svg.Number(y1 + half)}Z"));
        }

        var (above, below) = (((y1 + y2) / 2) - (Wide(edge.Power) / 2) - 8, ((y1 + y2) / 2) + (Wide(edge.Power) / 2) + 15);
        if (IsNothing(edge))
        {
            _texts.Add(Svg.Text("middle soft halo", middle, below, edge.Text));
            _texts.Add(Svg.Text("middle soft halo", middle, below + 13, "holds"));
        }
        else
        {
            _texts.Add(Svg.Text("middle halo", middle, above, $"{(circles ? "↻ " : "")}{Number(Math.Abs(edge.Power))} kW"));
            _texts.Add(Svg.Text("middle soft halo", middle, below, edge.Text));
        }

        _said.Add(IsNothing(edge)
            ? $"{edge.From.Name} takes torque of {edge.To.Name} and no power"
            : $"{edge.Giver.Name} hands {Number(Math.Abs(edge.Power))} kW to {edge.Taker.Name} ({edge.Text}){(circles ? ", circulating" : "")}");
    }

    private static string Curve(double x1, double y1, double middle, double x2, double y2) =>
        $"M{Svg.Number(x1)} {Svg.Number(y1)}C{Svg.Number(middle)} {Svg.Number(y1)} {Svg.Number(middle)} {Svg.Number(y2)} {Svg.Number(x2)} {Svg.Number(y2)}";

    private void DrawNode(Node node)
    {
        _boxes.Add(Svg.Rectangle(node.Set is null ? "metal" : "solid", node.X, node.Y, Box, BoxHeight));
        var role = Parts.Text(node.Subject, "role");
        string[] lines = node.Set is { } set
            ? [Cut(set.Bodies[0]), $"{(set.Bodies.Length > 1 ? $"{Cut(set.Bodies[1])}, " : "")}{Phrase.Whole(set.Count)} {(set.Bodies.Length > 1 ? "×" : "planets")}", Speeds(set)]
            : [Cut(role is null || role == node.Name ? node.Name : $"{node.Name} ({role})"), Of(node.Subject, "speed"), Of(node.Subject, "torque")];
        var y = node.Y + 17;
        foreach (var line in lines.Where(static l => l.Length > 0))
        {
            _texts.Add(Svg.Text(y > node.Y + 18 ? "middle soft" : "middle", node.X + (Box / 2), y, Cut(line)));
            y += 17;
        }

        _said.Add($"{node.Name}: {string.Join(", ", lines.Skip(1).Where(static l => l.Length > 0))}");
        if (node.Loss > 0)
        {
            var (x, from) = (node.X + (Box / 2), node.Y + BoxHeight);
            _boxes.Add(Svg.Arrow("thin", x, from, x, from + 18, 6));
            _texts.Add(Svg.Text("middle soft", x, from + 31, $"{Number(node.Loss * 1000)} W lost"));
        }

        if (Math.Abs(node.External) > 1e-6 * _greatest)
            Outside(node);
    }

    private void Outside(Node node)
    {
        var (half, y, into) = (Wide(node.External) / 2, node.Y + (BoxHeight / 2), node.External > 0);
        var atLeft = node.Column == 0;
        var (near, far) = atLeft ? (node.X, node.X - Side + 6) : (node.X + Box, node.X + Box + Side - 6);
        var (from, to) = into ? (far, near) : (near, far);
        var head = (to > from ? 1 : -1) * Math.Min(10, 4 + half);
        _bands.Add(Svg.Path("flow", [(from, y - half), (to - head, y - half), (to - head, y - half - 3), (to, y), (to - head, y + half + 3), (to - head, y + half), (from, y + half)], closed: true));
        _texts.Add(Svg.Text("middle halo", (near + far) / 2, y - half - 8, $"{Number(Math.Abs(node.External))} kW"));
        _said.Add($"{Number(Math.Abs(node.External))} kW {(into ? "into" : "out of")} {node.Name}");
    }

    private string Speeds(PlanetParts set) => string.Join(" / ", set.Bodies.Select(body =>
        Parts.Number(_parts.Subject($"bodies.{body}"), "speed", "1/min") is { } speed ? Number(Math.Round(speed)) : "–")) + " 1/min";

    private static string Of(SubjectRecord? subject, string quantity) => Parts.Value(subject, quantity) is { Nominal: not null } value ? Figures.Nominal(value) : "";

    private static string Cut(string text) => text.Length <= 22 ? text : text[..21] + "…";

    private static string Number(double value) => Figures.Of(new ValueRecord { Nominal = value });
}
