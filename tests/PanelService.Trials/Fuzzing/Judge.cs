using System.Net;
using System.Text.Json;

namespace PanelService.Trials.Fuzzing;

/// <summary>What every answer must be, whatever was asked.</summary>
internal static class Judge
{
    // What an answer never shows: our code's names, a stack, a folder, the database's own words.
    private static readonly string[] Inner = ["   at PanelService", "System.", "Microsoft.", "Exception", "SQLite Error", "/src/", "StackTrace", "Npgsql"];

    /// <summary>What is wrong with an answer; null where nothing is.</summary>
    internal static string? Fault(HttpStatusCode status, string? type, string body)
    {
        int code = (int)status;
        if (code >= 500 && !IsBusy(code, body))
        {
            return $"a {code}";
        }

        if (code >= 400 && !IsProblem(type, body, code))
        {
            return $"a {code} that is no problem document ({type})";
        }

        return code >= 400 && Inner.FirstOrDefault(inner => body.Contains(inner, StringComparison.Ordinal)) is { } leak ? $"inner workings: {leak}" : null;
    }

    private static bool IsBusy(int code, string body) =>
        code == 503 && (body.Contains("/problems/busy", StringComparison.Ordinal) || body.Contains("/problems/no-plan-in-time", StringComparison.Ordinal) || body.Contains("/problems/not-ready", StringComparison.Ordinal));

    private static bool IsProblem(string? type, string body, int code)
    {
        if (type != "application/problem+json")
        {
            return false;
        }

        try
        {
            using JsonDocument problem = JsonDocument.Parse(body);
            JsonElement root = problem.RootElement;
            return root.GetProperty("status").GetInt32() == code
                && root.GetProperty("title").GetString() is { Length: > 0 }
                && root.GetProperty("detail").GetString() is { Length: > 0 };
        }
        catch (Exception fault) when (fault is JsonException or KeyNotFoundException or InvalidOperationException)
        {
            return false;
        }
    }
}
