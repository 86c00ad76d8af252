namespace CoachOffice.Data.Moving;

/// <summary>A column as it is copied from one kind of database to the other.</summary>
/// <param name="Name">Its name, the same in both.</param>
/// <param name="Kind">The type its values have on the way: what the mappings convert to before a provider writes it.</param>
/// <param name="StoreType">Its type in this database, without a length.</param>
/// <param name="IsJson">True when the database keeps it as a document, whose layout is its own.</param>
internal sealed record MovedColumn(string Name, Type Kind, string StoreType, bool IsJson);
