using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace PanelService.Browser.Tests;

/// <summary>The rules of WCAG 2.2, levels A and AA, as far as a program can check them.</summary>
internal static class Axe
{
    private static readonly AxeRunOptions Options = new()
    {
        // Of what passes one place a rule is enough, and far less to carry over.
        ResultTypes = [ResultType.Violations],
        RunOnly = new RunOnlyOptions { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa"] },
    };

    /// <summary>What is wrong with the page as it stands now, or with a part of it: one line for each element.</summary>
    public static async Task<string[]> FaultsAsync(this IPage page, string view, string part = "html")
    {
        AxeResult result = await page.Locator(part).RunAxe(Options);
        Assert.True(result.Passes.Length > 3, $"{view}: only {result.Passes.Length} rules found anything to look at.");
        return [.. result.Violations.SelectMany(rule => rule.Nodes.Select(node => $"{view}: {rule.Id} at {node.Target}: {node.Html}"))];
    }
}
