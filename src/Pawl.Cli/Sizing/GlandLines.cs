using Pawl.Specs.Model;

namespace Pawl.Cli.Sizing;

/// <summary>The gland that a spec declares, line by line.</summary>
internal static class GlandLines
{
    public static ImmutableArray<GlandLine> Of(ORingSpec ring, GearboxSpec spec)
    {
        (string Key, string? Text)[] lines =
        [
            ("gland", ring.Gland.Text), ("motion", ring.Motion?.Text), ("bore", ring.Bore?.Text), ("plug", ring.Plug?.Text), ("groove", ring.Groove?.Text),
            ("depth", ring.Depth?.Text), ("width", ring.Width?.Text), ("eccentricity", ring.Eccentricity?.Text), ("roughness_ra", ring.RoughnessRa?.Text),
            ("pressure", ring.Pressure?.Text), ("swell", ring.Swell?.Text), ("speed", ring.Speed?.Text), ("elastomer", ring.Elastomer?.Text),
            ("hardness", ring.Hardness?.Text), ("oil.running", spec.Duty?.Oil?.Running?.Text), ("oil.coldest", spec.Duty?.Oil?.Coldest?.Text),
            ("oil.hottest", spec.Duty?.Oil?.Hottest?.Text),
        ];
        return [.. lines.Where(line => line.Text is not null).Select(line => new GlandLine(line.Key, line.Text!))];
    }
}
