namespace Gudgeon.Book.Values;

/// <summary>
/// The user's input cannot be taken. The message is one clear sentence that names the field, what was given and what was
/// wanted; it is shown as it is, with exit code 2, and nothing has been changed.
/// </summary>
public sealed class BadInputException(string message) : Exception(message);
