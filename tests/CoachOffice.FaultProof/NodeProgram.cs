using System.Globalization;
using CoachOffice.Data;
using CoachOffice.UseCases;
using CoachOffice.UseCases.FollowUps;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.FaultProof;

/// <summary>
/// The whole office without pages, sweeping again and again as its clock would every minute. Settings come as the office's own, by <c>COACHOFFICE_…</c>, and <c>FAULTPROOF_NOW</c> says what time it is.
/// Lines on its standard input: <c>jump SECONDS</c>, <c>full</c>, <c>free</c>; it answers each with a line, and ends with its input.
/// </summary>
internal static class NodeProgram
{
    private static readonly TimeSpan Breath = TimeSpan.FromMilliseconds(20);

    public static async Task Run(TextReader commands, TextWriter answers)
    {
        var time = new ShiftedTime(DateTimeOffset.Parse(Environment.GetEnvironmentVariable("FAULTPROOF_NOW")!, CultureInfo.InvariantCulture));
        var disk = new FullDisk();
        var configuration = new ConfigurationBuilder().AddEnvironmentVariables("COACHOFFICE_").Build();
        var services = new ServiceCollection().AddSingleton<IConfiguration>(configuration).AddSingleton<TimeProvider>(time)
            .ConfigureDbContext<OfficeDb>(options => options.AddInterceptors(disk)).AddCoachOffice(configuration);
        await using var office = services.BuildServiceProvider();
        using var end = new CancellationTokenSource();
        var sweeping = Sweep(office.GetRequiredService<IServiceScopeFactory>(), end.Token);
        await answers.WriteLineAsync("ready");
        while (await commands.ReadLineAsync() is { } line)
        {
            if (line.StartsWith("jump ", StringComparison.Ordinal)) time.Jump(TimeSpan.FromSeconds(double.Parse(line[5..], CultureInfo.InvariantCulture)));
            else disk.IsFull = line == "full";
            await answers.WriteLineAsync(line);
        }

        await end.CancelAsync();
        await sweeping;
    }

    private static async Task Sweep(IServiceScopeFactory scopes, CancellationToken stop)
    {
        while (!stop.IsCancellationRequested)
        {
            try
            {
                await using var scope = scopes.CreateAsyncScope();
                if ((await scope.ServiceProvider.GetRequiredService<SweepMessages>().Once(stop)).Sent > 0) continue;
            }
            catch (Exception failure) when (failure is not OperationCanceledException)
            {
                // As with the office's clock: it is written down, and the next sweep goes on.
                await Console.Error.WriteLineAsync(failure.GetBaseException().Message);
            }

            await Task.Delay(Breath, stop).ContinueWith(static _ => { }, TaskScheduler.Default);
        }
    }
}
