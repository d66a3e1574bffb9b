using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Rating;

/// <summary>How much running adds to the force in a mesh: K_v by method C of ISO 6336-1.</summary>
public static class DynamicFactor
{
    /// <summary>The table of K₁ by grade.</summary>
    public const string TableId = "iso6336-1-dynamic-factor";

    /// <summary>Where method C ends, mm/s.</summary>
    public const double MaxParameter = 3000;

    /// <summary>The line load below which method C calculates with this one, N/mm.</summary>
    public const double MinLineLoad = 100;

    private const double SpurK2 = 0.0193;
    private const double HelicalK2 = 0.0087;
    private const double MillimetresPerMetre = 1000;

    private static GradeTable? _current;

    /// <summary>Speed parameter s of method C, mm/s.</summary>
    /// <remarks>
    /// <code>s = v · z₁/100 · √( u² / (1 + u²) )</code>
    /// Symbols: v speed of the reference circle relative to the carrier, mm/s; z₁ teeth of the pinion; u = z₂/z₁, internal
    /// negative.<br/>
    /// Source: ISO 6336-1, dynamic factor, method C.<br/>
    /// Valid for: |u| ≥ 1.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Parameter(double pitchLineSpeedInMillimetresPerSecond, int pinionTeeth, double toothRatio)
    {
        var square = Guard.NotZero(toothRatio, "the tooth ratio") * toothRatio;
        return Guard.Finite(
            Math.Abs(pitchLineSpeedInMillimetresPerSecond) * Math.Abs(Guard.Teeth(pinionTeeth)) / 100 * Math.Sqrt(square / (1 + square)),
            "the speed parameter");
    }

    /// <summary>Dynamic factor K_v.</summary>
    /// <remarks>
    /// <code>K_v = 1 + ( K₁ / max(w, 100) + K₂ ) · s · K₃;  K₃ = 2 for s ≤ 0.2, else 2.071 − 0.357·s</code>
    /// <code>0 &lt; ε_β &lt; 1: K_v = K_v,spur − ε_β · (K_v,spur − K_v,helical)</code>
    /// Symbols: K₁ by grade, spur or helical, table iso6336-1-dynamic-factor; K₂ 0.0193 spur, 0.0087 helical; w = F_t·K_A·K_γ/b
    /// line load, N/mm; s speed parameter, mm/s (the source has m/s; converted inside); ε_β overlap ratio, 0 for spur gears.
    /// Neither K₁ nor K₃ is homogeneous.<br/>
    /// Source: ISO 6336-1, dynamic factor, method C; K₁ of grades 3 to 8, K₂ and K₃ as printed in UR M56.1.6.3, K₁ of grades 9 and
    /// 10 from memory.<br/>
    /// Valid for: running below the main resonance, s ≤ 3 m/s, grades 3 to 10.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double MethodC(double parameterInMillimetresPerSecond, double lineLoad, int grade, double overlapRatio)
    {
        _current ??= new GradeTable();
        if (!_current.TryFind(grade, out var row))
        {
            throw Guard.Because(
                $"no dynamic factor: method C has the grades {_current.First} to {_current.Last}; this one is {grade}");
        }

        if (!(parameterInMillimetresPerSecond is >= 0 and <= MaxParameter))
        {
            throw Guard.Because(
                $"no dynamic factor: method C ends at a speed parameter of 3 m/s; it is {parameterInMillimetresPerSecond / MillimetresPerMetre:0.###} m/s");
        }

        var load = Math.Max(Guard.Positive(lineLoad, "the line load"), MinLineLoad);
        var metres = parameterInMillimetresPerSecond / MillimetresPerMetre;
        var speed = metres * (metres <= 0.2 ? 2 : 2.071 - 0.357 * metres);
        var spur = 1 + (row.Spur / load + SpurK2) * speed;
        var helical = 1 + (row.Helical / load + HelicalK2) * speed;
        return spur - Overlap.UpToOne(overlapRatio) * (spur - helical);
    }

    private readonly record struct Grade(double Spur, double Helical);

    private sealed class GradeTable
    {
        private readonly List<Grade> _rows = [];

        public GradeTable()
        {
            var rows = StandardTable.Read(TableId).Rows();
            while (rows.NextRow())
            {
                var grade = (int)rows.NextNumber();
                First = _rows.Count == 0 ? grade : First;
                if (grade != First + _rows.Count)
                {
                    throw new InvalidOperationException($"The grades of {TableId} do not follow each other.");
                }

                _rows.Add(new Grade(rows.NextNumber(), rows.NextNumber()));
            }
        }

        public int First { get; }

        public int Last => First + _rows.Count - 1;

        public bool TryFind(int grade, out Grade row)
        {
            var found = grade >= First && grade <= Last;
            row = found ? _rows[grade - First] : default;
            return found;
        }
    }
}
