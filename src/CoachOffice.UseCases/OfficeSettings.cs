using CoachOffice.Data;
using Microsoft.Extensions.Configuration;

namespace CoachOffice.UseCases;

/// <summary>Settings of this one practice: section <c>Office</c> of <c>office.json</c> in the data folder, then variables such as <c>COACHOFFICE_Mail__Host</c>, then the command line. Pages and command line find them alike.</summary>
public static class OfficeSettings
{
    /// <summary>The file in the data folder.</summary>
    public const string FileName = "office.json";
    private const string Prefix = "COACHOFFICE_";
    private const string Section = "Office:";

    /// <summary>Adds them, later ones over earlier ones.</summary>
    public static void AddOfficeSettings(this IConfigurationBuilder configuration, DataFolder folder, string[] args)
    {
        ArgumentNullException.ThrowIfNull(folder);
        configuration.AddJsonFile(folder.Inside(FileName), optional: true, reloadOnChange: false);
        configuration.AddInMemoryCollection(Variables());
        configuration.AddCommandLine(args);
    }

    private static IEnumerable<KeyValuePair<string, string?>> Variables() =>
        from variable in new ConfigurationBuilder().AddEnvironmentVariables(Prefix).Build().AsEnumerable()
        where variable.Value is not null && Prefix + variable.Key != DataFolder.Variable
        select KeyValuePair.Create(Section + variable.Key, variable.Value);
}
