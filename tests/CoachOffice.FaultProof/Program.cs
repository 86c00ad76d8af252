using System.Globalization;
using CoachOffice.FaultProof;

// Two programs the fault tests start, tell things by lines on their standard input, and kill.
CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
switch (args)
{
    case ["mail-server", var log]:
        await MailServerProgram.Run(log, Console.In, Console.Out);
        return 0;
    case ["node"]:
        await NodeProgram.Run(Console.In, Console.Out);
        return 0;
    default:
        await Console.Error.WriteLineAsync("mail-server LOG, or node with its settings in the environment");
        return 2;
}
