namespace CoachOffice.Web.Shell;

/// <summary>A handler that changes nothing although it takes a form: it looks something up for what was typed.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class AsksOnlyAttribute : Attribute;
