using CoachOffice.Web.Shell;

try
{
    var builder = WebApplication.CreateBuilder(args);
    builder.AddShell(args);

    var app = builder.Build();

    // The database and the pages are made ready side by side; nobody is let in before both are.
    var prepared = Task.Run(app.PrepareOffice);
    app.UseShell();
    app.MapShell();
    if (!await prepared) return 1;
    await app.RunAsync();
    return 0;
}
catch (Exception failure) when (StartFailures.InWords(failure) is not null)
{
    await Console.Error.WriteLineAsync(StartFailures.InWords(failure));
    return 1;
}

public partial class Program;
