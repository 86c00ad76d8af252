using CoachOffice.Data;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>Where open files of devices lie.</summary>
public sealed class DeviceFileStore(DataFolder folder) : OpenFiles(folder, "device-files", MostBytes)
{
    /// <summary>The largest file that is taken.</summary>
    public const int MostBytes = 10 * 1024 * 1024;
}
