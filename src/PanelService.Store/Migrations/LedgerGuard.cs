namespace PanelService.Store.Migrations;

/// <summary>The ledger is only added to: the database itself refuses to change or delete a movement or a booking.</summary>
internal static class LedgerGuard
{
    private const string Refusal = "the ledger is only added to";

    private static readonly string[] Tables = ["movements", "bookings"];

    /// <summary>For SQLite.</summary>
    internal static IEnumerable<string> Sqlite() =>
        from table in Tables
        from change in new[] { "UPDATE", "DELETE" }
        select $"CREATE TRIGGER \"{table}_no_{change.ToLowerInvariant()}\" BEFORE {change} ON \"{table}\" BEGIN SELECT RAISE(ABORT, '{Refusal}'); END;";

    /// <summary>For PostgreSQL.</summary>
    internal static IEnumerable<string> Postgres() =>
    [
        $"CREATE FUNCTION refuse_ledger_change() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN RAISE EXCEPTION '{Refusal}'; END $$;",
        .. Tables.Select(table => $"CREATE TRIGGER \"{table}_only_added_to\" BEFORE UPDATE OR DELETE ON \"{table}\" FOR EACH ROW EXECUTE FUNCTION refuse_ledger_change();"),
        .. Tables.Select(table => $"CREATE TRIGGER \"{table}_never_emptied\" BEFORE TRUNCATE ON \"{table}\" FOR EACH STATEMENT EXECUTE FUNCTION refuse_ledger_change();"),
    ];
}
