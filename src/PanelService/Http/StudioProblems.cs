using System.Globalization;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using PanelService.Store.Stock;
using PanelService.Store.Versions;
using PanelService.Wire.Studio;

namespace PanelService.Http;

/// <summary>What goes wrong with supplies, stock and bookings, as problem details.</summary>
internal static class StudioProblems
{
    internal const string NoSuchSupply = "/problems/no-such-supply";
    internal const string NoSuchStock = "/problems/no-such-stock";
    internal const string NoSuchMovement = "/problems/no-such-movement";
    internal const string NameIsTaken = "/problems/name-is-taken";
    internal const string AlreadyUndone = "/problems/already-undone";
    internal const string AlreadyCut = "/problems/already-cut";
    internal const string NotCut = "/problems/not-cut";
    internal const string GoodsGone = "/problems/goods-gone";

    internal static ProblemHttpResult UnknownSort(string sort) => Of(
        NoSuchSupply, StatusCodes.Status404NotFound, "There is no such sort of supplies.", $"Supplies are boards, cloths, adhesives, primers or strips; \"{sort}\" is none of them.");

    internal static ProblemHttpResult UnknownSupply(string sort, string id) => Of(
        NoSuchSupply, StatusCodes.Status404NotFound, "There is no such supply.", $"Nothing is saved as \"{id}\" among the {sort}; GET /api/supplies lists what is.");

    internal static ProblemHttpResult UnknownStock(string id) => Of(
        NoSuchStock, StatusCodes.Status404NotFound, "There is no such piece in stock.", $"No piece was ever given the id \"{id}\"; GET /api/stock lists those there are.");

    internal static ProblemHttpResult UnknownMovement(string id) => Of(
        NoSuchMovement, StatusCodes.Status404NotFound, "There is no such movement.", $"The ledger has no line {id}; GET /api/stock/movements lists those there are.");

    internal static ProblemHttpResult UndoneBefore() => Of(
        AlreadyUndone, StatusCodes.Status409Conflict, "It was taken back before.", "A movement is taken back once. To have it again, take back the movement that took it back.");

    internal static ProblemHttpResult IsNotCut(string id) => Of(
        NotCut, StatusCodes.Status409Conflict, "The plan is not cut.", $"Plan \"{id}\" has not been booked as cut, or that was taken back.");

    internal static ProblemHttpResult CutBefore(string id, DateTimeOffset at) => Of(
        AlreadyCut,
        StatusCodes.Status409Conflict,
        "The plan is cut already.",
        string.Create(CultureInfo.InvariantCulture, $"Plan \"{id}\" was booked as cut at {at:yyyy-MM-dd HH:mm} UTC. A batch made once more is a plan of its own: GET /api/plans/{id}/order, and send that."));

    internal static ProblemHttpResult Gone(IEnumerable<StockLack> missing, string title)
    {
        MissingStockResponse[] lacks = [.. missing.Select(StockTranslation.Write)];
        return TypedResults.Problem(new ProblemDetails
        {
            Type = GoodsGone,
            Status = StatusCodes.Status409Conflict,
            Title = title,
            Detail = $"Nothing was booked. {string.Join(" ", lacks.Select(lack => lack.Text))}",
            Extensions = { ["missing"] = lacks },
        });
    }

    internal static ProblemHttpResult NotSaved(SaveOutcome outcome) => outcome switch
    {
        VersionRefusal refusal => Preconditions.Refuse(refusal),
        NameTaken taken => Of(NameIsTaken, StatusCodes.Status409Conflict, "The id is taken.", taken.Text),
        _ => Of(NoSuchSupply, StatusCodes.Status404NotFound, "There is nothing here.", "Nothing is saved at this address."),
    };

    private static ProblemHttpResult Of(string type, int status, string title, string detail) =>
        TypedResults.Problem(detail: detail, statusCode: status, title: title, type: type);
}
