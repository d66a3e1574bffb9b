namespace Pawl.Reports.Rendering;

/// <summary>Colours by escape sequences (ECMA-48), or none.</summary>
internal sealed class Paint(bool on)
{
    public string Red(string text) => With("31", text);

    public string Green(string text) => With("32", text);

    public string Yellow(string text) => With("33", text);

    public string Blue(string text) => With("34", text);

    public string Dim(string text) => With("2", text);

    private string With(string code, string text) => on ? $"\u001B[{code}m{text}\u001B[0m" : text;
}
