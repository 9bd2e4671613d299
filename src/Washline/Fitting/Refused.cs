namespace Washline.Fitting;

/// <summary>Wishes that this home cannot fulfil together.</summary>
/// <param name="Binds">The wish without which there is an answer; all of them where dropping one is not enough.</param>
/// <param name="Nearest">The nearest drink without it; nothing where there is none even so.</param>
public sealed record Refused(string Binds, Fit? Nearest);
