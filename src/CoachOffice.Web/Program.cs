using CoachOffice.Web.Shell;

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

public partial class Program;
