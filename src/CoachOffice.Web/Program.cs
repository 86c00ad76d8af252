using CoachOffice.Web.Shell;

var builder = WebApplication.CreateBuilder(args);
builder.AddShell(args);

var app = builder.Build();
app.UseShell();
app.MapShell();
if (!await app.PrepareOffice()) return 1;
await app.RunAsync();
return 0;

public partial class Program;
