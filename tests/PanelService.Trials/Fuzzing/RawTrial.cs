using System.Net.Sockets;
using System.Text;

namespace PanelService.Trials.Fuzzing;

/// <summary>
/// What no HTTP library sends: bodies that stop half-way, bodies a byte at a time, heads that are none. The server may
/// end such a connection without a word; it must not answer with a 5xx, and it must go on.
/// </summary>
internal static class RawTrial
{
    private const string Order = "{\"panels\":[{\"width\":8,\"height\":10,\"quantity\":1}]}";

    internal static async Task<List<string>> RunAsync(Uri address, int count, Dice dice)
    {
        var faults = new List<string>();
        for (int i = 0; i < count; i++)
        {
            string sent = Message(dice);
            string answer = await SendAsync(address, sent, aByteAtATime: dice.Once(4));
            // 505 is the right answer to a version of HTTP that there is none of.
            if (answer.StartsWith("HTTP/1.1 5", StringComparison.Ordinal) && !answer.StartsWith("HTTP/1.1 505", StringComparison.Ordinal))
            {
                faults.Add($"{answer.Split('\r')[0]} to {sent[..Math.Min(80, sent.Length)]}");
            }
        }

        return faults;
    }

    private static string Message(Dice dice) => dice.Below(13) switch
    {
        0 => Post($"Content-Length: {Order.Length + 50}", Order),
        1 => Post($"Content-Length: {Order.Length}", Order[..dice.Below(Order.Length)]),
        2 => Post("Transfer-Encoding: chunked", "5\r\nabc"),
        3 => Post("Transfer-Encoding: chunked", "ZZ\r\nabc\r\n0\r\n\r\n"),
        4 => Post("Transfer-Encoding: chunked\r\nContent-Length: 3", "3\r\nabc\r\n0\r\n\r\n"),
        5 => Post("Content-Length: -1", ""),
        6 => Post("Content-Length: 99999999999999999999", ""),
        7 => "GET / HTTP/9.9\r\n\r\n",
        8 => "GET /../../etc/passwd HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n",
        9 => $"GET /{new string('a', 20_000)} HTTP/1.1\r\nHost: localhost\r\n\r\n",
        10 => $"GET /health HTTP/1.1\r\nHost: localhost\r\nX: {new string('a', 60_000)}\r\n\r\n",
        11 => "GET /api/demo/%00 HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n",
        _ => "\0\u0001\u0002 nonsense\r\n\r\n",
    };

    private static string Post(string length, string body) =>
        $"POST /api/plans HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nConnection: close\r\n{length}\r\n\r\n{body}";

    private static async Task<string> SendAsync(Uri address, string message, bool aByteAtATime)
    {
        using var client = new TcpClient();
        await client.ConnectAsync(address.Host, address.Port);
        NetworkStream stream = client.GetStream();
        byte[] bytes = Encoding.Latin1.GetBytes(message);
        try
        {
            for (int i = 0; aByteAtATime && i < Math.Min(300, bytes.Length); i++)
            {
                await stream.WriteAsync(bytes.AsMemory(i, 1));
            }

            await stream.WriteAsync(bytes.AsMemory(aByteAtATime ? Math.Min(300, bytes.Length) : 0));
            client.Client.Shutdown(SocketShutdown.Send);
            using var reader = new StreamReader(stream, Encoding.Latin1);
            using var enough = new CancellationTokenSource(TimeSpan.FromSeconds(30));
            return await reader.ReadToEndAsync(enough.Token);
        }
        catch (IOException)
        {
            return "closed";
        }
    }
}
