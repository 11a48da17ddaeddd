using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Xml;
using System.Xml.Linq;
using PanelService.Api.Tests.Hosts;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;
using PanelService.Wire.Plans;

namespace PanelService.Api.Tests.Plans;

/// <summary>
/// Whatever stands in an order's texts comes out as text: no script or markup in any drawing, no formula in a list for
/// spreadsheets (OWASP, "CSV Injection"; ASVS 5.0, 1.2.1 and 1.2.10), no line of its own in a calendar (RFC 5545, 3.1).
/// </summary>
public sealed class HarmlessOutputTests(HarmlessOutputTests.OneHost one) : IClassFixture<HarmlessOutputTests.OneHost>
{
    // What the drawings are made of: nothing that runs, loads, links or embeds (SVG 2, chapters 3.4, 5 and 16).
    private static readonly HashSet<string> Elements = ["svg", "g", "rect", "path", "text", "title", "desc", "circle"];

    // As long as the wire allows.
    private const int MostMark = 16;
    private const int MostId = 63;

    private static readonly HashSet<string> Beginnings = ["=", "+", "-", "@", "\t", "\r", "\n", "\0", "＝", "＋", "－", "＠"];

    private static readonly string[] Held =
    [
        "<script>alert(1)</script>",
        "</text></svg><script xmlns=\"http://www.w3.org/1999/xhtml\">alert(1)</script>",
        "]]><img src=x onerror=alert(1)>",
        "\" onload=\"alert(1)\" x=\"",
        "&lt;script&gt;&#60;&amp;",
        "<!--<?xml version='1.0'?><!DOCTYPE svg [<!ENTITY e SYSTEM 'file:///etc/passwd'>]>&e;",
        "javascript:alert(1)",
        "=1+1",
        "@SUM(A1)",
        "+1",
        "-1",
        "＝1+1",
        "x;=1+1",
        "x\",\"=1+1",
        "ATTACH:http://evil.example",
        "\uD83D\uDE00 \u00FC\u4E2D",
    ];

    private static readonly string[] Refused =
    [
        "\t=1+1",
        "\r=1+1",
        "\n=1+1",
        "\u0000=1",
        "x\r\nATTACH:http://evil.example\r\nBEGIN:VALARM",
        "\uFFFE",
    ];

    /// <summary>Texts that an order may hold.</summary>
    public static TheoryData<string> Texts => new(Held);

    /// <summary>Texts that no order may hold at all.</summary>
    public static TheoryData<string> Unprintable => new(Refused);

    [Theory]
    [MemberData(nameof(Texts))]
    public async Task Any_text_comes_out_as_text(string text)
    {
        using HttpClient client = one.Host.CreateClient();
        using HttpResponseMessage made = await client.PostOrderAsync(OrderOf(text));
        Assert.True(made.StatusCode == HttpStatusCode.Created, await made.Content.ReadAsStringAsync());
        string plan = made.Headers.Location!.OriginalString;

        foreach (string drawing in await DrawingsAsync(client, plan, text))
        {
            HoldToText(drawing, text);
        }

        HoldToCells(await client.GetStringAsync($"{plan}/buy.csv"), text);
        HoldToLines(await client.GetStringAsync($"{plan}/calendar.ics?start=2026-12-01T09:00"));
    }

    [Theory]
    [MemberData(nameof(Unprintable))]
    public async Task What_no_printer_could_print_is_refused_wherever_it_stands(string text)
    {
        using HttpClient client = one.Host.CreateClient();
        using HttpResponseMessage refused = await client.PostOrderAsync(OrderOf(text));
        JsonElement errors = (await Json.ReadProblemAsync(refused, 400, "/problems/invalid-request")).GetProperty("errors");
        string[] fields = ["title", "panels[0].mark", "overheads[0].name", "boards[0].id", "boards[0].name", "cloths[0].id", "cloths[0].name", "adhesives[0].id", "adhesives[0].name"];
        Assert.Superset(fields.ToHashSet(), errors.EnumerateObject().Select(error => error.Name).ToHashSet());
    }

    // Whatever way a text may have found into a plan: a list is safe by itself.
    [Fact]
    public async Task No_cell_of_a_list_begins_a_formula()
    {
        string[] texts = [.. Held, .. Refused];
        using var host = new TestHost((order, _, _, _) => new Planned(SamplePlanner.PlanOf(order) with
        {
            Buy = [.. texts.Select(text => new Purchase(text, "x" + text, 2, SaleUnit.Sheet, new Money(610)))],
        }));
        using HttpClient client = host.CreateClient();
        using HttpResponseMessage made = await client.PostOrderAsync(SampleOrders.Smallest);
        HoldToCells(await client.GetStringAsync($"{made.Headers.Location}/buy.csv"), texts);
    }

    [Fact]
    public async Task A_table_of_the_studio_begins_no_formula_and_comes_back_as_it_was()
    {
        using var host = new TestHost();
        using HttpClient client = host.CreateClient();
        string[] texts = [.. Held, "'=1", "''+1", "x;'-1"];
        for (int i = 0; i < texts.Length; i++)
        {
            var good = new JsonObject { ["name"] = texts[i], ["kind"] = "hardboard", ["units"] = "inch", ["currency"] = "EUR", ["thickness"] = "1/8", ["width"] = 24, ["height"] = 48, ["price"] = 6.10 };
            using HttpResponseMessage put = await client.PutAsync($"/api/supplies/boards/b{i}", Json.Content(Encoding.UTF8.GetBytes(good.ToJsonString())));
            Assert.True(put.IsSuccessStatusCode, await put.Content.ReadAsStringAsync());
        }

        string table = await client.GetStringAsync("/api/supplies.csv");
        HoldToCells(table, texts);
        using HttpResponseMessage back = await client.PostAsync("/api/supplies.csv", Json.Content(Encoding.UTF8.GetBytes(table), "text/csv"));
        Assert.True(back.StatusCode == HttpStatusCode.OK, await back.Content.ReadAsStringAsync());
        for (int i = 0; i < texts.Length; i++)
        {
            Assert.Equal(texts[i], (await client.GetJsonAsync($"/api/supplies/boards/b{i}")).GetProperty("name").GetString());
        }
    }

    [Fact]
    public void What_was_disarmed_is_armed_again_to_the_letter()
    {
        string[] texts = [.. Held, .. Refused, "'=1", "''+1", "x;'-1", "; \"=", "'", "''", ""];
        Assert.All(texts, text =>
        {
            string safe = Formulas.Disarm(text);
            Assert.Equal(text, Formulas.Arm(safe));
            Assert.Equal(safe, Formulas.Arm(Formulas.Disarm(safe)));
        });
    }

    private static async Task<List<string>> DrawingsAsync(HttpClient client, string plan, string text)
    {
        string[] parts = ["sheets/1.svg", "cloth/1.svg", "labels.svg", "saw-run.svg?lang=en", "saw-run.svg?lang=fr", "supplier-slip.svg", "batch-curve.svg?upTo=2"];
        var drawings = new List<string>();
        foreach (string part in parts)
        {
            using HttpResponseMessage drawn = await client.GetAsync($"{plan}/{part}");
            Assert.Equal(("image/svg+xml", "utf-8"), (drawn.Content.Headers.ContentType?.MediaType, drawn.Content.Headers.ContentType?.CharSet));
            drawings.Add(await drawn.Content.ReadAsStringAsync());
        }

        JsonNode question = new JsonObject
        {
            ["units"] = "inch",
            ["panel"] = new JsonObject { ["width"] = 8, ["height"] = 10 },
            ["boards"] = JsonNode.Parse(OrderOf(text))!["boards"]!.DeepClone(),
        };
        using HttpResponseMessage answered = await client.PostOrderAsync(question.ToJsonString(), "/api/yield");
        Assert.True(answered.StatusCode == HttpStatusCode.OK, await answered.Content.ReadAsStringAsync());
        drawings.AddRange(Drawn(await Json.ReadAsync(answered)));
        Assert.True(drawings.Count > parts.Length, "the yield has no drawing");
        return drawings;
    }

    private static IEnumerable<string> Drawn(JsonElement answer) => answer.ValueKind switch
    {
        JsonValueKind.Object => answer.EnumerateObject().SelectMany(field => Drawn(field.Value)),
        JsonValueKind.Array => answer.EnumerateArray().SelectMany(Drawn),
        JsonValueKind.String when answer.GetString()!.StartsWith("<svg", StringComparison.Ordinal) => [answer.GetString()!],
        _ => [],
    };

    private static void HoldToText(string drawing, string text)
    {
        using var reader = XmlReader.Create(new StringReader(drawing), new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit });
        XDocument document = XDocument.Load(reader);
        Assert.All(document.DescendantNodes(), node => Assert.True(node is XElement or XText and not XCData, node.ToString()));
        Assert.All(document.Descendants(), element =>
        {
            Assert.Equal("http://www.w3.org/2000/svg", element.Name.NamespaceName);
            Assert.Contains(element.Name.LocalName, Elements);
            Assert.DoesNotContain(element.Attributes(), attribute =>
                attribute.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase)
                || attribute.Name.LocalName is "href" or "style" or "src"
                || (attribute.Value.Contains("url(", StringComparison.OrdinalIgnoreCase) && attribute.Name.LocalName != "data-mark"));
        });

        // Something of it is really there: else nothing was tried. Long texts are cut to the room they have.
        string shown = string.Concat(text.Where(sign => !char.IsControl(sign) && sign != '\uFFFE')).Trim();
        Assert.Contains(shown[..Math.Min(2, shown.Length)], document.Root!.Value + string.Concat(document.Descendants().Attributes("data-mark").Select(mark => mark.Value)), StringComparison.Ordinal);
    }

    private static void HoldToCells(string list, params string[] texts)
    {
        List<List<string>> rows = Rows(list);
        Assert.True(rows.Count > 2, list);
        Assert.All(rows, row => Assert.Equal(rows[0].Count, row.Count));
        foreach (string cell in rows.SelectMany(row => row))
        {
            foreach (string part in cell.Split(';', '\t', '\r', '\n').Prepend(cell))
            {
                Assert.False(part.Length > 0 && Beginnings.Contains(part[..1]), $"\"{cell}\" begins a formula");
            }
        }

        Assert.All(texts, text => Assert.Contains(rows.SelectMany(row => row), cell => Bare(cell).Contains(Bare(text), StringComparison.Ordinal)));
    }

    private static string Bare(string cell) => cell.Replace("'", "", StringComparison.Ordinal);

    // RFC 4180, section 2, read by the letter.
    private static List<List<string>> Rows(string list)
    {
        List<List<string>> rows = [[]];
        var cell = new StringBuilder();
        bool quoted = false;
        for (int i = 0; i < list.Length; i++)
        {
            if (list[i] == '"' && quoted && i + 1 < list.Length && list[i + 1] == '"')
            {
                cell.Append(list[i++]);
            }
            else if (list[i] == '"')
            {
                quoted = !quoted;
            }
            else if (!quoted && (list[i] == ',' || list[i..].StartsWith("\r\n", StringComparison.Ordinal)))
            {
                rows[^1].Add(cell.ToString());
                cell.Clear();
                if (list[i] != ',')
                {
                    i++;
                    rows.Add([]);
                }
            }
            else
            {
                cell.Append(list[i]);
            }
        }

        Assert.Empty(rows[^1]);
        return rows[..^1];
    }

    // Every line begins one of the properties a batch has, or goes on from the one before.
    private static void HoldToLines(string calendar)
    {
        HashSet<string> known = ["BEGIN:VCALENDAR", "END:VCALENDAR", "BEGIN:VEVENT", "END:VEVENT"];
        HashSet<string> properties = ["PRODID", "VERSION", "UID", "DTSTAMP", "DTSTART", "DTEND", "SUMMARY", "DESCRIPTION", "SEQUENCE", "STATUS"];
        string[] lines = calendar.Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.All(lines, line =>
        {
            Assert.True(line[0] == ' ' || known.Contains(line) || properties.Contains(line.Split(':', ';')[0]), line);
            Assert.DoesNotContain(line, sign => char.IsControl(sign));
        });
        Assert.True(lines.Count(line => line == "BEGIN:VEVENT") > 2, calendar);
    }

    private static string OrderOf(string text)
    {
        JsonNode order = JsonNode.Parse(
            """
            { "units": "inch", "currency": "EUR", "effort": "quick",
              "panels": [ { "width": 8, "height": 10, "quantity": 2, "surface": "cloth", "shopPrice": 20 } ],
              "boards": [ { "thickness": "1/8", "width": 24, "height": 48, "price": 6.10 } ],
              "cloths": [ { "width": 54, "sale": { "by": "length", "step": 36, "price": 12 } } ],
              "adhesives": [ { "coverage": { "area": 1000, "volume": 8 }, "containers": [ { "volume": 8, "price": 7.90 } ] } ],
              "overheads": [ { "cost": 2 } ],
              "saw": { "carry": [24, 30] } }
            """)!;
        order["title"] = text;
        order["panels"]![0]!["mark"] = text[..Math.Min(text.Length, MostMark)];
        order["overheads"]![0]!["name"] = text;
        (string List, string Tail)[] goods = [("boards", "b"), ("cloths", "c"), ("adhesives", "g")];
        foreach ((string list, string tail) in goods)
        {
            order[list]![0]!["id"] = text[..Math.Min(text.Length, MostId)] + tail;
            order[list]![0]!["name"] = text;
        }

        return order.ToJsonString();
    }

    /// <summary>One service for all cases.</summary>
    public sealed class OneHost : IDisposable
    {
        internal TestHost Host { get; } = new();

        /// <inheritdoc/>
        public void Dispose() => Host.Dispose();
    }
}
