global using System.Collections.Frozen;
global using System.Collections.Immutable;
global using System.Diagnostics;
global using GuideBuilder.Model;
global using GuideBuilder.Rendering.Html;
global using GuideBuilder.Rendering.Wording;
global using NodaTime;
global using static System.FormattableString;
