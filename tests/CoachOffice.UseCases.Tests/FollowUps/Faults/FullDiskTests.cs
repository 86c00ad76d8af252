using System.Diagnostics;
using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Tests.FollowUps.Faults;

/// <summary>The disk of the database is full while mail goes: on a small file system of its own where the machine allows to make one, else by refusing every write.</summary>
public sealed class FullDiskTests(SqliteOffice fixture) : IClassFixture<SqliteOffice>
{
    private const int Messages = 300;

    [Fact]
    public async Task A_full_disk_stops_the_mail_and_once_there_is_room_all_of_it_goes_once()
    {
        var small = await SmallDisk.Make();
        try
        {
            await using var office = await FaultOffice.With(await fixture.Another(opened: true), (MessageKind.RetestPrompt, Messages));
            await office.Server.Tell("pause 4");
            if (small is not null) await office.MoveTo(small.Folder);
            var node = await office.Node();
            await office.UntilAccepted(30);

            if (small is null) await node.Tell("full");
            else small.Fill();
            await office.Until(_ => Task.FromResult(node.Errors.Length > 0), "a node that says it cannot write");
            var taken = (await office.Accepted()).Count;
            await Task.Delay(TimeSpan.FromSeconds(1), TestContext.Current.CancellationToken);
            Assert.Equal(taken, (await office.Accepted()).Count);

            if (small is null) await node.Tell("free");
            else small.MakeRoom();
            await office.Finish(node);

            var (accepted, due) = (await office.Accepted(), (await office.Due()).Where(m => m.Value.Kind == MessageKind.RetestPrompt).ToList());
            Assert.Equal(Messages, due.Count);
            Assert.All(due, m => Assert.Equal((MessageState.Sent, 1), (m.Value.State, accepted.Count(a => a == m.Key))));
        }
        finally
        {
            if (small is not null) await small.DisposeAsync();
        }
    }

    /// <summary>A file system in memory with room for little more than the database.</summary>
    private sealed class SmallDisk(string folder) : IAsyncDisposable
    {
        private string Ballast => Path.Combine(folder, "ballast");

        public string Folder => folder;

        public static async Task<SmallDisk?> Make()
        {
            var folder = Directory.CreateTempSubdirectory("coachoffice-small-disk-").FullName;
            return OperatingSystem.IsLinux() && await Run("mount", "-t", "tmpfs", "-o", "size=64m", "tmpfs", folder) ? new SmallDisk(folder) : null;
        }

        /// <summary>Not one byte is left.</summary>
        public void Fill()
        {
            using var ballast = new FileStream(Ballast, FileMode.Create, FileAccess.Write, FileShare.None, bufferSize: 0);
            for (var size = 1 << 20; size >= 1; size /= 2)
            {
                try
                {
                    while (true) ballast.Write(new byte[size]);
                }
                catch (IOException)
                {
                    // No room for so much; less of it may fit.
                }
            }
        }

        public void MakeRoom() => File.Delete(Ballast);

        public async ValueTask DisposeAsync() => await Run("umount", "--lazy", folder);

        private static async Task<bool> Run(string program, params string[] args)
        {
            using var process = Process.Start(new ProcessStartInfo(program, args) { UseShellExecute = false, RedirectStandardError = true });
            await process!.WaitForExitAsync();
            return process.ExitCode == 0;
        }
    }
}
