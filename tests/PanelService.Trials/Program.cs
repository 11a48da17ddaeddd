using PanelService.Trials;
using PanelService.Trials.Checks;
using PanelService.Trials.Fuzzing;
using PanelService.Trials.Loads;
using PanelService.Trials.Pages;

const string Usage = """
    Trials of the running service. Each prints what it tried and ends with 0 only where nothing went wrong.

      fuzz [N] [SEED]     N malformed, hostile and borderline requests, 5000 by default
      hostile [TEXT]      orders made to be hard, those with TEXT in their names: memory and time of each
      load [CLIENTS] [S]  clients that plan at once, 50 for 30 seconds: how long /health and the page take meanwhile
      orders [N] [SEED]   random valid orders from a seed on, 10000 from 0 by default: each plan keeps every rule
      page                the page in Chromium: weight, first view, time to the plan, frames while scrolling
      endure [N]          plans in a row, 20000 by default: memory at the beginning and at the end
    """;

int Number(int place, int otherwise) => args.Length > place && int.TryParse(args[place], out int given) ? given : otherwise;

switch (args.FirstOrDefault())
{
    case "fuzz":
        return await FuzzTrial.RunAsync(Number(1, 5000), Number(2, 1));
    case "hostile":
        return await HostileTrial.RunAsync(args.Length > 1 ? args[1] : "");
    case "load":
        return await LoadTrial.RunAsync(Number(1, 50), Number(2, 30));
    case "crowd":
        return await LoadTrial.CrowdAsync(new Uri(args[1]), Number(2, 50), Number(3, 30));
    case "orders":
        return await OrdersTrial.RunAsync(Number(1, 10_000), Number(2, 0));
    case "page":
        return await PageTrial.RunAsync();
    case "endure":
        return await EnduranceTrial.RunAsync(Number(1, 20_000));
    default:
        Console.Error.WriteLine(Usage);
        return 2;
}
