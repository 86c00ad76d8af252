using System.Globalization;
using CoachOffice.Benchmarks;
using CoachOffice.Benchmarks.Programs;

// The baseline of a start must not carry anything of ours.
if (args is [BareProgram.Word, .. var rest])
{
    await BareProgram.Run(rest);
    return 0;
}

CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
return await Choice.Run(args, Console.Out);
