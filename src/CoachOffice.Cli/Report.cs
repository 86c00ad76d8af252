using System.Text;
using CoachOffice.Domain;
using CoachOffice.Drafting.Reading;

namespace CoachOffice.Cli;

/// <summary>The two ways out of a command: results as bytes, everything else as lines of errors.</summary>
internal sealed class Report(Stream output, TextWriter errors)
{
    public TextWriter Errors => errors;

    /// <summary>A line on the error stream.</summary>
    public void Error(string line) => errors.Write(line + "\n");

    /// <summary>Faults a line each; tells the exit code of a refusal.</summary>
    public int Refuse(IEnumerable<Fault> faults)
    {
        foreach (var fault in faults) Error(fault.ToString());
        return ExitCode.Refused;
    }

    /// <summary>Refusals of the office a line each; tells the exit code.</summary>
    public int Refuse(IEnumerable<Refusal> refusals)
    {
        foreach (var refusal in refusals) Error(refusal.Sentence);
        return ExitCode.Refused;
    }

    /// <summary>Warnings a line each.</summary>
    public void Warn(IEnumerable<Fault> warnings)
    {
        foreach (var warning in warnings) Error((warning with { Message = $"warning: {warning.Message}" }).ToString());
    }

    /// <summary>Text as UTF-8 on the output.</summary>
    public void Write(string text) => Write(Encoding.UTF8.GetBytes(text));

    /// <summary>Bytes as they are on the output.</summary>
    public void Write(ReadOnlySpan<byte> bytes)
    {
        output.Write(bytes);
        output.Flush();
    }
}
