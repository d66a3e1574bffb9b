using Pawl.Mechanics.Bearings;

namespace Pawl.Mechanics.Shafts;

/// <summary>A round section of a shaft, solid or hollow.</summary>
public sealed record ShaftSection
{
    /// <param name="outside">Outside diameter d, mm.</param>
    /// <param name="bore">Diameter d_i of the bore, mm; zero for a solid shaft.</param>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public ShaftSection(double outside, double bore = 0)
    {
        Outside = Guard.Positive(outside, "the diameter of the shaft");
        Bore = DynamicLoad.NotNegative(bore, "the bore of the shaft");
        if (bore >= outside)
            throw Guard.Because($"the bore of a shaft must be smaller than its outside; they are {bore:0.###} mm and {outside:0.###} mm");
    }

    public double Outside { get; }

    public double Bore { get; }

    /// <summary>Area A, mm².</summary>
    public double Area => Math.PI / 4 * (Outside * Outside - Bore * Bore);

    /// <summary>Second moment of area I, mm⁴; the polar one is twice this.</summary>
    /// <remarks>
    /// <code>I = π/64·(d⁴ − d_i⁴)</code>
    /// Source: geometry.
    /// </remarks>
    public double SecondMoment => Math.PI / 64 * (Math.Pow(Outside, 4) - Math.Pow(Bore, 4));

    /// <summary>Section modulus of bending W, mm³; that of torsion is twice this.</summary>
    /// <remarks>
    /// <code>W = π·(d⁴ − d_i⁴)/(32·d)</code>
    /// Source: geometry.
    /// </remarks>
    public double BendingModulus => 2 * SecondMoment / Outside;

    /// <summary>Nominal stresses of a section, MPa.</summary>
    /// <param name="axial">Axial force F, N.</param>
    /// <param name="moment">Bending moment M, N·mm.</param>
    /// <param name="torque">Torque T, N·mm.</param>
    /// <remarks>
    /// <code>σ_zd = F/A;  σ_b = M/W;  τ_t = T/(2·W)</code>
    /// Source: strength of materials.<br/>
    /// Valid for: slender shafts; shear of the cross force is left out.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public ShaftStresses Stresses(double axial, double moment, double torque) => new(
        Guard.Finite(axial, "the axial force") / Area,
        Guard.Finite(moment, "the bending moment") / BendingModulus,
        Guard.Finite(torque, "the torque") / (2 * BendingModulus));
}

/// <summary>Nominal stresses at the surface of a shaft, MPa.</summary>
/// <param name="Axial">Tension or pressure σ_zd.</param>
/// <param name="Bending">Bending σ_b.</param>
/// <param name="Torsion">Torsion τ_t.</param>
public readonly record struct ShaftStresses(double Axial, double Bending, double Torsion)
{
    /// <summary>Von Mises stress, MPa.</summary>
    /// <remarks>
    /// <code>σ_v = √( (|σ_zd| + |σ_b|)² + 3·τ_t² )</code>
    /// Source: von Mises. Bending presses one side and pulls the other: its amount counts with that of the axial stress.
    /// </remarks>
    public double Equivalent
    {
        get
        {
            var normal = Math.Abs(Axial) + Math.Abs(Bending);
            return Guard.Finite(Math.Sqrt(normal * normal + 3 * Torsion * Torsion), "the equivalent stress");
        }
    }
}
