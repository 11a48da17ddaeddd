using Microsoft.Extensions.Logging.Abstractions;
using Npgsql;
using PanelService.Tests.Shared;

namespace PanelService.Store.Tests.Hosts;

/// <summary>PostgreSQL, a database per test.</summary>
public sealed class PostgresDatabase : IDatabase
{
    /// <summary>Names the tests that need it: [Trait(Trait, Name)].</summary>
    public const string Trait = "Database";

    /// <summary>Its name there.</summary>
    public const string Name = "PostgreSQL";

    private const string Administration = "postgres";

    // Made once: a copy is made in a tenth of the time that the migrations take.
    private static readonly Lazy<string> Template = new(MakeTemplate);

    /// <inheritdoc/>
    public Home Open()
    {
        string name = PostgresServer.Started.NewName();
        Administer($"CREATE DATABASE {name} TEMPLATE {Template.Value}");
        return new DatabaseHome(name);
    }

    internal static void Administer(string statement)
    {
        using var connection = new NpgsqlConnection(PostgresServer.Started.ConnectionTo(Administration) + ";Pooling=false");
        connection.Open();
        using NpgsqlCommand command = connection.CreateCommand();
#pragma warning disable CA2100 // The names in it are our own.
        command.CommandText = statement;
#pragma warning restore CA2100
        command.ExecuteNonQuery();
    }

    private static string MakeTemplate()
    {
        string name = PostgresServer.Started.NewName();
        string connection = PostgresServer.Started.ConnectionTo(name);
        Administer($"CREATE DATABASE {name}");
        using (var studio = new Studio(new StoreOptions { Postgres = connection }, NullLogger<Studio>.Instance))
        {
            studio.OpenAsync().GetAwaiter().GetResult();
        }

        using var pool = new NpgsqlConnection(connection);
        NpgsqlConnection.ClearPool(pool);
        return name;
    }

    private sealed class DatabaseHome(string name) : Home
    {
        private readonly string _connection = PostgresServer.Started.ConnectionTo(name);
        private readonly DataFolder _folder = new();

        internal override (string Key, string Value)[] Settings =>
            [(DataFolder.Setting, _folder.Path), ($"{StoreOptions.Section}:{nameof(StoreOptions.Postgres)}", _connection), ("Planning:Shared", "false")];

        internal override StoreOptions Options => new() { DataFolder = _folder.Path, Postgres = _connection };

        protected override void Dispose(bool disposing)
        {
            using (var pool = new NpgsqlConnection(_connection))
            {
                NpgsqlConnection.ClearPool(pool);
            }

            Administer($"DROP DATABASE {name} WITH (FORCE)");
            _folder.Dispose();
        }
    }
}
