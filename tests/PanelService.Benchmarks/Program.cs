using PanelService.Benchmarks;
using PanelService.Benchmarks.Running;
using PanelService.Benchmarks.Suites;

Options options;
try
{
    options = Options.Parse(args);
}
catch (ArgumentException wrong)
{
    Console.Error.WriteLine($"{wrong.Message}\n\n{Options.Usage}");
    return 2;
}

string[] wanted = options.Suites is ["all"] ? [.. Catalogue.Names] : [.. options.Suites];
string[] unknown = [.. wanted.Except(Catalogue.Names)];
if (wanted.Length == 0 || unknown.Length > 0)
{
    Console.Error.WriteLine($"{Options.Usage}\n\nSuites: all, {string.Join(", ", Catalogue.Names)}");
    return 2;
}

if (!ChildProcess.IsChild && (wanted.Length > 1 || options.OneThread))
{
    string[] rest = [.. args.Where(arg => !options.Suites.Contains(arg))];
    return wanted.Max(suite => ChildProcess.Run([suite, .. rest], options.OneThread));
}

return SuiteRun.Run(wanted[0], options);
