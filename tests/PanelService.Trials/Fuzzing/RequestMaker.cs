using System.Net.Http.Headers;
using System.Text;
using PanelService.Trials.Loads;

namespace PanelService.Trials.Fuzzing;

/// <summary>Makes a request for an operation: its address, query, headers and body right, borderline or wrong.</summary>
internal sealed class RequestMaker(Wire wire, Dice dice, IReadOnlyList<string> ids)
{
    // A real order to spoil: the way to most of the code goes through a right one.
    private static readonly string Demo = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "demo-data", "tern-island.json"))
        .Replace("\"steady\"", "\"quick\"", StringComparison.Ordinal);

    internal HttpRequestMessage Make()
    {
        Operation operation = dice.Once(4) ? wire.Planning : dice.One(wire.Operations);
        string method = dice.Once(25) ? dice.One<string>(["GET", "PUT", "PATCH", "DELETE", "OPTIONS", "TRACE", "PROPFIND", "HEAD"]) : operation.Method;
        var request = new HttpRequestMessage(new HttpMethod(method), Address(operation));
        if (operation.Body is not null || dice.Once(20))
        {
            request.Content = Body(operation);
        }

        Headers(request);
        return request;
    }

    private Uri Address(Operation operation)
    {
        string path = string.Join('/', operation.Path.Split('/').Select(part => part.Contains('{', StringComparison.Ordinal) ? Parameter(part) : part));
        string query = string.Join('&', operation.Queries.Where(_ => dice.Once(2)).Select(name => $"{name}={dice.One(Hostile.Words)}"));
        return new Uri(query.Length > 0 ? $"{path}?{query}" : path, UriKind.Relative);
    }

    private string Parameter(string part)
    {
        int brace = part.IndexOf('}', StringComparison.Ordinal);
        string value = ids.Count > 0 && dice.Below(3) > 0 ? dice.One(ids) : dice.One(Hostile.Words);
        return value + part[(brace + 1)..];
    }

    private ByteArrayContent Body(Operation operation)
    {
        if (operation.Path.EndsWith(".csv", StringComparison.Ordinal) && !dice.Once(5))
        {
            var table = new ByteArrayContent(Encoding.UTF8.GetBytes(Table()));
            table.Headers.ContentType = MediaTypeHeaderValue.Parse("text/csv");
            return table;
        }

        bool order = operation.Path is "/api/plans" && dice.Below(3) > 0;
        string text = Spoiler.Spoil(order ? dice.One<string>([Demo, Orders.Small(dice)]) : wire.Sample(operation.Body, dice), dice);
        byte[] bytes = Encoding.UTF8.GetBytes(text);
        if (dice.Once(40) && bytes.Length > 0)
        {
            bytes[dice.Below(bytes.Length)] = (byte)dice.Below(256);
        }

        var content = new ByteArrayContent(dice.Once(200) ? new byte[(1024 * 1024) + dice.Below(10)] : bytes);
        string type = dice.Once(15) ? dice.One<string>(["text/plain", "application/xml", "application/json; charset=utf-16", "multipart/form-data", "application/json; charset=nonsense", "text/csv"]) : "application/json";
        content.Headers.ContentType = MediaTypeHeaderValue.Parse(type);
        return content;
    }

    // Columns in one another, doubled, too deep; cells of every sort; a quote left open.
    private string Table()
    {
        string[] columns = ["sort", "id", .. Enumerable.Range(0, dice.Below(8)).Select(_ => dice.One(Hostile.Columns))];
        IEnumerable<string> lines = Enumerable.Range(0, 1 + dice.Below(3)).Select(_ => string.Join(',', columns.Select(Cell)));
        string text = string.Join(dice.One<string>(["\n", "\r\n"]), lines.Prepend(string.Join(',', columns)));
        return dice.Once(6) ? text.Insert(dice.Below(text.Length + 1), dice.One<string>(["\"", "\r", "\0", "\n\n", ",", "\uFEFF"])) : text;
    }

    private string Cell(string column) => column switch
    {
        "sort" => dice.One<string>(["boards", "cloths", "adhesives", "offcut", "board", "cloth", "nails", ""]),
        "id" => dice.One<string>(["x", "", "007", new string('x', 100)]),
        _ => dice.Once(3) ? "" : dice.One(Hostile.Tokens) is var token && token.Contains(',', StringComparison.Ordinal) ? $"\"{token.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : token,
    };

    private void Headers(HttpRequestMessage request)
    {
        foreach (string name in new[] { "Prefer", "If-Match", "If-None-Match", "Accept", "Accept-Language", "Authorization", "Cookie", "X-Forwarded-For", "Range", "Accept-Encoding", "Expect", "TE", "Origin", "Sec-Fetch-Site", "Content-Encoding", "Forwarded" })
        {
            if (dice.Once(12))
            {
                _ = request.Headers.TryAddWithoutValidation(name, dice.Once(10) ? new string('a', 5_000) : Uri.UnescapeDataString(dice.One(Hostile.Words)).Replace("\r\n", "", StringComparison.Ordinal));
            }
        }
    }
}
