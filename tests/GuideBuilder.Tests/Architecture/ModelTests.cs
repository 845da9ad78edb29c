using System.Reflection;
using System.Runtime.CompilerServices;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Architecture;

public sealed class ModelTests
{
    private const BindingFlags Public = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    private static readonly Type[] Types = Assembly.Load("GuideBuilder.Model").GetExportedTypes();

    [Fact]
    public void The_model_has_public_types() => Assert.NotEmpty(Types);

    [Fact]
    public void No_property_of_the_model_can_be_set_after_construction() =>
        Findings.AreNone(SettableProperties(Types));

    [Fact]
    public void No_public_field_of_the_model_can_be_changed() =>
        Findings.AreNone(ChangeableFields(Types));

    [Fact]
    public void What_can_be_set_or_changed_would_be_found()
    {
        Assert.Equal(["Careless.Settable"], SettableProperties([typeof(Careless)]));
        Assert.Equal(["Careless.Changeable", "Careless.Shared"], ChangeableFields([typeof(Careless)]));
    }

    private static IEnumerable<string> SettableProperties(Type[] types) =>
        from type in types
        from property in type.GetProperties(Public)
        let setter = property.GetSetMethod()
        where setter is not null && !setter.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit))
        select $"{type.Name}.{property.Name}";

    private static IEnumerable<string> ChangeableFields(Type[] types) =>
        from type in types
        from field in type.GetFields(Public)
        where !field.IsInitOnly && !field.IsLiteral && !field.IsSpecialName
        orderby field.Name
        select $"{type.Name}.{field.Name}";

#pragma warning disable CA1051, CA2211 // A type that breaks the rules on purpose.
    private sealed class Careless
    {
        public const int Constant = 1;
        public static readonly int Fixed = 1;
        public static int Shared = 1;
        public int Changeable = 1;

        public int Settable { get; set; }

        public int Given { get; init; }

        public int Kept { get; private set; }
    }
#pragma warning restore CA1051, CA2211
}
