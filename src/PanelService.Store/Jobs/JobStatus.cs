using PanelService.Planning.Measures;

namespace PanelService.Store.Jobs;

/// <summary>A shared job as it stands.</summary>
/// <param name="State">How far it is.</param>
/// <param name="Spent">What the best plan so far spends; null before the first.</param>
/// <param name="LeastPossible">The bound so far; null before the first.</param>
/// <param name="StopAsked">Whether somebody asked for the best plan so far.</param>
/// <param name="Problem">Why there is no plan: a problem document.</param>
public sealed record JobStatus(JobState State, Money? Spent, Money? LeastPossible, bool StopAsked, string? Problem);
