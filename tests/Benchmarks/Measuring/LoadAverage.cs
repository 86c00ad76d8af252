namespace CoachOffice.Benchmarks.Measuring;

/// <summary>How busy the machine is.</summary>
internal static class LoadAverage
{
    /// <summary>Load average of one, five and fifteen minutes, where the system tells it.</summary>
    public static string Now => File.Exists("/proc/loadavg") ? string.Join(' ', File.ReadAllText("/proc/loadavg").Split(' ')[..3]) : "not known";
}
