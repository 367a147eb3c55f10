namespace Platewright.Verify;

/// <summary>A proof does not hold, or cannot be read; the message is one sentence that says where.</summary>
public sealed class ProofException : Exception
{
    public ProofException()
    {
    }

    public ProofException(string message)
        : base(message)
    {
    }

    public ProofException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
