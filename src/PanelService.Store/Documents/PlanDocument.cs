using System.Text.Json;
using PanelService.Planning.Plans;

namespace PanelService.Store.Documents;

/// <summary>A plan as it is stored: whole, with its order, in exact steps and minor units, under a version.</summary>
internal static class PlanDocument
{
    /// <summary>The version this program writes. It reads this one and those before it.</summary>
    internal const int Version = 1;

    internal static string Write(Plan plan) => StoreJson.Write(plan);

    /// <summary>The plan; null where a newer program wrote it.</summary>
    /// <param name="document">What was stored.</param>
    /// <param name="version">Under which version.</param>
    /// <exception cref="Faults.StoreUnavailableException">It is damaged.</exception>
    internal static Plan? Read(string document, int version) => version > Version ? null : Joined(StoreJson.Read<Plan>(document));

    // Layouts name the order's own goods: the same records again, not copies of them. A sheet whose price has tax in it, or is the
    // one for so many, keeps the board at what it cost.
    private static Plan Joined(Plan plan) => plan with
    {
        Sheets = [.. plan.Sheets.Select(sheet => sheet with
        {
            Board = plan.Order.Boards.FirstOrDefault(board => board.Id == sheet.Board.Id && board.Price == sheet.Board.Price) ?? sheet.Board,
        })],
        Cloth = [.. plan.Cloth.Select(cloth => cloth with { Cloth = plan.Order.Cloths.FirstOrDefault(one => one.Id == cloth.Cloth.Id) ?? cloth.Cloth })],
    };
}
