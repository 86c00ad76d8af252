using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Tests.Replay;

/// <summary>Edits of what holds for every lesson: amounts, cautions, the order of work, goals.</summary>
internal sealed class LawEdits(Random chance)
{
    public Rulebook ChangeDosage(Rulebook book)
    {
        var dosage = book.Dosage;
        var stage = chance.OneOf(dosage.Stages);
        return book.With(dosage: chance.Next(9) switch
        {
            0 => dosage with { MostDrills = chance.Next(1, 5) },
            1 => dosage with { OneDrillBelowMinutes = chance.Next(10, 60) },
            2 => dosage with { TwoDrillsBelowMinutes = chance.Next(40, 120) },
            3 => dosage with { FewestReps = chance.Next(5, 30) },
            4 => dosage with { ShortestSessionMinutes = chance.Next(3, 12) },
            5 => dosage with { SessionsAWeek = chance.Next(1, 6) },
            6 => dosage with { MostFullSpeedBalls = chance.Next(20, 80) },
            7 => dosage with { LookAgainAfterDays = 35 },
            _ => dosage with { Stages = [.. dosage.Stages.Instead(stage, stage with { RepsPerMinute = stage.RepsPerMinute * 1.5, MostRepsPerSession = chance.Next(20, 100), LongestDays = 30 })] },
        });
    }

    public Rulebook ChangeCaution(Rulebook book)
    {
        var caution = chance.OneOf(book.Cautions);
        return book.With(cautions: book.Cautions.Instead(caution, chance.Heads() ? caution with { Text = caution.Text + " Mind it." } : caution with { Occasion = chance.OneOf<CautionOccasion>() }));
    }

    public Rulebook DropCaution(Rulebook book) => book.With(cautions: book.Cautions.Without(chance.Next(book.Cautions.Count)));

    public Rulebook ChangeTrainAfter(Rulebook book)
    {
        var law = chance.OneOf(book.TrainAfter);
        return book.With(trainAfter: chance.Next(4) switch
        {
            0 => book.TrainAfter.Without(chance.Next(book.TrainAfter.Count)),
            1 => book.TrainAfter.Instead(law, law with { After = chance.Shuffled(law.After) }),
            2 => book.TrainAfter.Instead(law, law with { After = [.. law.After.Skip(1)] }),
            _ => [.. book.TrainAfter, new TrainAfter(chance.OneOf(book.Measures).Id, [chance.OneOf(book.Measures).Id], "Added.")],
        });
    }

    public Rulebook ChangeGoals(Rulebook book)
    {
        var goal = chance.OneOf(book.Goals);
        var fresh = chance.Next(3) switch
        {
            0 => goal with { Measures = [.. goal.Measures.Skip(1)] },
            1 => goal with { DriverOnly = [.. goal.DriverOnly, chance.OneOf(book.Measures).Id] },
            _ => goal with { Measures = [.. goal.Measures, chance.OneOf(book.Measures).Id] },
        };
        return book.With(goals: book.Goals.Instead(goal, fresh));
    }
}
