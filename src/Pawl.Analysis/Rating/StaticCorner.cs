using Pawl.Mechanics.Rating;

namespace Pawl.Analysis.Rating;

/// <summary>A life curve whose static corner moves with other factors; corners of tolerances mostly ask for the same again.</summary>
internal sealed class StaticCorner(LifeCurve curve)
{
    private double _ratio;
    private LifeCurve? _moved;

    /// <summary>Static factor of the standard.</summary>
    public double StaticFactor => curve.StaticFactor;

    /// <param name="ratio">Factors of the static strength over those of the endurance.</param>
    public LifeCurve Moved(double ratio)
    {
        if (_moved is null || ratio != _ratio)
            (_ratio, _moved) = (ratio, curve.WithStaticFactor(curve.StaticFactor * ratio));
        return _moved;
    }
}
