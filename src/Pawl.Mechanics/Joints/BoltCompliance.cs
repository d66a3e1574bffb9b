using Pawl.Mechanics.Bearings;

namespace Pawl.Mechanics.Joints;

/// <summary>The head of a bolt, as far as it gives way.</summary>
public enum BoltHead
{
    Hexagon,
    SocketCap,
}

/// <summary>A plain piece of the shank.</summary>
/// <param name="Length">Length l, mm.</param>
/// <param name="Diameter">Diameter d, mm.</param>
public sealed record ShankPiece(double Length, double Diameter);

/// <summary>How far a bolt stretches by a newton, piece by piece, mm/N.</summary>
/// <remarks>
/// <code>δ = l/(E·A)</code>
/// Symbols: l length of the piece, or the length that stands for it, mm; E modulus of elasticity, MPa; A section, mm²: A_N by the
/// nominal diameter d, A_d3 by the minor diameter.<br/>
/// Source: VDI 2230 Part 1, from memory; the lengths that stand for head, thread and nut are 0.5·d (hexagon) or 0.4·d (socket) on A_N,
/// 0.5·d on A_d3, and 0.4·d (nut) or 0.33·d (tapped hole, with its own E) on A_N.
/// </remarks>
public static class BoltCompliance
{
    /// <summary>The head.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Head(BoltHead head, ScrewThread thread, double modulus) =>
        Piece((head == BoltHead.Hexagon ? 0.5 : 0.4) * thread.Diameter, thread.Diameter, modulus);

    /// <summary>A plain piece of the shank.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Shank(ShankPiece piece, double modulus) =>
        Piece(
            DynamicLoad.NotNegative(piece.Length, "the length of the shank"),
            Guard.Positive(piece.Diameter, "the diameter of the shank"),
            modulus);

    /// <summary>Thread within the clamped length that no nut holds.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double FreeThread(ScrewThread thread, double length, double modulus) =>
        Piece(DynamicLoad.NotNegative(length, "the length of the free thread"), thread.RootDiameter, modulus);

    /// <summary>The bolt's own thread where it is engaged.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double EngagedThread(ScrewThread thread, double modulus) => Piece(0.5 * thread.Diameter, thread.RootDiameter, modulus);

    /// <summary>A nut.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Nut(ScrewThread thread, double modulus) => Piece(0.4 * thread.Diameter, thread.Diameter, modulus);

    /// <summary>A tapped hole; the modulus is that of the part that is tapped.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double TappedHole(ScrewThread thread, double partModulus) => Piece(0.33 * thread.Diameter, thread.Diameter, partModulus);

    /// <summary>The whole bolt δ_S.</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="head">The head.</param>
    /// <param name="shank">The plain pieces.</param>
    /// <param name="freeThread">Length of free thread, mm.</param>
    /// <param name="modulus">Modulus of the bolt, MPa.</param>
    /// <param name="tappedModulus">Modulus of a tapped part, MPa; a nut of the bolt's modulus where none is given.</param>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Whole(
        ScrewThread thread, BoltHead head, ImmutableArray<ShankPiece> shank, double freeThread, double modulus, double? tappedModulus = null) =>
        Head(head, thread, modulus)
        + shank.Sum(piece => Shank(piece, modulus))
        + FreeThread(thread, freeThread, modulus)
        + EngagedThread(thread, modulus)
        + (tappedModulus is { } part ? TappedHole(thread, part) : Nut(thread, modulus));

    private static double Piece(double length, double diameter, double modulus) =>
        length / (Guard.Positive(modulus, "the modulus of elasticity") * Math.PI / 4 * diameter * diameter);
}
