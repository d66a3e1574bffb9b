using System.Security.Cryptography;
using System.Text;

namespace Pawl.Cli.Verifying;

/// <summary>Detached signatures: ECDSA on the curve P-256 with SHA-256 (FIPS 186-5), as the DER of RFC 3279.</summary>
/// <remarks>The same bytes that <c>openssl dgst -sha256 -sign</c> writes and <c>-verify</c> reads. Keys are PEM files of whoever signs; none is made or kept here.</remarks>
internal static class Signatures
{
    /// <summary>Ending of a signature beside its record.</summary>
    public const string Ending = ".sig";

    // RFC 5480, section 2.1.1.1: secp256r1.
    private const string P256 = "1.2.840.10045.3.1.7";

    /// <summary>Signs; null with what is wrong with the key.</summary>
    public static byte[]? Sign(byte[] content, byte[] pem, out string? problem)
    {
        using var key = Read(pem, out problem);
        if (key is null)
            return null;
        try
        {
            return key.SignData(content, HashAlgorithmName.SHA256, DSASignatureFormat.Rfc3279DerSequence);
        }
        catch (CryptographicException)
        {
            problem = "it is a public key; a private one signs";
            return null;
        }
    }

    /// <summary>Whether the signature is of this content by this key; false too for bytes that are no signature.</summary>
    public static bool? Verify(byte[] content, byte[] signature, byte[] pem, out string? problem)
    {
        using var key = Read(pem, out problem);
        if (key is null)
            return null;
        try
        {
            return key.VerifyData(content, signature, HashAlgorithmName.SHA256, DSASignatureFormat.Rfc3279DerSequence);
        }
        catch (CryptographicException)
        {
            return false;
        }
    }

    private static ECDsa? Read(byte[] pem, out string? problem)
    {
        problem = null;
        var key = ECDsa.Create();
        try
        {
            key.ImportFromPem(Encoding.ASCII.GetString(pem));
            if (key.ExportParameters(false).Curve.Oid.Value == P256)
                return key;
            problem = "it is on another curve than P-256";
        }
        catch (Exception wrong) when (wrong is CryptographicException or ArgumentException)
        {
            problem = pem.AsSpan().IndexOf("ENCRYPTED"u8) >= 0
                ? "it is encrypted; decrypt it where it is kept, for no password is asked here"
                : "it holds no PEM key of the kind EC";
        }

        key.Dispose();
        return null;
    }
}
