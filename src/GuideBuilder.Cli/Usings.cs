global using System.Collections.Frozen;
global using System.Collections.Immutable;
global using GuideBuilder.Model;
global using NodaTime;
global using static System.FormattableString;
