namespace Pawl.Cli.Output;

/// <summary>An output could not be written; the message says which and why. A matter of the machine, not a defect.</summary>
public sealed class CannotWriteException : Exception
{
    public CannotWriteException()
    {
    }

    public CannotWriteException(string message)
        : base(message)
    {
    }

    public CannotWriteException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
