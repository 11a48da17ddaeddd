using PanelService.Documentation;
using PanelService.Endpoints;
using PanelService.Hosting;
using Serilog;

var builder = WebApplication.CreateBuilder(new WebApplicationOptions { Args = args, ContentRootPath = AppContext.BaseDirectory });
builder.AddPage();
builder.ListenOnLoopbackByDefault();
builder.Services.AddLogs();
builder.Services.AddWire();
builder.Services.AddPlanning(builder.Configuration);
builder.Services.AddDocumentation();

var app = builder.Build();
app.UseSerilogRequestLogging();
app.UseProblemAnswers();
app.UseSafetyHeaders();
app.UsePage();
app.UseDocumentation();
app.UseRateLimiter();

app.MapPlans();
app.MapPlanParts();
app.MapYield();
app.MapPractice();
app.MapDemo();
app.MapHealth();

app.Run();

/// <summary>The host; named so that tests can start it.</summary>
internal sealed partial class Program;
