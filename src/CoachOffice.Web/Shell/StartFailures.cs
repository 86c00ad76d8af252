using System.Data.Common;
using System.Net.Sockets;
using CoachOffice.Data;
using CoachOffice.UseCases;
using Microsoft.AspNetCore.Connections;

namespace CoachOffice.Web.Shell;

/// <summary>What may keep the office from starting and is nobody's defect, in a sentence for whoever started it.</summary>
internal static class StartFailures
{
    /// <summary>What is wrong and what would be right; null for a failure of ours, which keeps its whole story.</summary>
    public static string? InWords(Exception failure) => Chain(failure).Select(Of).FirstOrDefault(sentence => sentence is not null);

    private static IEnumerable<Exception> Chain(Exception failure)
    {
        for (Exception? one = failure; one is not null; one = one.InnerException) yield return one;
    }

    private static string? Of(Exception failure) => failure switch
    {
        DbException refused => $"{DatabaseFaults.AtStart(refused)} {Folder}",
        InvalidDataException unreadable when unreadable.Message.Contains(OfficeSettings.FileName, StringComparison.Ordinal) => $"{OfficeSettings.FileName} in the data folder cannot be read: {Innermost(unreadable)}",
        InvalidOperationException wrong when wrong.Message.Contains("Office:", StringComparison.Ordinal) => $"A setting cannot be used. {wrong.Message}",
        IOException { InnerException: AddressInUseException } taken => $"{taken.Message} Stop the program that listens there, or start this one elsewhere, such as --urls http://localhost:5181.",
        SocketException closed => $"This office may not listen there: {closed.Message}. Start it elsewhere, such as --urls http://localhost:5181.",
        ArgumentOutOfRangeException { ParamName: "port" } => "The address to listen on has a port that is none. Write it like --urls http://localhost:5181.",
        FormatException { InnerException: null } wrong when wrong.Message.Contains("url", StringComparison.OrdinalIgnoreCase) => $"{wrong.Message} Write the address to listen on like --urls http://localhost:5181.",
        IOException or UnauthorizedAccessException => $"The data folder cannot be used: {failure.Message} {Folder}",
        _ => null,
    };

    private static string Folder => $"Let this program write there and leave room on the disk, or name another folder with {DataFolder.Variable}.";

    private static string Innermost(Exception failure) => Chain(failure).Last().Message;
}
