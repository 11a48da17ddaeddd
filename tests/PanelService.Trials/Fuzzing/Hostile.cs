namespace PanelService.Trials.Fuzzing;

/// <summary>Values that have broken programs before: as JSON tokens, and as text in addresses and headers.</summary>
internal static class Hostile
{
    /// <summary>JSON, well formed or not.</summary>
    internal static readonly string[] Tokens =
    [
        "null", "true", "false", "0", "-0", "-1", "1", "2", "0.5", "1e-28", "1e28", "-1e28", "1e308", "1e309", "1e999", "-1e999", "NaN", "Infinity", "-Infinity",
        "0x10", "01", ".5", "5.", "+1", "1_000", "2147483647", "2147483648", "-2147483649", "4294967296", "9223372036854775807", "9223372036854775808",
        "79228162514264337593543950335", "79228162514264337593543950336", "0.0000000000000000000000000001", "393700", "393700.8", "3.0517578125e-7", "10000000", "99999",
        "\"\"", "\" \"", "\"0\"", "\"-1\"", "\"1/0\"", "\"0/0\"", "\"1/3\"", "\"999999/000001\"", "\"1/999999999999\"", "\"99999999 yd\"", "\"1e9 mm\"", "\"∞\"", "\"½\"", "\"８\"", "\"8\\\" 1\"",
        "\"2' 6\\\"\"", "\"2' 6' 1\"", "\"1 2 3 4\"", "\"16--1/2\"", "\"0,5,5 cm\"", "\"NaN\"", "\"8 parsec\"",
        "\"\\u0000\"", "\"\\uFFFF\"", "\"\\uD800\"", "\"\\uDC00\\uD800\"", "\"\\u202Egnp.exe\"", "\"😀👩‍👩‍👧‍👦\"", "\"e\\u0301\"", "\"İIıi\"", "\"<script>alert(1)</script>\"", "\"]]>&lt;!--\"", "\"=1+1\"", "\"@SUM(A1)\"", "\"+1\\t\"",
        "\"'; DROP TABLE plans; --\"", "\"${jndi:ldap://x}\"", "\"../../../../etc/passwd\"", "\"%00\"", "\"\\r\\nSet-Cookie: a=b\"", "\"inch\"", "\"roll\"", "\"height\"", "\"cloth\"", "\"thorough\"",
        "[]", "[[]]", "{}", "[null]", "[1,2]", "[1,2,3]", "{\"id\":1}", "{\"__proto__\":{}}", "{\"a\":1,\"a\":2}", "[1,", "{\"a\"", "\"open", "/* c */ 1", "// c\n1", "'a'", "undefined",
    ];

    /// <summary>For addresses, queries and headers.</summary>
    internal static readonly string[] Words =
    [
        "x", "0", "-1", "1", "2147483648", "99999999999999999999", "1e3", "NaN", "%0d%0aSet-Cookie:a=b", "..", "..%2f..%2fetc%2fpasswd", "%2e%2e/%2e%2e/appsettings.json", "....//", "C:%5Cwindows",
        "%ff%fe", "%E2%80%AE", "%F0%9F%98%80", "<script>", "%3Cscript%3E", "'%20OR%201=1--", "null", "undefined", "true", "*", "?", "#", "a%20b", "A7", "B1", "boards", "cloths", "tern-island", "inline", "a4", "letter",
        "2026-02-30", "2026-11-25", "2026-11-25T09:00", "9999-12-31T23:59:59", "0001-01-01", "Europe/Paris", "Mars/Base", "-2147483649", "respond-async", "respond-async, wait=-1", "\"1\"", "W/\"1\"", "*/*;q=nan",
    ];

    /// <summary>First lines of tables: fields there are, and what stands in the way of others.</summary>
    internal static readonly string[] Columns =
    [
        "width", "height", "thickness", "price", "units", "currency", "sale.by", "sale.step", "sale.price", "sale", "sale.price.x", "containers[0].volume", "containers[0].price", "containers[7].price",
        "containers", "containers[0]", "containers[0].volume.x", "containers[999].x", "coverage.area", "coverage.volume", "coverage", "count", "", ".", "..", "a.b.c.d.e.f.g.h", "width.width", "__proto__", "\"a,b\"",
    ];

    /// <summary>A word so long, or an array so deep, that a careless reader falls over.</summary>
    internal static string Large(Dice dice) => dice.Below(6) switch
    {
        0 => $"\"{new string('a', 100_000)}\"",
        1 => new string('[', 10_000) + new string(']', 10_000),
        2 => string.Concat(Enumerable.Repeat("{\"a\":", 5_000)) + "1" + new string('}', 5_000),
        3 => $"[{string.Join(',', Enumerable.Repeat("1", 20_000))}]",
        4 => new string('9', 5_000),
        _ => $"\"{string.Concat(Enumerable.Repeat("\\u0041", 20_000))}\"",
    };
}
