namespace Pawl.Mechanics.Assembly;

/// <summary>Where a gear lies along the axis: its mid-plane and its face width, mm.</summary>
public readonly record struct AxialSpan(double MidPlane, double FaceWidth)
{
    /// <summary>Axial gap between two gears, mm; negative where they overlap.</summary>
    /// <remarks>
    /// <code>g = |m_1 − m_2| − (b_1 + b_2)/2</code>
    /// Symbols: m place of the mid-plane, mm; b face width, mm; g in mm.<br/>
    /// Source: geometry.<br/>
    /// Valid for: gears on parallel axes.
    /// </remarks>
    public double GapTo(AxialSpan other) =>
        Guard.Finite(Math.Abs(MidPlane - other.MidPlane), "the distance of the mid-planes") - (Width + other.Width) / 2;

    private double Width => Guard.NotNegative(FaceWidth, "the face width", "mm");
}
