// Problem: a packing in which nothing more fits is to be loosened where that is promising.
// Idea:    a few bins by chance, and in each some nodes of its tree, from single pieces to whole stacks; now and then all of a bin.
//          A node taken out leaves its room as one piece of slack.
// Source:  adjacent string removal of Christiaens and Vanden Berghe, Transportation Science 54 (2020), carried over to
//          leftover trees by Gardeyn and Wauters, EJOR 302 (2022).
// Cost:    one pass over a bin's nodes per node taken out.
namespace PanelService.Cutting.Many;

/// <summary>Takes pieces out.</summary>
/// <param name="random">Where chance comes from.</param>
internal sealed class Ruin(SeededRandom random)
{
    private const int MeanPieces = 8;

    /// <summary>Takes some pieces out.</summary>
    /// <param name="packing">The packing.</param>
    public void Run(Packing packing)
    {
        int wanted = 1 + random.Below(2 * MeanPieces);
        int taken = 0;
        for (int tries = 0; taken < wanted && tries < 4; tries++)
        {
            int bin = AnyOpen(packing);
            if (bin < 0)
            {
                return;
            }

            int share = 1 + random.Below(wanted);
            if (random.Below(10) == 0)
            {
                taken += packing.Remove(bin, packing.Bin(bin).Root);
                continue;
            }

            for (int most = taken + share; taken < most && packing.IsOpen(bin);)
            {
                var chosen = packing.Bin(bin);
                taken += packing.Remove(bin, chosen.Live(random.Below(chosen.Nodes)));
            }
        }
    }

    private int AnyOpen(Packing packing)
    {
        for (int tries = 0; packing.Bins > 0 && tries < 20; tries++)
        {
            int bin = random.Below(packing.Bins);
            if (packing.IsOpen(bin))
            {
                return bin;
            }
        }

        return -1;
    }
}
