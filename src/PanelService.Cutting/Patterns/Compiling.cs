using System.Runtime.CompilerServices;

namespace PanelService.Cutting.Patterns;

/// <summary>How the runtime is to compile the engine's innermost loops; the service keeps no profiles that would tell it.</summary>
internal static class Compiling
{
    /// <summary>At its best at once: a first fill would be half over before the runtime saw what it turns around.</summary>
    public const MethodImplOptions AtOnce = MethodImplOptions.AggressiveOptimization;

    /// <summary>Where it is called, even if there is a loop in it or it is long: what the runtime does by itself with profiles only.</summary>
    public const MethodImplOptions InPlace = MethodImplOptions.AggressiveInlining;
}
