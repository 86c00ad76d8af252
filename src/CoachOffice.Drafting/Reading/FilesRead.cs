using System.Collections.Concurrent;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading;

/// <summary>Files as they were read before, so that a book of which one entry was changed is not parsed anew as a whole. For any number of threads; it keeps of each path the last content that had no fault.</summary>
public sealed class FilesRead
{
    private readonly ConcurrentDictionary<string, (string Content, MapNode Tree)> _known = new(StringComparer.Ordinal);

    internal MapNode? Find(string file, string content) => _known.TryGetValue(file, out var known) && string.Equals(known.Content, content, StringComparison.Ordinal) ? known.Tree : null;

    internal void Keep(string file, string content, MapNode tree) => _known[file] = (content, tree);
}
