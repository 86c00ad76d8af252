namespace CoachOffice.Cli;

/// <summary>What the command line returns.</summary>
public static class ExitCode
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>A defect of ours; one line on the error stream.</summary>
    public const int Defect = 1;

    /// <summary>An input or the rulebook was refused; every fault is on the error stream and nothing on the output.</summary>
    public const int Refused = 2;

    /// <summary>The command was not understood.</summary>
    public const int Usage = 64;
}
