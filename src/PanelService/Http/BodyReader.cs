using System.Text.Json;
using System.Text.Unicode;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Net.Http.Headers;

namespace PanelService.Http;

/// <summary>Takes a JSON document off a request: type, size, encoding and syntax checked.</summary>
internal static class BodyReader
{
    /// <summary>The largest body, 1 MiB.</summary>
    internal const int MostBytes = 1024 * 1024;

    private static readonly byte[] ByteOrderMark = [0xEF, 0xBB, 0xBF];

    /// <summary>The document, or the problem to answer with.</summary>
    internal static async Task<(JsonDocument? Document, ProblemHttpResult? Problem)> ReadAsync(
        HttpRequest request, CancellationToken cancellation)
    {
        if (!IsJson(request.ContentType))
        {
            return (null, Problems.MediaType(request.ContentType));
        }

        if (request.ContentLength > MostBytes || await ReadBytesAsync(request, cancellation) is not { } bytes)
        {
            return (null, Problems.TooLarge(MostBytes));
        }

        return Parse(bytes);
    }

    /// <summary>Whether a body is said to be JSON in other characters than UTF-8: the platform's own reader breaks down over names it does not know.</summary>
    internal static bool IsInOtherCharacters(string? contentType) =>
        MediaTypeHeaderValue.TryParse(contentType, out MediaTypeHeaderValue? type) && IsJson(type) && !IsUtf8(type);

    private static bool IsJson(string? contentType) =>
        MediaTypeHeaderValue.TryParse(contentType, out MediaTypeHeaderValue? type) && IsJson(type) && IsUtf8(type);

    private static bool IsJson(MediaTypeHeaderValue type) =>
        type.MediaType.Equals("application/json", StringComparison.OrdinalIgnoreCase) || type.Suffix.Equals("json", StringComparison.OrdinalIgnoreCase);

    private static bool IsUtf8(MediaTypeHeaderValue type) =>
        !type.Charset.HasValue || HeaderUtilities.RemoveQuotes(type.Charset).Equals("utf-8", StringComparison.OrdinalIgnoreCase);

    // Null: more than fits. Counted here as well as by the server, since a chunked body names no length.
    private static async Task<ReadOnlyMemory<byte>?> ReadBytesAsync(HttpRequest request, CancellationToken cancellation)
    {
        using var bytes = new MemoryStream();
        byte[] buffer = new byte[16 * 1024];
        int read;
        while ((read = await request.Body.ReadAsync(buffer, cancellation)) > 0)
        {
            if (bytes.Length + read > MostBytes)
            {
                return null;
            }

            bytes.Write(buffer, 0, read);
        }

        return bytes.ToArray();
    }

    private static (JsonDocument? Document, ProblemHttpResult? Problem) Parse(ReadOnlyMemory<byte> bytes)
    {
        ReadOnlyMemory<byte> text = bytes.Span.StartsWith(ByteOrderMark) ? bytes[ByteOrderMark.Length..] : bytes;
        if (text.IsEmpty)
        {
            return (null, Problems.Malformed("The body is empty; expected a JSON object."));
        }

        if (!Utf8.IsValid(text.Span))
        {
            return (null, Problems.Malformed("The body is not valid UTF-8."));
        }

        try
        {
            return (JsonDocument.Parse(text), null);
        }
        catch (JsonException fault)
        {
            return (null, Problems.Malformed($"Not JSON at line {fault.LineNumber + 1}, byte {fault.BytePositionInLine + 1}: {Reason(fault)}"));
        }
    }

    // The parser's message ends with the position, which is said already, counted from 0.
    private static string Reason(JsonException fault)
    {
        int position = fault.Message.IndexOf(" LineNumber:", StringComparison.Ordinal);
        return position < 0 ? fault.Message : fault.Message[..position];
    }
}
