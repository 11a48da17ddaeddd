namespace PanelService.Trials.Pages;

/// <summary>How a page scrolled.</summary>
/// <param name="Pixels">How far.</param>
/// <param name="Frames">Frames painted.</param>
/// <param name="Long">Frames of 50 ms and more by the clock, as the browser itself reports them (Long Animation Frames API).</param>
/// <param name="Longest">The longest of these, in milliseconds; 0 where none was long.</param>
/// <param name="Tasks">How many tasks the page's main thread was given.</param>
/// <param name="LongTasks">Those of them that took more than 50 ms of processor time.</param>
/// <param name="LongestTask">The longest of its tasks, in milliseconds of processor time.</param>
internal sealed record Scrolled(double Pixels, int Frames, int Long, double Longest, int Tasks, int LongTasks, double LongestTask);
