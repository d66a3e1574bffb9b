namespace Pawl.Mechanics.Trains;

/// <summary>A train that its output drives.</summary>
public static class BackDriving
{
    /// <summary>Efficiency from output to input; zero and below: the train locks itself.</summary>
    /// <remarks>
    /// <code>η′ = 2 − 1/η</code>
    /// Symbols: η efficiency from input to output.<br/>
    /// Source: balance of power with the same loss in both directions, as in textbooks of machine design: what is below one half locks itself.<br/>
    /// Valid for: the same torque at the input and the same friction in both directions.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Efficiency(double forward) => 2 - 1 / Guard.Share(forward, "the efficiency");
}
