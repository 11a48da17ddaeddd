using System.IO.Compression;
using Microsoft.AspNetCore.ResponseCompression;
using Microsoft.AspNetCore.StaticFiles;
using Microsoft.Extensions.FileProviders;

namespace PanelService.Hosting;

/// <summary>The page: static files, small on the wire, asked for anew each time so that an update is seen at once.</summary>
internal static class PageFiles
{
    internal static void AddPage(this WebApplicationBuilder builder)
    {
        // The path alone is not enough: the provider was made from the one the builder began with.
        string folder = Folders.Page(builder.Environment.IsDevelopment());
        builder.Environment.WebRootPath = folder;
        builder.Environment.WebRootFileProvider = Directory.Exists(folder) ? new PhysicalFileProvider(folder) : new NullFileProvider();
        builder.Services.AddResponseCompression(options =>
        {
            // Nothing secret is ever answered beside what a client sent: compressing under TLS gives nothing away.
            options.EnableForHttps = true;
            options.MimeTypes = [.. ResponseCompressionDefaults.MimeTypes, "image/svg+xml", "text/csv", "application/problem+json"];
        });

        // The fastest level makes the page a tenth heavier, which a phone in the workshop feels; this one costs some milliseconds.
        builder.Services.Configure<BrotliCompressionProviderOptions>(options => options.Level = CompressionLevel.Optimal);
        builder.Services.Configure<GzipCompressionProviderOptions>(options => options.Level = CompressionLevel.Optimal);
    }

    internal static void UsePage(this WebApplication app)
    {
        app.UseResponseCompression();
        app.UseDefaultFiles();
        app.UseStaticFiles(new StaticFileOptions { OnPrepareResponse = AskAgain });
    }

    private static void AskAgain(StaticFileResponseContext file) => file.Context.Response.Headers.CacheControl = "no-cache";
}
