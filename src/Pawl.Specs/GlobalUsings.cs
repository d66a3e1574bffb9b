global using System.Collections.Immutable;
global using static Pawl.Specs.Text.Cultures;
