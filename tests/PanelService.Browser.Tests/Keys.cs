using Microsoft.Playwright;

namespace PanelService.Browser.Tests;

/// <summary>A hand that has a keyboard and nothing else.</summary>
internal static class Keys
{
    private const int MostTabs = 400;

    /// <summary>Goes on with Tab until this has the focus; fails where it cannot be reached so.</summary>
    public static async Task TabToAsync(this IPage page, string selector)
    {
        for (int i = 0; i < MostTabs; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            if (await page.EvaluateAsync<bool>("(selector) => document.activeElement === document.querySelector(selector)", selector))
            {
                return;
            }
        }

        Assert.Fail($"Tab does not lead to {selector}.");
    }

    /// <summary>Goes to a field of the order and writes in it.</summary>
    public static async Task WriteInAsync(this IPage page, string path, string text)
    {
        await page.TabToAsync($"[data-path=\"{path}\"]");
        await page.Keyboard.TypeAsync(text);
    }
}
