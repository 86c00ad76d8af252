using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.UseCases.Tests.Fixtures;

/// <summary>What a class of tests shares: one office on one copy of a template. Ask <see cref="Another"/> for one more, e.g. an empty one.</summary>
public abstract class OfficeFixture(ITemplate template) : IAsyncLifetime
{
    private readonly List<IAsyncDisposable> _open = [];
    private TestOffice? _office;

    /// <summary>Skips the test where its database cannot be had.</summary>
    public TestOffice Office
    {
        get
        {
            if (template.Missing is { } why) Assert.Skip(why);
            return _office!;
        }
    }

    /// <summary>A further office on a copy of its own; services registered by the test come first.</summary>
    public async Task<TestOffice> Another(bool opened, Action<IServiceCollection>? more = null)
    {
        if (template.Missing is { } why) Assert.Skip(why);
        var copy = await template.Copy(opened);
        var office = await TestOffice.On(copy.Database, opened, more);
        _open.Add(office);
        _open.Add(copy);
        return office;
    }

    /// <summary>A second node of an office on the same database.</summary>
    public async Task<TestOffice> SecondNodeOf(TestOffice office, Action<IServiceCollection>? more = null)
    {
        ArgumentNullException.ThrowIfNull(office);
        var node = await TestOffice.On(office.Database, opened: true, more);
        _open.Insert(0, node);
        return node;
    }

    public virtual async ValueTask InitializeAsync()
    {
        if (template.Missing is null) _office = await Another(opened: true);
    }

    public async ValueTask DisposeAsync()
    {
        foreach (var thing in _open) await thing.DisposeAsync();
        GC.SuppressFinalize(this);
    }
}
