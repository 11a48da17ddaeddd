namespace PanelService.Planning.Days;

/// <summary>One step of a batch's work.</summary>
/// <param name="Task">What is done.</param>
/// <param name="Number">The round of the press, or the coat; 1 for what is done once.</param>
/// <param name="Panels">How many panels (or cloths) it is done to; 0 for the errand.</param>
/// <param name="Minutes">How long it takes.</param>
/// <param name="NextMorning">Whether it waits for the start of a working day after the step before it.</param>
public sealed record BenchStep(BenchTask Task, int Number, long Panels, decimal Minutes, bool NextMorning = false);
