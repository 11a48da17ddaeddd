using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun.Graph;

/// <summary>What is set once and cut at many times: a fence distance, or a stop on the sled.</summary>
/// <param name="Tool">Fence or sled.</param>
/// <param name="Size">The part between it and the blade, in steps.</param>
internal readonly record struct SawSetting(SawTool Tool, long Size);
