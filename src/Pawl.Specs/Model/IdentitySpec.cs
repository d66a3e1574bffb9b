using System.ComponentModel.DataAnnotations;
using Pawl.Specs.Text;

namespace Pawl.Specs.Model;

/// <summary>What the variant is called.</summary>
public sealed record IdentitySpec
{
    [Display(Name = "Family", Description = "Name of the housing family.")]
    public required Stated<string> Family { get; init; }

    [Display(Name = "Variant", Description = "Name of the variant. A file without one is a base for others and is not judged.")]
    public required Stated<string> Variant { get; init; }

    [Display(Name = "Revision", Description = "Revision letter or number of the variant.")]
    public Stated<string>? Revision { get; init; }

    [Display(Name = "Description", Description = "A sentence for the report.")]
    public Stated<string>? Description { get; init; }

    [Display(Name = "Drawing", Description = "Number of the assembly drawing.")]
    [Example("T180-000")]
    public Stated<string>? Drawing { get; init; }

    [Display(Name = "Part number", Description = "Number under which the variant is made or sold.")]
    [Example("10-4180")]
    public Stated<string>? PartNumber { get; init; }
}

/// <summary>What a part of the gearbox is drawn and ordered as.</summary>
public sealed record PartSpec
{
    [Display(Name = "Part", Description = "What it is, as findings print it: gears.sun, bodies.carrier, bearings.front, joints.flange.")]
    [Example("gears.sun")]
    public required Stated<string> Id { get; init; }

    [Display(Name = "Drawing", Description = "Number of the drawing.")]
    [Example("T180-102")]
    public Stated<string>? Drawing { get; init; }

    [Display(Name = "Part number", Description = "Number under which it is made, ordered or kept.")]
    [Example("10-4182")]
    public Stated<string>? PartNumber { get; init; }

    [Display(Name = "Revision", Description = "Revision of the drawing.")]
    public Stated<string>? Revision { get; init; }
}
