using Microsoft.AspNetCore.Builder;

namespace CoachOffice.Benchmarks.Programs;

/// <summary>The least a web program can be: one route.</summary>
internal static class BareProgram
{
    public const string Word = "bare";

    public static async Task Run(string[] args)
    {
        var app = WebApplication.CreateBuilder(args).Build();
        app.MapGet("/", () => "Hello");
        await app.RunAsync();
    }
}
