namespace PanelService.Planning.Plans;

/// <summary>How often saw and sled are set and how many cuts are made, and how few of each it could be.</summary>
/// <param name="Settings">Distinct settings of the run: fence distances and stops of the sled.</param>
/// <param name="LeastPossible">No run leaves the same pieces and offcuts with fewer, whatever the order of the cuts and
/// the side of the blade.</param>
/// <param name="Steps">Steps of the run.</param>
public sealed record SawProof(int Settings, int LeastPossible, int Steps)
{
    /// <summary>Whether no run has fewer settings.</summary>
    public bool Proven => Settings == LeastPossible;

    /// <summary>No run that leaves the same pieces and offcuts at so few settings has fewer steps.</summary>
    public int LeastSteps { get; init; } = Settings;

    /// <summary>How often the setting is changed: between any two steps.</summary>
    public int Changes => Math.Max(0, Steps - 1);

    /// <summary>No run that leaves the same pieces and offcuts at so few settings has fewer changes.</summary>
    public int LeastChanges => Math.Max(0, LeastSteps - 1);

    /// <summary>Whether no run at so few settings has fewer changes.</summary>
    public bool ChangesProven => Steps == LeastSteps;

    /// <summary>Cuts at the saw, on all copies of every sheet; the supplier's are not among them.</summary>
    public long Cuts { get; init; }

    /// <summary>Nobody leaves the same pieces and offcuts with fewer cuts, at however many settings.</summary>
    public long LeastCuts { get; init; }

    /// <summary>Whether nobody makes fewer cuts.</summary>
    public bool CutsProven => Cuts == LeastCuts;
}
