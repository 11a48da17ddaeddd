namespace PanelService.Planning.Plans;

/// <summary>How often saw and sled are set, and how seldom it could be.</summary>
/// <param name="Settings">Distinct settings of the run: fence distances and stops of the sled.</param>
/// <param name="LeastPossible">No run leaves the same pieces and offcuts with fewer, whatever the order of the cuts and
/// the side of the blade.</param>
/// <param name="Steps">Steps of the run: one more than there are changes of the setting.</param>
public sealed record SawProof(int Settings, int LeastPossible, int Steps)
{
    /// <summary>Whether no run has fewer settings.</summary>
    public bool Proven => Settings == LeastPossible;
}
