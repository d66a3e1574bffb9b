using System.Reflection;
using Pawl.Quantities;
using Pawl.Reports.Building;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Reports.Tests;

public sealed class DeclaredInputsTests
{
    // An oracle of another kind: reflection fills every property of the model, so that a field the model gains and the list
    // forgets shows up here.
    [Fact]
    public void Every_field_that_a_spec_can_declare_is_listed_with_its_key()
    {
        var filled = new Filler();
        var spec = (GearboxSpec)filled.Make(typeof(GearboxSpec), "");

        var listed = DeclaredInputs.Of(spec).Select(i => (i.Path, i.Written)).ToHashSet();

        Assert.Equal(filled.Made.Order(), listed.Order());
    }

    /// <summary>Makes records with every property set, lists with one entry, names that are called "name".</summary>
    private sealed class Filler
    {
        public HashSet<(string Path, string Written)> Made { get; } = [];

        public object Make(Type type, string path)
        {
            type = Nullable.GetUnderlyingType(type) ?? type;
            if (type == typeof(string))
                return "text";
            if (type == typeof(Amount))
                return new Amount(1, Units.One);
            if (type == typeof(Toleranced))
                return new Toleranced(new(1, Units.Millimetre), Tolerance.General.Instance);
            if (type.IsPrimitive || type == typeof(DateOnly))
                return Activator.CreateInstance(type)!;
            if (type == typeof(SourceSpan))
                return SourceSpan.Whole("file");
            if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(Stated<>))
                return Stated(type, path);
            if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ImmutableArray<>))
                return One(type.GetGenericArguments()[0], path + "[1]");
            if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(Named<>))
                return Named(type, path);
            if (type == typeof(FileRead))
                return new FileRead("file", "hash");
            return Record(type, path);
        }

        private object Stated(Type type, string path)
        {
            var written = "as written: " + path;
            Made.Add((path, written));
            return Activator.CreateInstance(type, Make(type.GetGenericArguments()[0], path), SourceSpan.Whole("file"), written)!;
        }

        private object One(Type item, string path)
        {
            var array = Array.CreateInstance(item, 1);
            array.SetValue(Make(item, path), 0);
            return typeof(ImmutableArray).GetMethods()
                .Single(m => m.Name == "Create" && m.GetParameters() is [{ ParameterType.IsArray: true }])
                .MakeGenericMethod(item).Invoke(null, [array])!;
        }

        private object Named(Type type, string path)
        {
            var item = type.GetGenericArguments()[0];
            Delegate nameOf = (Func<object, string>)(_ => "name");
            return Activator.CreateInstance(type, One(item, path + ".name"), Delegate.CreateDelegate(
                typeof(Func<,>).MakeGenericType(item, typeof(string)), nameOf.Target, nameOf.Method))!;
        }

        private object Record(Type type, string path)
        {
            var record = Activator.CreateInstance(type)!;
            foreach (var property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance))
            {
                if (property.SetMethod is null)
                    continue;

                // What is not a key: names count as written where they stand, the catalogue by its own keys.
                var isKey = property.GetCustomAttribute<NotAKeyAttribute>() is null;
                var key = property.Name == "Catalogue" ? path : path.Length == 0 ? PropertyName.Of(property.Name) : $"{path}.{PropertyName.Of(property.Name)}";
                if (property.Name == "Name" && !isKey)
                    property.SetValue(record, new Stated<string>("name", SourceSpan.Whole("file"), "name"));
                else
                    property.SetValue(record, Make(property.PropertyType, key));
            }

            return record;
        }
    }
}
