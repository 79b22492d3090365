namespace Gudgeon.Book.Files;

/// <summary>Who edits a book, and at which device.</summary>
/// <param name="Who">Name of the person.</param>
/// <param name="Device">Name of the machine or tablet.</param>
public sealed record Hand(string Who, string Device)
{
    /// <summary>A person at this machine; whoever is logged in when no name is given.</summary>
    public static Hand Here(string who = "") => new(who.Length > 0 ? who : Environment.UserName, Environment.MachineName);
}
