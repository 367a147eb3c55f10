namespace Platewright.Study.Store;

/// <summary>The store cannot be used; the message is a sentence for the user that says where it is and what to do.</summary>
public sealed class StoreException(string message, Exception? inner = null) : Exception(message, inner);
