using PanelService.Tests.Shared;

namespace PanelService.Store.Tests.Hosts;

/// <summary>SQLite, a file per test.</summary>
public sealed class SqliteDatabase : IDatabase
{
    /// <inheritdoc/>
    public Home Open() => new FileHome();

    private sealed class FileHome : Home
    {
        private readonly DataFolder _folder = new();

        internal override (string Key, string Value)[] Settings => [(DataFolder.Setting, _folder.Path)];

        internal override StoreOptions Options => new() { DataFolder = _folder.Path };

        protected override void Dispose(bool disposing) => _folder.Dispose();
    }
}
