global using System.Collections.Immutable;
global using Pawl.Mechanics;
