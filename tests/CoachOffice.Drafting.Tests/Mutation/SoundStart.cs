using System.IO.MemoryMappedFiles;
using System.Runtime.CompilerServices;
using CoachOffice.Drafting.Tests.Golden;

namespace CoachOffice.Drafting.Tests.Mutation;

/// <summary>
/// Only in the build for mutation tests. Its runner keeps one process for many changed lines and says in a file which one is at work.
/// What all tests share, the books and what is made of them once, is made before any is, or one broken reader would fail every test after it.
/// </summary>
internal static class SoundStart
{
    private const int NoneAtWork = -1;

    [ModuleInitializer]
    internal static void ReadTheSharedBooks()
    {
        if (Environment.GetEnvironmentVariable("STRYKER_MUTANT_FILE") is not { } file || !File.Exists(file)) return;
        using var stream = new FileStream(file, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite);
        using var map = MemoryMappedFile.CreateFromFile(stream, null, sizeof(int), MemoryMappedFileAccess.ReadWrite, HandleInheritability.None, leaveOpen: true);
        using var atWork = map.CreateViewAccessor(0, sizeof(int));
        var number = atWork.ReadInt32(0);
        atWork.Write(0, NoneAtWork);
        _ = GoldenTests.Kept.Value;
        foreach (var type in typeof(SoundStart).Assembly.GetTypes().Where(t => !t.ContainsGenericParameters)) RuntimeHelpers.RunClassConstructor(type.TypeHandle);
        atWork.Write(0, number);
    }
}
