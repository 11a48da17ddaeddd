using PanelService.Documentation;
using PanelService.Endpoints;
using PanelService.FrontDoor;
using PanelService.Hosting;
using PanelService.Store.Faults;

var builder = WebApplication.CreateBuilder(new WebApplicationOptions { Args = args, ContentRootPath = AppContext.BaseDirectory });
builder.AddPage();
builder.ListenOnLoopbackByDefault();
string dataFolder = Folders.Data(builder.Configuration);
Folders.MakeData(dataFolder);
Reach reach = builder.AddFrontDoor(dataFolder);
if (args is [DoorCommands.KeyCommand, ..])
{
    return DoorCommands.MakeKey(dataFolder, Console.Out);
}

if (args is [BackupCommand.Name, ..])
{
    return await BackupCommand.RunAsync(args, Memory.OptionsOf(builder.Configuration), Console.Out, Console.Error);
}

if (!DoorCommands.MayStart(reach, dataFolder, Console.Error))
{
    return DoorCommands.BadConfiguration;
}

builder.Services.AddLogs(builder.Configuration, dataFolder);
builder.Services.AddMetrics(builder.Configuration);
builder.Services.AddSystemd();
builder.Services.AddWindowsService();
builder.Services.AddWire();
builder.Services.AddMemory(builder.Configuration);
builder.Services.AddPlanning(builder.Configuration);
builder.Services.AddDocumentation();

var app = builder.Build();
app.UseRequestLog();
app.UseProblemAnswers();
app.UseSafetyHeaders();
app.UseOwnNames();
app.UsePage();
app.UseFrontDoor();
app.UseDocumentation();
app.UseEarlyRefusal();

app.MapPlans();
app.MapPlanList();
app.MapCuts();
app.MapSupplies();
app.MapSettings();
app.MapStock();
app.MapMovements();
app.MapExchange();
app.MapCsv();
app.MapPlanParts();
app.MapYield();
app.MapPractice();
app.MapDemo();
app.MapHealth();
app.MapAccess();
app.TellHowToJoin(reach);

try
{
    app.Run();
    return 0;
}
catch (StoreUnavailableException fault) when (fault.Fault == StoreFault.Newer)
{
    await Console.Error.WriteLineAsync(fault.Message);
    return DoorCommands.BadConfiguration;
}

/// <summary>The host; named so that tests can start it.</summary>
internal sealed partial class Program;
