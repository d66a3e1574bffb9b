namespace Pawl.Mechanics;

/// <summary>A formula has no answer: an input lies outside the range in which the formula is valid.</summary>
/// <remarks>
/// The message is a sentence for the engineer, without a full stop: what was found, and what the range is.
/// Whoever shows a result catches this type and no other; every other exception of a formula is a defect of the program.
/// </remarks>
public sealed class OutsideValidityException : Exception
{
    public OutsideValidityException()
        : this("outside the range of validity")
    {
    }

    public OutsideValidityException(string? message)
        : base(message)
    {
    }

    public OutsideValidityException(string? message, Exception? innerException)
        : base(message, innerException)
    {
    }
}
