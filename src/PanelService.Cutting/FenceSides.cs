namespace PanelService.Cutting;

/// <summary>What a saw's fence can hold.</summary>
/// <param name="Reach">The farthest it goes from the blade: no part between fence and blade is wider.</param>
/// <param name="LeastAtFence">A part narrower than this does not lie between fence and blade where the other is wider.</param>
public readonly record struct FenceSides(long Reach, long LeastAtFence)
{
    /// <summary>Which of the two parts of a cut may lie between fence and blade; neither: it cannot be made.</summary>
    /// <param name="near">The size of one part.</param>
    /// <param name="far">The size of the other; 0 or less: there is none.</param>
    public (bool Near, bool Far) Of(long near, long far)
    {
        bool nearWide = near >= LeastAtFence;
        bool farWide = far >= LeastAtFence;
        var (nearMay, farMay) = nearWide || farWide ? (nearWide, farWide) : (near >= far, far > near);
        return (nearMay && near <= Reach, farMay && far <= Reach);
    }

    /// <summary>Whether a cut with these parts can be made.</summary>
    /// <param name="near">The size of one part.</param>
    /// <param name="far">The size of the other; 0 or less: there is none.</param>
    public bool CanCut(long near, long far) => Of(near, far) is not (false, false);
}
