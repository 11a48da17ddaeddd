using Microsoft.Extensions.Logging.Abstractions;
using PanelService.Store;

namespace PanelService.Tests.Shared;

/// <summary>A data folder of a test's own, with an empty studio in it; deleted with everything in it afterwards.</summary>
internal sealed class DataFolder : IDisposable
{
    // Made once per run: a copy opens in a tenth of the time that the migrations take.
    private static readonly Lazy<byte[]> Empty = new(MakeEmpty);

    internal DataFolder()
    {
        Path = Directory.CreateTempSubdirectory("panel-service-").FullName;
        File.WriteAllBytes(System.IO.Path.Combine(Path, StoreOptions.FileName), Empty.Value);
    }

    /// <summary>The setting that names the folder.</summary>
    internal static string Setting => $"{StoreOptions.Section}:{nameof(StoreOptions.DataFolder)}";

    /// <summary>The folder.</summary>
    internal string Path { get; }

    /// <inheritdoc/>
    public void Dispose() => Delete(Path);

    private static byte[] MakeEmpty()
    {
        string folder = Directory.CreateTempSubdirectory("panel-service-").FullName;
        try
        {
            var options = new StoreOptions { DataFolder = folder };
            using (var studio = new Studio(options, NullLogger<Studio>.Instance))
            {
                studio.OpenAsync().GetAwaiter().GetResult();
            }

            Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
            return File.ReadAllBytes(options.FilePath);
        }
        finally
        {
            Delete(folder);
        }
    }

    private static void Delete(string folder)
    {
        try
        {
            Directory.Delete(folder, recursive: true);
        }
        catch (IOException)
        {
            // Something still writes there: the system clears its own temporary folder.
        }
    }
}
