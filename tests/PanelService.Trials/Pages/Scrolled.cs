namespace PanelService.Trials.Pages;

/// <summary>How a page scrolled.</summary>
/// <param name="Frames">Frames painted.</param>
/// <param name="Long">Frames of 50 ms and more, as the browser itself reports them (Long Animation Frames API).</param>
/// <param name="Longest">The longest, in milliseconds by the clock; 0 where none was long.</param>
/// <param name="LongTasks">The main thread's tasks that took more than 50 ms of processor time.</param>
/// <param name="LongestTask">The longest of its tasks, in milliseconds of processor time.</param>
internal sealed record Scrolled(int Frames, int Long, double Longest, int LongTasks, double LongestTask);
