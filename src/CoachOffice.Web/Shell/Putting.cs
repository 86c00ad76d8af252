namespace CoachOffice.Web.Shell;

/// <summary>Writes markup piece by piece, without joining the pieces first.</summary>
internal static class Putting
{
    public static void Put(this TextWriter writer, params ReadOnlySpan<string> pieces)
    {
        foreach (var piece in pieces) writer.Write(piece);
    }
}
