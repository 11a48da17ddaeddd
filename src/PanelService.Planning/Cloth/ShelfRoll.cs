using System.Collections.Immutable;
using PanelService.Cutting;

namespace PanelService.Planning.Cloth;

/// <summary>Shelves one after another on one length of cloth.</summary>
/// <param name="Shelves">What it holds, and how many of each.</param>
/// <param name="Copies">How many such lengths there are.</param>
internal sealed record ShelfRoll(ImmutableArray<(Shelf Shelf, int Count)> Shelves, int Copies)
{
    // More on one length would be a drawing that nobody can read and a document of many megabytes.
    private const int MostPieces = 20_000;

    /// <summary>What the shelves take of the cloth's length.</summary>
    public long Along => Shelves.Sum(part => part.Shelf.Along * part.Count);

    /// <summary>As the engine writes it.</summary>
    public Block ToBlock()
    {
        ImmutableArray<Block> blocks = [.. Shelves.SelectMany(part => Enumerable.Repeat(part.Shelf.ToBlock(), part.Count))];
        return blocks.Length == 1 ? blocks[0] : new StackBlock(Axis.Y, blocks);
    }

    /// <summary>
    /// Lengths filled one after another, each with the highest shelves that still fit: first fit by decreasing height again,
    /// along the cloth. What one holds is repeated as often as there are shelves for it.
    /// </summary>
    /// <param name="shelves">The shelves, the highest first, none higher than the length.</param>
    /// <param name="length">The length.</param>
    public static IEnumerable<ShelfRoll> Fill(IReadOnlyList<Shelf> shelves, long length)
    {
        int[] rest = [.. shelves.Select(shelf => shelf.Copies)];
        while (Array.Exists(rest, count => count > 0))
        {
            int[] taken = Take(shelves, rest, length);
            int copies = Enumerable.Range(0, rest.Length).Where(i => taken[i] > 0).Min(i => rest[i] / taken[i]);
            for (int i = 0; i < rest.Length; i++)
            {
                rest[i] -= taken[i] * copies;
            }

            yield return new ShelfRoll([.. shelves.Zip(taken).Where(pair => pair.Second > 0)], copies);
        }
    }

    // Per shelf: how many of it on the next length. The first is always taken.
    private static int[] Take(IReadOnlyList<Shelf> shelves, int[] rest, long length)
    {
        int[] taken = new int[rest.Length];
        long room = MostPieces;
        for (int i = 0; i < rest.Length; i++)
        {
            bool isFirst = room == MostPieces && rest[i] > 0;
            long most = Math.Min(length / shelves[i].Along, room / shelves[i].Held);
            taken[i] = (int)Math.Min(rest[i], isFirst ? Math.Max(1, most) : most);
            length -= taken[i] * shelves[i].Along;
            room -= Math.Min(room, (long)taken[i] * shelves[i].Held);
        }

        return taken;
    }
}
