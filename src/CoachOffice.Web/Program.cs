using CoachOffice.Web.Shell;

var builder = WebApplication.CreateBuilder(args);
builder.AddShell();

var app = builder.Build();
app.UseShell();
app.MapShell();
await app.RunAsync();

public partial class Program;
