using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace CoachOffice.Data;

/// <summary>The model as generated code in the migrations' assembly: building it from the mappings took most of a cold start. It is made again with the migrations; a test fails when it is stale.</summary>
internal static class CompiledModel
{
    /// <summary>Uses the generated model. While the tool writes a new one the old one is left out, or may not exist.</summary>
    public static DbContextOptionsBuilder UseCompiledModel(this DbContextOptionsBuilder options, string assembly) =>
        EF.IsDesignTime ? options : options.UseModel(Of(assembly));

    private static IModel Of(string assembly)
    {
        var model = Type.GetType($"{assembly}.CompiledModel.{nameof(OfficeDb)}Model, {assembly}", throwOnError: true)!;
        return (IModel)model.GetProperty("Instance")!.GetValue(null)!;
    }
}
