var builder = WebApplication.CreateBuilder(args);
var app = builder.Build();
app.MapGet("/", () => "CoachOffice");
app.Run();

public partial class Program;
