using System.Security.Cryptography;
using System.Text.Json;

namespace FixScore.Canonical;

/// <summary>
/// The fingerprint of data: "sha256:" and the SHA-256 (FIPS 180-4) in 64 lower-case hexadecimal digits.
/// Stateless, so safe to use from any thread.
/// </summary>
public static class Digest
{
    /// <summary>The digest of a JSON value, over its canonical form (RFC 8785).</summary>
    /// <param name="element">The value; its document must not be disposed.</param>
    /// <param name="without">Names of members to leave out of the outermost object, such as the digest itself.</param>
    /// <exception cref="ArgumentException">The element is a default one and holds no value.</exception>
    /// <exception cref="JsonException">The value has no canonical form, see <see cref="CanonicalJson"/>.</exception>
    public static string Of(JsonElement element, params ReadOnlySpan<string> without)
    {
        using var buffer = new PooledBuffer();
        CanonicalJson.Write(element, buffer, without);
        return Of(buffer.Written);
    }

    /// <summary>The digest of bytes as they are, such as a file.</summary>
    /// <param name="bytes">The bytes.</param>
    public static string Of(ReadOnlySpan<byte> bytes) => "sha256:" + Convert.ToHexStringLower(SHA256.HashData(bytes));
}
