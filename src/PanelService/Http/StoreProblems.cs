using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using PanelService.Store.Faults;

namespace PanelService.Http;

/// <summary>What goes wrong with the studio's memory, as problem details.</summary>
internal static class StoreProblems
{
    internal const string PlanIsCut = "/problems/plan-is-cut";
    internal const string PlanTooNew = "/problems/plan-too-new";

    internal static int StatusOf(StoreFault fault) =>
        fault == StoreFault.Full ? StatusCodes.Status507InsufficientStorage : StatusCodes.Status503ServiceUnavailable;

    internal static ProblemDetails Of(StoreUnavailableException fault) => new()
    {
        Type = fault.Fault switch
        {
            StoreFault.Full => "/problems/memory-full",
            StoreFault.NotWritable => "/problems/memory-not-writable",
            StoreFault.Busy => "/problems/memory-busy",
            StoreFault.Unreachable => "/problems/memory-unreachable",
            StoreFault.Newer => "/problems/memory-newer",
            StoreFault.Damaged => "/problems/memory-damaged",
            _ => Problems.InternalError,
        },
        Status = StatusOf(fault.Fault),
        Title = "The studio's memory cannot be used now.",
        Detail = $"{fault.Message} Nothing stored was changed; the log has the details. The same request works again once that is put right.",
    };

    internal static ProblemHttpResult IsCut(string id) => TypedResults.Problem(
        type: PlanIsCut,
        statusCode: StatusCodes.Status409Conflict,
        title: "The plan is cut.",
        detail: $"Plan \"{id}\" has been booked as cut and the ledger speaks of it, so it stays. Take the cut back first (POST /api/plans/{id}/cut/undo) if it was booked by mistake.");
}
