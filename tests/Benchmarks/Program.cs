using System.Globalization;
using CoachOffice.Benchmarks;

CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
return await Choice.Run(args, Console.Out);
