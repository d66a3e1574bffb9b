global using static Pawl.Specs.Text.Cultures;
global using System.Collections.Immutable;
