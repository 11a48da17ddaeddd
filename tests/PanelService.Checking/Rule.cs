namespace PanelService.Checking;

/// <summary>The nine rules that hold in every plan, by their numbers; 0 stands for a document that cannot be read.</summary>
public enum Rule
{
    /// <summary>The document lacks a field, or a field is not of its kind.</summary>
    Document = 0,

    /// <summary>Replaying the cuts from the whole sheet leaves exactly pieces and offcuts.</summary>
    Geometry = 1,

    /// <summary>The pieces of a mark number what is made; made and bought are what was ordered.</summary>
    Demand = 2,

    /// <summary>Every piece measures its line's cut size, within the undersize allowed.</summary>
    Size = 3,

    /// <summary>Nothing is used beyond what is there or for sale, nor where it may not serve.</summary>
    Supply = 4,

    /// <summary>What is spent is what the goods cost, and the bound does not contradict itself.</summary>
    Proof = 5,

    /// <summary>Every cut in one pass, after the one that makes its workpiece, at a setting that gives its size.</summary>
    SawRun = 6,

    /// <summary>Cloth pieces: size, selvedge, no overlap, partable by straight cuts.</summary>
    Cloth = 7,

    /// <summary>The sums.</summary>
    Money = 8,

    /// <summary>The same order gives the same plan.</summary>
    Repeatable = 9,

    /// <summary>The bench: no job before what it needs, hands and press never over their number, never outside working hours.</summary>
    Bench = 10,
}
