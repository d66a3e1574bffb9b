using System.Xml.Linq;
using Pawl.Reports.Drawing;

namespace Pawl.Reports.Sheets;

/// <summary>Bolts on their circle, each with its place in the order of tightening.</summary>
internal static class BoltPattern
{
    private const double Size = 320;

    /// <param name="id">Name of the figure.</param>
    /// <param name="joint">Path of the joint.</param>
    /// <param name="sequence">Numbers of the bolts, counted clockwise round the circle, in the order of tightening.</param>
    public static Figure Of(string id, string joint, ImmutableArray<int> sequence)
    {
        const double Middle = Size / 2;
        var reach = Middle - 44;
        var radius = Math.Min(20, Math.PI * reach / sequence.Length * 0.8);
        var content = ImmutableArray.CreateBuilder<XElement>();
        content.Add(Svg.Circle("centre", Middle, Middle, reach));
        content.Add(Svg.Line("thin", Middle - 8, Middle, Middle + 8, Middle));
        content.Add(Svg.Line("thin", Middle, Middle - 8, Middle, Middle + 8));
        for (var place = 0; place < sequence.Length; place++)
        {
            var bolt = sequence[place];
            var (sin, cos) = Math.SinCos(2 * Math.PI * (bolt - 1) / sequence.Length);
            content.Add(Svg.Circle("limit", Middle + (reach * sin), Middle - (reach * cos), radius));
            content.Add(Svg.Text(sequence.Length > 40 ? "soft middle" : "order middle", Middle + (reach * sin), Middle - (reach * cos) + 5, Phrase.Whole(place + 1)));
            if (sequence.Length <= 40)
                content.Add(Svg.Text("soft middle", Middle + ((reach + radius + 12) * sin), Middle - ((reach + radius + 12) * cos) + 4, $"b{Phrase.Whole(bolt)}"));
        }

        return new()
        {
            Id = id, Section = FigureSection.Joints, Width = Size, Height = Size, Content = content.DrainToImmutable(),
            Title = $"Order of tightening, {joint}; in the circles the order, beside them the bolts, seen on the heads",
            Description = $"Bolts numbered clockwise from the top, in the order of tightening: {string.Join(", ", sequence.Select(Phrase.Whole))}.",
        };
    }
}
