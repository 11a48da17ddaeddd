namespace PanelService.FrontDoor;

/// <summary>What is done at the command line about the front door.</summary>
internal static class DoorCommands
{
    /// <summary>The exit code of a configuration that cannot be run with (EX_CONFIG of sysexits.h).</summary>
    internal const int BadConfiguration = 78;

    internal const string KeyCommand = "key";

    /// <summary>Makes a key and shows it this once.</summary>
    internal static int MakeKey(string dataFolder, TextWriter output)
    {
        output.WriteLine(new AccessKey(dataFolder).Make());
        output.WriteLine("This is the only time it is shown. Scripts send it as \"Authorization: Bearer KEY\"; a key made before no longer works, and browsers join anew.");
        return 0;
    }

    /// <summary>Whether the service may start; says why not.</summary>
    internal static bool MayStart(Reach reach, string dataFolder, TextWriter errors)
    {
        if (!reach.Open || new AccessKey(dataFolder).Exists)
        {
            return true;
        }

        errors.WriteLine("Not started: as configured it can be reached from the network (by its addresses, a name of its own, or a proxy in front of it), and there is no key yet.");
        errors.WriteLine($"Make one with \"dotnet run --project src/PanelService -- {KeyCommand}\" (or \"PanelService {KeyCommand}\"), or listen on localhost only.");
        return false;
    }
}
