using System.Globalization;
using Microsoft.Extensions.Options;

namespace PanelService.FrontDoor;

/// <summary>
/// The stays that ended before their time: their browser left, or joined anew. A cookie says by itself whose it is and until
/// when, so a copy of it would go on working; its stay stands here until it would have run out in any case. One line each in
/// a file of the data folder, so that a restart forgets nothing.
/// </summary>
internal sealed class EndedStays(string folder, TimeProvider clock, IOptions<FrontDoorOptions> options)
{
    private const string FileName = "ended-stays";
    private const char Between = '\t';

    private readonly Lock _gate = new();
    private Dictionary<string, long>? _ended;

    private string Path => System.IO.Path.Combine(folder, FileName);

    /// <summary>Whether a stay has ended.</summary>
    internal bool Has(string stay)
    {
        lock (_gate)
        {
            return Ended().ContainsKey(stay);
        }
    }

    /// <summary>Ends a stay for good.</summary>
    internal void End(string stay)
    {
        long now = clock.GetUtcNow().ToUnixTimeSeconds();
        lock (_gate)
        {
            // Renewed a moment ago at the latest: no cookie of this stay lives longer than that.
            _ended = Ended().Where(ended => ended.Value >= now).ToDictionary();
            _ended[stay] = now + (long)TimeSpan.FromDays(options.Value.SessionDays).TotalSeconds;
            Write(_ended);
        }
    }

    private Dictionary<string, long> Ended() => _ended ??= File.Exists(Path) ? Read() : [];

    private Dictionary<string, long> Read() => File.ReadLines(Path)
        .Select(line => line.Split(Between))
        .Where(parts => parts.Length == 2)
        .ToDictionary(parts => parts[0], parts => long.Parse(parts[1], CultureInfo.InvariantCulture));

    private void Write(Dictionary<string, long> ended)
    {
        Directory.CreateDirectory(folder);
        string draft = Path + ".new";
        File.WriteAllLines(draft, ended.Select(one => string.Create(CultureInfo.InvariantCulture, $"{one.Key}{Between}{one.Value}")));
        File.Move(draft, Path, overwrite: true);
    }
}
