namespace PanelService.Trials.Pages;

/// <summary>How long something took on the page.</summary>
/// <param name="Clock">Milliseconds by the clock, other work of the machine included.</param>
/// <param name="Processor">Milliseconds of processor time of the page's main thread, whatever else the machine did.</param>
/// <param name="Service">Milliseconds by the clock from the first request to the last answer that it waited for; 0 where that is not asked.</param>
internal sealed record Timed(double Clock, double Processor, double Service);
