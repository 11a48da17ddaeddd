using System.Text.RegularExpressions;

namespace PanelService.Checking.Rules;

/// <summary>Rule 9: two plans of one order are the same text but for the id and times.</summary>
internal static partial class RepeatableRule
{
    public static IEnumerable<Violation> Check(string one, string oneId, string other, string otherId)
    {
        string a = Plain(one, oneId), b = Plain(other, otherId);
        if (a != b)
        {
            int at = a.Zip(b).TakeWhile(pair => pair.First == pair.Second).Count();
            yield return new Violation(
                Rule.Repeatable, $"character {at}", $"\"{Around(a, at)}\" the first time, \"{Around(b, at)}\" the second");
        }
    }

    private static string Plain(string plan, string id) => Time().Replace(plan.Replace(id, "{id}", StringComparison.Ordinal), "{time}");

    private static string Around(string text, int at) => text[Math.Max(0, at - 40)..Math.Min(text.Length, at + 40)];

    [GeneratedRegex(@"\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d+)?)?(Z|[+-]\d{2}:\d{2})?")]
    private static partial Regex Time();
}
