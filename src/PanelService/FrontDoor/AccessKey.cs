using System.Security.Cryptography;
using System.Text;

namespace PanelService.FrontDoor;

/// <summary>
/// The key scripts show. It is made by the service, shown once and kept only as its SHA-256: with 256 random bits there
/// is nothing a slow hash would protect (OWASP Password Storage Cheat Sheet speaks of what people choose).
/// </summary>
internal sealed class AccessKey(string folder)
{
    private const int KeyBytes = 32;
    private const int PrintSigns = 16;
    private const string FileName = "access-key.sha256";

    private string Path => System.IO.Path.Combine(folder, FileName);

    /// <summary>Whether a key was made in this data folder.</summary>
    internal bool Exists => File.Exists(Path);

    /// <summary>A few signs that change with the key and do not give it away; empty where there is none.</summary>
    internal string Print => Exists ? File.ReadAllText(Path).Trim()[..PrintSigns] : "";

    /// <summary>Makes a new key; the one before is worth nothing from now on.</summary>
    /// <returns>The key, to be shown this once.</returns>
    internal string Make()
    {
        string key = "ps-" + Base64Url(RandomNumberGenerator.GetBytes(KeyBytes));
        Directory.CreateDirectory(folder);
        string draft = Path + ".new";
        using (var file = new StreamWriter(draft, OnlyForOwner()))
        {
            file.WriteLine(Convert.ToHexStringLower(HashOf(key)));
        }

        File.Move(draft, Path, overwrite: true);
        return key;
    }

    /// <summary>Whether this is the key; the time taken says nothing about how near it came.</summary>
    internal bool Matches(string given) =>
        Exists && CryptographicOperations.FixedTimeEquals(HashOf(given), Convert.FromHexString(File.ReadAllText(Path).Trim()));

    private static FileStreamOptions OnlyForOwner()
    {
        var options = new FileStreamOptions { Mode = FileMode.Create, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        return options;
    }

    private static byte[] HashOf(string key) => SHA256.HashData(Encoding.UTF8.GetBytes(key));

    private static string Base64Url(byte[] bytes) => System.Buffers.Text.Base64Url.EncodeToString(bytes);
}
