using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Students.Merging;
using CoachOffice.UseCases.Tests.Fixtures;

namespace CoachOffice.UseCases.Tests.Students.Merging;

/// <summary>An office in which one person has two records.</summary>
internal sealed class TwoRecords
{
    private TwoRecords(TestOffice office, StudentId stays, StudentId goes) => (Office, Stays, Goes) = (office, stays, goes);

    public TestOffice Office { get; }

    public StudentId Stays { get; }

    public StudentId Goes { get; }

    public static async Task<TwoRecords> In(OfficeFixture fixture)
    {
        var office = await fixture.Another(opened: true);
        var stays = await office.Register(AStudent.Named("Anna", "Berg") with { Phone = "", Notes = "old notes" });
        var goes = await office.Register(AStudent.Named("Ana", "Berg") with { Email = "ana@example.org", Notes = "new notes", Hand = Hand.Left });
        return new TwoRecords(office, stays, goes);
    }

    public async Task<MergeOrder> Order(StudentId stays, StudentId goes, params string[] taken)
    {
        var view = await Office.Must((MergePage page) => page.Of(stays, goes, Office.Coach));
        return new MergeOrder(stays, view.Stays.Version, goes, view.Goes.Version, taken);
    }

    public Task Merge(params string[] taken) => Merge(Stays, Goes, taken);

    public async Task Merge(StudentId stays, StudentId goes, params string[] taken)
    {
        var order = await Order(stays, goes, taken);
        await Office.Must((MergeStudents merge) => merge.As(order, Office.Coach));
    }
}
