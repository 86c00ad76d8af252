namespace CoachOffice.UseCases.FollowUps.Wordings;

/// <summary>Text up to a length; more is a fault of whoever writes it.</summary>
internal sealed class BoundedWriter(int most) : StringWriter
{
    public override void Write(char value)
    {
        Room(1);
        base.Write(value);
    }

    public override void Write(string? value)
    {
        Room(value?.Length ?? 0);
        base.Write(value);
    }

    public override void Write(char[] buffer, int index, int count)
    {
        Room(count);
        base.Write(buffer, index, count);
    }

    public override void Write(ReadOnlySpan<char> buffer)
    {
        Room(buffer.Length);
        base.Write(buffer);
    }

    private void Room(int wanted)
    {
        if (GetStringBuilder().Length + wanted > most) throw new InvalidOperationException($"A letter is at most {most} characters long.");
    }
}
