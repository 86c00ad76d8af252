using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;

namespace CoachOffice.UseCases.FollowUps.Texts;

/// <summary>Picks the door text messages leave through. From the demo practice nothing ever leaves.</summary>
/// <param name="settings">How they leave.</param>
/// <param name="data">Where they lie when they leave as files.</param>
public sealed class TextDoors(TextSettings settings, DataFolder data) : IDisposable
{
    // A redirect would carry a person's number to an address nobody wrote down.
    private readonly HttpClient _client = new(new SocketsHttpHandler { AllowAutoRedirect = false, PooledConnectionLifetime = TimeSpan.FromMinutes(5) }) { Timeout = Timeout.InfiniteTimeSpan };

    private string Folder => string.IsNullOrWhiteSpace(settings.Folder) ? data.Inside("texts") : settings.Folder;

    /// <summary>The door of a practice.</summary>
    public ITextDoor For(Practice practice)
    {
        ArgumentNullException.ThrowIfNull(practice);
        return IsSafe(settings.Url) && settings.Secret.Length > 0 && !practice.IsDemo ? new GatewayTextDoor(_client, settings) : new FolderTextDoor(Folder);
    }

    /// <summary>Where a text lies when it was written as a file: the place to delete it from when its student is erased.</summary>
    public string FileOf(Message message)
    {
        ArgumentNullException.ThrowIfNull(message);
        return Path.Combine(Folder, $"{message.StableName}.txt");
    }

    /// <inheritdoc/>
    public void Dispose() => _client.Dispose();

    private static bool IsSafe(string url) => Uri.TryCreate(url, UriKind.Absolute, out var address) && (address.Scheme == Uri.UriSchemeHttps || (address.Scheme == Uri.UriSchemeHttp && address.IsLoopback));
}
