namespace CoachOffice.Drafting.Reading.Nodes;

/// <summary>A value of a YAML or JSON file that knows where it stands.</summary>
internal abstract class Node(Position at, string path)
{
    public Position At { get; } = at;

    public string Path { get; } = path;

    /// <summary>What it is, for a message.</summary>
    public abstract string Kind { get; }

    /// <summary>The path of a value inside this one.</summary>
    public static string Inside(string path, string key) => path == Fault.WholeFile ? key : $"{path}.{key}";

    /// <summary>The path of an item of a list.</summary>
    public static string Inside(string path, int index) => $"{path}[{index}]";
}
