using PanelService.Cutting;

namespace PanelService.Planning.SawRun.Graph;

/// <summary>
/// One way of cutting a workpiece in two. Sizes are grown by one kerf, so that the parts make up the whole.
/// </summary>
/// <param name="Axis">The axis cut across.</param>
/// <param name="NearSize">The grown extent of the part nearer the origin.</param>
/// <param name="Near">What the nearer part is to become; null: it is waste.</param>
/// <param name="Far">What the farther part is to become; null: it is waste.</param>
/// <param name="NearSetting">The setting that keeps the nearer part beside the fence; -1: it may not lie there.</param>
/// <param name="FarSetting">The same for the farther part.</param>
/// <param name="IsTrim">Whether it trims a factory edge.</param>
internal sealed record CutSplit(
    Axis Axis, long NearSize, CutShape? Near, CutShape? Far, int NearSetting, int FarSetting, bool IsTrim = false);
