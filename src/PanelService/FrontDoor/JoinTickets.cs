using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Microsoft.Extensions.Options;

namespace PanelService.FrontDoor;

/// <summary>
/// What lets a browser join once: six digits somebody who is in reads out, or the link the service prints when it
/// starts. One of each at a time; each works once, for some minutes. A code is dropped after five wrong tries, whoever
/// made them: one chance in 200 000. A link's word cannot be guessed and stays.
/// </summary>
internal sealed class JoinTickets(TimeProvider clock, IOptions<FrontDoorOptions> options)
{
    private const int MostTries = 5;
    private const int Codes = 1_000_000;
    private const int LinkBytes = 24;

    private readonly Lock _gate = new();
    private Ticket? _code;
    private Ticket? _link;

    private TimeSpan Life => TimeSpan.FromMinutes(options.Value.CodeMinutes);

    /// <summary>Six digits; those given out before no longer work.</summary>
    internal (string Code, DateTimeOffset Ends) NewCode()
    {
        string code = RandomNumberGenerator.GetInt32(Codes).ToString("D6", CultureInfo.InvariantCulture);
        DateTimeOffset ends = clock.GetUtcNow() + Life;
        lock (_gate)
        {
            _code = new Ticket(HashOf(code), ends);
        }

        return (code, ends);
    }

    /// <summary>A word for a link; the one before no longer works.</summary>
    internal string NewLink()
    {
        string word = System.Buffers.Text.Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(LinkBytes));
        lock (_gate)
        {
            _link = new Ticket(HashOf(word), clock.GetUtcNow() + Life);
        }

        return word;
    }

    /// <summary>Takes a code or a link's word; true once for a right one.</summary>
    internal bool Redeem(string given)
    {
        byte[] hash = HashOf(given.Trim());
        lock (_gate)
        {
            return Redeem(ref _link, hash, int.MaxValue) || Redeem(ref _code, hash, MostTries);
        }
    }

    private bool Redeem(ref Ticket? ticket, byte[] hash, int mostTries)
    {
        if (ticket is null || ticket.Ends < clock.GetUtcNow())
        {
            ticket = null;
            return false;
        }

        bool right = CryptographicOperations.FixedTimeEquals(ticket.Hash, hash);
        ticket = right || ticket.Tries + 1 == mostTries ? null : ticket with { Tries = ticket.Tries + 1 };
        return right;
    }

    private static byte[] HashOf(string word) => SHA256.HashData(Encoding.UTF8.GetBytes(word));

    private sealed record Ticket(byte[] Hash, DateTimeOffset Ends, int Tries = 0);
}
